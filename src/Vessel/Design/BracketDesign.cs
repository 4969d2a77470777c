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

/// <summary>What the vessel is bolted up by. A closed set of kinds, to be matched by switch.</summary>
/// <param name="Height">Of its middle, mm in the vessel's frame.</param>
/// <param name="Angle">Round the vessel of its middle, radians.</param>
/// <param name="Thickness">Of the sheet, mm.</param>
public abstract record BracketDesign(
    string Path, string Name, Material Material, double Height, double Angle, double Thickness, BoltsDesign Bolts)
{
    /// <summary>Null for edges without.</summary>
    public TabsDesign? Tabs { get; init; }
}

/// <summary>A flat plate whose edge is coped to the shell, cut square through its thickness and welded on both sides.</summary>
/// <param name="Offset">Of its middle, sideways from the vessel's axis towards increasing angle, mm; the plate keeps its direction.</param>
/// <param name="Roll">About the line outward, radians: 0 lies level, a quarter turn stands upright.</param>
/// <param name="Width">Along the edge that meets the shell, straight across, mm.</param>
/// <param name="FreeWidth">Of the free edge, mm.</param>
/// <param name="Depth">On the plate's middle line from the coped edge to the free one, mm.</param>
/// <param name="Corner">Radius of the free edge's corners, mm; zero for sharp ones.</param>
/// <param name="BoltsAt">On the middle line from the coped edge to the pattern's middle, mm.</param>
public sealed record PlateBracket(
    string Path,
    string Name,
    Material Material,
    double Height,
    double Angle,
    double Offset,
    double Roll,
    double Thickness,
    double Width,
    double FreeWidth,
    double Depth,
    double Corner,
    double BoltsAt,
    BoltsDesign Bolts) : BracketDesign(Path, Name, Material, Height, Angle, Thickness, Bolts);

/// <summary>A back plate with two bent ears that are welded to the shell.</summary>
/// <param name="Width">Over all across (along the girth), outside of bent ears, mm.</param>
/// <param name="PlateHeight">Over all up, outside of bent ears, mm.</param>
/// <param name="StandOff">From the shell's outside, at its nearest, to the plate's back (the face towards the shell), mm.</param>
/// <param name="InsideRadius">Of the bends, mm.</param>
/// <param name="K">Place of the neutral line as a share of the thickness from the inside.</param>
public sealed record SaddleBracket(
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
    BoltsDesign Bolts) : BracketDesign(Path, Name, Material, Height, Angle, Thickness, Bolts);

/// <summary>Bolt holes at the corners of a rectangle round the plate's middle, or in one row where a distance is zero.</summary>
/// <param name="Diameter">Of the bolt; holes are the medium series of ISO 273.</param>
/// <param name="Across">Distance of centres across, mm; zero for one column.</param>
/// <param name="Up">Distance of centres up, mm; zero for one row.</param>
/// <param name="Slot">Length by which each hole is drawn out upward and downward together, mm; zero for round holes.</param>
/// <param name="HoleDiameter">Clearance hole, mm.</param>
/// <param name="WasherDiameter">Outside of the washer that must lie on the flat, mm (ISO 7089).</param>
public sealed record BoltsDesign(
    string Path, double Diameter, double Across, double Up, double Slot, double HoleDiameter, double WasherDiameter);
