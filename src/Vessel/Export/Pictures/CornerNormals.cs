using Vessel.Geometry;

namespace Vessel.Export.Pictures;

/// <summary>
/// At each corner of each facet the sum of the normals of the facets round it, as far as they lie within the crease angle: a
/// round wall then looks round. Worked out when asked for: most facets of a fine mesh are smaller than a sample.
/// </summary>
internal sealed class CornerNormals
{
    /// <summary>Cosine of 30 degrees: beyond, an edge is an edge.</summary>
    public const double Crease = 0.866;

    /// <summary>A vertex of more facets is the middle of a flat fan.</summary>
    private const int Hub = 48;

    private readonly Vector3[] _facets;
    private readonly double[] _lengths;
    private readonly int[] _first;
    private readonly int[] _around;

    public CornerNormals(Mesh mesh)
    {
        var (vertices, triangles) = (mesh.Vertices, mesh.Triangles);
        _facets = new Vector3[triangles.Length];
        _lengths = new double[triangles.Length];
        _first = new int[vertices.Length + 1];
        for (var i = 0; i < _facets.Length; i++)
        {
            var (a, b, c) = (triangles[i].A, triangles[i].B, triangles[i].C);
            _facets[i] = (vertices[b] - vertices[a]).Cross(vertices[c] - vertices[a]);
            _lengths[i] = _facets[i].Length;
            _first[a + 1]++;
            _first[b + 1]++;
            _first[c + 1]++;
        }

        for (var v = 1; v < _first.Length; v++)
            _first[v] += _first[v - 1];
        _around = new int[3 * _facets.Length];
        var filled = _first.ToArray();
        for (var i = 0; i < _facets.Length; i++)
        {
            _around[filled[triangles[i].A]++] = i;
            _around[filled[triangles[i].B]++] = i;
            _around[filled[triangles[i].C]++] = i;
        }
    }

    /// <summary>Normal at that corner of that facet; not of unit length.</summary>
    public Vector3 At(int vertex, int facet)
    {
        if (_first[vertex + 1] - _first[vertex] > Hub)
            return _facets[facet];
        var sum = Vector3.Zero;
        for (var k = _first[vertex]; k < _first[vertex + 1]; k++)
        {
            var other = _around[k];
            if (_facets[other].Dot(_facets[facet]) >= Crease * _lengths[other] * _lengths[facet])
                sum += _facets[other];
        }

        return sum;
    }
}
