namespace Vessel.Design;

/// <summary>Whether caps, sleeves and discs are of sizes that fit the vessel.</summary>
internal static class InsideSizeCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        return
        [
            .. design.Inside.Sleeves.SelectMany(s => Hanging(shown, design, s.Path, $"{s.Path}.tube", $"{s.Path}.length",
                s.OutsideDiameter, s.Wall, InsideBodies.Of(design, s))),
            .. design.Inside.Caps.SelectMany(c => Hanging(shown, design, c.Path, c.Path, $"{c.Path}.skirt",
                c.OutsideDiameter, c.Wall, InsideBodies.Of(design, c)).Concat(Opening(shown, design, c))),
            .. design.Inside.Discs.SelectMany(d => Disc(shown, design, d)),
        ];
    }

    private static IEnumerable<Fault> Hanging(
        Shown shown, VesselDesign design, string path, string sizePath, string lengthPath, double outside, double wall,
        InsideBody body)
    {
        if (design.Top is not FlatHead)
        {
            yield return new Fault(FaultCodes.HangsFromDome, $"{path}.hangs_from",
                $"'{body.Name}' hangs from the top, which is not flat.", null, null,
                "Use 'top: { shape: flat, ... }'.");
        }

        if (wall >= outside / 2)
            yield return WallCheck.TooThick(shown, $"{sizePath}.wall", body.Name, wall, outside / 2);
        // It goes in from the end that it hangs from.
        var bore = 2 * design.Shell.LeastInner(body.Rings.Min(r => r.Low), design.Shell.Height);
        if (bore > 0 && outside >= bore)
        {
            yield return new Fault(FaultCodes.TooWideInside, $"{sizePath}.outside_diameter",
                $"'{body.Name}' does not enter the shell's bore.", shown.Length(outside), $"less than {shown.LengthDown(bore)}",
                "Make it narrower.");
            yield break;
        }

        var floor = InsideRoom.Floor(design, outside / 2);
        var low = body.Rings.Min(r => r.Low);
        if (floor < InsideRoom.Ceiling(design) && low <= floor)
        {
            yield return new Fault(FaultCodes.OutsideTheInside, lengthPath,
                $"'{body.Name}' reaches down to the bottom of the vessel.",
                $"lower end at {shown.Length(low)}", $"more than {shown.LengthUp(floor)}",
                $"Make it shorter by more than {shown.LengthUp(floor - low)}.");
        }
    }

    private static IEnumerable<Fault> Opening(Shown shown, VesselDesign design, CapDesign cap)
    {
        var opening = 2 * InsideBodies.OpeningRadius(design, cap);
        var room = cap.OutsideDiameter - (2 * cap.Wall);
        if (room > 0 && opening >= room)
        {
            yield return new Fault(FaultCodes.BoreTooWide,
                $"{cap.Path}.{(cap.Opens == CapOpening.Up ? "drain_hole" : "outside_diameter")}",
                $"The opening in the middle of '{cap.Name}' is as wide as its plate inside the skirt.",
                shown.Length(opening), $"less than {shown.LengthDown(room)}", "Make the cap wider, or the opening smaller.");
        }
    }

    private static IEnumerable<Fault> Disc(Shown shown, VesselDesign design, DiscDesign disc)
    {
        var bore = disc.OutsideDiameter + (2 * disc.Clearance);
        if (bore <= 0)
            yield break;
        if (disc.Clearance < 0 && disc.Fixed != Fixing.Press)
        {
            yield return Clearance("is larger than the bore it fits, and it is not pressed in", "at least 0",
                "Use a clearance that is not below zero, or 'fixed: press'.");
        }

        if (disc.OutsideDiameter <= 0)
        {
            yield return Clearance("is left nothing by its clearance", $"less than {shown.LengthDown(bore / 2)}",
                "Make the clearance smaller.");
        }
        else if (disc.Bore >= disc.OutsideDiameter)
        {
            yield return new Fault(FaultCodes.BoreTooWide, $"{disc.Path}.bore",
                $"The opening in the middle of '{disc.Name}' is as wide as the disc.", shown.Length(disc.Bore),
                $"less than {shown.LengthDown(disc.OutsideDiameter)}", "Make the opening smaller.");
        }

        if ((Height(shown, design, disc) ?? InCone(shown, design, disc)) is { } fault)
            yield return fault;

        Fault Clearance(string what, string limit, string remedy) => new(FaultCodes.DiscDoesNotFit,
            $"{disc.Path}.clearance", $"'{disc.Name}' {what}.", shown.Length(disc.Clearance), limit, remedy);
    }

    private static Fault? InCone(Shown shown, VesselDesign design, DiscDesign disc)
    {
        var shell = design.Shell;
        var cone = disc.Fits is not null || shell.IsPlain ? null
            : shell.Courses.FirstOrDefault(course => (course.IsCone || course != shell.CourseAt(disc.Height))
                && course.Start < disc.Height + disc.Thickness - Ring.Hair && course.End > disc.Height + Ring.Hair);
        return cone is null ? null
            : new(FaultCodes.DiscInCone, $"{disc.Path}.at.height", $"'{disc.Name}' does not stand in one cylinder of the shell.",
                shown.Length(disc.Height), $"outside {shown.LengthDown(cone.Start)} to {shown.LengthUp(cone.End)}",
                "Move it to a cylindrical part, or let it fit a sleeve.");
    }

    private static Fault? Height(Shown shown, VesselDesign design, DiscDesign disc)
    {
        var sleeve = design.Inside.Sleeves.FirstOrDefault(s => InsideNames.AreOne(disc.Fits, s.Name));
        var (low, high) = sleeve is null
            ? (InsideRoom.LowerEnd(design), InsideRoom.UpperEnd(design))
            : (InsideBodies.Of(design, sleeve).Rings[0].Low, InsideRoom.Ceiling(design));
        // A size at fault is NaN: there is no limit to judge the height by.
        var most = high - disc.Thickness;
        if (double.IsNaN(low) || double.IsNaN(most) || !(disc.Height < low - Ring.Hair || disc.Height > most + Ring.Hair))
            return null;
        return new Fault(FaultCodes.OutsideTheInside, $"{disc.Path}.at.height",
            $"'{disc.Name}' does not stand inside {(sleeve is null ? "the shell" : $"'{sleeve.Name}'")}.",
            shown.Length(disc.Height), $"{shown.LengthUp(low)} to {shown.LengthDown(most)}",
            low <= most ? $"Use a height from {shown.LengthUp(low)} to {shown.LengthDown(most)}."
                : $"Make its host longer than {shown.LengthUp(disc.Thickness)}.");
    }
}
