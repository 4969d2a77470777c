using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>Faults brought into the order and form in which they are told.</summary>
internal static class FaultList
{
    public static IEnumerable<Fault> Placed(IEnumerable<Fault> faults, ImmutableDictionary<string, Span> places) =>
        faults.Select(f => f.At is null ? f with { At = places.Nearest(f.Path) } : f);

    public static ImmutableArray<Fault> Sorted(IEnumerable<Fault> faults) =>
    [
        .. faults
            .OrderBy(f => (f.At!.Value.Setting, f.At.Value.Line, f.At.Value.Column))
            .ThenBy(f => f.Code, StringComparer.Ordinal),
    ];
}
