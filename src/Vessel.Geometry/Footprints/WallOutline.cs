using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// The smallest hole with walls square to a rolled sheet that lets a straight cylinder through: the outline, in (angle,
/// height), of all the places (a, z) for which some radius of the wall lies inside the cylinder.
/// </summary>
/// <remarks>
/// The point at radius p, angle a, height z lies sideways of the axis by p sin a - e, and across it by
/// p cos a sin T - (z - z0) cos T. For one angle it is inside for z - z0 = (p cos a sin T -+ h) / cos T with
/// h = sqrt(r^2 - (p sin a - e)^2). The upper limit over all p of the wall is the largest of a concave function of p:
/// its stationary place clamped to the wall and to |p sin a - e| &lt;= r; the lower one is the same upside down. Clamped
/// stationary values join smoothly, so the outline has no corners but where upper and lower meet. Derived here.
/// </remarks>
public sealed class WallOutline
{
    /// <summary>Share of half the outline's domain.</summary>
    private const double Neighbour = 1e-7;

    private readonly double _innerRadius;
    private readonly double _outerRadius;
    private readonly double _r;
    private readonly double _offset;
    private readonly double _tilt;
    private readonly double _level;
    private readonly double _left;
    private readonly double _right;

    /// <param name="outer">The footprint on the wall's outer face; its origin lies on that face.</param>
    /// <param name="innerRadius">Inner radius of the wall. Offset and r together must stay inside it.</param>
    /// <param name="r">Radius of the cylinder that passes.</param>
    public WallOutline(CylinderFootprint outer, double innerRadius, double r)
    {
        if (Math.Abs(outer.Offset) + r > innerRadius)
            throw new ArgumentException("the cylinder leaves the wall sideways");
        (_innerRadius, _outerRadius, _r) = (innerRadius, outer.Radius, r);
        (_offset, _tilt) = (outer.Offset, outer.Tilt);
        _level = -Math.Sqrt((outer.OriginRadius - _offset) * (outer.OriginRadius + _offset)) * Math.Tan(_tilt);
        _right = Utmost(_offset + r);
        _left = -Utmost(r - _offset);
    }

    /// <summary>
    /// The outline by one parameter round it, counter-clockwise: -pi/2..pi/2 along the lower side from left to right,
    /// on to 3 pi/2 along the upper side back. Angles from where the axis points, heights from the frame's origin.
    /// </summary>
    public Point2 At(double t)
    {
        var (angle, side) = (Angle(t), Math.Cos(t) >= 0 ? -1 : 1);
        return new(angle, _level + (side * Limit(t, angle, side).Height));
    }

    /// <summary>d At / dt.</summary>
    public Point2 Slope(double t)
    {
        // Where both sides meet the outline runs straight up or down; its speed is that of a neighbour.
        var turns = (t + (Math.PI / 2)) / Math.PI;
        var end = Math.Round(turns);
        return Math.Abs(turns - end) < Neighbour
            ? new(0, Slope((Math.PI * (end + (end == 0 ? 2 * Neighbour : -2 * Neighbour))) - (Math.PI / 2)).V)
            : SlopeBetween(t);
    }

    private Point2 SlopeBetween(double t)
    {
        var (angle, side) = (Angle(t), Math.Cos(t) >= 0 ? -1 : 1);
        var turn = (_right - _left) / 2 * Math.Cos(t);
        return new(turn, side * turn * Limit(t, angle, side).PerAngle);
    }

    /// <summary>Where the lower side ends and the upper begins, at the rightmost place.</summary>
    public static ImmutableArray<double> Breaks { get; } = [Math.PI / 2];

    public static Interval Domain { get; } = new(-Math.PI / 2, 3 * Math.PI / 2);

    /// <summary>The largest angle that any radius of the wall gives to a sideways distance y.</summary>
    private double Utmost(double y) => Math.Asin(y / (y > 0 ? _innerRadius : _outerRadius));

    private double Angle(double t) => ((_left + _right) / 2) + ((_right - _left) / 2 * Math.Sin(t));

    /// <summary>
    /// The upper limit of height for the cylinder tilted by sign x tilt, and its derivative: that of the radius which
    /// gives it, for an envelope goes with its curves.
    /// </summary>
    private (double Height, double PerAngle) Limit(double t, double angle, int sign)
    {
        var (sin, cos) = Math.SinCos(angle);
        var rise = sign * cos * Math.Sin(_tilt);
        var radius = Governing(sin, rise);
        var y = (radius * sin) - _offset;
        var half = Math.Sqrt(Math.Max(0, ToRight(t, angle, radius, sin)) * Math.Max(0, ToLeft(t, angle, radius, sin)));
        var slope = (-radius * sign * sin * Math.Sin(_tilt)) - (half == 0 ? 0 : y * radius * cos / half);
        return (((radius * rise) + half) / Math.Cos(_tilt), slope / Math.Cos(_tilt));
    }

    private double Governing(double sin, double rise)
    {
        var (low, high) = (_innerRadius, _outerRadius);
        if (Math.Abs(sin) < 1e-15)
            return rise > 0 ? high : low;
        var (a, b) = ((_offset - _r) / sin, (_offset + _r) / sin);
        low = Math.Max(low, Math.Min(a, b));
        high = Math.Min(high, Math.Max(a, b));
        // At the utmost angles rounding may leave no radius at all; there is one, where both bounds meet.
        if (low > high)
            return Math.Clamp((low + high) / 2, _innerRadius, _outerRadius);
        // d/dp: rise = (p sin a - e) sin a / h.
        var sideways = Math.Sign(sin) * _r * rise / Math.Sqrt((sin * sin) + (rise * rise));
        return Math.Clamp((sideways + _offset) / sin, low, high);
    }

    /// <summary>
    /// r - y, summed so that nothing cancels towards the right end, where r + e = P sin(right) for the radius P that
    /// reaches farthest: P (sin right - sin a) + (P - p) sin a.
    /// </summary>
    private double ToRight(double t, double angle, double radius, double sin)
    {
        var utmost = _right > 0 ? _innerRadius : _outerRadius;
        var half = Math.Sin((Math.PI / 4) - (t / 2));
        var apart = (_right - _left) * half * half;
        return (2 * utmost * Math.Cos((_right + angle) / 2) * Math.Sin(apart / 2)) + ((utmost - radius) * sin);
    }

    /// <summary>r + y, the same way from the left end.</summary>
    private double ToLeft(double t, double angle, double radius, double sin)
    {
        var utmost = _left < 0 ? _innerRadius : _outerRadius;
        var half = Math.Cos((Math.PI / 4) - (t / 2));
        var apart = (_right - _left) * half * half;
        return (2 * utmost * Math.Cos((_left + angle) / 2) * Math.Sin(apart / 2)) - ((utmost - radius) * sin);
    }
}
