using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A mesh in the making: edges flattened once, vertices and triangles added face by face.</summary>
internal sealed class MeshBuilder
{
    private readonly ImmutableArray<Vector3>.Builder _vertices = ImmutableArray.CreateBuilder<Vector3>();
    private readonly ImmutableArray<Triangle>.Builder _triangles = ImmutableArray.CreateBuilder<Triangle>();
    private readonly HashSet<(int, int)> _alongRings = [];
    private readonly Dictionary<Edge3, List<(double Parameter, int Vertex)>> _rings = [];
    private readonly Dictionary<Corner3, int> _corners = [];
    private int _ringVertices;
    private ulong _open;

    public int VertexCount => _vertices.Count;

    public Vector3 Vertex(int index) => _vertices[index];

    public int AddVertex(Vector3 at)
    {
        _vertices.Add(at);
        return _vertices.Count - 1;
    }

    /// <summary>Makes room, so that a large mesh is not copied while it grows.</summary>
    public void Expect(int vertices, int triangles)
    {
        _vertices.Capacity = Math.Max(_vertices.Capacity, vertices);
        _triangles.Capacity = Math.Max(_triangles.Capacity, triangles);
    }

    public void AddTriangle(Triangle t)
    {
        _triangles.Add(t);
        AddSide(t.A, t.B);
        AddSide(t.B, t.C);
        AddSide(t.C, t.A);
    }

    /// <summary>Whether some triangle already runs from a to b, both of them vertices of one ring.</summary>
    public bool Runs(int a, int b) => _alongRings.Contains((a, b));

    /// <summary>
    /// Makes the edge's vertices; the last parameter of a closed one is the first point again and gets none. All rings come
    /// before any other vertex.
    /// </summary>
    public void AddRing(Edge3 edge, ImmutableArray<double> parameters)
    {
        var ring = new List<(double, int)>(parameters.Length);
        for (var i = 0; i + 1 < parameters.Length; i++)
        {
            ring.Add((
                parameters[i],
                i == 0 && edge.Ends is var (start, _) ? VertexOf(start) : AddVertex(edge.At(parameters[i]))));
        }

        if (edge.Ends is var (_, end))
            ring.Add((parameters[^1], VertexOf(end)));
        _rings.Add(edge, ring);
        _ringVertices = _vertices.Count;
    }

    /// <summary>Sides of the flattened edge, each from one vertex to the next; a closed one comes back to its first.</summary>
    public IEnumerable<((double Parameter, int Vertex) From, (double Parameter, int Vertex) To)> SidesOf(Edge3 edge)
    {
        var ring = _rings[edge];
        for (var i = 0; i + 1 < ring.Count; i++)
            yield return (ring[i], ring[i + 1]);
        if (edge.Ends is null)
            yield return (ring[^1], ring[0]);
    }

    private int VertexOf(Corner3 corner)
    {
        if (!_corners.TryGetValue(corner, out var vertex))
            _corners.Add(corner, vertex = AddVertex(corner.At));
        return vertex;
    }

    public List<(double Parameter, int Vertex)> RingOf(Edge3 edge) => _rings[edge];

    /// <summary>The finished mesh. Throws when a face left it open, which would be our bug.</summary>
    public Mesh ToMesh()
    {
        if (_open != 0)
            throw new InvalidOperationException("a mesh came out open");
        return new(_vertices.DrainToImmutable(), _triangles.DrainToImmutable());
    }

    private void AddSide(int a, int b)
    {
        // A side and its twin cancel out. Sums of 64 mixed bits: an open mesh passes once in 2^64.
        _open += a < b ? Mixed(a, b) : 0 - Mixed(b, a);
        if (a < _ringVertices && b < _ringVertices)
            _alongRings.Add((a, b));
    }

    /// <summary>Steele, Lea and Flood 2014, "Fast splittable pseudorandom number generators": the mixer of SplitMix64.</summary>
    private static ulong Mixed(int a, int b)
    {
        var z = ((ulong)(uint)a << 32) + (uint)b + 0x9E3779B97F4A7C15;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}
