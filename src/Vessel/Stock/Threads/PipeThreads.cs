using System.Collections.Immutable;
using System.Globalization;

namespace Vessel.Stock;

/// <summary>Pipe threads: parallel (G), taper (Rc and Rp), and American taper (NPT).</summary>
internal static class PipeThreads
{
    private const double Inch = 25.4;

    private const string ParallelSource =
        "ISO 228-1; tap drill: published tap drill list; face: DIN 3852-2 / ISO 1179-1, as a fitting maker prints it, where it has the size";

    private const string TaperSource = "ISO 7-1; tap drill without a taper reamer: a tap maker's catalogue (Yamawa 2021, page 720)";

    private const string StraightSource = "ISO 7-1; tap drill: its minor diameter, so that a taper outside thread seals in it";

    private const string AmericanSource =
        "ASME B1.20.1; drill for tapping without a reamer, published charts differ by up to 1/64 in";

    /// <summary>A size that G and Rc share.</summary>
    /// <param name="Major">As ISO 228-1 and ISO 7-1 have it, mm.</param>
    /// <param name="Drill">Drill for G, mm.</param>
    /// <param name="Face">Face for a washer, mm; null where the list lacks the size.</param>
    /// <param name="Taper">Drill for Rc, mm; null where that is not made.</param>
    private sealed record Whitworth(string Size, double PerInch, double Major, double Drill, double? Face, double? Taper);

    private static readonly ImmutableArray<Whitworth> _whitworth =
    [
        new("1/8", 28, 9.728, 8.8, 15, 8.2),
        new("1/4", 19, 13.157, 11.8, 19, 10.9),
        new("3/8", 19, 16.662, 15.25, 23, 14.4),
        new("1/2", 14, 20.955, 19, 27, 17.9),
        new("5/8", 14, 22.911, 21, null, null),
        new("3/4", 14, 26.441, 24.5, 33, 23.3),
        new("7/8", 14, 30.201, 28.25, null, null),
        new("1", 11, 33.249, 30.75, 40, 29.3),
        new("1 1/4", 11, 41.910, 39.5, 50, 37.9),
        new("1 1/2", 11, 47.803, 45.25, 56, 43.8),
        new("1 3/4", 11, 53.746, 51, null, null),
        new("2", 11, 59.614, 57, null, 55.4),
    ];

    /// <summary>Depth of the thread as a share of its pitch: Whitworth's angle of 55 degrees, rounded top and bottom.</summary>
    private const double Depth = 0.640327;

    public static ImmutableArray<ThreadSize> All { get; } =
    [
        .. _whitworth.Select(row => British("G", row, row.Drill, ParallelSource) with { Seal = ThreadSeal.Washer, Face = row.Face }),
        .. from row in _whitworth where row.Taper is not null select British("Rc", row, row.Taper!.Value, TaperSource),
        .. from row in _whitworth
           where row.Taper is not null
           select British("Rp", row, Math.Round(row.Major - (2 * Depth * Inch / row.PerInch), 1), StraightSource),
        American("1/8", 27, 0.405, 0.339),
        American("1/4", 18, 0.540, 7.0 / 16),
        American("3/8", 18, 0.675, 37.0 / 64),
        American("1/2", 14, 0.840, 23.0 / 32),
        American("3/4", 14, 1.050, 59.0 / 64),
        American("1", 11.5, 1.315, 37.0 / 32),
        American("1 1/4", 11.5, 1.660, 1.5),
        American("1 1/2", 11.5, 1.900, 111.0 / 64),
    ];

    private static ThreadSize British(string series, Whitworth row, double drill, string source) =>
        new($"{series} {row.Size}", $"{series} {row.Size}", row.Major, Inch / row.PerInch, drill, source) { Seal = ThreadSeal.Taper };

    private static ThreadSize American(string size, double perInch, double major, double drill) => new(
        $"{size} NPT", string.Create(CultureInfo.InvariantCulture, $"{size}-{perInch} NPT"), major * Inch, Inch / perInch, drill * Inch, AmericanSource)
    {
        Seal = ThreadSeal.Taper,
    };
}
