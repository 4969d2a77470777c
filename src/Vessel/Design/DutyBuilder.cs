using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Fills what the vessel has to bear from its sections; by the same rule as the whole design for values at fault.</summary>
internal static class DutyBuilder
{
    public static MountingDesign Mounting(Section section, bool hasEngine) => MountingDesign.Of(
        section.Path, Given(section, "acceleration"), section.Text("duty") is { } duty ? MountDuties.Of(duty) : null, hasEngine);

    public static LeakTestDesign LeakTest(Section section) => new(
        section.Path,
        section.Number("pressure"),
        section.Number("suction"),
        section.Text("with") == "air" ? TestMedium.Air : TestMedium.Water);

    public static DrainDesign DrainBack(Section section) => new(
        section.Path, Given(section, "head"), Given(section, "bore"), Given(section, "length"), Given(section, "depression"));

    private static double? Given(Section section, string key) => section.Has(key) ? section.Number(key) : null;
}
