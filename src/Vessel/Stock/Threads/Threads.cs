using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>Threads of bungs and fittings that a design may name.</summary>
public static class Threads
{
    /// <summary>Those that a table has, metric first.</summary>
    public static ImmutableArray<ThreadSize> All { get; } =
        [.. MetricThreads.All, .. PipeThreads.All, .. InchThreads.All, .. InchThreads.Dashes];

    /// <summary>Names to choose from, a line for each kind.</summary>
    public const string Kinds = "M14x1.5 (any size and pitch; M10 is coarse), G 1/2, Rc 1/2, Rp 1/2, 1/2 NPT, 3/4-16 UNF, 1/2-13 UNC or dash 8";

    /// <summary>
    /// The thread of that name, or null; a metric one also where no table has it. Case and spacing do not matter; <c>dash-20</c> is
    /// <c>dash 20</c>, <c>BSPP 1/2</c> is <c>G 1/2</c>.
    /// </summary>
    public static ThreadSize? Find(string name)
    {
        var wanted = Plain(name);
        return _byName.GetValueOrDefault(wanted) ?? MetricThreads.Find(wanted);
    }

    private static readonly ImmutableDictionary<string, ThreadSize> _byName = All.ToImmutableDictionary(thread => Plain(thread.Name));

    private static string Plain(string name) =>
        name.ToUpperInvariant()
            .Replace(" ", "", StringComparison.Ordinal)
            .Replace("DASH-", "DASH", StringComparison.Ordinal)
            .Replace("BSPP", "G", StringComparison.Ordinal)
            .Replace("BSPT", "RC", StringComparison.Ordinal);
}
