namespace Vessel.Design;

/// <summary>Bolt holes at the corners of a rectangle round the plate's middle, or in one row where a distance is zero.</summary>
/// <param name="Diameter">Diameter of the bolt; holes are the medium series of ISO 273.</param>
/// <param name="Across">Distance of centres across, mm; zero for one column.</param>
/// <param name="Up">Distance of centres up, mm; zero for one row.</param>
/// <param name="Slot">Length by which each hole is drawn out upward and downward together, mm; zero for round holes.</param>
/// <param name="HoleDiameter">Clearance hole, mm.</param>
/// <param name="WasherDiameter">Outside of the washer that must lie on the flat, mm (ISO 7089).</param>
public sealed record BoltsDesign(
    string Path, double Diameter, double Across, double Up, double Slot, double HoleDiameter, double WasherDiameter)
{
    /// <summary>The bolts that stand under a holder's key <c>bolts</c>; what the mapping has no key for is zero.</summary>
    internal static BoltsDesign Under(Section holder)
    {
        var section = holder.Child("bolts") ?? Section.Absent($"{holder.Path}.bolts");
        var diameter = section.Number("diameter");
        return new(
            section.Path,
            diameter,
            section.NumberOr("across", 0),
            section.Number("up"),
            section.Number("slot"),
            Stock.Bolts.Hole(diameter).Value,
            Stock.Bolts.Washer(diameter).Value);
    }
}
