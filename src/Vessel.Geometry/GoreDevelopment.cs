namespace Vessel.Geometry;

/// <summary>
/// A strip of a sphere between two meridians, laid flat. A place is (angle round the sphere's axis from the strip's centre
/// line in radians, distance along the meridian from the equator in mm); the flat's origin is the middle of the equator.
/// Lengths in mm, angles in radians.
/// </summary>
/// <remarks>
/// The flat keeps the girth: at a meridian distance m it is 2 h R cos(m / R) wide for half angle h and radius R, so that strips
/// that fill a turn go exactly round at every latitude; the equator and the other end are straight. It keeps the area, too,
/// and the length of the centre line (the sinusoidal map of geographers), but its sides are longer than the meridians that
/// they become. So it is no isometry: dishing makes up the difference by stretching the middle. A strip that is only bent
/// stays straight across; its middle then lies inside the sphere and its sides outside, as the sides and corners of a
/// polygon of the circle's girth do. Derived here.
/// </remarks>
/// <param name="Radius">Of the sphere on which lengths are kept.</param>
/// <param name="HalfAngle">From the centre line to a side, round the axis.</param>
/// <param name="Length">Of the centre line.</param>
/// <param name="PoleUp">Whether the pole lies above the equator on the flat. The flat is turned by half a turn for this,
/// never mirrored.</param>
public sealed record GoreDevelopment(double Radius, double HalfAngle, double Length, bool PoleUp) : Development
{
    /// <summary>Of a side of the flat.</summary>
    public double SideLength => CurveMeasures.Length(Side(1));

    /// <summary>By how much a side of the flat is longer than the centre line, as a share of it: what dishing stretches.</summary>
    public double Stretch => (SideLength / Length) - 1;

    /// <summary>How far the middle of a strip that is only bent lies inside the sphere at the equator.</summary>
    public double FlatInside => Radius * (1 - (HalfAngle / Math.Tan(HalfAngle)));

    /// <summary>How far the sides of a strip that is only bent lie outside the sphere at the equator.</summary>
    public double FlatOutside => Radius * ((HalfAngle / Math.Sin(HalfAngle)) - 1);

    /// <summary>What the middle of a strip that is only bent lacks in radius against its sides, as a share.</summary>
    public double RadialError => 1 - Math.Cos(HalfAngle);

    private double Sense => PoleUp ? -1 : 1;

    /// <summary>Half the width of the flat at a distance from the equator.</summary>
    public double HalfWidth(double m) => Radius * HalfAngle * Math.Cos(m / Radius);

    public override Point2 Flatten(Point2 place) =>
        Sense * new Point2(Radius * place.U * Math.Cos(place.V / Radius), -place.V);

    public override Point2 Raise(Point2 flat)
    {
        var m = -Sense * flat.V;
        return new(Sense * flat.U / (Radius * Math.Cos(m / Radius)), m);
    }

    /// <summary>The flat's edge, counter-clockwise.</summary>
    public Loop2 Outline()
    {
        var (away, back) = (Side(-1), Side(1));
        return new([away, new Line2(away.End, back.Start), back, new Line2(back.End, away.Start)]);
    }

    /// <param name="hand">-1: the side at negative angles, run from the equator; +1: the other, run towards it.</param>
    private GraphCurve2 Side(int hand)
    {
        double Distance(double t) => hand < 0 ? t : Length - t;
        return new(
            t => Flatten(new(hand * HalfAngle, Distance(t))),
            t => Sense * new Point2(HalfAngle * Math.Sin(Distance(t) / Radius), hand),
            new(0, Length),
            []);
    }
}
