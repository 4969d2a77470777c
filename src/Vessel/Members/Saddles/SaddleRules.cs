using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Members.Brackets;
using Vessel.Parts;
using Vessel.Stock;
using static Vessel.Model.Allowed;

namespace Vessel.Members.Saddles;

/// <summary>How a saddle bends, bolts and fits the shell.</summary>
internal static class SaddleRules
{
    /// <summary>A hole nearer to a bend line than so many thicknesses and the radius is drawn out. Common practice, no source.</summary>
    private const double HoleShare = 2;

    public static IEnumerable<Measure> Of(SaddleSite site, Assembly assembly)
    {
        var bracket = site.Bracket;
        var weld = assembly.Welds.First(w => w.Joint.Owner == bracket.Path);
        yield return Radius(assembly, bracket);
        yield return Hole(assembly, site);
        yield return Washer(assembly, site);
        yield return Gap(assembly, site, weld);
        if (weld.Joint.Kind == JointKind.Fillet)
            yield return Groove(assembly, site, weld);
        if (assembly.Design.Shell.CourseAt(bracket.Height).IsRolled)
            yield return Seam(assembly, site, weld);
    }

    private static Measure Radius(Assembly assembly, SaddleDesign bracket)
    {
        var least = BendRadii.Least(bracket.Material, bracket.Thickness);
        return Warning(
            assembly,
            bracket,
            FindingCodes.BendTooTight,
            () => $"'{bracket.Name}' is bent to {NoteText.Length(bracket.InsideRadius)} mm inside; {bracket.Material.Name} of "
            + $"{NoteText.Length(bracket.Thickness)} mm may crack below {NoteText.Length(least.Value)} mm ({least.Source}): "
            + "give a larger inside_radius, bend across the grain, or take a softer temper.",
            [new("inside radius", bracket.InsideRadius, AtLeast(least.Value), "mm")],
            "inside_radius",
            $"inside radius of '{bracket.Name}'");
    }

    private static Measure Hole(Assembly assembly, SaddleSite site)
    {
        var bracket = site.Bracket;
        var (distance, limit) = (ToBend(site) + (site.Allowance / 2), (HoleShare * bracket.Thickness) + bracket.InsideRadius);
        return Warning(
            assembly,
            bracket,
            FindingCodes.HoleNearBend,
            () => $"a bolt hole of '{bracket.Name}' comes within {NoteText.Length(distance)} mm of a bend line, and will be drawn out of "
            + "round "
            + $"below {NoteText.Length(limit)} mm (two thicknesses and the inside radius): bring the bolts together, widen the bracket, "
            + "or drill after bending.",
            [new("hole to bend line", distance, AtLeast(limit), "mm")],
            "bolts",
            $"bolt hole to bend line of '{bracket.Name}'");
    }

    private static Measure Washer(Assembly assembly, SaddleSite site)
    {
        var (bracket, bolts) = (site.Bracket, site.Bracket.Bolts);
        var distance = ToBend(site) - ((bolts.WasherDiameter - bolts.HoleDiameter) / 2);
        var limit = BoltHole.WasherShare * bracket.Thickness;
        return Warning(
            assembly,
            bracket,
            FindingCodes.WasherNearBend,
            () => $"a washer of {NoteText.Length(bolts.WasherDiameter)} mm on '{bracket.Name}' "
            + (distance < 0 ? $"lies {NoteText.Length(-distance)} mm on a bend" : $"comes within {NoteText.Length(distance)} mm of a bend")
            + $"; keep {NoteText.Length(limit)} mm of flat beside it: bring the bolts together, or widen the bracket.",
            [new("washer to bend", distance, AtLeast(limit), "mm")],
            "bolts",
            $"washer to bend of '{bracket.Name}'");
    }

    /// <summary>Distance from the edge of the outermost hole to where the nearest bend begins, mm.</summary>
    private static double ToBend(SaddleSite site)
    {
        var bolts = site.Bracket.Bolts;
        var reach = site.AtSides ? bolts.Across / 2 : (bolts.Up + bolts.Slot) / 2;
        return (site.Straight / 2) - reach - (bolts.HoleDiameter / 2);
    }

    private static Measure Gap(Assembly assembly, SaddleSite site, WeldFigures weld)
    {
        var bracket = site.Bracket;
        var shop = assembly.Design.Shop.Welding;
        return Warning(
            assembly,
            bracket,
            FindingCodes.EarGapTooWide,
            () => $"cut square, the ears of '{bracket.Name}' touch the shell along their inner edges and stand off by "
            + $"{NoteText.Length(weld.GapNormal)} mm "
            + $"outside, where they are welded ({NoteText.Length(weld.GapAxial)} mm along the ear); "
            + $"{RootGap.Limits(bracket.Thickness, shop, NoteText.Length, "mm")}: "
            + "grind the ends to the shell after bending, make the bracket narrower, or take ears: ends, "
            + "which follow the shell.",
            [new("gap normal", weld.GapNormal, AtMost(RootGap.Aim(bracket.Thickness, shop), RootGap.Most(bracket.Thickness, shop)), "mm"),
                new("gap axial", weld.GapAxial, null, "mm")],
            "ears",
            $"gap at the ears of '{bracket.Name}'");
    }

    private static Measure Groove(Assembly assembly, SaddleSite site, WeldFigures weld)
    {
        var bracket = site.Bracket;
        var greatest = 2 * site.ShellRadius * Math.Sin(FilletThroat.GreatestAngle - (Math.PI / 2));
        return Warning(
            assembly,
            bracket,
            FindingCodes.EarTooFlat,
            () => $"the ears of '{bracket.Name}' meet the shell at {NoteText.Degrees(weld.Dihedral.End)} deg outside, too flat for a "
            + "fillet "
            + $"({NoteText.Degrees(FilletThroat.GreatestAngle)} deg): make the bracket no wider than {NoteText.Length(greatest)} mm, "
            + "bevel the ears' ends, or take ears: ends.",
            [new("dihedral", Turns.ToDegrees(weld.Dihedral.End), AtMost(Turns.ToDegrees(FilletThroat.GreatestAngle)), "deg")],
            "width",
            $"widest angle at the ears of '{bracket.Name}'");
    }

    /// <summary>Welds that cross or crowd the long seam: it must lie clear of where the ears stand by a fillet's leg.</summary>
    private static Measure Seam(Assembly assembly, SaddleSite site, WeldFigures weld)
    {
        var bracket = site.Bracket;
        var shell = assembly.Design.Shell.At(bracket.Height);
        var (stands, clear) = (site.Covered, weld.Leg.End + (shell.Course.RootGap / 2));
        var (under, off) = shell.Seams.Angles.Select(seam => (seam, Off(Math.Abs(Turns.Signed(seam - bracket.Angle)))))
            .MinBy(one => one.Item2);
        return Warning(
            assembly,
            bracket,
            FindingCodes.SeamUnderBracket,
            () => $"the shell's long seam at {NoteText.Degrees(Turns.From(under, 0))} deg runs under the ears of '{bracket.Name}' "
            + $"({NoteText.Degrees(bracket.Angle - stands.End)} to {NoteText.Degrees(bracket.Angle + stands.End)} deg): turn the seam "
            + $"more than {NoteText.Degrees(stands.End + (clear / shell.OuterRadius))} deg away from the bracket's middle.",
            [new("seam to ears", shell.OuterRadius * off, AtLeast(clear), "mm")],
            "at.angle",
            $"long seam to the ears of '{bracket.Name}'") with
        {
            Place = assembly.Design.PlaceOf(assembly.Design.Shell.CourseAt(bracket.Height).SeamPath),
        };

        // Beyond an ear, or between the two; negative under one.
        double Off(double angle) => Math.Max(angle - stands.End, stands.Start - angle);
    }

    private static Measure Warning(
        Assembly assembly, SaddleDesign bracket, string code, Func<string> words, Measured[] figures, string key, string of) => new(
        code, Severity.Warning, [Slug.Of(bracket.Name)], words, [.. figures], assembly.Design.PlaceOf($"{bracket.Path}.{key}"), of);
}
