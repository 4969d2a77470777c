using Vessel.Design;

namespace Vessel.Members.Inside;

/// <summary>Whether a level plate fits its bore and stands in it.</summary>
internal static class DividerCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design, DividerSpec disc)
    {
        var shown = new UnitFormat(design.Units);
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

    private static Fault? InCone(UnitFormat shown, VesselDesign design, DividerSpec disc)
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

    private static Fault? Height(UnitFormat shown, VesselDesign design, DividerSpec disc)
    {
        var host = design.All<HangingSpec>().FirstOrDefault(s => s.BoreLength is not null && InsideNames.AreOne(disc.Fits, s.Name));
        var (low, high) = host is null
            ? (InsideRoom.LowerEnd(design), InsideRoom.UpperEnd(design))
            : (host.Body(design).Rings[0].Low, InsideRoom.Ceiling(design));
        // A size at fault is NaN: there is no limit to judge the height by.
        var most = high - disc.Thickness;
        if (double.IsNaN(low) || double.IsNaN(most) || !(disc.Height < low - Ring.Hair || disc.Height > most + Ring.Hair))
            return null;
        return new Fault(FaultCodes.OutsideTheInside, $"{disc.Path}.at.height",
            $"'{disc.Name}' does not stand inside {(host is null ? "the shell" : $"'{host.Name}'")}.",
            shown.Length(disc.Height), $"{shown.LengthUp(low)} to {shown.LengthDown(most)}",
            low <= most ? $"Use a height from {shown.LengthUp(low)} to {shown.LengthDown(most)}."
                : $"Make its host longer than {shown.LengthUp(disc.Thickness)}.");
    }
}
