using Vessel.Design;
using Vessel.Findings;
using Vessel.Parts;

namespace Vessel.Members.Inside;

/// <summary>What keeps a level plate where it is, and what it touches.</summary>
internal static class DividerRules
{
    public static IEnumerable<Measure> Of(DividerSpec disc, VesselDesign design)
    {
        if (disc.Fixed == Fixing.Loose)
            yield return Loose(disc, design);
        if (TouchRules.Of(disc.Name, InternalHost.Name(disc.Fits), disc.Material.Family,
            InternalHost.Material(disc.Fits, design).Family) is { } unlike)
            yield return unlike with
            {
                Parts = [Slug.Of(disc.Name), .. InternalHost.Ids(disc, design)],
                Place = design.PlaceOf($"{disc.Path}.material")
            };
    }

    private static Measure Loose(DividerSpec disc, VesselDesign design) => new(
        FindingCodes.LooseDisc,
        Severity.Note,
        [Slug.Of(disc.Name)],
        () => $"'{disc.Name}' lies loose: it rattles and can turn over; fix it (fixed: weld, tabs, screws or press) unless something else "
            + "holds it.",
        [],
        design.PlaceOf($"{disc.Path}.fixed"));
}
