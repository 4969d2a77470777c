using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Export;

/// <summary>The hazards of cutting, grinding and welding this vessel's metals.</summary>
internal static class WeldingCautions
{
    public static IEnumerable<string> Of(Assembly assembly)
    {
        var (design, metals) = (assembly.Design, assembly.Parts.Select(part => part.Material.Family).ToHashSet());
        yield return "Vent every closed volume before and while you heat it: leave one port open for the closing seam. "
            + "Air shut in at 20 degC nearly doubles its pressure at 300 degC (gas law).";
        yield return "Never weld or cut a vessel that has held oil, fuel or solvent until it is cleaned, vented and proven safe (AWS F4.1; "
            + "HSE, hot work on small tanks and drums).";
        yield return "Keep chlorinated cleaners away from the arc: they turn to phosgene. Clean with a non-chlorinated solvent and let it "
            + "dry (NIOSH).";
        yield return "Argon is heavier than air and gives no warning: it pools in a purged can, in a pit and along the floor of a small "
            + "room. Blow a purged vessel out "
            + "with air before you put your face near it, and air the room; below 19.5 % oxygen the air is deficient "
            + "(HSE, asphyxiation hazards in welding; OSHA 29 CFR 1910.146).";
        yield return "Cover skin and eyes, and draw off the fume at the arc: welding fume causes cancer (IARC, group 1).";
        yield return "Grind tungsten electrodes with extraction and a mask: the dust of thoriated ones is radioactive. "
            + "Lanthanated or ceriated ones weld as well (AWS safety fact sheet on thoriated electrodes; TWI).";
        if (IsPlatedStockLikely(assembly))
        {
            yield return "Weld no zinc- or cadmium-plated bung, nut, bolt or tube: zinc brings metal fume fever, cadmium fume can kill. "
                + "Buy bare ones (OSHA 29 CFR 1910.252(c)).";
        }

        if (assembly.Parts.Any(part => part.Holes.Any(hole => hole.Made == HoleMethod.HoleSaw)))
        {
            yield return "A hole saw snatches in thin sheet: clamp the sheet down on wood, run slowly, and wear no gloves at the drill "
                + $"{Sources.Practice}.";
        }

        if (metals.Contains(MaterialFamily.Stainless))
            yield return "Stainless fume holds chromium(VI): use local exhaust and follow the local limit (OSHA 29 CFR 1910.1026).";
        if (metals.Contains(MaterialFamily.Aluminium))
        {
            yield return "Aluminium throws the arc's light back: cover the neck and the skin under the chin. The same light makes ozone, "
                + "which hurts the lungs: "
                + "air the place well (WorkSafe New Zealand, welding and local exhaust; limit 0.1 ppm, OSHA 29 CFR 1910.1000).";
            yield return "Keep aluminium dust and steel sparks apart: the dust burns and explodes, with rust it burns as thermite does. "
                + "Keep one grinder and one "
                + "extractor bag for aluminium alone, sweep up daily, and put no water on a fire of it (HSE HSG103; not checked against "
                + "the source).";
        }

        if (design.Fixtures)
        {
            yield return "A printed fixture is for tacking alone: plastic melts, burns and fumes at the arc. Tack in its windows, let it "
                + "cool between tacks, "
                + $"and take it off before you weld {Sources.Practice}.";
        }
    }

    /// <summary>Threaded parts and bolted mounts are often sold plated.</summary>
    private static bool IsPlatedStockLikely(Assembly assembly) =>
        assembly.Design.Ports.Any(port => port.Thread is not null) || assembly.Members.Any(member => member.IsBolted);
}
