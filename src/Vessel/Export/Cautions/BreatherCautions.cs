using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Export;

/// <summary>The hazards in use of a vessel that stands in the vent of a machine.</summary>
internal static class BreatherCautions
{
    public static IEnumerable<string> Of(VesselDesign design)
    {
        yield return "Lead the vent outside, away from people, exhaust and ignition: blow-by holds carbon monoxide, fuel vapour and oil "
            + "mist "
            + $"{Sources.Practice}.";
        yield return "On an engine's crankcase: give each engine a vent and an oil drain of its own, the vent no wider than it needs to "
            + "be; a fan or the intake "
            + "may draw the crankcase no more than 2.5 mbar below the outside (IACS UR M10, for ships' engines; a fair guide ashore).";
        yield return "A blocked or frozen vent raises the crankcase pressure until seals blow out: let the hose fall all the way, keep it "
            + "out of frost, and fit a "
            + $"relief valve or a bypass where water can freeze in it {Sources.Practice}.";
        if (design.All<PackingDesign>().Any())
        {
            yield return "Where the vent leads to an intake, loose wool can wreck a turbocharger: keep the packing between two fixed "
                + "screens, and look at it at "
                + $"every service {Sources.Practice}.";
        }

        yield return "An open crankcase vent may be unlawful on public roads; ask where the machine is registered.";
    }
}
