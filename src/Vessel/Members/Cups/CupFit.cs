using Vessel.Design;
using Vessel.Joints;

namespace Vessel.Members.Cups;

/// <summary>The outlet's tube in the plate of the cup that it carries.</summary>
internal static class CupFit
{
    public static SlipFit Of(CupDesign cap, PortDesign outlet) => new(
            $"'{outlet.Name}' in '{cap.Name}'", [CupParts.Ids(cap).Plate, Slug.Of(outlet.Name)], 2 * cap.Clearance,
            [
                SlipFits.Laser($"hole in '{cap.Name}'", outlet.OutsideDiameter + (2 * cap.Clearance), cap.Wall),
                SlipFits.Tube($"outside of '{outlet.Name}'", outlet.OutsideDiameter, outlet.Material),
            ],
            $"{cap.Path}.clearance");
}
