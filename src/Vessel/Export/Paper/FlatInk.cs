using System.Collections.Immutable;
using System.Globalization;
using Vessel.Export.Drawing;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Paper;

/// <summary>The pieces of a flat as lines on paper.</summary>
/// <param name="Stretch">Along x: paper round a tube lies further out than the metal.</param>
internal sealed record FlatInk(Flat Flat, double Stretch)
{
    /// <summary>Finer than any printer's dot.</summary>
    private const double Chord = 0.01;

    private const double HatchStep = 3;

    private const int MostHatches = 1000;

    private const double HatchLength = 2.2;

    /// <summary>Of words that can still be read on paper, mm.</summary>
    private const double LeastLetter = 1.3;

    /// <summary>Beyond the tool's circle, mm.</summary>
    private const double Overreach = 2;

    public Point2 On(Point2 flat) => new(flat.U * Stretch, flat.V);

    public ImmutableArray<Point2> Outline(Loop2 loop) => [.. Chords.Of(loop, Chord).Select(On)];

    public ImmutableArray<Point2> Along(Curve2 curve) => [.. Chords.Of(curve, Chord).Select(On)];

    public IEnumerable<Item> Cut() =>
        Flat.Cut.Holes.Append(Flat.Cut.Outer).Select(loop => Stroke.Through(Outline(loop), Pens.Edge, closed: true));

    public IEnumerable<Item> Marks() => Flat.Marks.Select(mark => mark switch
    {
        LineMark line => (Item)Stroke.Line(On(line.A), On(line.B), Pens.Thin),
        CurveMark curve => Stroke.Through(Along(curve.Curve), Pens.Thin),
        TextMark text => Text.Middle(text.Text, On(text.Center), text.Height, text.Angle),
        _ => throw new ArgumentException($"no such mark: {mark}"),
    });

    public IEnumerable<Item> Bends() => Flat.Bends.SelectMany((bend, i) =>
    {
        var way = (bend.B - bend.A).Unit();
        // Beside the line's first third, so that it stands off marks in the middle.
        return new Item[]
        {
            Stroke.Line(On(bend.A), On(bend.B), Pens.Bend),
            Text.Fitted(bend.Words(i + 1), On(bend.A) + (2 * way) + (1.2 * way.Turned), 2.5, (bend.B - bend.A).Length - 4) with { Angle = way.Angle },
        };
    });

    /// <summary>Where the tools go: crosses beyond their circles, and the hole's number in the table of holes with its size.</summary>
    /// <param name="here">From the part's own flat to this one.</param>
    public IEnumerable<Item> Drilled(Hole hole, Func<Point2, Point2> here)
    {
        var (at, letter) = (On(here(hole.Center)), Math.Clamp(hole.Diameter / 4, 1.8, 3));
        if (hole.Shape is { } shape)
        {
            var size = string.Create(CultureInfo.InvariantCulture, $"{hole.Number}: {(shape with { Width = shape.WidthOutside }).Text(NoteText.Length)}");
            // Inside, clear of the hatched edge, where it can be read there; else below: beside it would cross a centre line or the outline.
            var room = shape.WidthOutside - (2 * HatchLength) - 1;
            var words = Strokes.Width(size, LeastLetter) < room
                ? Text.Fitted(size, at - new Point2(room / 2, LeastLetter / 2), 1.8, room)
                : Text.Middle(size, at - new Point2(0, (shape.Height / 2) + 2.4), 1.8);
            return [.. hole.ToolPlaces.SelectMany(place => Cross(On(here(place)), 1.5)), words];
        }

        var text = string.Create(CultureInfo.InvariantCulture, $"{hole.Number}: {NoteText.Length(hole.Diameter)}");
        // Inside where there is room for it, else beside.
        var inside = Strokes.Width(text, letter) + 3 < hole.Diameter / 2;
        var start = inside ? at + new Point2(1.5, 1.5) : at + ((hole.Diameter / 2 * 0.75) + 1) * new Point2(1, 1);
        return [.. Cross(at, (hole.Diameter / 2) + Overreach), Text.Left(text, start, letter)];
    }

    public static IEnumerable<Item> Cross(Point2 at, double arm) =>
    [
        Stroke.Line(at - new Point2(arm, 0), at + new Point2(arm, 0), Pens.Thin),
        Stroke.Line(at - new Point2(0, arm), at + new Point2(0, arm), Pens.Thin),
    ];

    /// <summary>Short strokes on the right of a path: where the metal is on its left, on the waste.</summary>
    public static IEnumerable<Item> Hatch(ImmutableArray<Point2> path)
    {
        var length = path.Zip(path.Skip(1)).Sum(pair => (pair.Second - pair.First).Length);
        var pitch = Math.Max(HatchStep, length / MostHatches);
        var rest = pitch / 2;
        for (var i = 0; i + 1 < path.Length; i++)
        {
            var step = path[i + 1] - path[i];
            for (; rest < step.Length; rest += pitch)
            {
                var at = path[i] + (rest / step.Length * step);
                var slant = (step.Unit() - step.Unit().Turned).Unit();
                yield return Stroke.Line(at, at + (HatchLength * slant), Pens.Thin);
            }

            rest -= step.Length;
        }
    }

    public IEnumerable<Item> HatchedHoles() =>
        Flat.Cut.Holes.SelectMany(hole => Hatch(Outline(hole) is var path ? path.Add(path[0]) : []));
}
