using System.Globalization;
using System.IO.Compression;
using System.Xml.Linq;
using Vessel.Export.Solids;
using Vessel.Geometry;
using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Export.Solids;

public sealed class ThreeMfWriterTests
{
    private static readonly Mesh _block = new(
        [new(0.1, -0.2, 0.3), new(20.1, -0.2, 0.3), new(0.1, 30.7, 0.3), new(0.1, -0.2, 40.9)],
        [new(0, 2, 1), new(0, 1, 3), new(0, 3, 2), new(1, 2, 3)]);

    private static readonly Frame3 _turned = new(new(5, 6, 7), Vector3.UnitY, -Vector3.UnitX, Vector3.UnitZ);

    private static readonly PlacedSolid[] _bodies =
    [
        new("a < b", _block, [Frame3.Identity, _turned], "stainless 304", Colour.Of(MaterialFamily.Stainless)),
        new("lid", _block, [Frame3.Identity], "mild steel", Colour.Of(MaterialFamily.MildSteel)),
    ];

    [Fact]
    public void The_unit_is_the_millimetre() => Assert.Equal("millimeter", Model().Attribute("unit")?.Value);

    [Fact]
    public void Each_body_is_an_object_by_name() =>
        Assert.Equal(["a < b", "lid"], All("object").Select(o => o.Attribute("name")!.Value));

    [Fact]
    public void Each_place_is_an_item_of_its_object() =>
        Assert.Equal(["2", "2", "3"], All("item").Select(item => item.Attribute("objectid")!.Value));

    [Fact]
    public void The_transform_takes_points_where_the_frame_does()
    {
        var m = All("item").ElementAt(1).Attribute("transform")!.Value.Split(' ').Select(Number).ToArray();
        var (x, y, z) = _block.Vertices[3];

        // A point is a row on the left of the matrix.
        Vector3 moved = new((x * m[0]) + (y * m[3]) + (z * m[6]) + m[9], (x * m[1]) + (y * m[4]) + (z * m[7]) + m[10],
            (x * m[2]) + (y * m[5]) + (z * m[8]) + m[11]);

        Assert.Equal(0, (moved - _turned.ToOuter(_block.Vertices[3])).Length, 1e-12);
    }

    [Fact]
    public void Vertices_keep_five_decimals()
    {
        var read = All("vertex").Take(4)
            .Select(v => new Vector3(Number(v.Attribute("x")!.Value), Number(v.Attribute("y")!.Value), Number(v.Attribute("z")!.Value)));

        Assert.All(read.Zip(_block.Vertices), pair => Assert.Equal(0, (pair.First - pair.Second).Length, 1e-5));
    }

    [Fact]
    public void A_metal_stands_once_with_its_colour() =>
        Assert.Equal(["#A9B4BE", "#707880"], All("base").Select(b => b.Attribute("displaycolor")!.Value));

    [Fact]
    public void Two_writings_are_equal_to_the_byte_wherever_they_go()
    {
        using var file = new FileStream(Path.GetTempFileName(), FileMode.Open, FileAccess.ReadWrite, FileShare.None, 4096,
            FileOptions.DeleteOnClose);
        ThreeMfWriter.Write(_bodies, "two", file);
        var there = new byte[file.Length];
        file.Position = 0;
        file.ReadExactly(there);

        Assert.Equal(Written(), there);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static IEnumerable<XElement> All(string name) => Model().Descendants().Where(e => e.Name.LocalName == name);

    private static XElement Model()
    {
        using var zip = new ZipArchive(new MemoryStream(Written()));
        using var model = zip.GetEntry("3D/3dmodel.model")!.Open();
        return XDocument.Load(model).Root!;
    }

    private static byte[] Written()
    {
        using var stream = new MemoryStream();
        ThreeMfWriter.Write(_bodies, "two", stream);
        return stream.ToArray();
    }
}
