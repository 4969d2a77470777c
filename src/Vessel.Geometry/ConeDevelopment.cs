namespace Vessel.Geometry;

/// <summary>
/// A sheet rolled to a cone, or to one of several equal segments of one, exact: a sector of a ring round the flat's origin, which is the
/// cone's tip. A place is (angle round the cone's axis, distance from the tip along the line that keeps its length), in the part's frame,
/// whose -Z is the tip's way.
/// </summary>
/// <remarks>
/// On the middle of the wall a circle of radius r lies r / sin(half angle) from the tip, so that a turn becomes a sector of
/// 2 pi sin(half angle), a segment its share of that. The seam's edges are parallel to the sector's sides, half a root gap inside.
/// Classical; derived here.
/// </remarks>
/// <param name="HalfAngle">Between the cone's axis and its line, radians.</param>
/// <param name="Seam">Angle of the middle of the gap, of the first where there are two, radians.</param>
/// <param name="Gap">Root gap, mm; the same all along the seam.</param>
/// <param name="Lengths">Lengths from the tip to the narrow and to the wide edge, mm.</param>
/// <param name="TipUp">Whether the tip lies above on the flat. The flat is turned by half a turn for this, never
/// mirrored.</param>
public sealed record ConeDevelopment(double HalfAngle, double Seam, double Gap, Interval Lengths, bool TipUp) : Development
{
    /// <summary>How many such sheets go round the cone.</summary>
    public int Segments { get; init; } = 1;

    /// <summary>Added along either side and cut off when it is rolled, mm.</summary>
    public double Trim { get; init; }

    /// <summary>Angle from the middle of the gap on one side to the middle of the sheet, round the axis.</summary>
    private double Half => Math.PI / Segments;

    /// <summary>Angle of the flat for one round the axis.</summary>
    public double Share => Math.Sin(HalfAngle);

    /// <summary>Length of a seam edge, mm; both are equal.</summary>
    public double SeamLength => OnEdge(Lengths.End) - OnEdge(Lengths.Start);

    private double Sense => TipUp ? -1 : 1;

    /// <summary>Angles are first brought to within half a turn of the sheet's middle.</summary>
    public override Point2 Flatten(Point2 place)
    {
        var from = Seam + (Half - Math.PI);
        return OnRay(Share * (Turns.From(place.U, from) - from - Math.PI), place.V);
    }

    /// <summary>How a place on the flat moves as one on the cone does by a rate of (angle, distance from the tip).</summary>
    public Point2 FlatSlope(Point2 place, Point2 rate)
    {
        var ray = (1 / place.V) * Flatten(place);
        // Greater angles lie clockwise of a ray, on either way up.
        return (rate.V * ray) - (Share * rate.U * place.V * ray.Turned);
    }

    public override Point2 Raise(Point2 flat)
    {
        var at = Sense * flat;
        return new(Seam + Half + (Math.Atan2(at.U, at.V) / Share), at.Length);
    }

    /// <summary>Where a side is trimmed to the seam's edge: -1 at small angles, +1 at great ones.</summary>
    public Line2 TrimLine(int side)
    {
        Point2 At(double length) => OnRay(side * ((Half * Share) - Math.Asin(Gap / 2 / length)), length);
        return new(At(Lengths.Start), At(Lengths.End));
    }

    /// <summary>The flat's edge, counter-clockwise: wide arc, seam edge, narrow arc, seam edge.</summary>
    public Loop2 Outline()
    {
        var (wide, narrow) = (Arc(Lengths.End), Arc(Lengths.Start));
        var inner = narrow with { From = narrow.From + narrow.Sweep, Sweep = -narrow.Sweep };
        return new([wide, new Line2(wide.End, inner.Start), inner, new Line2(inner.End, wide.Start)]);
    }

    /// <summary>How far along a side of the sector its edge is that far from the tip.</summary>
    private double OnEdge(double length) => Math.Sqrt((length - (Gap / 2)) * (length + (Gap / 2)));

    private Point2 OnRay(double turn, double length) => Sense * length * new Point2(Math.Sin(turn), Math.Cos(turn));

    /// <summary>Counter-clockwise, from the side of great angles to that of small ones.</summary>
    private Arc2 Arc(double length)
    {
        var half = (Half * Share) - Math.Asin(((Gap / 2) - Trim) / length);
        return new(default, length, (Sense * Math.PI / 2) - half, 2 * half);
    }
}
