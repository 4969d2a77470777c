using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Members.Brackets;
using Vessel.Parts;
using static Vessel.Model.Allowed;

namespace Vessel.Members.Plates;

/// <summary>How a plate that stands on the shell fits it.</summary>
internal static class PlateRules
{
    public static IEnumerable<Measure> Of(PlateSite site, Assembly assembly)
    {
        var plate = site.Bracket;
        var welds = assembly.Welds.Where(w => w.Joint.Owner == plate.Path).ToList();
        yield return Gap(plate, assembly, welds.MaxBy(weld => weld.GapNormal)!);
        var flattest = welds.MaxBy(weld => weld.Dihedral.End)!;
        if (flattest.Joint.Kind == JointKind.Fillet)
            yield return Groove(plate, assembly, flattest);
        if (assembly.Design.Shell.CourseAt(plate.Height).IsRolled)
            yield return Seam(site, assembly, welds[0]);
    }

    private static Measure Gap(PlateDesign plate, Assembly assembly, WeldFigures weld)
    {
        var shop = assembly.Design.Shop.Welding;
        return new(
            FindingCodes.EarGapTooWide,
            Severity.Warning,
            [Slug.Of(plate.Name)],
            () => $"cut square, the edge of '{plate.Name}' touches the shell along one line and stands off by "
            + $"{NoteText.Length(weld.GapNormal)} mm at "
            + $"{weld.Joint.Number} ({NoteText.Length(weld.GapAxial)} mm along the plate); "
            + $"{RootGap.Limits(plate.Thickness, shop, NoteText.Length, "mm")}: "
            + "bevel or grind the edge to the shell, bring the plate nearer to the vessel's middle (at.offset), or roll it "
            + "level, where a square cut touches all through.",
            [new("gap normal", weld.GapNormal, AtMost(RootGap.Aim(plate.Thickness, shop), RootGap.Most(plate.Thickness, shop)), "mm"),
                new("gap axial", weld.GapAxial, null, "mm")],
            assembly.Design.PlaceOf($"{plate.Path}.at"),
            $"gap at the edge of '{plate.Name}'");
    }

    private static Measure Groove(PlateDesign plate, Assembly assembly, WeldFigures weld) => new(
        FindingCodes.EarTooFlat,
        Severity.Warning,
        [Slug.Of(plate.Name)],
        () => $"over {Math.Round(100 * weld.GrooveShare)} % of {weld.Joint.Number} '{plate.Name}' meets the shell at up to "
            + $"{NoteText.Degrees(weld.Dihedral.End)} deg, too flat for a fillet ({NoteText.Degrees(FilletThroat.GreatestAngle)} deg): "
            + "bring it nearer to the vessel's middle (at.offset), make it narrower, or bevel its edge there.",
        [new("dihedral", Turns.ToDegrees(weld.Dihedral.End), AtMost(Turns.ToDegrees(FilletThroat.GreatestAngle)), "deg")],
        assembly.Design.PlaceOf($"{plate.Path}.at"),
        $"widest angle at the edge of '{plate.Name}'");

    /// <summary>
    /// The long seam must lie clear of both fillets' legs; the plate's footprint is told by its corners, between which it is straight or
    /// bulges no further.
    /// </summary>
    private static Measure Seam(PlateSite site, Assembly assembly, WeldFigures weld)
    {
        var (plate, cope) = (site.Bracket, site.Cope);
        var shell = assembly.Design.Shell.At(plate.Height);
        var corners = (from u in (double[])[-plate.Width / 2, plate.Width / 2]
                       from n in (double[])[-plate.Thickness / 2, plate.Thickness / 2]
                       select cope.OnShell(u, n).Angle).ToList();
        var (at, off) = shell.Seams.Angles.Select(angle => (angle, Off: Off(angle))).MinBy(one => one.Off);
        var across = off == 0;
        var margin = (weld.Leg.End + (shell.Course.RootGap / 2)) / shell.OuterRadius;
        return new(
            FindingCodes.SeamUnderBracket,
            Severity.Warning,
            [Slug.Of(plate.Name)],
            () => $"the shell's long seam at {NoteText.Degrees(Turns.From(at, 0))} deg runs "
            + (across ? $"under '{plate.Name}'" : $"{NoteText.Length(off * shell.OuterRadius)} mm beside '{plate.Name}'")
            + $": turn the seam until {NoteText.Length(margin * shell.OuterRadius)} mm are between them.",
            [new("seam to plate", off * shell.OuterRadius, AtLeast(margin * shell.OuterRadius), "mm")],
            assembly.Design.PlaceOf(shell.Course.SeamPath),
            $"long seam to the edge of '{plate.Name}'");

        // Half a turn away the signs may differ, too.
        double Off(double angle)
        {
            var from = corners.ConvertAll(corner => Turns.Signed(corner - angle));
            return from.Min() < 0 && from.Max() > 0 && from.Max() - from.Min() < Math.PI ? 0 : from.Min(Math.Abs);
        }
    }
}
