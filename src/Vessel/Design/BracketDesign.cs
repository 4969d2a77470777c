using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Which edges of the back plate are bent towards the shell.</summary>
public enum BracketEars
{
    /// <summary>Left and right: the ears' ends meet the shell on straight lines.</summary>
    Sides,

    /// <summary>Top and bottom: the ears' ends follow the shell's curve.</summary>
    Ends,
}

/// <summary>A back plate with two bent ears that are welded to the shell.</summary>
/// <param name="Height">Of the plate's middle, mm in the vessel's frame.</param>
/// <param name="Angle">Round the vessel of the plate's middle, radians.</param>
/// <param name="Width">Over all across (along the girth), outside of bent ears, mm.</param>
/// <param name="PlateHeight">Over all up, outside of bent ears, mm.</param>
/// <param name="StandOff">From the shell's outside, at its nearest, to the plate's back (the face towards the shell), mm.</param>
/// <param name="InsideRadius">Of the bends, mm.</param>
/// <param name="K">Place of the neutral line as a share of the thickness from the inside.</param>
/// <param name="Bolts">In the plate.</param>
public sealed record BracketDesign(
    string Path,
    string Name,
    Material Material,
    double Height,
    double Angle,
    double Thickness,
    double Width,
    double PlateHeight,
    double StandOff,
    BracketEars Ears,
    double InsideRadius,
    double K,
    BoltsDesign Bolts);

/// <summary>Bolt holes at the corners of a rectangle round the plate's middle, or in one row where a distance is zero.</summary>
/// <param name="Diameter">Of the bolt; holes are the medium series of ISO 273.</param>
/// <param name="Across">Distance of centres across, mm; zero for one column.</param>
/// <param name="Up">Distance of centres up, mm; zero for one row.</param>
/// <param name="Slot">Length by which each hole is drawn out upward and downward together, mm; zero for round holes.</param>
/// <param name="HoleDiameter">Clearance hole, mm.</param>
/// <param name="WasherDiameter">Outside of the washer that must lie on the flat, mm (ISO 7089).</param>
public sealed record BoltsDesign(
    string Path, double Diameter, double Across, double Up, double Slot, double HoleDiameter, double WasherDiameter);
