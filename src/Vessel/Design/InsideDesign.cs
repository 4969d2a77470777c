using System.Collections.Immutable;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>What stands inside the vessel. All of it is coaxial with the shell.</summary>
public sealed record InsideDesign(
    ImmutableArray<CapDesign> Caps,
    ImmutableArray<SleeveDesign> Sleeves,
    ImmutableArray<DiscDesign> Discs,
    ImmutableArray<PackingDesign> Packings)
{
    public static InsideDesign None { get; } = new([], [], [], []);
}

/// <summary>How an internal part is held.</summary>
public enum Fixing
{
    Weld,
    Tabs,
    Screws,
    Press,
    Loose,
}

/// <summary>Which way a cap's cup is open.</summary>
public enum CapOpening
{
    /// <summary>Plate below, skirt against the head: gas comes in through the windows.</summary>
    Up,

    /// <summary>Plate above, carried by the outlet's tube that passes through it; the skirt hangs.</summary>
    Down,
}

/// <summary>
/// A shallow cup that stops the straight path to the outlet: a plate of the full outside diameter with a skirt standing
/// on its rim.
/// </summary>
/// <param name="Wall">Of plate and skirt alike, mm.</param>
/// <param name="Skirt">Height of the skirt alone, from the plate's inner face to the rim, mm.</param>
/// <param name="HangsFrom">The flat head that carries it.</param>
/// <param name="Drop">Opens down: from the head's inner face to the plate's upper face, mm; zero when it opens up.</param>
/// <param name="Outlet">Opens down: name of the port whose tube passes through the plate; null when it opens up.</param>
/// <param name="Clearance">Opens down: between that tube and the plate, radial, mm.</param>
/// <param name="DrainHole">Diameter of a hole in the plate's middle, mm; zero for none.</param>
/// <param name="MadeFrom">Of the skirt: rolled from sheet, or cut from tube.</param>
/// <param name="SeamAngle">Of a rolled skirt, radians in [0, 2 pi).</param>
/// <param name="Windows">In the skirt, row by row; empty for none.</param>
/// <param name="Pattern">Drilled in the plate; null for none.</param>
public sealed record CapDesign(
    string Path,
    string Name,
    Material Material,
    double OutsideDiameter,
    double Wall,
    double Skirt,
    CapOpening Opens,
    PortHost HangsFrom,
    Fixing Fixed,
    double Drop,
    string? Outlet,
    double Clearance,
    double DrainHole,
    StockForm MadeFrom,
    double SeamAngle,
    ImmutableArray<WindowsDesign> Windows,
    HolePatternDesign? Pattern)
{
    /// <summary>What the skirt of a cap of that name is called.</summary>
    public static string SkirtOf(string cap) => $"{cap} skirt";

    /// <summary>What the plate of a cap of that name is called.</summary>
    public static string PlateOf(string cap) => $"{cap} plate";
}

/// <summary>A row of equal windows, evenly round a tube or skirt: rectangles with round corners, slots, or round holes.</summary>
/// <param name="Width">Along the girth, measured on the outside, mm; of a round one its diameter.</param>
/// <param name="Corner">Radius of the corners, at most half of the smaller side, mm: that half makes a slot, or a round window.</param>
/// <param name="Up">Height of the lower edge above the plate, mm; of a sleeve above its lower end, of a port's tube from its inner end along it.</param>
/// <param name="Angle">Of the first window's middle, radians; of a port's tube round its axis, as its elbow's direction.</param>
public sealed record WindowsDesign(string Path, int Count, double Width, double Height, double Corner, double Up, double Angle)
{
    /// <summary>A circle on what is cut: the flat of a rolled skirt, the outside of a tube.</summary>
    public bool IsRound { get; init; }

    /// <summary>Open area of one, as it is cut, mm2.</summary>
    public double AreaOfOne => (Width * Height) - ((4 - Math.PI) * Corner * Corner);

    /// <summary>Of one, at a distance round the girth from its middle, mm.</summary>
    public double HeightAt(double aside)
    {
        var past = Math.Max(0, Math.Abs(aside) - (Width / 2) + Corner);
        return Height - (2 * Corner) + (2 * Math.Sqrt(Math.Max(0, (Corner - past) * (Corner + past))));
    }

    /// <summary>Length of the edge of one, mm.</summary>
    public double EdgeOfOne => (2 * (Width + Height)) - ((8 - (2 * Math.PI)) * Corner);
}

/// <summary>A tube that hangs from a head and keeps what comes in apart from what goes out.</summary>
public sealed record SleeveDesign(
    string Path,
    string Name,
    Material Material,
    double OutsideDiameter,
    double Wall,
    double Length,
    PortHost HangsFrom,
    Fixing Fixed,
    ImmutableArray<WindowsDesign> Windows)
{
    public double InnerRadius => (OutsideDiameter / 2) - Wall;
}

/// <summary>The arrangement of equal holes.</summary>
public enum HolePattern
{
    Staggered60,
    Staggered45,
    Square,
    Rings,
}

/// <summary>Equal round holes by rule; only whole ones inside the margin.</summary>
/// <param name="Pitch">Least distance of centres, mm.</param>
/// <param name="Margin">From hole edge to the plate's edge, and to a bore's, mm.</param>
public sealed record HolePatternDesign(string Path, double HoleDiameter, double Pitch, HolePattern Pattern, double Margin);

/// <summary>A perforated disc that fits a sleeve, or the shell.</summary>
/// <param name="Fits">Name of the sleeve; null for the shell.</param>
/// <param name="Height">Of its lower face, mm in the vessel's frame.</param>
/// <param name="Clearance">Radial, to what it fits, mm; negative for a press fit.</param>
/// <param name="Bore">Diameter of a central opening for a tube that passes through, mm; zero for none.</param>
/// <param name="OutsideDiameter">The bore that it fits less twice the clearance.</param>
public sealed record DiscDesign(
    string Path,
    string Name,
    Material Material,
    string? Fits,
    double Height,
    double Thickness,
    double Clearance,
    Fixing Fixed,
    double Bore,
    double OutsideDiameter,
    HolePatternDesign Holes);

/// <summary>Loose fibres between two discs; bought.</summary>
/// <param name="Material">As it is bought: <c>stainless wool</c>.</param>
/// <param name="Family">For what it may touch in the wet; null where the name does not say.</param>
/// <param name="Lower">Name of the disc below; null when there is none.</param>
/// <param name="Upper">Name of the disc above; null when there is none.</param>
/// <param name="Density">Of the packing as stuffed, kg/m3.</param>
/// <param name="FibreDiameter">mm; null when not given.</param>
public sealed record PackingDesign(
    string Path,
    string Name,
    string Material,
    MaterialFamily? Family,
    string? Lower,
    string? Upper,
    double Density,
    double? FibreDiameter);
