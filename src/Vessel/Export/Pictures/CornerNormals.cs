using Vessel.Geometry;

namespace Vessel.Export.Pictures;

/// <summary>
/// At each corner of each facet the sum of the normals of the facets round it, as far as they lie within the crease angle: a
/// round wall then looks round. Three to a facet, not of unit length.
/// </summary>
internal static class CornerNormals
{
    /// <summary>Cosine of 30 degrees: beyond, an edge is an edge.</summary>
    public const double Crease = 0.866;

    /// <summary>A vertex of more facets is the middle of a flat fan.</summary>
    private const int Hub = 48;

    public static Vector3[] Of(Mesh mesh)
    {
        var (vertices, triangles) = (mesh.Vertices, mesh.Triangles);
        var facets = new Vector3[triangles.Length];
        var first = new int[vertices.Length + 1];
        for (var i = 0; i < facets.Length; i++)
        {
            var (a, b, c) = (triangles[i].A, triangles[i].B, triangles[i].C);
            facets[i] = (vertices[b] - vertices[a]).Cross(vertices[c] - vertices[a]);
            first[a + 1]++;
            first[b + 1]++;
            first[c + 1]++;
        }

        for (var v = 1; v < first.Length; v++)
            first[v] += first[v - 1];
        var around = new int[3 * facets.Length];
        var filled = first.ToArray();
        for (var i = 0; i < facets.Length; i++)
        {
            around[filled[triangles[i].A]++] = i;
            around[filled[triangles[i].B]++] = i;
            around[filled[triangles[i].C]++] = i;
        }

        var lengths = Array.ConvertAll(facets, facet => facet.Length);
        var normals = new Vector3[3 * facets.Length];
        for (var i = 0; i < facets.Length; i++)
        {
            normals[3 * i] = At(triangles[i].A, i);
            normals[(3 * i) + 1] = At(triangles[i].B, i);
            normals[(3 * i) + 2] = At(triangles[i].C, i);
        }

        return normals;

        Vector3 At(int vertex, int facet)
        {
            if (first[vertex + 1] - first[vertex] > Hub)
                return facets[facet];
            var sum = Vector3.Zero;
            for (var k = first[vertex]; k < first[vertex + 1]; k++)
            {
                var other = around[k];
                if (facets[other].Dot(facets[facet]) >= Crease * lengths[other] * lengths[facet])
                    sum += facets[other];
            }

            return sum;
        }
    }
}
