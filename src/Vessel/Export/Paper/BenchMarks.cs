using System.Collections.Immutable;
using System.Globalization;
using Vessel.Export.Drawing;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Paper;

/// <summary>What a template shows besides the flat itself: where tools go, and on which side of a line the waste lies.</summary>
internal static class BenchMarks
{
    private const double HatchStep = 3;
    private const int MostHatches = 1000;
    private const double HatchLength = 2.2;

    /// <summary>Height of words that can still be read on paper, mm.</summary>
    private const double LeastLetter = 1.3;

    /// <summary>Beyond the tool's circle, mm.</summary>
    private const double Overreach = 2;

    /// <summary>Where the tools go: crosses beyond their circles, and the hole's number in the table of holes with its size.</summary>
    /// <param name="here">Map from the part's own flat to the paper.</param>
    public static IEnumerable<Item> Drilled(Hole hole, Func<Point2, Point2> here)
    {
        var (at, letter) = (here(hole.Center), Math.Clamp(hole.Diameter / 4, 1.8, 3));
        if (hole.Shape is { } shape)
        {
            var size = string.Create(
                CultureInfo.InvariantCulture, $"{hole.Number}: {(shape with { Width = shape.WidthOutside }).Text(NoteText.Length)}");
            // Inside, clear of the hatched edge, where it can be read there; else below: beside it would cross a centre line or the
            // outline.
            var room = shape.WidthOutside - (2 * HatchLength) - 1;
            var words = Strokes.Width(size, LeastLetter) < room
                ? Text.Fitted(size, at - new Point2(room / 2, LeastLetter / 2), 1.8, room)
                : Text.Middle(size, at - new Point2(0, (shape.Height / 2) + 2.4), 1.8);
            return [.. hole.ToolPlaces.SelectMany(place => Stroke.Cross(here(place), 1.5, Pens.Thin)), words];
        }

        var text = string.Create(CultureInfo.InvariantCulture, $"{hole.Number}: {NoteText.Length(hole.Diameter)}");
        // Inside where there is room for it, else beside.
        var inside = Strokes.Width(text, letter) + 3 < hole.Diameter / 2;
        var start = inside ? at + new Point2(1.5, 1.5) : at + ((hole.Diameter / 2 * 0.75) + 1) * new Point2(1, 1);
        return [.. Stroke.Cross(at, (hole.Diameter / 2) + Overreach, Pens.Thin), Text.Left(text, start, letter)];
    }

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

    /// <summary>Hatching inside a hole, whose outline runs clockwise; a circle has no direction of its own.</summary>
    public static IEnumerable<Item> Hatch(Item hole)
    {
        ImmutableArray<Point2> path = hole is Circle circle ? [.. circle.AsStroke.Flattened(Placing.Chord).Reverse()]
            : ((Stroke)hole).Flattened(Placing.Chord);
        return Hatch(path.Add(path[0]));
    }
}
