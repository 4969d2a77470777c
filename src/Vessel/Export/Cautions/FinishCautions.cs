using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Export;

/// <summary>The hazards of what is done to the surface.</summary>
internal static class FinishCautions
{
    public static IEnumerable<string> Of(VesselDesign design)
    {
        if (design.Finish == Finish.Passivated)
        {
            yield return "Pickling paste holds hydrofluoric and nitric acid. Hydrofluoric acid goes through the skin, and a burn may hurt "
                + "only hours later. "
                + "Wear acid-proof gloves with long cuffs, a face shield and an apron; have calcium gluconate gel at hand and somebody "
                + "near who can use it; "
                + "brush it on outdoors or under extraction; catch the rinse water, which is hazardous waste "
                + "(HSE, post weld cleaning using pickling pastes). Passivating solutions mostly hold no hydrofluoric acid; read the data "
                + "sheet of each.";
        }

        if (design.Finish == Finish.PowderCoated)
        {
            yield return "The oven drives fume out of oil, old paint, plating and plastic: send the vessel clean and bare, without hoses "
                + "or packing that cannot "
                + $"stand the heat, and air the oven {Sources.Practice}.";
        }
    }
}
