using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Members.Saddles;

/// <summary>Which edges of the back plate are bent towards the shell.</summary>
public enum SaddleEars
{
    /// <summary>Left and right: the ears' ends meet the shell on straight lines.</summary>
    Sides,

    /// <summary>Top and bottom: the ears' ends follow the shell's curve.</summary>
    Ends,
}

/// <summary>A back plate with two bent ears that are welded to the shell.</summary>
/// <param name="Width">Over all across (along the girth), outside of bent ears, mm.</param>
/// <param name="PlateHeight">Over all up, outside of bent ears, mm.</param>
/// <param name="StandOff">Distance from the shell's outside, at its nearest, to the plate's back (the face towards the shell), mm.</param>
/// <param name="InsideRadius">Inside radius of the bends, mm.</param>
/// <param name="K">Place of the neutral line as a share of the thickness from the inside.</param>
public sealed record SaddleDesign(
    string Path,
    string Name,
    Material Material,
    double Height,
    double Angle,
    double Thickness,
    double Width,
    double PlateHeight,
    double StandOff,
    SaddleEars Ears,
    double InsideRadius,
    double K,
    BoltsDesign Bolts) : BracketDesign(Path, Name, Material, Height, Angle, Thickness, Bolts)
{
    /// <summary>The left and the right ear, or the upper and the lower one.</summary>
    public override int Edges => 2;

    public override double EdgeLength => Ears == SaddleEars.Sides ? PlateHeight : Width;

    public override Point2 Flat
    {
        get
        {
            var bends = 2 * (InsideRadius + Thickness);
            return new(Width - (Ears == SaddleEars.Sides ? bends : 0), PlateHeight - (Ears == SaddleEars.Ends ? bends : 0));
        }
    }

    public override double EdgeLevel(double along, double radius) =>
        Circles.HalfChord(radius, Ears == SaddleEars.Sides ? (Width / 2) - Thickness : along);

    public override (Point2 Middle, Point2 Way) OnEdge(int edge, double along)
    {
        var middle = new Point2(0, Height);
        if (Ears == SaddleEars.Sides)
        {
            var aside = (Width - Thickness) / 2 * ((2 * edge) - 1);
            return (middle + new Point2(aside, along), new(0, 1));
        }

        var up = (PlateHeight - Thickness) / 2 * (1 - (2 * edge));
        return (middle + new Point2(along, up), new(1, 0));
    }

    internal override Bracket Build(VesselDesign vessel) => new Saddle(this, vessel);
}
