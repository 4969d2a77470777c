using Vessel.Design;
using Vessel.Findings;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Stock;
using static Vessel.Model.Allowed;

namespace Vessel.Heads.Dishes;

/// <summary>Heads of gores: whether they can be formed, and where their seams run.</summary>
internal static class GoreRules
{
    /// <summary>Edges of a butt weld may stand apart by this share of the wall. Common practice, no source.</summary>
    private const double MismatchShare = 0.5;

    /// <summary>Between a port and the polar cap's seam, in walls. Common practice, no source.</summary>
    private const double PortWalls = 2;

    /// <summary>Places round a port at which its distance from a seam is taken.</summary>
    private const int Samples = 120;

    public static IEnumerable<Measure> Of(VesselEnd end, GoreShape shape, VesselDesign design, IEnumerable<PortSite> sites)
    {
        yield return Bent(end, shape, design);
        if (Ductility.Elongation(shape.Design.Material) is { } elongation)
            yield return Stretch(end, shape, elongation, design);
        if (design.Shell.CourseOf(end).IsRolled)
            yield return Crossing(end, shape, design);
        foreach (var site in sites.Where(site => site.Port.End == end))
            yield return Near(end, site, shape, design);
    }

    private static Measure Bent(VesselEnd end, GoreShape shape, VesselDesign design)
    {
        var limit = MismatchShare * shape.Design.Wall;
        return new(
            FindingCodes.GoresNeedDishing,
            Severity.Warning,
            [Names.RimPart(end, design)],
            () => $"{shape.Gores.Count} gores of the {Names.Of(end)} that are only bent lie up to {NoteText.Length(shape.Flat.FlatInside)} "
            + "mm inside "
            + $"the {(shape.Design.IsSphere ? "sphere" : "dish")} and {NoteText.Length(shape.Flat.FlatOutside)} mm outside it, where a "
            + $"butt weld takes {NoteText.Length(limit)} mm: "
            + $"dish them (the middle stretches by {NoteText.Percent(shape.Flat.Stretch)} %), use more gores, or spin the {Whole(shape)}.",
            [
                new("middle inside", shape.Flat.FlatInside, AtMost(limit), "mm"),
                new("sides outside", shape.Flat.FlatOutside, null, "mm"),
                new("radial error", shape.Flat.RadialError, null, string.Empty),
            ],
            design.PlaceOf($"{shape.Gores.Path}.count"),
            $"gores of the {Names.Of(end)}, if only bent, inside its shape");
    }

    private static Measure Stretch(VesselEnd end, GoreShape shape, Datum elongation, VesselDesign design) => new(
        FindingCodes.GoreStretch,
        Severity.Warning,
        [Names.RimPart(end, design)],
        () => $"dishing {shape.Gores.Count} gores stretches their middle by {NoteText.Percent(shape.Flat.Stretch)} %, more than half of "
            + "the stretch that "
            + $"{shape.Design.Material.Name} has before it tears ({NoteText.Percent(elongation.Value)} %; {elongation.Source}): "
            + $"use more gores or a softer temper, or spin the {Whole(shape)}.",
        [new("stretch", shape.Flat.Stretch, AtMost(Ductility.FormingShare * elongation.Value), string.Empty)],
        design.PlaceOf($"{shape.Gores.Path}.count"),
        $"stretch in dishing the gores of the {Names.Of(end)}");

    private static Measure Crossing(VesselEnd end, GoreShape shape, VesselDesign design)
    {
        var shell = design.Shell.AtEnd(end);
        var apart = shape.OuterRadius * shape.Gores.Seams.Apart(shell.Seams);
        var clear = shell.Seams.Between(shape.Gores.Count) % shape.Gores.Seams.Pitch;
        var remedy = shape.OuterRadius * new SheetSeams(clear, shape.Gores.Count).Apart(shell.Seams) >= ShellRules.SeamsApart
            ? $"turn the gores, 'seam_angle: {NoteText.Degrees(clear)}' keeps clear of it"
            : "so many gores leave no room for it: use fewer";
        return new(
            FindingCodes.SeamsMeet,
            Severity.Warning,
            [.. Names.ShellParts(end, design), Names.RimPart(end, design)],
            () => $"a seam between gores of the {Names.Of(end)} reaches the round seam {NoteText.Length(apart)} mm from "
            + $"{(shell.Seams.Count > 1 ? "a long seam of the shell" : "the shell's long seam")}, "
            + $"nearer than {NoteText.Length(ShellRules.SeamsApart)} mm: {remedy}.",
            [new("apart", apart, AtLeast(ShellRules.SeamsApart), "mm")],
            design.PlaceOf($"{shape.Gores.Path}.seam_angle"),
            $"between the long seams of the shell and of the gores of the {Names.Of(end)}");
    }

    private static string Whole(GoreShape shape) => shape.Design.IsSphere ? "half sphere" : "head";

    /// <summary>Measured along the outside, from the cap's side or from a gore's.</summary>
    private static Measure Near(VesselEnd end, PortSite site, GoreShape shape, VesselDesign design)
    {
        var (port, outer, isInCap) = (site.Port, shape.Head.Outer, GorePorts.IsInCap(site.Port, design));
        var wide = Math.Max(port.OuterRadius, site.OpeningRadius);
        var places = Enumerable.Range(0, Samples)
            .Select(i => shape.Head.Frame.ToLocal(site.Frame.ToOuter(site.Outside.At(wide, Turns.Full * i / Samples))))
            .Select(at => outer.NearestTo(at).Along).ToList();
        var covered = isInCap ? places.Max() : places.Min();
        var (apart, limit) = (isInCap ? shape.CapReachOutside - covered : covered - shape.CapReachOutside, PortWalls * shape.Head.Wall);
        var width = 2 * shape.Middle.Nearest(outer.At(Math.Max(0, isInCap ? covered + limit : covered - limit))).At.U;
        return new(
            FindingCodes.PortNearCapSeam,
            Severity.Warning,
            [Names.PortPart(port, design), Slug.Of(port.Name)],
            () => $"'{port.Name}' stands {NoteText.Length(apart)} mm from the seam of the {GoreDesign.CapOf(Names.Of(end))}, nearer than "
            + "two walls "
            + $"({NoteText.Length(limit)} mm): make the polar cap at {(isInCap ? "least" : "most")} "
            + $"{NoteText.Length(isInCap ? Math.Ceiling(width) : Math.Floor(width))} mm wide (gores.cap_diameter).",
            [new("apart", apart, AtLeast(limit), "mm")],
            design.PlaceOf($"{shape.Gores.Path}.cap_diameter"),
            $"'{port.Name}' to the seam of the {GoreDesign.CapOf(Names.Of(end))}");
    }
}
