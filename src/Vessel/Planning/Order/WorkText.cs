using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
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
        return "blow out, wash with a non-chlorinated solvent and dry everything inside before it is closed: no swarf, no grit, no "
            + $"oil{iron}";
    }

    public static string Testing(LeakKit kit)
    {
        var blanks = kit.Blanks.IsEmpty ? "" : $" Blanks: {string.Join(", ", kit.Blanks.Select(b => $"'{b.Port}' a {b.Blank}"))}.";
        return $"{LeakWords.Method(kit.Test)} {string.Join(", ", kit.Points.Select(point => point.Where))} and every tack.{blanks} "
            + "Blanks are bolted or screwed, never held by hand; mark leaks, let the pressure off, dry, weld, test again";
    }

    public static string Finishing(VesselDesign design) => design.Finish switch
    {
        Finish.Passivated => "pickle the heat tint off, rinse, passivate, rinse; threads and inside too. PASTE HOLDS HYDROFLUORIC ACID: "
            + "acid-proof gloves, face shield, apron, "
            + "calcium gluconate gel at hand, outdoors or under extraction; catch the rinse water (HSE, post weld cleaning using pickling "
            + "pastes)",
        Finish.Painted => "degrease, abrade, prime and paint; mask threads and sealing faces",
        Finish.PowderCoated => "degrease, blast, coat; mask threads and sealing faces; packing must stand the oven (about 200 degC)",
        Finish.Anodised => "etch and anodise with every port open, so that the baths drain; mask threads and sealing faces",
        _ => throw new ArgumentOutOfRangeException(nameof(design)),
    };
}
