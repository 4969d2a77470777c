using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Parts;

namespace Vessel.Members.Saddles;

/// <summary>What is scribed on the bracket: on the plate between the bends, and each ear's weld on the ear.</summary>
internal static class SaddleMarks
{
    private const double LetterHeight = 4;

    /// <summary>A tick runs from so far off an edge to so far off it, mm.</summary>
    private const double TickGap = 0.5;
    private const double TickLength = 3;

    public static ImmutableArray<Mark> Of(SaddleSite site, ImmutableArray<Loop2> holes, Welds welds)
    {
        // The plate between its bends has a corner of its own.
        var (size, corner) = (Plate(site), site.Middle - (0.5 * Plate(site)));
        ImmutableArray<Loop2> onPlate = [.. holes.Select(hole => Moved(hole, -corner))];
        var title = new FlatMarks(size.U, size.V, onPlate);
        title.AddTitle($"{site.Bracket.Name} {string.Join(' ', welds.Of(WeldRole.Mount, site.Bracket.Path))}", LetterHeight);
        // The centre line ends below the title.
        var marks = new FlatMarks(size.U, size.V - (2 * LetterHeight), onPlate);
        marks.AddVertical(size.U / 2, $"{NoteText.Degrees(site.Bracket.Angle)} deg", LetterHeight);
        var length = Math.Min(4 * LetterHeight, size.V / 4);
        var foot = new Point2(((size.U / 2) - LetterHeight) / 2, (size.V - length) / 2);
        marks.AddArrow(foot, foot + new Point2(0, length), "up", LetterHeight);
        return
        [
            .. title.ToImmutable().Concat(marks.ToImmutable()).Select(mark => Moved(mark, corner)),
            .. EarMarks(site, welds),
        ];
    }

    private static Point2 Plate(SaddleSite site) =>
        site.AtSides ? new(site.Straight, site.FlatHeight) : new(site.FlatWidth, site.Straight);

    /// <summary>
    /// Its weld's number in the middle of each ear, along the bend, and where a curved end lies on the bracket's middle;
    /// nothing on an ear that is too short for letters.
    /// </summary>
    private static IEnumerable<Mark> EarMarks(SaddleSite site, Welds welds)
    {
        if (site.ShortestEar < 3 * LetterHeight)
            yield break;
        // The end's curve cuts into the ear's middle from outside.
        var (bend, end) = ((site.Straight / 2) + site.Allowance, (site.Straight / 2) + site.Allowance + site.ShortestEar);
        var numbers = welds.Of(WeldRole.Mount, site.Bracket.Path);
        for (var ear = 0; ear < numbers.Length; ear++)
        {
            // Left, right; upper, lower.
            var way = site.AtSides ? new Point2((2 * ear) - 1, 0) : new Point2(0, 1 - (2 * ear));
            yield return new TextMark(
                numbers[ear], site.Middle + ((bend + end) / 2 * way), LetterHeight, site.AtSides ? Math.PI / 2 : 0);
            if (!site.AtSides)
                yield return new LineMark(site.Middle + ((end - TickLength) * way), site.Middle + ((end - TickGap) * way));
        }
    }

    private static Mark Moved(Mark mark, Point2 by) => mark switch
    {
        LineMark line => new LineMark(line.A + by, line.B + by),
        TextMark text => text with { Center = text.Center + by },
        _ => throw new ArgumentOutOfRangeException(nameof(mark)),
    };

    private static Loop2 Moved(Loop2 loop, Point2 by) => new(
    [
        .. loop.Edges.Select(edge => edge switch
        {
            Line2 line => new Line2(line.A + by, line.B + by),
            Arc2 arc => arc with { Center = arc.Center + by },
            _ => (Curve2)new GraphCurve2(t => edge.At(t) + by, edge.Slope, edge.Domain, edge.Breaks),
        }),
    ]);
}
