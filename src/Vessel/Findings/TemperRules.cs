using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Findings;

/// <summary>Sheet that is sold too hard to be spun or dished.</summary>
internal static class TemperRules
{
    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        var design = assembly.Design;
        foreach (var end in new[] { PortHost.Top, PortHost.Bottom })
        {
            if (design.Head(end) is not DishedHead dome || !Ductility.IsHard(dome.Material))
                continue;
            var isSpun = dome.Gores is null;
            yield return new(
                FindingCodes.TemperTooHard,
                Severity.Warning,
                isSpun ? [Names.Of(end)] : [Names.RimPart(end, design), Names.PortPart(end, design)],
                () => $"{dome.Material.Name} is too hard for {(isSpun ? "spinning" : "dishing")} the {Names.Of(end)}: it "
                + "springs back and tears; use annealed sheet (temper O), or anneal it first.",
                [],
                design.PlaceOf($"{dome.Path}.material"));
        }
    }
}
