using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Findings;

/// <summary>How far a figure stands from the limit of its rule, whether or not the rule speaks.</summary>
/// <param name="Code">Of the finding that there is, or would be.</param>
/// <param name="Of">What it is a figure of, in words.</param>
/// <param name="IsMost">The limit is the most that may be; else the least.</param>
/// <param name="Unit">mm, deg, or empty for a plain number.</param>
public sealed record Margin(string Code, string Of, double Value, double Limit, string Unit, bool IsMost)
{
    public bool Holds => IsMost ? Value <= Limit : Value >= Limit;

    /// <summary>What is left to the limit, as a share of it; negative beyond; null where the limit is zero.</summary>
    public double? Free => Limit == 0 ? null : (IsMost ? Limit - Value : Value - Limit) / Limit;
}

/// <summary>The margins of those rules that compare one figure with one limit.</summary>
public static class Margins
{
    public static ImmutableArray<Margin> Of(Assembly assembly) =>
    [
        .. assembly.Sites.SelectMany(site => Port(site, assembly)),
        .. FitRules.Given(assembly).Select(weld => new Margin(
            FindingCodes.GapTooWide, $"gap of {weld.Joint.Number}, {weld.Joint.Name}", weld.GapNormal,
            RootGap.Aim(RootGap.WallOf(weld.Joint, assembly.Design), assembly.Design.Shop.Welding), "mm", true)),
        .. Rolls(assembly.Design),
        .. assembly.Parts.SelectMany(Holes),
        .. assembly.Design.Brackets.SelectMany(bracket => Bracket(bracket, assembly)),
        .. SlipFits.Of(assembly.Design, assembly.Sites).Where(fit => fit.Clearance >= 0).Select(fit =>
            new Margin(FindingCodes.FitUncertain, $"clearance left, {fit.Name}", fit.Likely, 0, "mm", false)),
    ];

    private static IEnumerable<Margin> Port(PortSite site, Assembly assembly)
    {
        var (port, weld) = (site.Port, Weld(site.Port.Path));
        var aim = RootGap.Aim(port.Wall, assembly.Design.Shop.Welding);
        if (port.Joint == PortJoint.SetOn)
            yield return new(FindingCodes.GapTooWide, $"gap at '{port.Name}'", weld.GapNormal, aim, "mm", true);
        if (port.Elbow is { } elbow)
            yield return new(FindingCodes.GapTooWide, $"gap at the mitres of '{port.Name}'", Weld(WeldNumbers.Mitre(elbow, 0)).GapNormal, aim, "mm", true);

        yield return new(
            FindingCodes.LipInBore, $"lip in the bore of '{port.Name}'", PortFit.Lip(site, assembly.Design), FitRules.LipWorthNaming, "mm", true);
        if (weld.Joint.Kind == JointKind.Fillet)
            yield return Angle(FindingCodes.GrooveAtFlank, $"widest angle at '{port.Name}'", weld);

        WeldFigures Weld(string path) => assembly.Welds.Single(weld => weld.Joint.Path == path);
    }

    private static IEnumerable<Margin> Rolls(VesselDesign design)
    {
        Margin Roll(string of, double ratio) => new(FindingCodes.TightRoll, of, ratio, ShellRules.MeanLineRatio, string.Empty, false);
        foreach (var end in new[] { PortHost.Top, PortHost.Bottom })
        {
            if (ShellRules.TipRatio(end, design) is { } ratio)
                yield return Roll($"inside radius over its wall at the tip of {Names.Of(end)}", ratio);
        }

        foreach (var course in design.Shell.Courses.Where(course => course.IsRolled))
            yield return Roll($"{course.Name}'s inside radius over its wall", ShellRules.RollRatio(course));
    }

    private static IEnumerable<Margin> Holes(Part part)
    {
        var least = CutterLimits.Aim * part.Thickness;
        var cut = part.Flat is { Kind: FlatKind.Sheet } ? part.Holes.Where(hole => hole.Outline is not null).ToList() : [];
        if (cut.Count > 0)
            yield return new(FindingCodes.HoleTooSmallToCut, $"smallest hole of {part.Name}", cut.Min(hole => hole.Diameter), least, "mm", false);
        foreach (var field in part.Fields)
        {
            yield return new(FindingCodes.HoleTooSmallToCut, $"holes, {field.Purpose}", field.Diameter, least, "mm", false);
            yield return new(FindingCodes.WebTooNarrow, $"between holes, {field.Purpose}", field.Lattice.Pitch - field.Diameter, least, "mm", false);
        }
    }

    private static IEnumerable<Margin> Bracket(BracketDesign bracket, Assembly assembly)
    {
        var weld = assembly.Welds.Where(weld => weld.Joint.Owner == bracket.Path).MaxBy(weld => weld.GapNormal)!;
        var edge = bracket is SaddleBracket ? "ears" : "edge";
        if (bracket is SaddleBracket saddle)
        {
            yield return new(
                FindingCodes.BendTooTight, $"inside radius of '{bracket.Name}'", saddle.InsideRadius,
                BendRadii.Least(bracket.Material, bracket.Thickness).Value, "mm", false);
        }

        yield return new(
            FindingCodes.EarGapTooWide, $"gap at the {edge} of '{bracket.Name}'", weld.GapNormal,
            RootGap.Aim(bracket.Thickness, assembly.Design.Shop.Welding), "mm", true);
        if (weld.Joint.Kind == JointKind.Fillet)
            yield return Angle(FindingCodes.EarTooFlat, $"widest angle at the {edge} of '{bracket.Name}'", weld);
    }

    private static Margin Angle(string code, string of, WeldFigures weld) =>
        new(code, of, Turns.ToDegrees(weld.Dihedral.End), Turns.ToDegrees(FilletThroat.GreatestAngle), "deg", true);
}
