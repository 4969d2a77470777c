using System.Globalization;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>What closes one end of the shell, as it was read: all that checks, ports and what stands inside ask of it.</summary>
/// <param name="Path">Its mapping in the file.</param>
/// <param name="Wall">Thickness, mm.</param>
public abstract record HeadDesign(string Path, Material Material, double Wall)
{
    /// <summary>The flat plate that it is; null for a wall of revolution.</summary>
    public virtual HeadPlate? Plate => null;

    /// <summary>How far it reaches into the shell from its end, mm.</summary>
    public double Depth => Plate?.Depth ?? 0;

    /// <summary>Its faces where it is a wall of revolution; null for a plate, and where a size is at fault.</summary>
    /// <param name="rim">The shell at the end that it closes.</param>
    /// <param name="frame">The head's own; see <see cref="HeadShape"/>.</param>
    /// <param name="tip">Radius at which the port at its pole cuts a tip off, mm; zero without one.</param>
    public virtual HeadShape? Shape(ShellSection rim, Frame3 frame, double tip) => null;

    /// <summary>Whether a port of the shell may stand over its seam as well, so that one hole goes through both.</summary>
    public virtual bool CarriesOverSeam => false;

    /// <summary>Whether it has a tip that a port at its pole must close.</summary>
    public virtual bool IsClosedByPort => false;

    /// <summary>How much wider the hole in its tip is outside than inside, of the radius, mm; zero where it has no tip.</summary>
    public virtual double TipEdge => 0;
}

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
    : HeadDesign(Path, Material, Wall)
{
    public override HeadPlate Plate => new(OutsideDiameter, Wall, Seat == Seat.Inset, Seat == Seat.Inset ? Recess + Wall : 0);
}

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
    public abstract string Form { get; }

    /// <summary>Inside radius of its sharpest turn, mm, where that is not the whole of it.</summary>
    public virtual double Sharpest => double.PositiveInfinity;

    public override bool CarriesOverSeam => Gores is null;

    /// <summary>The inner face without its flange, from the pole to a radius at z = 0; null where a size is at fault.</summary>
    protected abstract Profile? Dish(double radius);

    public override HeadShape? Shape(ShellSection rim, Frame3 frame, double tip)
    {
        var radius = rim.OuterRadius - Wall;
        if (!(Flange >= 0 && double.IsFinite(Flange)) || Dish(radius) is not { } dish)
            return null;
        var inner = Flange < HeadShape.Least ? dish
            : dish.Moved(-Flange).Then(new(new LinePiece(new(radius, -Flange), new(radius, 0))));
        return new(inner.Offset(Wall), inner, Wall, frame, 0) { InnerSphere = IsSphere ? radius : null };
    }

    /// <summary>Whether it is a half sphere but for its flange.</summary>
    protected virtual bool IsSphere => false;
}

/// <summary>A half sphere.</summary>
public sealed record HemisphereHead(string Path, Material Material, double Wall) : DishedHead(Path, Material, Wall)
{
    public override string Form => "half sphere";

    protected override bool IsSphere => true;

    protected override Profile Dish(double radius) => Domes.Sphere(radius);
}

/// <summary>Half an ellipsoid of revolution, inside twice as wide as it would be high if whole: 2:1.</summary>
public sealed record EllipsoidHead(string Path, Material Material, double Wall) : DishedHead(Path, Material, Wall)
{
    public override string Form => "2:1 ellipsoid";

    protected override Profile Dish(double radius) => Domes.Ellipsoid(radius, radius / 2);
}

/// <summary>A spherical crown and a knuckle.</summary>
/// <param name="Crown">Inside radius, mm.</param>
/// <param name="Knuckle">Inside radius, mm.</param>
/// <param name="Standard">By which they were chosen; null when given.</param>
public sealed record TorisphereHead(
    string Path, Material Material, double Wall, double Crown, double Knuckle, string? Standard)
    : DishedHead(Path, Material, Wall)
{
    public override string Form => Standard is null ? "torisphere" : $"torisphere, {Standard}";

    public override double Sharpest => Knuckle;

    protected override Profile? Dish(double radius) =>
        Knuckle > 0 && Knuckle < radius && Crown > radius && double.IsFinite(Crown) ? Domes.Torisphere(radius, Crown, Knuckle) : null;
}

/// <summary>A flat plate whose rim is turned up to a flange.</summary>
/// <param name="Knuckle">Inside radius of the turn, mm.</param>
public sealed record PanHead(string Path, Material Material, double Wall, double Knuckle) : DishedHead(Path, Material, Wall)
{
    public override string Form => "flanged flat";

    public override double Sharpest => Knuckle;

    protected override Profile? Dish(double radius) => Knuckle > 0 && Knuckle < radius ? Domes.Pan(radius, Knuckle) : null;
}

/// <summary>A spun cone: its tip is a round nose, its rim a knuckle.</summary>
/// <param name="HalfAngle">Between axis and line, radians.</param>
/// <param name="Nose">Inside radius, mm.</param>
/// <param name="Knuckle">Inside radius, mm.</param>
public sealed record ToriconeHead(string Path, Material Material, double Wall, double HalfAngle, double Nose, double Knuckle)
    : DishedHead(Path, Material, Wall)
{
    public override string Form => "cone with a knuckle";

    public override double Sharpest => Math.Min(Nose, Knuckle);

    protected override Profile? Dish(double radius) =>
        HalfAngle is > 0 and < Math.PI / 2 && Nose > 0 && Knuckle > 0 && Knuckle < radius
            && Domes.ConeLine(radius, HalfAngle, Nose, Knuckle) > HeadShape.Least
            ? Domes.Toricone(radius, HalfAngle, Nose, Knuckle) : null;
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

    public override bool IsClosedByPort => true;

    /// <summary>A tip is cut square to the sheet.</summary>
    public override double TipEdge => Wall * Math.Cos(HalfAngle);

    /// <summary>Lines a wall apart, cut square at the wide end.</summary>
    public override HeadShape? Shape(ShellSection rim, Frame3 frame, double tip)
    {
        var (radius, (sin, cos)) = (rim.InnerRadius, Math.SinCos(HalfAngle));
        tip = tip < HeadShape.Least ? 0 : tip;
        if (!(sin > 0 && cos > 0 && radius > 0 && tip >= 0 && tip < radius))
            return null;
        Profile Face(Point2 edge)
        {
            var level = edge.V - ((edge.U - tip) * cos / sin);
            var line = new LinePiece(new(tip, level), edge);
            return tip > 0 ? new(new LinePiece(new(0, level), line.A), line) : new(line);
        }

        return new(Face(new(radius + (Wall * cos), -Wall * sin)), Face(new(radius, 0)), Wall, frame, tip);
    }
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
