using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>Wraps that are longer than once round, since holes cover every line up their tube.</summary>
internal static class Wraps
{
    private const double LetterHeight = 4;

    /// <summary>
    /// With a line where it has gone once round, a note that says so, and the area that is drawn twice; as it is where it does not lap.
    /// </summary>
    /// <param name="flat">Wrapped round its tube.</param>
    /// <param name="area">Area of the lap, mm2, holes and all: each hole is drawn once.</param>
    public static Flat Lapping(Flat flat, double area)
    {
        if (flat.From is not WrappedDevelopment { Lap: > 0 and var lap, Radius: var radius })
            return flat;
        var (girth, box) = (Turns.Full * radius, CurveMeasures.Bounds(flat.Cut.Outer));
        var marks = new FlatMarks(box.Max.U, box.Max.V, flat.Cut.Holes);
        marks.AddVertical(girth, "once round", LetterHeight);
        return flat with
        {
            Marks = [.. flat.Marks, .. marks.ToImmutable()],
            Notes =
            [
                .. flat.Notes,
                $"LONGER THAN ONCE ROUND: once round is {NoteText.Length(girth)} mm, to the line of that name; "
                + $"{NoteText.Length(lap)} mm lap over the left edge, "
                + "so that every hole is drawn whole. Not for a tube laser as it is.",
            ],
            LapArea = area,
        };
    }
}
