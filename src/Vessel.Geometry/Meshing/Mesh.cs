using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A closed triangle mesh: vertices by index, each triangle counter-clockwise seen from outside.</summary>
public sealed record Mesh(ImmutableArray<Vector3> Vertices, ImmutableArray<Triangle> Triangles)
{
    /// <summary>Enclosed volume, mm3; positive when the triangles face outward.</summary>
    public double Volume =>
        Triangles.Sum(t => Vertices[t.A].Dot(Vertices[t.B].Cross(Vertices[t.C]))) / 6;

    /// <summary>Surface, mm2.</summary>
    public double Area =>
        Triangles.Sum(t => (Vertices[t.B] - Vertices[t.A]).Cross(Vertices[t.C] - Vertices[t.A]).Length) / 2;
}

/// <summary>Three vertex indices.</summary>
public readonly record struct Triangle(int A, int B, int C);
