namespace Vessel.Geometry;

/// <summary>A point, or a displacement, in a plane or in the chart of a surface; millimetres.</summary>
public readonly record struct Point2(double U, double V)
{
    public double Length => Math.Sqrt((U * U) + (V * V));

    public double Angle => Math.Atan2(V, U);

    /// <summary>The displacement turned a quarter turn counter-clockwise.</summary>
    public Point2 Turned => new(-V, U);

    public static Point2 operator +(Point2 a, Point2 b) => new(a.U + b.U, a.V + b.V);

    public static Point2 operator -(Point2 a, Point2 b) => new(a.U - b.U, a.V - b.V);

    public static Point2 operator -(Point2 a) => new(-a.U, -a.V);

    public static Point2 operator *(double k, Point2 a) => new(k * a.U, k * a.V);

    /// <summary>The point at <paramref name="radius"/> from the origin, <paramref name="angle"/> from +U.</summary>
    public static Point2 Polar(double radius, double angle) => new(radius * Math.Cos(angle), radius * Math.Sin(angle));

    public double Dot(Point2 b) => (U * b.U) + (V * b.V);

    /// <summary>Twice the signed area of the triangle (0, this, b): positive when b lies to the left.</summary>
    public double Cross(Point2 b) => (U * b.V) - (V * b.U);

    /// <summary>Displacement of length one in the same direction. The displacement must not be zero.</summary>
    public Point2 Unit() => (1 / Length) * this;

    // The printer that a record comes with would print Turned, and that its own, without end.
    public override string ToString() => FormattableString.Invariant($"({U}, {V})");
}
