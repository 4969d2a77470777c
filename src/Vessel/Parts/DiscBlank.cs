using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>The flat of a disc that is formed to a dome: its middle and its name are marked.</summary>
internal static class DiscBlank
{
    private const double CrossReach = 5;
    private const double LetterHeight = 5;

    /// <summary>
    /// Of a disc with as much area as the middle of a formed wall, from the pole on (equal-area rule for raised work, Hodgson,
    /// "Machines and Tools Employed in the Working of Sheet Metals").
    /// </summary>
    public static double Diameter(Profile middle) => 2 * Math.Sqrt(middle.Area / Math.PI);

    public static Flat Of(double diameter, string title, ImmutableArray<string> notes)
    {
        // At half the radius a chord is sqrt 3 radii long; a sixth of that is left free.
        var letter = Math.Min(LetterHeight, diameter / Math.Sqrt(2) / TextMark.Width(title, 1));
        return new(
            FlatKind.Blank,
            new(Loop2.Circle(default, diameter / 2), []),
            [
                new LineMark(new(-CrossReach, 0), new(CrossReach, 0)),
                new LineMark(new(0, -CrossReach), new(0, CrossReach)),
                new TextMark(title, new(0, -diameter / 4), letter, 0),
            ],
            [],
            notes,
            new PlaneDevelopment(),
            "equal area, mean diameter");
    }
}
