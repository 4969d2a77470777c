using Vessel.Export.Report.Model;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export.Report.Model;

/// <summary>Letters read back as the page's script reads them.</summary>
public sealed class MeshCodeTests
{
    public static TheoryData<int> Seeds => [0, 1, 2, 3, 4, 5];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_mesh_comes_back_with_its_facets_and_its_vertices_within_half_a_step(int seed)
    {
        var part = RandomDesigns.Built(seed).Parts[seed % 3];
        var mesh = Mesher.Flatten(part.Solid, new(0.5, Math.PI / 6));

        var code = MeshCode.Of(mesh);
        var (vertices, triangles) = Decoded(code);

        Assert.Equal(mesh.Triangles, triangles);
        // Each coordinate is rounded to a whole step; a hair for the sum of its doubles.
        Assert.All(mesh.Vertices.Zip(vertices), pair =>
        {
            var off = pair.First - pair.Second;
            Assert.True(Math.Max(Math.Abs(off.X), Math.Max(Math.Abs(off.Y), Math.Abs(off.Z))) <= (code.Step / 2) + 1e-9);
        });
        // Three floats a vertex and three shorts a triangle would take so many octets.
        Assert.InRange(code.Data.Length, 1, (12 * mesh.Vertices.Length) + (6 * mesh.Triangles.Length));
    }

    private static (List<Vector3> Vertices, List<Triangle> Triangles) Decoded(MeshCode code)
    {
        var bytes = Convert.FromBase64String(code.Data);
        var at = 0;
        int Next()
        {
            var (value, shift) = (0u, 0);
            while (true)
            {
                value |= (uint)(bytes[at] & 0x7F) << shift;
                shift += 7;
                if (bytes[at++] < 0x80)
                    return (int)(value >> 1) ^ -(int)(value & 1);
            }
        }

        var (x, y, z, a) = (0, 0, 0, 0);
        var vertices = new List<Vector3>();
        for (var i = 0; i < code.Vertices; i++)
        {
            (x, y, z) = (x + Next(), y + Next(), z + Next());
            vertices.Add(code.Origin + (code.Step * new Vector3(x, y, z)));
        }

        var triangles = new List<Triangle>();
        for (var i = 0; i < code.Triangles; i++)
        {
            a += Next();
            triangles.Add(new(a, a + Next(), a + Next()));
        }

        Assert.Equal(bytes.Length, at);
        return (vertices, triangles);
    }
}
