using System.Buffers.Binary;
using System.Text.Json;
using Vessel.Export.Solids;
using Vessel.Geometry;
using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Export.Solids;

public sealed class GlbWriterTests
{
    private static readonly Mesh _block = new(
        [new(0.1, -0.2, 0.3), new(20.1, -0.2, 0.3), new(0.1, 30.7, 0.3), new(0.1, -0.2, 40.9)],
        [new(0, 2, 1), new(0, 1, 3), new(0, 3, 2), new(1, 2, 3)]);

    private static readonly Frame3 _turned = new(new(5, 6, 7), Vector3.UnitY, Vector3.UnitZ, Vector3.UnitX);

    private static readonly PlacedSolid[] _bodies =
    [
        new("ear", _block, [_turned, Frame3.Identity], "stainless 304", Colour.Of(MaterialFamily.Stainless)),
        new("lid", _block, [Frame3.Identity], "stainless 304", Colour.Of(MaterialFamily.Stainless)),
    ];

    [Fact]
    public void The_lengths_add_up()
    {
        var bytes = Written();
        var json = Word(bytes, 12);

        Assert.Equal(bytes.Length, Word(bytes, 8));
        Assert.Equal(0, json % 4);
        Assert.Equal(bytes.Length, 28 + json + Word(bytes, 20 + json));
    }

    [Fact]
    public void Each_place_is_a_named_node() =>
        Assert.Equal(["ear 1", "ear 2", "lid"], List("nodes").Select(node => node.GetProperty("name").GetString()));

    [Fact]
    public void A_metal_is_one_material() => Assert.Single(List("materials"));

    [Fact]
    public void A_point_stands_where_the_vessel_has_it_in_metres_with_y_up()
    {
        var bytes = Written();
        var m = List("nodes")[0].GetProperty("matrix").EnumerateArray().Select(n => n.GetDouble()).ToArray();
        var at = 28 + Word(bytes, 12) + (3 * 12);
        double Read(int i) => BinaryPrimitives.ReadSingleLittleEndian(bytes.AsSpan(at + (4 * i)));
        var (x, y, z) = (Read(0), Read(1), Read(2));

        double Row(int i) => (m[i] * x) + (m[4 + i] * y) + (m[8 + i] * z) + m[12 + i];
        var wanted = _turned.ToOuter(_block.Vertices[3]);

        // A float of 0.05 is off by 2^-29 at most.
        Assert.Equal(wanted.X / 1000, Row(0), 1e-8);
        Assert.Equal(wanted.Z / 1000, Row(1), 1e-8);
        Assert.Equal(-wanted.Y / 1000, Row(2), 1e-8);
    }

    private static int Word(byte[] bytes, int at) => BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(at));

    private static List<JsonElement> List(string name)
    {
        var bytes = Written();
        using var json = JsonDocument.Parse(bytes.AsMemory(20, Word(bytes, 12)));
        return [.. json.RootElement.GetProperty(name).EnumerateArray().Select(e => e.Clone())];
    }

    private static byte[] Written()
    {
        using var stream = new MemoryStream();
        GlbWriter.Write(_bodies, "two", stream);
        return stream.ToArray();
    }
}
