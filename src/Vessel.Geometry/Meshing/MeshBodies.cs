using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>Parts of a mesh that hang together.</summary>
public static class MeshBodies
{
    /// <summary>Each by itself, in the order of their first triangles; the mesh itself where it is one.</summary>
    public static ImmutableArray<Mesh> Of(Mesh mesh)
    {
        var root = new int[mesh.Vertices.Length];
        for (var i = 0; i < root.Length; i++)
            root[i] = i;
        foreach (var (a, b, c) in mesh.Triangles)
        {
            Join(a, b);
            Join(b, c);
        }

        var bodies = mesh.Triangles.GroupBy(t => Root(t.A)).ToList();
        return bodies.Count <= 1 ? [mesh] : [.. bodies.Select(body => Alone(mesh, body))];

        int Root(int vertex)
        {
            while (root[vertex] != vertex)
                vertex = root[vertex] = root[root[vertex]];
            return vertex;
        }

        void Join(int a, int b)
        {
            var (one, other) = (Root(a), Root(b));
            root[Math.Max(one, other)] = Math.Min(one, other);
        }
    }

    private static Mesh Alone(Mesh mesh, IEnumerable<Triangle> triangles)
    {
        var (number, vertices) = (new Dictionary<int, int>(), ImmutableArray.CreateBuilder<Vector3>());
        int Of(int vertex)
        {
            if (number.TryAdd(vertex, vertices.Count))
                vertices.Add(mesh.Vertices[vertex]);
            return number[vertex];
        }

        var own = triangles.Select(t => new Triangle(Of(t.A), Of(t.B), Of(t.C))).ToImmutableArray();
        return new(vertices.DrainToImmutable(), own);
    }
}
