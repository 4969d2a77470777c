using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A convex body, known by the point of it that lies furthest in any direction. A closed set.</summary>
public abstract record ConvexBody
{
    private protected ConvexBody()
    {
    }

    /// <summary>A point of the body that no other exceeds in that direction, which need not be of unit length.</summary>
    public abstract Vector3 Furthest(Vector3 direction);
}

/// <summary>A round bar with flat ends, from A to B.</summary>
public sealed record Bar(Vector3 A, Vector3 B, double Radius) : ConvexBody
{
    private readonly Vector3 _axis = (B - A).Unit();

    public override Vector3 Furthest(Vector3 direction)
    {
        var end = direction.Dot(_axis) > 0 ? B : A;
        var across = direction.Across(_axis);
        var length = across.Length;
        return length <= 1e-12 * direction.Length ? end : end + ((Radius / length) * across);
    }
}

/// <summary>An ellipse by its centre and two half diameters of which either is parallel to the tangent at the other's end.</summary>
public readonly record struct Ellipse3(Vector3 Centre, Vector3 U, Vector3 V)
{
    public Vector3 Furthest(Vector3 direction)
    {
        var (u, v) = (U.Dot(direction), V.Dot(direction));
        var length = double.Hypot(u, v);
        return length == 0 ? Centre : Centre + ((u / length) * U) + ((v / length) * V);
    }
}

/// <summary>A round bar whose ends are cut aslant: the least convex body round both its end ellipses.</summary>
public sealed record MitredBar(Ellipse3 A, Ellipse3 B) : ConvexBody
{
    public override Vector3 Furthest(Vector3 direction)
    {
        var (a, b) = (A.Furthest(direction), B.Furthest(direction));
        return a.Dot(direction) > b.Dot(direction) ? a : b;
    }
}

/// <summary>The least convex body round some points: a box, a segment, a slice of a bend.</summary>
public sealed record Hull(ImmutableArray<Vector3> Points) : ConvexBody
{
    public override Vector3 Furthest(Vector3 direction)
    {
        var (best, most) = (Points[0], Points[0].Dot(direction));
        foreach (var point in Points)
        {
            if (point.Dot(direction) is var along && along > most)
                (best, most) = (point, along);
        }

        return best;
    }
}
