using System.Buffers.Binary;
using System.Text;
using Vessel.Export.Stl;
using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Export.Stl;

public sealed class StlWriterTests
{
    // A corner block whose vertices are no floats.
    private static readonly Mesh _block = new(
        [new(0.1, 0.2, 0.3), new(20.1, 0.2, 0.3), new(0.1, 30.7, 0.3), new(0.1, 0.2, 40.9)],
        [new(0, 2, 1), new(0, 1, 3), new(0, 3, 2), new(1, 2, 3)]);

    private static readonly Frame3 _turned = new(new(5, 6, 7), Vector3.UnitY, -Vector3.UnitX, Vector3.UnitZ);

    [Fact]
    public void The_size_is_84_bytes_and_50_a_triangle() => Assert.Equal(84 + (50 * 4), Written().Length);

    [Fact]
    public void The_header_does_not_begin_as_the_text_form_does() =>
        Assert.StartsWith("Binary STL, mm: solid lid", Encoding.ASCII.GetString(Written("solid lid"), 0, 80), StringComparison.Ordinal);

    [Fact]
    public void A_title_that_is_too_long_is_cut_off() => Assert.Equal(84 + (50 * 4), Written(new string('x', 200)).Length);

    [Fact]
    public void The_count_is_that_of_the_triangles() =>
        Assert.Equal(4, BinaryPrimitives.ReadInt32LittleEndian(Written().AsSpan(80)));

    [Fact]
    public void Every_directed_edge_has_its_twin_to_the_bit()
    {
        var edges = Triangles(Written()).SelectMany(t => new[] { (t[1], t[2]), (t[2], t[3]), (t[3], t[1]) }).ToHashSet();

        Assert.Equal(12, edges.Count);
        Assert.All(edges, edge => Assert.Contains((edge.Item2, edge.Item1), edges));
    }

    [Fact]
    public void Normals_are_of_length_one_and_agree_with_the_winding() => Assert.All(Triangles(Written()), t =>
    {
        var winding = (t[2] - t[1]).Cross(t[3] - t[1]).Unit();

        // A float has 24 bits: each component is off by at most 2^-25.
        Assert.Equal(1, winding.Dot(t[0]), 1e-6);
    });

    [Fact]
    public void Several_meshes_are_put_where_their_frames_say()
    {
        using var stream = new MemoryStream();
        StlWriter.Write([(_block, Frame3.Identity), (_block, _turned)], "two", stream);

        var moved = Triangles(stream.ToArray())[4][1];

        // A quarter turn takes (x, y) to (-y, x).
        Assert.Equal(new Vector3((float)(5 - 0.2), (float)(6 + 0.1), (float)(7 + 0.3)), moved);
    }

    private static byte[] Written(string title = "block")
    {
        using var stream = new MemoryStream();
        StlWriter.Write(_block, title, stream);
        return stream.ToArray();
    }

    // Normal and three vertices.
    private static List<Vector3[]> Triangles(byte[] file) => [.. file.Skip(84).Chunk(50).Select(record =>
        Enumerable.Range(0, 4).Select(i => new Vector3(
            BinaryPrimitives.ReadSingleLittleEndian(record.AsSpan(12 * i)),
            BinaryPrimitives.ReadSingleLittleEndian(record.AsSpan((12 * i) + 4)),
            BinaryPrimitives.ReadSingleLittleEndian(record.AsSpan((12 * i) + 8)))).ToArray())];
}
