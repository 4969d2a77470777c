namespace Vessel.Design;

/// <summary>Whether a pattern of holes is one, and finds room on its plate.</summary>
internal static class HolePatternCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        return
        [
            .. design.Inside.Discs.SelectMany(d => Find(shown, d.Holes, d.Name, d.OutsideDiameter / 2, d.Bore / 2)),
            .. design.Inside.Caps.Where(c => c.Pattern is not null).SelectMany(c => Find(shown, c.Pattern!, c.Name,
                (c.OutsideDiameter / 2) - c.Wall, InsideBodies.OpeningRadius(design, c))),
        ];
    }

    private static IEnumerable<Fault> Find(
        Shown shown, HolePatternDesign holes, string name, double outer, double opening)
    {
        if (holes.Pitch <= holes.HoleDiameter)
        {
            yield return new Fault(FaultCodes.HolesTouch, $"{holes.Path}.pitch",
                $"The holes of '{name}' run into each other.", shown.Length(holes.Pitch),
                $"more than {shown.Length(holes.HoleDiameter)}", "Make the pitch larger, or the holes smaller.");
            yield break;
        }

        if (!(outer > opening))
            yield break;
        // Between these distances from the axis the middles of whole holes lie.
        var low = opening > 0 ? opening + holes.Margin + (holes.HoleDiameter / 2) : 0;
        var high = outer - holes.Margin - (holes.HoleDiameter / 2);
        if (high < low - Ring.Hair)
        {
            var largest = opening > 0 ? outer - opening - (2 * holes.Margin) : 2 * (outer - holes.Margin);
            yield return new Fault(FaultCodes.NoHoleFits, $"{holes.Path}.hole_diameter",
                $"Not one whole hole of the pattern fits '{name}'.", "0 holes", "at least 1 hole",
                largest > 0 ? $"Use holes of at most {shown.Length(largest)}, or a smaller margin."
                    : "Make the margin or the opening in the middle smaller.");
            yield break;
        }

        var cell = holes.Pitch * holes.Pitch * (holes.Pattern == HolePattern.Staggered60 ? Math.Sqrt(3) / 2 : 1);
        var about = Math.PI * (high - low) * (high + low) / cell;
        if (about > Limits.Holes)
        {
            yield return new Fault(FaultCodes.TooManyHoles, $"{holes.Path}.pitch",
                $"The pattern of '{name}' has too many holes.", $"about {shown.Number(KeyKind.Count, Math.Round(about))}",
                $"at most {shown.Number(KeyKind.Count, Limits.Holes)}",
                $"Use a pitch of at least {shown.Length(holes.Pitch * Math.Sqrt(about / Limits.Holes))}.");
        }
    }
}
