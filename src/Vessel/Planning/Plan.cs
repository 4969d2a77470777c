using System.Collections.Immutable;

namespace Vessel.Planning;

/// <summary>The day's work: how each weld is laid, in what order, and what it takes. For one assembly in its shop.</summary>
/// <param name="Procedures">In the order of the welds' numbers.</param>
public sealed record Plan(Assembly Assembly, ImmutableArray<WeldProcedure> Procedures)
{
    public static Plan Of(Assembly assembly)
    {
        var parts = assembly.Parts.ToDictionary(part => part.Id);
        return new(
            assembly,
            [
                .. assembly.Welds.Select(weld => WeldProcedure.Of(
                    weld, parts[weld.Joint.Between[0]], parts[weld.Joint.Between[1]], assembly.Design)),
            ]);
    }
}
