using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Stock;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>Heads of gores: whether they can be formed, and where their seams run.</summary>
internal static class GoreRules
{
    /// <summary>Edges of a butt weld may stand apart by this share of the wall. Common practice, no source.</summary>
    private const double MismatchShare = 0.5;

    /// <summary>Between a port and the polar cap's seam, in walls. Common practice, no source.</summary>
    private const double PortWalls = 2;

    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        var design = assembly.Design;
        foreach (var end in new[] { PortHost.Top, PortHost.Bottom })
        {
            if (GoreShape.Of(end, design) is not { } shape)
                continue;
            if (Bent(end, shape, design) is { } bent)
                yield return bent;
            if (Stretch(end, shape, design) is { } stretch)
                yield return stretch;
            if (Crossing(end, shape, design) is { } crossing)
                yield return crossing;
            foreach (var port in assembly.Sites.Select(site => site.Port).Where(port => port.Host == end))
            {
                if (Near(end, port, shape, design) is { } near)
                    yield return near;
            }
        }
    }

    private static Measure? Bent(PortHost end, GoreShape shape, VesselDesign design)
    {
        var limit = MismatchShare * shape.Design.Wall;
        if (shape.Flat.FlatInside <= limit)
            return null;
        return new(
            FindingCodes.GoresNeedDishing,
            Severity.Warning,
            [Names.RimPart(end, design)],
            () => $"{shape.Gores.Count} gores of the {Names.Of(end)} that are only bent lie up to {NoteText.Length(shape.Flat.FlatInside)} mm inside "
            + $"the {(shape.Design is HemisphereHead ? "sphere" : "dish")} and {NoteText.Length(shape.Flat.FlatOutside)} mm outside it, where a butt weld takes {NoteText.Length(limit)} mm: "
            + $"dish them (the middle stretches by {NoteText.Percent(shape.Flat.Stretch)} %), use more gores, or spin the {Whole(shape)}.",
            [
                new("middle inside", shape.Flat.FlatInside, AtMost(limit), "mm"),
                new("sides outside", shape.Flat.FlatOutside, null, "mm"),
                new("radial error", shape.Flat.RadialError, null, string.Empty),
            ],
            design.PlaceOf($"{shape.Gores.Path}.count"));
    }

    private static Measure? Stretch(PortHost end, GoreShape shape, VesselDesign design)
    {
        if (Ductility.Elongation(shape.Design.Material) is not { } elongation)
            return null;
        var limit = Ductility.FormingShare * elongation.Value;
        if (shape.Flat.Stretch <= limit)
            return null;
        return new(
            FindingCodes.GoreStretch,
            Severity.Warning,
            [Names.RimPart(end, design)],
            () => $"dishing {shape.Gores.Count} gores stretches their middle by {NoteText.Percent(shape.Flat.Stretch)} %, more than half of the stretch that "
            + $"{shape.Design.Material.Name} has before it tears ({NoteText.Percent(elongation.Value)} %; {elongation.Source}): "
            + $"use more gores or a softer temper, or spin the {Whole(shape)}.",
            [new("stretch", shape.Flat.Stretch, AtMost(limit), string.Empty)],
            design.PlaceOf($"{shape.Gores.Path}.count"));
    }

    private static Measure? Crossing(PortHost end, GoreShape shape, VesselDesign design)
    {
        var shell = design.Shell.AtEnd(end);
        if (shell.MadeFrom != StockForm.Sheet)
            return null;
        var apart = shape.OuterRadius * shape.Gores.Seams.Apart(shell.Seams);
        if (apart >= HeadRules.SeamsApart)
            return null;
        var clear = shell.Seams.Between(shape.Gores.Count) % shape.Gores.Seams.Pitch;
        var remedy = shape.OuterRadius * new SheetSeams(clear, shape.Gores.Count).Apart(shell.Seams) >= HeadRules.SeamsApart
            ? $"turn the gores, 'seam_angle: {NoteText.Degrees(clear)}' keeps clear of it"
            : "so many gores leave no room for it: use fewer";
        return new(
            FindingCodes.SeamsMeet,
            Severity.Warning,
            [.. Names.ShellParts(end, design), Names.RimPart(end, design)],
            () => $"a seam between gores of the {Names.Of(end)} reaches the round seam {NoteText.Length(apart)} mm from {(shell.Sheets > 1 ? "a long seam of the shell" : "the shell's long seam")}, "
            + $"nearer than {NoteText.Length(HeadRules.SeamsApart)} mm: {remedy}.",
            [new("apart", apart, AtLeast(HeadRules.SeamsApart), "mm")],
            design.PlaceOf($"{shape.Gores.Path}.seam_angle"));
    }

    private static string Whole(GoreShape shape) => shape.Design is HemisphereHead ? "half sphere" : "head";

    /// <summary>Measured along the outside, from the cap's side or from a gore's.</summary>
    private static Measure? Near(PortHost end, PortDesign port, GoreShape shape, VesselDesign design)
    {
        var (outer, isInCap) = (shape.Head.Outer, GorePorts.IsInCap(port, design));
        var footing = HeadFooting.Of(shape.Head, port)!;
        var places = footing.Round(footing.Outside, Math.Max(port.OuterRadius, ShellHole.HoleRadius(port)))
            .Select(at => outer.Nearest(new(double.Hypot(at.X, at.Y), at.Z)).Along).ToList();
        var covered = isInCap ? places.Max() : places.Min();
        var (apart, limit) = (isInCap ? shape.CapReachOutside - covered : covered - shape.CapReachOutside, PortWalls * shape.Head.Wall);
        if (apart >= limit)
            return null;
        var width = 2 * shape.Middle.Nearest(outer.At(Math.Max(0, isInCap ? covered + limit : covered - limit))).At.U;
        return new(
            FindingCodes.PortNearCapSeam,
            Severity.Warning,
            [Names.PortPart(port, design), Slug.Of(port.Name)],
            () => $"'{port.Name}' stands {NoteText.Length(apart)} mm from the seam of the {Names.PolarCap(end)}, nearer than two walls "
            + $"({NoteText.Length(limit)} mm): make the polar cap at {(isInCap ? "least" : "most")} "
            + $"{NoteText.Length(isInCap ? Math.Ceiling(width) : Math.Floor(width))} mm wide (gores.cap_diameter).",
            [new("apart", apart, AtLeast(limit), "mm")],
            design.PlaceOf($"{shape.Gores.Path}.cap_diameter"));
    }
}
