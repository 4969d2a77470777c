using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Findings;

/// <summary>Discs and packing: what keeps them where they are, and what they touch.</summary>
internal static class DiscRules
{
    private static readonly ImmutableArray<string> _copper = ["copper", "brass", "bronze"];

    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        var design = assembly.Design;
        foreach (var disc in design.Inside.Discs)
        {
            if (disc.Fixed == Fixing.Loose)
                yield return Loose(disc, design);
            if (Touching(disc.Name, InternalHost.Name(disc.Fits), disc.Material.Family, InternalHost.Material(disc.Fits, design).Family) is { } unlike)
                yield return unlike with { Parts = [Slug.Of(disc.Name), .. InternalHost.Ids(disc, design)], Place = design.PlaceOf($"{disc.Path}.material") };
        }

        foreach (var packing in design.Inside.Packings)
        {
            if (packing.Lower is null || packing.Upper is null)
                yield return Unscreened(packing, design);
            foreach (var finding in TouchedBy(packing, design))
                yield return finding;
        }
    }

    private static Measure Loose(DiscDesign disc, VesselDesign design) => new(
        FindingCodes.LooseDisc,
        Severity.Note,
        [Slug.Of(disc.Name)],
        () => $"'{disc.Name}' lies loose: it rattles and can turn over; fix it (fixed: weld, tabs, screws or press) unless something else holds it.",
        [],
        design.PlaceOf($"{disc.Path}.fixed"));

    private static Measure Unscreened(PackingDesign packing, VesselDesign design)
    {
        var open = packing switch
        {
            { Lower: null, Upper: null } => "below or above",
            { Lower: null } => "below",
            _ => "above",
        };
        return new(
            FindingCodes.PackingWithoutScreen,
            Severity.Warning,
            [],
            () => $"'{packing.Name}' has no screen {open}: loose media can leave the vessel with gas or oil and reach the engine; "
            + "put it between two discs.",
            [],
            design.PlaceOf(packing.Path));
    }

    /// <summary>The packing lies on its discs and against the bore that they fit.</summary>
    private static IEnumerable<Measure> TouchedBy(PackingDesign packing, VesselDesign design)
    {
        if (packing.Family is null && !IsCopper(packing.Material))
            yield break;
        var discs = design.Inside.Discs.Where(disc => disc.Name == packing.Lower || disc.Name == packing.Upper).ToList();
        var touched = discs
            .Select(disc => (Name: disc.Name, Ids: ImmutableArray.Create(Slug.Of(disc.Name)), disc.Material.Family))
            .Concat(discs.Select(disc => (
                Name: InternalHost.Name(disc.Fits), Ids: InternalHost.Ids(disc, design), InternalHost.Material(disc.Fits, design).Family)))
            .DistinctBy(other => other.Ids[0]);
        foreach (var (name, ids, family) in touched)
        {
            if (Touching(packing.Name, name, packing.Family, family) is { } unlike)
                yield return unlike with { Parts = ids, Place = design.PlaceOf($"{packing.Path}.material") };
        }
    }

    /// <summary>Copper and its alloys are no stock of ours, but wool is made of them.</summary>
    private static bool IsCopper(string material) => _copper.Any(name => material.Contains(name, StringComparison.OrdinalIgnoreCase));

    private static Measure? Touching(string a, string b, MaterialFamily? first, MaterialFamily? second) =>
        MetalPairs.Of(first, second) is { } severity
            ? new(
                FindingCodes.UnlikeMetals,
                severity,
                [],
                () => $"{a} ({NameOf(first)}) touches {b} ({NameOf(second)}) where oil and water stand: the less noble metal corrodes; "
                + "choose one metal for both.",
                [],
                null)
            : null;

    private static string NameOf(MaterialFamily? family) => family switch
    {
        MaterialFamily.Aluminium => "aluminium",
        MaterialFamily.Stainless => "stainless",
        MaterialFamily.MildSteel => "mild steel",
        _ => "copper or its alloy",
    };
}
