using System.Globalization;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>
/// What closes one end of the shell. A closed set: <see cref="FlatHead"/>, <see cref="DishedHead"/>, <see cref="ConeHead"/>.
/// </summary>
public abstract record HeadDesign(string Path, Material Material, double Wall);

/// <summary>Where a flat head sits: inside the shell, or on its end.</summary>
public enum Seat
{
    Inset,
    Overlay,
}

/// <param name="Path">See <see cref="VesselDesign"/>.</param>
/// <param name="Material">Of the plate.</param>
/// <param name="Wall">Thickness of the plate (the key is <c>thickness</c>).</param>
/// <param name="Seat">Inset or overlay.</param>
/// <param name="Recess">Inset only: how far the outer face lies inside the shell's end.</param>
/// <param name="Clearance">Inset only: radial gap between plate and shell.</param>
/// <param name="OutsideDiameter">Of the plate: the shell's bore less twice the clearance when inset; the shell's
/// outside diameter unless given when overlay.</param>
public sealed record FlatHead(
    string Path, Material Material, double Wall, Seat Seat, double Recess, double Clearance, double OutsideDiameter)
    : HeadDesign(Path, Material, Wall);

/// <summary>
/// A round dish of the shell's outside diameter, butted to the shell's end; spun from a disc, or of gores. A closed set:
/// <see cref="HemisphereHead"/>, <see cref="EllipsoidHead"/>, <see cref="TorisphereHead"/>, <see cref="PanHead"/>,
/// <see cref="ToriconeHead"/>.
/// </summary>
public abstract record DishedHead(string Path, Material Material, double Wall) : HeadDesign(Path, Material, Wall)
{
    /// <summary>Height of the straight flange between dish and shell, mm.</summary>
    public double Flange { get; init; }

    /// <summary>Null when spun.</summary>
    public GoreDesign? Gores { get; init; }

    /// <summary>What it is called: <c>half sphere</c>.</summary>
    public abstract string Shape { get; }

    /// <summary>Inside radius of its sharpest turn, mm, where that is not the whole of it.</summary>
    public virtual double Sharpest => double.PositiveInfinity;
}

/// <summary>A half sphere.</summary>
public sealed record HemisphereHead(string Path, Material Material, double Wall) : DishedHead(Path, Material, Wall)
{
    public override string Shape => "half sphere";
}

/// <summary>Half an ellipsoid of revolution, inside twice as wide as it would be high if whole: 2:1.</summary>
public sealed record EllipsoidHead(string Path, Material Material, double Wall) : DishedHead(Path, Material, Wall)
{
    public override string Shape => "2:1 ellipsoid";
}

/// <summary>A spherical crown and a knuckle.</summary>
/// <param name="Crown">Inside radius, mm.</param>
/// <param name="Knuckle">Inside radius, mm.</param>
/// <param name="Standard">By which they were chosen; null when given.</param>
public sealed record TorisphereHead(
    string Path, Material Material, double Wall, double Crown, double Knuckle, string? Standard)
    : DishedHead(Path, Material, Wall)
{
    public override string Shape => Standard is null ? "torisphere" : $"torisphere, {Standard}";

    public override double Sharpest => Knuckle;
}

/// <summary>A flat plate whose rim is turned up to a flange.</summary>
/// <param name="Knuckle">Inside radius of the turn, mm.</param>
public sealed record PanHead(string Path, Material Material, double Wall, double Knuckle) : DishedHead(Path, Material, Wall)
{
    public override string Shape => "flanged flat";

    public override double Sharpest => Knuckle;
}

/// <summary>A spun cone: its tip is a round nose, its rim a knuckle.</summary>
/// <param name="HalfAngle">Between axis and line, radians.</param>
/// <param name="Nose">Inside radius, mm.</param>
/// <param name="Knuckle">Inside radius, mm.</param>
public sealed record ToriconeHead(string Path, Material Material, double Wall, double HalfAngle, double Nose, double Knuckle)
    : DishedHead(Path, Material, Wall)
{
    public override string Shape => "cone with a knuckle";

    public override double Sharpest => Math.Min(Nose, Knuckle);
}

/// <summary>
/// A cone rolled from sheet with its seam along a straight line; inside it meets the shell's bore. The port at its pole closes
/// its tip.
/// </summary>
/// <param name="HalfAngle">Between axis and line, radians.</param>
/// <param name="SeamAngle">Of the first seam, radians in [0, 2 pi).</param>
/// <param name="RootGap">Left open along each seam before welding, mm.</param>
public sealed record ConeHead(
    string Path, Material Material, double Wall, double HalfAngle, double SeamAngle, double RootGap)
    : HeadDesign(Path, Material, Wall)
{
    /// <summary>Equal sheets that it is put together from, each with two seams, from <see cref="SeamAngle"/> on.</summary>
    public int Segments { get; init; } = 1;

    public SheetSeams Seams => new(SeamAngle, Segments);

    /// <summary>What a segment of the top or bottom is called.</summary>
    public static string SegmentOf(string end) => $"{end} segment";

    /// <summary>From one seam to the next.</summary>
    public double Pitch => Seams.Pitch;
}

/// <summary>Equal strips from rim to a polar cap, rolled along the meridian and welded to each other.</summary>
/// <param name="Count">At least 6.</param>
/// <param name="CapDiameter">Chord of the polar cap, across the middle of the wall, mm: a gore's tip can be neither
/// cut nor welded.</param>
/// <param name="SeamAngle">Of the first seam, radians in [0, 2 pi).</param>
public sealed record GoreDesign(string Path, int Count, double CapDiameter, double SeamAngle)
{
    public SheetSeams Seams => new(SeamAngle, Count);

    /// <summary>What a gore of the top or bottom is called.</summary>
    public static string GoreOf(string end) => $"{end} gore";

    /// <summary>What the polar cap of the top or bottom is called.</summary>
    public static string CapOf(string end) => $"{end} cap";
}
