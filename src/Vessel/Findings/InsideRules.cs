using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;

namespace Vessel.Findings;

/// <summary>What the internals do to gas.</summary>
internal static class InsideRules
{
    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        if (Blocked(assembly) is { } blocked)
            yield return blocked;
    }

    private static Measure? Blocked(Assembly assembly)
    {
        var path = GasPath.At(assembly.Attitude, double.NegativeInfinity);
        if (path.OpenPorts.Count(port => !port.IsStandpipe) < 2 || path.ConnectedPairs > 0)
            return null;
        var ports = string.Join(" and ", path.OpenPorts.Select(port => port.Name));
        return new(
            FindingCodes.GasPathBlocked,
            Severity.Error,
            [.. path.OpenPorts.Select(port => Slug.Of(port.Name))],
            () => $"gas has no way between {ports}: give the cap windows, or leave the sleeve's rim free.",
            [],
            assembly.Design.PlaceOf("inside"));
    }
}
