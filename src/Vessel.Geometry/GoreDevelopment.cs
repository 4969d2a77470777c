using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// A strip of a surface of revolution between two meridians, laid flat. A place is (angle round the axis from the strip's centre
/// line in radians, distance along the meridian from the rim in mm); the flat's origin is the middle of the rim. Lengths in mm,
/// angles in radians.
/// </summary>
/// <remarks>
/// The flat keeps the girth: at a meridian distance m it is 2 h r(m) wide for half angle h and distance r from the axis, so that
/// strips that fill a turn go exactly round at every level; the rim and the other end are straight. It keeps the area, too,
/// and the length of the centre line (on a sphere the sinusoidal map of geographers), but its sides are longer than the meridians
/// that they become. So it is no isometry: dishing makes up the difference by stretching the middle. A strip that is only bent
/// stays straight across; its middle then lies inside the surface and its sides outside, as the sides and corners of a
/// polygon of the circle's girth do, most where the surface is widest and upright: at the rim. Derived here.
/// </remarks>
/// <param name="Meridian">Curve on which lengths are kept; runs from the strip's narrow end to the rim, where it is upright.</param>
/// <param name="HalfAngle">Angle from the centre line to a side, round the axis.</param>
/// <param name="PoleUp">Whether the pole lies above the rim on the flat. The flat is turned by half a turn for this,
/// never mirrored.</param>
public sealed record GoreDevelopment(Profile Meridian, double HalfAngle, bool PoleUp) : Development
{
    /// <summary>An upright rim leans by no more, radians.</summary>
    private const double Rounding = 1e-12;

    /// <summary>Radius of the rim, mm.</summary>
    public double Radius => Meridian.End.U;

    /// <summary>Length of the centre line, mm.</summary>
    public double Length => Meridian.Length;

    /// <summary>Length of a side of the flat, mm.</summary>
    public double SideLength => CurveMeasures.Length(Side(1));

    /// <summary>Share by which a side of the flat is longer than the centre line: what dishing stretches.</summary>
    public double Stretch => (SideLength / Length) - 1;

    /// <summary>How far the middle of a strip that is only bent lies inside the surface at the rim.</summary>
    public double FlatInside => Radius * (1 - (HalfAngle / Math.Tan(HalfAngle)));

    /// <summary>How far the sides of a strip that is only bent lie outside the surface at the rim.</summary>
    public double FlatOutside => Radius * ((HalfAngle / Math.Sin(HalfAngle)) - 1);

    /// <summary>What the middle of a strip that is only bent lacks in radius against its sides, as a share.</summary>
    public double RadialError => 1 - Math.Cos(HalfAngle);

    private double Sense => PoleUp ? -1 : 1;

    /// <summary>Half the width of the flat at a distance from the rim.</summary>
    public double HalfWidth(double m) => HalfAngle * RadiusAt(m);

    /// <summary>
    /// Distance from the rim where the surface leans by an angle towards the pole (on a sphere the latitude); the greatest such,
    /// or the whole length where it nowhere leans so far.
    /// </summary>
    public double LengthAtLean(double lean)
    {
        var (low, high) = (0.0, Length);
        lean += Rounding;
        if (Lean(high) <= lean)
            return high;
        for (var middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2)
            (low, high) = Lean(middle) <= lean ? (middle, high) : (low, middle);
        return low;
    }

    public override Point2 Flatten(Point2 place) => Sense * new Point2(place.U * RadiusAt(place.V), -place.V);

    public override Point2 Raise(Point2 flat)
    {
        var m = -Sense * flat.V;
        return new(Sense * flat.U / RadiusAt(m), m);
    }

    /// <summary>The flat's edge, counter-clockwise.</summary>
    public Loop2 Outline()
    {
        var (away, back) = (Side(-1), Side(1));
        return new([away, new Line2(away.End, back.Start), back, new Line2(back.End, away.Start)]);
    }

    private double RadiusAt(double m) => Meridian.At(Length - m).U;

    private double Lean(double m) => Math.Asin(Math.Clamp(-Meridian.Normal(Length - m).V, 0, 1));

    /// <param name="hand">-1: the side at negative angles, run from the rim; +1: the other, run towards it.</param>
    private GraphCurve2 Side(int hand)
    {
        double Distance(double t) => hand < 0 ? t : Length - t;
        ImmutableArray<double> joints = [.. Meridian.Joints.Select(along => hand < 0 ? Length - along : along).Order()];
        return new(
            t => Flatten(new(hand * HalfAngle, Distance(t))),
            // Towards the pole the surface narrows by the height of its normal's turn.
            t => Sense * new Point2(-HalfAngle * Meridian.Normal(Length - Distance(t)).V, hand),
            new(0, Length),
            joints);
    }
}
