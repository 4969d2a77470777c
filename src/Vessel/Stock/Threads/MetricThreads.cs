using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Vessel.Stock;

/// <summary>ISO metric threads, coarse and fine.</summary>
internal static partial class MetricThreads
{
    private const string Source = "ISO 261 (sizes), ISO 68-1 (profile); tap drill: diameter less pitch, as ISO 2306 within 0.05 mm";

    private const string OwnSource = "profile of ISO 68-1, no size of ISO 261; tap drill: diameter less pitch";

    private const double Least = 3;

    private const double Most = 150;

    /// <summary>ISO 261 from M5 to M64, coarse pitch first; first and second choice, and M26x1.5 of fittings, mm.</summary>
    private static readonly ImmutableArray<(double Size, double[] Pitches)> _series =
    [
        (5, [0.8, 0.5]), (6, [1, 0.75]), (8, [1.25, 1, 0.75]), (10, [1.5, 1.25, 1, 0.75]), (12, [1.75, 1.5, 1.25, 1]), (14, [2, 1.5, 1.25, 1]),
        (16, [2, 1.5, 1]), (18, [2.5, 2, 1.5, 1]), (20, [2.5, 2, 1.5, 1]), (22, [2.5, 2, 1.5, 1]), (24, [3, 2, 1.5, 1]), (26, [1.5]),
        (27, [3, 2, 1.5, 1]), (30, [3.5, 3, 2, 1.5, 1]), (33, [3.5, 3, 2, 1.5]), (36, [4, 3, 2, 1.5]), (39, [4, 3, 2, 1.5]),
        (42, [4.5, 4, 3, 2, 1.5]), (45, [4.5, 4, 3, 2, 1.5]), (48, [5, 4, 3, 2, 1.5]), (52, [5, 4, 3, 2, 1.5]), (56, [5.5, 4, 3, 2, 1.5]),
        (60, [5.5, 4, 3, 2, 1.5]), (64, [6, 4, 3, 2, 1.5]),
    ];

    /// <summary>Faces for a bonded washer or flat-faced fitting, mm, by thread.</summary>
    private const string FaceSource = "; face: DIN 3852-1 / ISO 9974-1, as a fitting maker prints it";

    private static readonly ImmutableArray<(double Size, double Pitch, double Face)> _faces =
    [
        (10, 1, 15), (12, 1.5, 18), (14, 1.5, 20), (16, 1.5, 22), (18, 1.5, 24), (20, 1.5, 26), (22, 1.5, 28), (26, 1.5, 32), (27, 2, 33), (33, 2, 40),
        (42, 2, 50), (48, 2, 56),
    ];

    public static ImmutableArray<ThreadSize> All { get; } =
        [.. from row in _series from pitch in row.Pitches select Of(row.Size, pitch, Source)];

    /// <summary>
    /// A thread by a name as <c>M35x1.5</c>, also where no table has it; <c>M10</c> has the coarse pitch. Null for another name, or a
    /// pitch that no thread of that size can have.
    /// </summary>
    public static ThreadSize? Find(string name)
    {
        if (Name().Match(name) is not { Success: true } found)
            return null;
        var size = double.Parse(found.Groups["size"].Value, CultureInfo.InvariantCulture);
        if (!found.Groups["pitch"].Success)
            return All.FirstOrDefault(thread => thread.MajorDiameter == size);
        var pitch = double.Parse(found.Groups["pitch"].Value, CultureInfo.InvariantCulture);
        return All.FirstOrDefault(thread => thread.MajorDiameter == size && thread.Pitch == pitch)
            ?? (size >= Least && size <= Most && pitch >= 0.2 && pitch <= size / 4 ? Of(size, pitch, OwnSource) : null);
    }

    private static ThreadSize Of(double size, double pitch, string source)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"M{size}x{pitch}");
        double? face = _faces.FirstOrDefault(row => row.Size == size && row.Pitch == pitch) is { Face: > 0 } row ? row.Face : null;
        return new(name, name, size, pitch, size - pitch, face is null ? source : source + FaceSource) { Seal = ThreadSeal.Washer, Face = face };
    }

    [GeneratedRegex("^M(?<size>[0-9]{1,3}(\\.[0-9]{1,3})?)(X(?<pitch>[0-9]{1,2}(\\.[0-9]{1,3})?))?$", RegexOptions.ExplicitCapture)]
    private static partial Regex Name();
}
