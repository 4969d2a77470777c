using Vessel.Function;

namespace Vessel.Findings;

/// <summary>Whether the vessel breathes.</summary>
internal static class VentRules
{
    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        if (assembly.Cavity.OpenPorts.Any())
            yield break;
        yield return new(
            FindingCodes.NoOpenPort,
            Severity.Error,
            [],
            () => "no port is open to the air: a closed volume that is heated builds pressure (20 to 600 degC triples it) and the "
            + "vessel is not one for pressure; add a port with a tube.",
            [],
            assembly.Design.PlaceOf("ports"));
    }
}
