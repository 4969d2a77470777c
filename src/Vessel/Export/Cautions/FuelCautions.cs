using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Export;

/// <summary>The hazards in use of a tank.</summary>
internal static class FuelCautions
{
    public static IEnumerable<string> Of(FlowDesign flow)
    {
        yield return (flow.IsLiquidGiven ? "Ask" : "If it is to hold fuel, ask") + " first which rule for fuel tanks holds where it will be used. "
            + "Such rules decide on metal, thickness, places of openings and tests, none of which is checked here (boats: 33 CFR 183 subpart J; "
            + "commercial craft: 46 CFR 58.50 and 182.440; ISO 21487, not checked against the source).";
        if (flow.Liquid.Kind == LiquidKind.Petrol)
        {
            yield return "Petrol gives off vapour that lights at any temperature you work in, and runs along the floor to a flame far away: "
                + $"never test, rinse or warm the tank with it in the shop, and let no electric fan draw its vapour {Sources.Practice}.";
        }
        else
        {
            yield return "Put nothing galvanised inside a diesel tank, fittings included (46 CFR 58.50-10).";
        }

        yield return "Bond tank, filler and deck fitting to one earth: fuel that flows charges them, and a spark at the filler lights the "
            + "vapour (Boat Safety Scheme, bonding).";
        yield return "End the fuel vent outside, away from ignition, in a flame screen that can be cleaned (33 CFR 183.520; 46 CFR 28.335).";
    }
}
