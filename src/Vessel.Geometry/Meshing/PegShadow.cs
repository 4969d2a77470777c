using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// What a facet near a cutting plane covers of it, seen square to the plane: a peg stands clear of the facet if it stands clear of that.
/// </summary>
internal sealed class PegShadow
{
    private readonly ImmutableArray<Point2> _corners;
    private readonly Box2 _box;

    private PegShadow(ImmutableArray<Point2> corners)
    {
        _corners = corners;
        _box = corners.Aggregate(Box2.Empty, (box, corner) => box.Join(corner));
    }

    /// <summary>Shadows of all facets that come within the reach of the plane on either side.</summary>
    public static List<PegShadow> Of(Mesh mesh, Frame3 plane, double reach)
    {
        var local = mesh.Vertices.Select(plane.ToLocal).ToArray();
        var shadows = new List<PegShadow>();
        foreach (var (a, b, c) in mesh.Triangles)
        {
            var (high, low) = (Math.Max(local[a].Z, Math.Max(local[b].Z, local[c].Z)),
                Math.Min(local[a].Z, Math.Min(local[b].Z, local[c].Z)));
            if (low > reach || high < -reach)
                continue;
            var part = Below(Below([local[a], local[b], local[c]], reach, 1), reach, -1);
            if (part.Count > 0)
                shadows.Add(new([.. part.Select(p => new Point2(p.X, p.Y))]));
        }

        return shadows;
    }

    /// <summary>Distance from a place to it, mm: zero within it; no more than <paramref name="most"/>.</summary>
    public double Clear(Point2 at, double most)
    {
        if (at.U < _box.Min.U - most || at.U > _box.Max.U + most || at.V < _box.Min.V - most || at.V > _box.Max.V + most)
            return most;
        var (left, right) = (true, true);
        for (var i = 0; i < _corners.Length; i++)
        {
            var (a, b) = (_corners[i], _corners[(i + 1) % _corners.Length]);
            var (side, arm) = (b - a, at - a);
            var turn = side.Cross(arm);
            (left, right) = (left && turn >= 0, right && turn <= 0);
            var square = side.Dot(side);
            most = Math.Min(most, (arm - ((square == 0 ? 0 : Math.Clamp(arm.Dot(side) / square, 0, 1)) * side)).Length);
        }

        return left != right ? 0 : most;
    }

    /// <summary>The part of a convex outline below a height, on either side of the plane.</summary>
    private static List<Vector3> Below(List<Vector3> outline, double height, int side)
    {
        var kept = new List<Vector3>(outline.Count + 1);
        for (var i = 0; i < outline.Count; i++)
        {
            var (a, b) = (outline[i], outline[(i + 1) % outline.Count]);
            var (h, k) = (height - (side * a.Z), height - (side * b.Z));
            if (h >= 0)
                kept.Add(a);
            if (h * k < 0)
                kept.Add(a + (h / (h - k) * (b - a)));
        }

        return kept;
    }
}
