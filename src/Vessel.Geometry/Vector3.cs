using System.Runtime.CompilerServices;

namespace Vessel.Geometry;

/// <summary>A point, or a displacement, in space; millimetres.</summary>
/// <remarks>Millions of these are added while meshes are written: a call would cost more than the sum.</remarks>
public readonly record struct Vector3(double X, double Y, double Z)
{
    public static readonly Vector3 Zero = new(0, 0, 0);
    public static readonly Vector3 UnitX = new(1, 0, 0);
    public static readonly Vector3 UnitY = new(0, 1, 0);
    public static readonly Vector3 UnitZ = new(0, 0, 1);

    public double Length => Math.Sqrt(Dot(this));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3 operator +(Vector3 a, Vector3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3 operator -(Vector3 a, Vector3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vector3 operator -(Vector3 a) => new(-a.X, -a.Y, -a.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector3 operator *(double k, Vector3 a) => new(k * a.X, k * a.Y, k * a.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Dot(Vector3 b) => (X * b.X) + (Y * b.Y) + (Z * b.Z);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Vector3 Cross(Vector3 b) => new((Y * b.Z) - (Z * b.Y), (Z * b.X) - (X * b.Z), (X * b.Y) - (Y * b.X));

    /// <summary>Displacement of length one in the same direction. The displacement must not be zero.</summary>
    public Vector3 Unit() => (1 / Length) * this;

    /// <summary>What is left after taking away the share along the unit vector <paramref name="axis"/>.</summary>
    public Vector3 Across(Vector3 axis) => this - (Dot(axis) * axis);

    /// <summary>Distance to the segment a-b; a and b may coincide.</summary>
    public double DistanceToSegment(Vector3 a, Vector3 b)
    {
        var along = b - a;
        var square = along.Dot(along);
        var t = square == 0 ? 0 : Math.Clamp((this - a).Dot(along) / square, 0, 1);
        return (this - a - (t * along)).Length;
    }

    /// <summary>Distance to a triangle and what it holds; to its sides where it has no area.</summary>
    public double DistanceToTriangle(Vector3 a, Vector3 b, Vector3 c)
    {
        var normal = (b - a).Cross(c - a);
        var square = normal.Dot(normal);
        return square > 0
            && (b - a).Cross(this - a).Dot(normal) >= 0 && (c - b).Cross(this - b).Dot(normal) >= 0
            && (a - c).Cross(this - c).Dot(normal) >= 0
            ? Math.Abs((this - a).Dot(normal)) / Math.Sqrt(square)
            : Math.Min(DistanceToSegment(a, b), Math.Min(DistanceToSegment(b, c), DistanceToSegment(c, a)));
    }
}
