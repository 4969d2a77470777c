using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>What is scribed on the bracket: on the plate between the bends, and each ear's weld on the ear.</summary>
internal static class BracketMarks
{
    private const double LetterHeight = 4;

    public static ImmutableArray<Mark> Of(BracketSite site, ImmutableArray<Loop2> holes, WeldNumbers welds)
    {
        // The plate between its bends has a corner of its own.
        var corner = site.Middle - (0.5 * Plate(site));
        var marks = new FlatMarks(Plate(site).U, Plate(site).V, [.. holes.Select(hole => Moved(hole, -corner))]);
        var middle = Plate(site).U / 2;
        marks.AddVertical(middle, $"{NoteText.Degrees(site.Bracket.Angle)} deg", LetterHeight);
        marks.AddTitle($"{site.Bracket.Name} {string.Join(' ', WeldNumbers.EarsOf(site.Bracket).Select(path => welds[path]))}", LetterHeight);
        var length = Math.Min(4 * LetterHeight, Plate(site).V / 4);
        var foot = new Point2((middle - LetterHeight) / 2, (Plate(site).V - length) / 2);
        marks.AddArrow(foot, foot + new Point2(0, length), "up", LetterHeight);
        return [.. marks.ToImmutable().Select(mark => Moved(mark, corner)), .. EarNumbers(site, welds)];
    }

    private static Point2 Plate(BracketSite site) =>
        site.AtSides ? new(site.Straight, site.FlatHeight) : new(site.FlatWidth, site.Straight);

    /// <summary>In the middle of each ear, along its bend; none on an ear that is too short for letters.</summary>
    private static IEnumerable<Mark> EarNumbers(BracketSite site, WeldNumbers welds)
    {
        if (site.ShortestEar < 2 * LetterHeight)
            yield break;
        // The end's curve cuts into the ear's middle from outside.
        var aside = (site.Straight / 2) + site.Allowance + (site.ShortestEar / 2);
        var (first, last) = site.AtSides ? (new Point2(-aside, 0), new Point2(aside, 0)) : (new Point2(0, aside), new Point2(0, -aside));
        foreach (var (path, at) in WeldNumbers.EarsOf(site.Bracket).Zip([first, last]))
            yield return new TextMark(welds[path], site.Middle + at, LetterHeight, site.AtSides ? Math.PI / 2 : 0);
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
