using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>Whether a pattern of holes is one, and finds room on its plate.</summary>
internal static class HolePatternCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new UnitFormat(design.Units);
        ImmutableArray<DrilledField> fields = [.. design.All<InsideSpec>().SelectMany(spec => spec.Patterns(design))];
        return [.. fields.SelectMany(field => Find(shown, field.Holes, field.Name, field.Outer, field.Opening)),
            .. OverBudget(fields, shown)];
    }

    /// <summary>The budget is the design's, not a pattern's: told at the pattern that takes the most of it.</summary>
    private static IEnumerable<Fault> OverBudget(ImmutableArray<DrilledField> fields, UnitFormat shown)
    {
        // NaN of a pattern at fault counts for nothing.
        var counts = fields.Select(field => About(field) is > 0 and var about ? about : 0).ToList();
        var all = counts.Sum();
        if (all <= Limits.Holes)
            yield break;
        var (_, field) = counts.Zip(fields).MaxBy(pair => pair.First);
        yield return new Fault(FaultCodes.TooManyHoles, $"{field.Holes.Path}.pitch",
            fields.Length == 1 ? $"The pattern of '{field.Name}' has too many holes."
                : $"The patterns of the design have too many holes together, most of them in '{field.Name}'.",
            $"about {shown.Number(KeyKind.Count, Math.Round(all))}", $"at most {shown.Number(KeyKind.Count, Limits.Holes)}",
            // If every pattern's pitch grew alike.
            "Use a pitch of at least "
                + $"{shown.LengthUp(field.Holes.Pitch * Math.Sqrt(all / Limits.Holes))}{(counts.Count(c => c > 0) > 1 ? ", and wider ones in the others" : "")}.");
    }

    private static IEnumerable<Fault> Find(
        UnitFormat shown, HolePatternDesign holes, string name, double outer, double opening)
    {
        if (holes.Pitch <= holes.HoleDiameter)
        {
            yield return new Fault(FaultCodes.HolesTouch, $"{holes.Path}.pitch",
                $"The holes of '{name}' run into each other.", shown.Length(holes.Pitch),
                $"more than {shown.LengthUp(holes.HoleDiameter)}", "Make the pitch larger, or the holes smaller.");
            yield break;
        }

        if (!(outer > opening))
            yield break;
        var (low, high) = Middles(holes, outer, opening);
        if (high < low - Ring.Hair)
        {
            var largest = opening > 0 ? outer - opening - (2 * holes.Margin) : 2 * (outer - holes.Margin);
            yield return new Fault(FaultCodes.NoHoleFits, $"{holes.Path}.hole_diameter",
                $"Not one whole hole of the pattern fits '{name}'.", "0 holes", "at least 1 hole",
                largest > 0 ? $"Use holes of at most {shown.LengthDown(largest)}, or a smaller margin."
                    : "Make the margin or the opening in the middle smaller.");
        }
    }

    /// <summary>Between these distances from the axis the middles of whole holes lie, mm.</summary>
    private static (double Low, double High) Middles(HolePatternDesign holes, double outer, double opening) =>
        (opening > 0 ? opening + holes.Margin + (holes.HoleDiameter / 2) : 0, outer - holes.Margin - (holes.HoleDiameter / 2));

    /// <summary>How many holes there are, by area; not above zero where the pattern is none.</summary>
    private static double About(DrilledField field)
    {
        var holes = field.Holes;
        if (holes.Pitch <= holes.HoleDiameter || !(field.Outer > field.Opening))
            return 0;
        var (low, high) = Middles(holes, field.Outer, field.Opening);
        var cell = holes.Pitch * holes.Pitch * (holes.Pattern == HolePattern.Staggered60 ? Math.Sqrt(3) / 2 : 1);
        return high < low ? 0 : Math.PI * (high - low) * (high + low) / cell;
    }
}
