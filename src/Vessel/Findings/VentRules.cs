using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;

namespace Vessel.Findings;

/// <summary>Whether the vessel breathes.</summary>
internal static class VentRules
{
    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        var open = assembly.Cavity.OpenPorts.ToList();
        if (open.Count == 0)
        {
            yield return new(
                FindingCodes.NoOpenPort,
                Severity.Error,
                [],
                () => "no port is open to the air: a closed volume that is heated builds pressure (20 to 600 degC triples it) and the "
                + "vessel is not one for pressure; add a vent.",
                [],
                assembly.Design.PlaceOf("ports"));
        }
        else if (open.TrueForAll(port => port.Purpose == PortPurpose.Overflow))
        {
            yield return new(
                FindingCodes.OverflowIsVent,
                Severity.Warning,
                [.. open.Select(port => Slug.Of(port.Name))],
                () => $"only the overflow '{open[0].Name}' lets air in and out: {assembly.Design.Flow.Liquid.Word} that stands in it shuts the "
                + "vessel; add a vent above it.",
                [],
                assembly.Design.PlaceOf($"{open[0].Path}.purpose"));
        }
    }
}
