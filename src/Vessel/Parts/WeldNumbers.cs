using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;

namespace Vessel.Parts;

/// <summary>
/// The welds of a design in the order in which they are numbered: W1, W2... The same numbers stand on the flats, in the
/// tables and on the joints.
/// </summary>
public sealed record WeldNumbers(ImmutableArray<string> Paths)
{
    /// <summary>The path that stands for the shell's long seam.</summary>
    public const string LongSeam = "shell.seam_angle";

    public static WeldNumbers Of(VesselDesign vessel) => new(
    [
        .. vessel.Shell.MadeFrom == StockForm.Sheet ? new[] { LongSeam } : [],
        .. OfGores(vessel.Top),
        vessel.Top.Path,
        .. OfGores(vessel.Bottom),
        vessel.Bottom.Path,
        .. vessel.Ports.Select(port => port.Path),
    ]);

    /// <summary>The path that stands for a seam between two gores; the first is number 0.</summary>
    public static string GoreSeam(GoreDesign gores, int number) =>
        string.Create(CultureInfo.InvariantCulture, $"{gores.Path}.seam_angle[{number}]");

    /// <summary>The path that stands for the seam between gores and polar cap.</summary>
    public static string CapSeam(GoreDesign gores) => $"{gores.Path}.cap_diameter";

    /// <summary>Gores are joined to each other and to their cap before the head goes on the shell.</summary>
    private static IEnumerable<string> OfGores(HeadDesign head) => head is HemisphereHead { Gores: { } gores }
        ? Enumerable.Range(0, gores.Count).Select(i => GoreSeam(gores, i)).Append(CapSeam(gores))
        : [];

    /// <summary>The number of the weld that the design's mapping at this path asks for: <c>W3</c>.</summary>
    public string this[string path] => $"W{Paths.IndexOf(path) + 1}";
}
