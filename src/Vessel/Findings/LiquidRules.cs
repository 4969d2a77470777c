using Vessel.Function;
using Vessel.Stock;

namespace Vessel.Findings;

/// <summary>Whether the metals bear the liquid.</summary>
internal static class LiquidRules
{
    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        var flow = assembly.Design.Flow;
        if (!flow.IsLiquidGiven)
            yield break;
        foreach (var metal in assembly.Parts.GroupBy(part => part.Material))
        {
            if (LiquidMetals.Of(flow.Liquid.Kind, metal.Key) is not var (grave, words))
                continue;
            yield return new(
                FindingCodes.LiquidOnMetal,
                grave ? Severity.Warning : Severity.Note,
                [.. metal.Select(part => part.Id).Distinct()],
                () => $"{metal.Key.Name} {words}.",
                [],
                assembly.Design.PlaceOf($"{flow.Path}.liquid"));
        }
    }
}
