using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Findings;

/// <summary>How a saddle bends, bolts and fits the shell.</summary>
internal static class SaddleRules
{
    /// <summary>A washer stays so many thicknesses off a bend. Common practice, no source.</summary>
    internal const double WasherShare = 1;

    /// <summary>A hole nearer to a bend line than so many thicknesses and the radius is drawn out. Common practice, no source.</summary>
    private const double HoleShare = 2;

    public static IEnumerable<Finding> Of(Assembly assembly) =>
        assembly.Design.Brackets.OfType<SaddleBracket>().SelectMany(bracket => Of(bracket, assembly));

    private static IEnumerable<Finding> Of(SaddleBracket bracket, Assembly assembly)
    {
        var site = SaddleSite.Of(bracket, assembly.Design);
        var weld = assembly.Welds.First(w => w.Joint.Owner == bracket.Path);
        Finding?[] all =
        [
            Radius(assembly, bracket),
            Hole(assembly, site),
            Washer(assembly, site),
            Gap(assembly, site, weld),
            Groove(assembly, site, weld),
            Seam(assembly, site, weld),
        ];
        return all.OfType<Finding>();
    }

    private static Finding? Radius(Assembly assembly, SaddleBracket bracket)
    {
        var least = BendRadii.Least(bracket.Material, bracket.Thickness);
        if (bracket.InsideRadius >= least.Value)
            return null;
        return Warning(
            assembly,
            bracket,
            FindingCodes.BendTooTight,
            $"'{bracket.Name}' is bent to {NoteText.Length(bracket.InsideRadius)} mm inside; {bracket.Material.Name} of "
            + $"{NoteText.Length(bracket.Thickness)} mm may crack below {NoteText.Length(least.Value)} mm ({least.Source}): "
            + "give a larger inside_radius, bend across the grain, or take a softer temper.",
            [new("inside radius", bracket.InsideRadius, least.Value, "mm")],
            "inside_radius");
    }

    private static Finding? Hole(Assembly assembly, SaddleSite site)
    {
        var bracket = site.Bracket;
        var (distance, limit) = (ToBend(site) + (site.Allowance / 2), (HoleShare * bracket.Thickness) + bracket.InsideRadius);
        if (distance >= limit)
            return null;
        return Warning(
            assembly,
            bracket,
            FindingCodes.HoleNearBend,
            $"a bolt hole of '{bracket.Name}' comes within {NoteText.Length(distance)} mm of a bend line, and will be drawn out of round "
            + $"below {NoteText.Length(limit)} mm (two thicknesses and the inside radius): bring the bolts together, widen the bracket, "
            + "or drill after bending.",
            [new("hole to bend line", distance, limit, "mm")],
            "bolts");
    }

    private static Finding? Washer(Assembly assembly, SaddleSite site)
    {
        var (bracket, bolts) = (site.Bracket, site.Bracket.Bolts);
        var distance = ToBend(site) - ((bolts.WasherDiameter - bolts.HoleDiameter) / 2);
        var limit = WasherShare * bracket.Thickness;
        if (distance >= limit)
            return null;
        return Warning(
            assembly,
            bracket,
            FindingCodes.WasherNearBend,
            $"a washer of {NoteText.Length(bolts.WasherDiameter)} mm on '{bracket.Name}' "
            + (distance < 0 ? $"lies {NoteText.Length(-distance)} mm on a bend" : $"comes within {NoteText.Length(distance)} mm of a bend")
            + $"; keep {NoteText.Length(limit)} mm of flat beside it: bring the bolts together, or widen the bracket.",
            [new("washer to bend", distance, limit, "mm")],
            "bolts");
    }

    /// <summary>From the edge of the outermost hole to where the nearest bend begins, mm.</summary>
    private static double ToBend(SaddleSite site)
    {
        var bolts = site.Bracket.Bolts;
        var reach = site.AtSides ? bolts.Across / 2 : (bolts.Up + bolts.Slot) / 2;
        return (site.Straight / 2) - reach - (bolts.HoleDiameter / 2);
    }

    private static Finding? Gap(Assembly assembly, SaddleSite site, WeldFigures weld)
    {
        var bracket = site.Bracket;
        var shop = assembly.Design.Shop.Welding;
        var (aim, most) = (RootGap.Aim(bracket.Thickness, shop), RootGap.Most(bracket.Thickness, shop));
        if (weld.GapNormal <= aim)
            return null;
        var grave = weld.GapNormal > most;
        return Warning(
            assembly,
            bracket,
            FindingCodes.EarGapTooWide,
            $"cut square, the ears of '{bracket.Name}' touch the shell along their inner edges and stand off by {NoteText.Length(weld.GapNormal)} mm "
            + $"outside, where they are welded ({NoteText.Length(weld.GapAxial)} mm along the ear); {RootGap.Limits(bracket.Thickness, shop, NoteText.Length, "mm")}: "
            + "grind the ends to the shell after bending, make the bracket narrower, or take ears: ends, "
            + "which follow the shell.",
            [new("gap normal", weld.GapNormal, grave ? most : aim, "mm"), new("gap axial", weld.GapAxial, null, "mm")],
            "ears") with
        {
            Severity = grave ? Severity.Error : Severity.Warning,
        };
    }

    private static Finding? Groove(Assembly assembly, SaddleSite site, WeldFigures weld)
    {
        var bracket = site.Bracket;
        if (weld.GrooveShare == 0)
            return null;
        var greatest = 2 * site.ShellRadius * Math.Sin(FilletThroat.GreatestAngle - (Math.PI / 2));
        return Warning(
            assembly,
            bracket,
            FindingCodes.EarTooFlat,
            $"the ears of '{bracket.Name}' meet the shell at {NoteText.Degrees(weld.Dihedral.End)} deg outside, too flat for a fillet "
            + $"({NoteText.Degrees(FilletThroat.GreatestAngle)} deg): make the bracket no wider than {NoteText.Length(greatest)} mm, "
            + "bevel the ears' ends, or take ears: ends.",
            [new("dihedral", Turns.ToDegrees(weld.Dihedral.End), Turns.ToDegrees(FilletThroat.GreatestAngle), "deg")],
            "width");
    }

    /// <summary>Welds that cross or crowd the long seam: it must lie clear of where the ears stand by a fillet's leg.</summary>
    private static Finding? Seam(Assembly assembly, SaddleSite site, WeldFigures weld)
    {
        var bracket = site.Bracket;
        var shell = assembly.Design.Shell.At(bracket.Height);
        if (shell.MadeFrom != StockForm.Sheet)
            return null;
        var margin = (weld.Leg.End + (shell.RootGap / 2)) / shell.OuterRadius;
        var (from, to) = (site.AtSides ? Math.Asin(((bracket.Width / 2) - bracket.Thickness) / shell.OuterRadius) : 0, site.HalfAngle);
        double Off(double seam) => Math.Abs(Turns.Signed(seam - bracket.Angle));
        if (shell.Seams.Angles.Select(seam => (double?)seam).FirstOrDefault(seam => Off(seam!.Value) <= to + margin && !(site.AtSides && Off(seam.Value) < from - margin)) is not { } under)
            return null;
        return Warning(
            assembly,
            bracket,
            FindingCodes.SeamUnderBracket,
            $"the shell's long seam at {NoteText.Degrees(Turns.From(under, 0))} deg runs under the ears of '{bracket.Name}' "
            + $"({NoteText.Degrees(bracket.Angle - to)} to {NoteText.Degrees(bracket.Angle + to)} deg): turn the seam "
            + $"more than {NoteText.Degrees(to + margin)} deg away from the bracket's middle.",
            [new("seam from the bracket's middle", Turns.ToDegrees(Off(under)), Turns.ToDegrees(to + margin), "deg")],
            "at.angle") with
        {
            Place = assembly.Design.PlaceOf(assembly.Design.Shell.CourseAt(bracket.Height).SeamPath),
        };
    }

    private static Finding Warning(
        Assembly assembly, SaddleBracket bracket, string code, string message, FindingFigure[] figures, string key) => new(
        code, Severity.Warning, [Slug.Of(bracket.Name)], message, [.. figures], assembly.Design.PlaceOf($"{bracket.Path}.{key}"));
}
