using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>The edges of a mesh with the normals of the two facets that meet there.</summary>
public static class SharpEdges
{
    /// <summary>Edges at which the surface turns by more than the angle.</summary>
    /// <param name="angle">Radians; more than facets of a smooth surface turn.</param>
    public static ImmutableArray<(Vector3 A, Vector3 B)> Of(Mesh mesh, double angle)
    {
        var least = Math.Cos(angle);
        return Where(mesh, (one, other) => one.Dot(other) < least);
    }

    /// <summary>Smooth edges between a facet that faces the viewer and one that does not.</summary>
    /// <param name="toward">Unit direction to the viewer.</param>
    public static ImmutableArray<(Vector3 A, Vector3 B)> Turning(Mesh mesh, double angle, Vector3 toward)
    {
        var least = Math.Cos(angle);
        return Where(mesh, (one, other) => one.Dot(other) >= least && Faces(one, toward) != Faces(other, toward));
    }

    private static bool Faces(Vector3 normal, Vector3 toward) => normal.Dot(toward) > 1e-6;

    private static ImmutableArray<(Vector3 A, Vector3 B)> Where(Mesh mesh, Func<Vector3, Vector3, bool> wanted)
    {
        var open = new Dictionary<(int, int), Vector3>(mesh.Triangles.Length);
        var found = ImmutableArray.CreateBuilder<(Vector3, Vector3)>();
        foreach (var t in mesh.Triangles)
        {
            var (a, b, c) = (mesh.Vertices[t.A], mesh.Vertices[t.B], mesh.Vertices[t.C]);
            var across = (b - a).Cross(c - a);
            // A facet without area turns nowhere: it lets its neighbours meet through it as best they can.
            var normal = across.Length > 0 ? across.Unit() : Vector3.UnitZ;
            Meet(t.A, t.B, normal);
            Meet(t.B, t.C, normal);
            Meet(t.C, t.A, normal);
        }

        return found.ToImmutable();

        void Meet(int from, int to, Vector3 normal)
        {
            if (!open.Remove((to, from), out var other))
                open[(from, to)] = normal;
            else if (wanted(other, normal))
                found.Add((mesh.Vertices[from], mesh.Vertices[to]));
        }
    }
}
