using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>A straight piece of the outside that marks are set on: of the shell, or a flat head.</summary>
/// <param name="Name">Name of the part that it belongs to.</param>
/// <param name="Start">Arc length of the outside where the piece begins, mm.</param>
/// <param name="Deepest">Depth to which marks may be sunk into it, mm of the vessel.</param>
internal sealed record MarkGround(string Name, LinePiece Piece, double Start, double Deepest)
{
    public bool IsFlat => Piece.A.V == Piece.B.V;

    /// <summary>Arc lengths of the outside.</summary>
    public Interval Stations => new(Start, Start + Piece.Length);

    /// <summary>Radius of a flat ground, mm.</summary>
    public double Radius => Math.Max(Piece.A.U, Piece.B.U);

    /// <summary>Laid out for what lies about an angle, and as high as a station; neither matters on a flat one.</summary>
    public MarkChart About(double angle, double station) => new(this, angle, Piece.At(Math.Clamp(station - Start, 0, Piece.Length)).U);

    /// <summary>Upward as one reads who stands in front of the vessel, at its angle 0, and looks at a flat one from outside.</summary>
    public Vector3 Up => Piece.Normal(0).V > 0 ? -Vector3.UnitX : Vector3.UnitX;
}

/// <summary>
/// A ground laid out in a plane, x to the right and y upward as seen from outside, mm. On the shell x is the arc from an angle at one
/// radius and y the arc length of the outside; a flat one lies as it is, its axis in the origin.
/// </summary>
/// <param name="Radius">Radius at which arcs are true, mm.</param>
internal sealed record MarkChart(MarkGround Ground, double Angle, double Radius)
{
    private LinePiece Piece => Ground.Piece;

    /// <summary>So far out of the ground.</summary>
    public Vector3 At(Point2 chart, double depth)
    {
        var normal = Piece.Normal(0);
        if (Ground.IsFlat)
            return (chart.U * Vector3.UnitY) + (chart.V * Ground.Up) + new Vector3(0, 0, Piece.A.V + (depth * normal.V));
        var (sin, cos) = Math.SinCos(Angle + (chart.U / Radius));
        var (r, z) = Piece.At(chart.V - Ground.Start) + (depth * normal);
        return new(r * cos, r * sin, z);
    }

    /// <summary>The box round places of the outside, or of what stands on it; null when they lie elsewhere.</summary>
    /// <param name="about">An angle from which all of them lie within half a turn.</param>
    public Box2? BoxOf(ImmutableArray<Vector3> places, Interval stations, double about)
    {
        if (stations.End < Ground.Stations.Start || stations.Start > Ground.Stations.End)
            return null;
        if (Ground.IsFlat)
            return places.Aggregate(Box2.Empty, (box, at) => box.Join(new Point2(at.Y, at.Dot(Ground.Up))));
        var middle = Turns.Signed(about - Angle);
        var turns = places.Select(at => middle + Turns.Signed(Math.Atan2(at.Y, at.X) - about)).ToList();
        return new(new(Radius * turns.Min(), stations.Start), new(Radius * turns.Max(), stations.End));
    }

    /// <summary>Arc lengths of the outside that a convex outline takes up.</summary>
    public Interval StationsOf(ImmutableArray<Point2> outline)
    {
        if (!Ground.IsFlat)
            return new(outline.Min(p => p.V), outline.Max(p => p.V));
        var far = outline.Max(p => p.Length);
        var near = double.PositiveInfinity;
        var holdsAxis = true;
        for (var i = 0; i < outline.Length; i++)
        {
            var (a, b) = (outline[i], outline[(i + 1) % outline.Length]);
            holdsAxis &= (b - a).Cross(-a) > 0;
            near = Math.Min(near, new Vector3(0, 0, 0).DistanceToSegment(new(a.U, a.V, 0), new(b.U, b.V, 0)));
        }

        near = holdsAxis ? 0 : near;
        return Piece.A.U < Piece.B.U
            ? new(Ground.Start + near - Piece.A.U, Ground.Start + far - Piece.A.U)
            : new(Ground.Start + Piece.A.U - far, Ground.Start + Piece.A.U - near);
    }
}
