using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Members.Inside;
using Vessel.Parts;

namespace Vessel.Members.Packings;

/// <summary>What keeps a packing where it is, and what it touches.</summary>
internal static class PackingRules
{
    private static readonly ImmutableArray<string> _copper = ["copper", "brass", "bronze"];

    public static IEnumerable<Measure> Of(PackingDesign packing, VesselDesign design)
    {
        if (packing.Lower is null || packing.Upper is null)
            yield return Unscreened(packing, design);
        foreach (var measure in TouchedBy(packing, design))
            yield return measure;
    }

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
        var discs = design.All<DividerSpec>().Where(disc => disc.Name == packing.Lower || disc.Name == packing.Upper).ToList();
        var touched = discs
            .Select(disc => (Name: disc.Name, Ids: ImmutableArray.Create(Slug.Of(disc.Name)), disc.Material.Family))
            .Concat(discs.Select(disc => (
                Name: InternalHost.Name(disc.Fits), Ids: InternalHost.Ids(disc, design), InternalHost.Material(disc.Fits, design).Family)))
            .DistinctBy(other => other.Ids[0]);
        foreach (var (name, ids, family) in touched)
        {
            if (TouchRules.Of(packing.Name, name, packing.Family, family) is { } unlike)
                yield return unlike with { Parts = ids, Place = design.PlaceOf($"{packing.Path}.material") };
        }
    }

    /// <summary>Copper and its alloys are no stock of ours, but wool is made of them.</summary>
    private static bool IsCopper(string material) => _copper.Any(name => material.Contains(name, StringComparison.OrdinalIgnoreCase));
}
