using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Planning;

/// <summary>What is said of the tasks that are not welds.</summary>
internal static class WorkText
{
    public static string Cleaning(ImmutableArray<Part> parts)
    {
        var iron = parts.Any(part => part.Material.Family == MaterialFamily.Stainless)
            ? "; only brushes and discs that never touched mild steel"
            : "";
        return $"blow out, wash with a non-chlorinated solvent and dry all that closing shuts in: no swarf, no grit, no oil{iron}";
    }

    public static string Testing(VesselDesign design)
    {
        var blanks = string.Join(", ", design.Ports.Select(Blank));
        var kit = blanks.Length == 0 ? "" : $" Blanks: {blanks}.";
        return "fill with water and look; then air at a few kPa through a regulator with a relief valve, soap film on every wall weld, "
            + $"bung and tack.{kit} Blanks are bolted or screwed, never held by hand; mark leaks, let the air out, dry, weld, test again";
    }

    public static string Finishing(VesselDesign design) => design.Finish switch
    {
        Finish.Passivated => "pickle the heat tint off, rinse, passivate, rinse; threads and inside too",
        Finish.Painted => "degrease, abrade, prime and paint; mask threads and sealing faces",
        Finish.PowderCoated => "degrease, blast, coat; mask threads and sealing faces; packing must stand the oven (about 200 degC)",
        Finish.Anodised => "etch and anodise with every port open, so that the baths drain; mask threads and sealing faces",
        _ => throw new ArgumentOutOfRangeException(nameof(design)),
    };

    private static string Blank(PortDesign port) => port.Thread is { } thread
        ? $"{port.Name} a plug {thread.Name}"
        : port.Fitting is { } fitting ? $"{port.Name} a cap {fitting.Name}"
        : string.Create(CultureInfo.InvariantCulture, $"{port.Name} a clamped plug for a bore of {port.Bore:0.#} mm");
}
