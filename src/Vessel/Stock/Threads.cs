using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>Threads of bungs and fittings that a design may name.</summary>
public static class Threads
{
    private const double Inch = 25.4;

    private const string DashSource =
        "thread: SAE J514 / SAE J1926; tap drill: {0}; bore: of a usual 37 degree male fitting, not checked against the source";

    private const string Chart = "published tap drill chart";

    private const string Memory = "not checked against the source";

    private const string MetricSource = "ISO 6149-1 port; tap drill = diameter less pitch";

    private const string PipeSource =
        "ASME B1.20.1; drill for tapping without a reamer, published charts differ by up to 1/64 in";

    public static ImmutableArray<ThreadSize> All { get; } =
    [
        Dash(4, "7/16-20 UNF", 7.0 / 16, 25.0 / 64, Chart, 0.172),
        Dash(6, "9/16-18 UNF", 9.0 / 16, 33.0 / 64, Chart, 0.297),
        Dash(8, "3/4-16 UNF", 3.0 / 4, 11.0 / 16, Chart, 0.391),
        Dash(10, "7/8-14 UNF", 7.0 / 8, 13.0 / 16, Memory, 0.484),
        Dash(12, "1 1/16-12 UN", 17.0 / 16, 63.0 / 64, Memory, 0.609),
        Dash(16, "1 5/16-12 UN", 21.0 / 16, 79.0 / 64, Memory, 0.844),
        Dash(20, "1 5/8-12 UN", 13.0 / 8, 99.0 / 64, Memory, 1.078),
        Metric("M10x1", 10, 1),
        Metric("M12x1.5", 12, 1.5),
        Metric("M14x1.5", 14, 1.5),
        Metric("M16x1.5", 16, 1.5),
        Metric("M18x1.5", 18, 1.5),
        Metric("M22x1.5", 22, 1.5),
        Metric("M27x2", 27, 2),
        Metric("M33x2", 33, 2),
        Metric("M42x2", 42, 2),
        Pipe("1/8", "27", 0.405, 0.339),
        Pipe("1/4", "18", 0.540, 7.0 / 16),
        Pipe("3/8", "18", 0.675, 37.0 / 64),
        Pipe("1/2", "14", 0.840, 23.0 / 32),
        Pipe("3/4", "14", 1.050, 59.0 / 64),
        Pipe("1", "11.5", 1.315, 37.0 / 32),
    ];

    /// <summary>The thread of that name, or null. Case and spacing do not matter; <c>dash-20</c> is <c>dash 20</c>.</summary>
    public static ThreadSize? Find(string name)
    {
        var wanted = Plain(name);
        return All.FirstOrDefault(t => Plain(t.Name) == wanted);
    }

    private static string Plain(string name) =>
        name.ToUpperInvariant()
            .Replace(" ", "", StringComparison.Ordinal)
            .Replace("DASH-", "DASH", StringComparison.Ordinal);

    private static ThreadSize Dash(int dash, string thread, double major, double drill, string drillFrom, double bore) =>
        new($"dash {dash}", thread, major * Inch, drill * Inch, bore * Inch,
            DashSource.Replace("{0}", drillFrom, StringComparison.Ordinal));

    private static ThreadSize Metric(string name, double major, double pitch) =>
        new(name, name, major, major - pitch, null, MetricSource);

    private static ThreadSize Pipe(string size, string perInch, double major, double drill) =>
        new($"{size} NPT", $"{size}-{perInch} NPT", major * Inch, drill * Inch, null, PipeSource) { IsTaper = true };
}
