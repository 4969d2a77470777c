using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>Where an opening's edge lies. A closed set: <see cref="RoundEdge"/>, <see cref="EllipseEdge"/>, <see cref="HolesEdge"/>,
/// <see cref="PointsEdge"/>.</summary>
public abstract record OpeningShape
{
    /// <summary>How far it reaches along a unit direction, mm from the vessel's origin.</summary>
    public abstract Interval Along(Vector3 up);
}

/// <summary>Circles round the vessel's axis between two heights.</summary>
public sealed record RoundEdge(double Radius, double Low, double High) : OpeningShape
{
    public override Interval Along(Vector3 up)
    {
        var reach = Radius * Math.Sqrt((up.X * up.X) + (up.Y * up.Y));
        return new((Low * up.Z) - reach, (High * up.Z) + reach);
    }
}

/// <summary>An ellipse in any plane: its middle, and two half diameters of which each runs along the tangent at the other's end.</summary>
public sealed record EllipseEdge(Vector3 Middle, Vector3 One, Vector3 Other) : OpeningShape
{
    public override Interval Along(Vector3 up)
    {
        var reach = double.Hypot(One.Dot(up), Other.Dot(up));
        return new(Middle.Dot(up) - reach, Middle.Dot(up) + reach);
    }
}

/// <summary>Equal round holes through a level plate.</summary>
/// <param name="Centres">Centres in the vessel's X and Y; at least one.</param>
public sealed record HolesEdge(ImmutableArray<Point2> Centres, double Radius, double Low, double High) : OpeningShape
{
    public override Interval Along(Vector3 up)
    {
        var rim = Radius * Math.Sqrt((up.X * up.X) + (up.Y * up.Y));
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var centre in Centres)
        {
            var along = (centre.U * up.X) + (centre.V * up.Y);
            (least, most) = (Math.Min(least, along), Math.Max(most, along));
        }

        return new((Low * up.Z) + least - rim, (High * up.Z) + most + rim);
    }
}

/// <summary>An edge told by points on it; at least one.</summary>
public sealed record PointsEdge(ImmutableArray<Vector3> Points) : OpeningShape
{
    public override Interval Along(Vector3 up)
    {
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var point in Points)
        {
            var along = point.Dot(up);
            (least, most) = (Math.Min(least, along), Math.Max(most, along));
        }

        return new(least, most);
    }
}
