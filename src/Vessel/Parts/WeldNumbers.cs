using System.Collections.Immutable;
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
        vessel.Top.Path,
        vessel.Bottom.Path,
        .. vessel.Ports.Select(port => port.Path),
        .. vessel.Bracket is { } bracket ? EarsOf(bracket) : [],
    ]);

    /// <summary>The paths that stand for the welds of a bracket's two ears, as seen from outside.</summary>
    public static ImmutableArray<string> EarsOf(BracketDesign bracket) => bracket.Ears == BracketEars.Sides
        ? [$"{bracket.Path}.ears.left", $"{bracket.Path}.ears.right"]
        : [$"{bracket.Path}.ears.upper", $"{bracket.Path}.ears.lower"];

    /// <summary>The number of the weld that the design's mapping at this path asks for: <c>W3</c>.</summary>
    public string this[string path] => $"W{Paths.IndexOf(path) + 1}";
}
