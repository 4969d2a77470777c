using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A mesh in the making: edges flattened once, vertices and triangles added face by face.</summary>
internal sealed class MeshBuilder
{
    private readonly List<Vector3> _vertices = [];
    private readonly List<Triangle> _triangles = [];
    private readonly HashSet<(int, int)> _directed = [];
    private readonly Dictionary<Edge3, List<(double Parameter, int Vertex)>> _rings = [];

    public Vector3 Vertex(int index) => _vertices[index];

    public int AddVertex(Vector3 at)
    {
        _vertices.Add(at);
        return _vertices.Count - 1;
    }

    public void AddTriangle(Triangle t)
    {
        _triangles.Add(t);
        _directed.Add((t.A, t.B));
        _directed.Add((t.B, t.C));
        _directed.Add((t.C, t.A));
    }

    /// <summary>Whether some triangle already runs from a to b.</summary>
    public bool Runs(int a, int b) => _directed.Contains((a, b));

    /// <summary>Makes the edge's vertices; the last parameter is the first point again and gets none.</summary>
    public void AddRing(Edge3 edge, ImmutableArray<double> parameters)
    {
        var ring = new List<(double, int)>(parameters.Length - 1);
        for (var i = 0; i + 1 < parameters.Length; i++)
            ring.Add((parameters[i], AddVertex(edge.At(parameters[i]))));
        _rings.Add(edge, ring);
    }

    public List<(double Parameter, int Vertex)> RingOf(Edge3 edge) => _rings[edge];

    /// <summary>The finished mesh. Throws when a face left it open, which would be our bug.</summary>
    public Mesh ToMesh()
    {
        if (_directed.Count != 3 * _triangles.Count || _directed.Any(e => !_directed.Contains((e.Item2, e.Item1))))
            throw new InvalidOperationException("a mesh came out open");
        return new([.. _vertices], [.. _triangles]);
    }
}
