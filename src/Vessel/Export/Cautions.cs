using System.Collections.Immutable;
using Vessel.Function;
using Vessel.Stock;

namespace Vessel.Export;

/// <summary>What can hurt someone; shown with every build. Local codes and licensed practice come first.</summary>
internal static class Cautions
{
    public static ImmutableArray<string> Of(Assembly assembly)
    {
        List<string> all =
        [
            "This is a vented vessel. Nothing here rates or certifies it for pressure; local codes and licensed practice decide.",
            "Vent every closed volume before and while heating it: leave one port open for the closing seam (air shut in at 20 degC nearly doubles its pressure at 300 degC).",
            "Never weld or cut a vessel that has held oil, fuel or solvent until it is cleaned, vented and proven safe (AWS F4.1; HSE, hot work on small tanks and drums).",
            "No chlorinated cleaner near the arc: it turns to phosgene. Clean with a non-chlorinated solvent and let it dry.",
            "Argon collects in vessels and gives no warning: blow a purged vessel out with air before leaning in (OSHA 1910.146: below 19.5 % oxygen is deficient).",
            "Cover skin and eyes, and draw off the fume at the arc.",
            LeakWords.Caution(assembly),
            "Lead the vent outside, away from people, exhaust and ignition: blow-by holds carbon monoxide, fuel vapour and oil mist.",
            "An open crankcase vent may be unlawful on public roads.",
        ];
        if (assembly.Parts.Any(part => part.Material.Family == MaterialFamily.Stainless))
            all.Add("Stainless fume holds chromium(VI): local exhaust, and follow the local limit (OSHA 29 CFR 1910.1026).");
        if (assembly.Parts.Any(part => part.Material.Family == MaterialFamily.Aluminium))
            all.Add("Aluminium throws the arc's light back: cover the neck and the skin under the chin.");
        if (assembly.Design.Fixtures)
            all.Add("A printed fixture is for tacking alone: plastic melts, burns and fumes at the arc; tack in its windows, let it cool between tacks, and take it off before welding.");
        return [.. all];
    }
}
