using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A straight piece: turned, a cylinder, cone, or flat ring.</summary>
public sealed record LinePiece(Point2 A, Point2 B) : ProfilePiece
{
    private Point2 Direction => (B - A).Unit();

    public override double Length => (B - A).Length;

    /// <summary>pi (r1 + r2) slant.</summary>
    public override double Area => Math.PI * (A.U + B.U) * Length;

    /// <summary>pi h (r1^2 + r1 r2 + r2^2) / 3.</summary>
    public override double Volume => Math.PI / 3 * (B.V - A.V) * ((A.U * A.U) + (A.U * B.U) + (B.U * B.U));

    public override Point2 At(double along) => along == Length ? B : A + (along * Direction);

    public override Point2 Normal(double along) => -Direction.Turned;

    public override double RadiusAt(double height) => A.V == B.V
        ? Math.Max(A.U, B.U)
        : A.U + ((B.U - A.U) * (height - A.V) / (B.V - A.V));

    public override double VolumeBelow(double height)
    {
        if (A.V == B.V)
            return 0;
        var z = Math.Clamp(height, A.V, B.V);
        var r = RadiusAt(z);
        return Math.PI / 3 * (z - A.V) * ((A.U * A.U) + (A.U * r) + (r * r));
    }

    /// <summary>
    /// On the axis it grows evenly; off it as on a cylinder of its middle, as much along as across: a chart that is squeezed along
    /// the line would bring its two edges nearer to each other than their chords.
    /// </summary>
    internal override Interval Spread => new(SpreadAt(0), SpreadAt(Length));

    internal override (Point2 At, Point2 Normal) AtSpread(double spread) =>
        (At(A.U == 0 ? spread : Math.Log(spread) / Pace), Normal(0));

    private double Pace => 2 / (A.U + B.U);

    private double SpreadAt(double along) => A.U == 0 ? along : Math.Exp(Pace * along);

    public override LinePiece Offset(double distance) => new(A + (distance * Normal(0)), B + (distance * Normal(0)));

    public override LinePiece Part(Interval along) => new(At(along.Start), At(along.End));

    public override LinePiece Moved(double up) => new(A + new Point2(0, up), B + new Point2(0, up));

    public override LinePiece Flipped() => new(new(B.U, -B.V), new(A.U, -A.V));

    public override ProfileFoot Project(Point2 point)
    {
        var (direction, normal) = (Direction, Normal(0));
        var along = (point - A).Dot(direction);
        return new(along, A + (along * direction), normal, (point - A).Dot(normal)) { Spread = SpreadAt(along) };
    }

    /// <summary>
    /// With the line's point p and direction d, the radius of the cone at height z being q + k z: the roots of
    /// a s^2 + 2 b s + c with a = d_xy^2 - k^2 d_z^2, b = p_xy . d_xy - q k d_z, c = p_xy^2 - q^2.
    /// </summary>
    private protected override ImmutableArray<double> Crossings(Vector3 point, Vector3 direction)
    {
        var rise = B.V - A.V;
        if (Math.Abs(rise) <= 1e-12 * Length)
            return direction.Z == 0 ? [] : [(A.V - point.Z) / direction.Z];
        var k = (B.U - A.U) / rise;
        // From the line's point nearest to the axis, for there the coefficients are least.
        var across = (direction.X * direction.X) + (direction.Y * direction.Y);
        var shift = across == 0 ? 0 : -((point.X * direction.X) + (point.Y * direction.Y)) / across;
        var near = point + (shift * direction);
        var q = A.U + (k * (near.Z - A.V));
        var apart = double.Hypot(near.X, near.Y);
        var a = across - (k * k * direction.Z * direction.Z);
        var b = -q * k * direction.Z;
        var c = (apart - q) * (apart + q);
        return [.. Quadratic(a, b, c).Select(root => shift + root)];
    }

    private static ImmutableArray<double> Quadratic(double a, double b, double c)
    {
        if (Math.Abs(a) <= 1e-15)
            return b == 0 ? [] : [-c / (2 * b)];
        var under = (b * b) - (a * c);
        // Rounding may leave a line that touches a hair outside.
        if (under < -1e-14 * ((b * b) + Math.Abs(a * c)))
            return [];
        var t = -(b + Math.CopySign(Math.Sqrt(Math.Max(0, under)), b));
        return t == 0 ? [0] : [t / a, c / t];
    }
}
