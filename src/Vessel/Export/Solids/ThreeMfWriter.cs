using System.Globalization;
using System.IO.Compression;
using Vessel.Geometry;

namespace Vessel.Export.Solids;

/// <summary>
/// 3MF (3MF Consortium, "Core Specification" 1.3): a ZIP with one model, unit millimetre; each body a named object with
/// its material's colour and a build item for each of its places.
/// </summary>
public static class ThreeMfWriter
{
    /// <summary>Lengths are written to 1e-5 mm, finer than single precision holds at 150 mm.</summary>
    private const int Decimals = 5;

    private const string ModelPath = "3D/3dmodel.model";

    private const string ContentTypes = """
        <?xml version="1.0" encoding="UTF-8"?>
        <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>
        """;

    private const string Relationships = $"""
        <?xml version="1.0" encoding="UTF-8"?>
        <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/{ModelPath}" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>
        """;

    /// <summary>The first moment that a ZIP can name: no clock in our files.</summary>
    private static readonly DateTimeOffset _noTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static void Write(IReadOnlyList<PlacedSolid> bodies, string title, Stream to)
    {
        // Written to a stream that cannot seek a ZIP comes out alike everywhere: no field is filled in afterwards.
        using var zip = new ZipArchive(new ForwardStream(to), ZipArchiveMode.Create, leaveOpen: true);
        Add(zip, "[Content_Types].xml", text => text.Put(ContentTypes));
        Add(zip, "_rels/.rels", text => text.Put(Relationships));
        Add(zip, ModelPath, text => WriteModel(bodies, title, text));
    }

    private static void Add(ZipArchive zip, string path, Action<TextBytes> write)
    {
        var entry = zip.CreateEntry(path, CompressionLevel.Fastest);
        entry.LastWriteTime = _noTime;
        using var stream = entry.Open();
        var text = new TextBytes(stream, Decimals);
        write(text);
        text.Flush();
    }

    private static void WriteModel(IReadOnlyList<PlacedSolid> bodies, string title, TextBytes text)
    {
        var materials = bodies.Select(body => (body.Material, body.Colour)).Distinct().ToList();
        text.Line("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
        text.Line("<model unit=\"millimeter\" xml:lang=\"en-US\" xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">");
        text.Line($"<metadata name=\"Title\">{XmlEscape.Of(title)}</metadata>");
        text.Line("<resources>");
        text.Line("<basematerials id=\"1\">");
        foreach (var (name, colour) in materials)
            text.Line($"<base name=\"{XmlEscape.Of(name)}\" displaycolor=\"{colour.Hex}\"/>");
        text.Line("</basematerials>");
        for (var i = 0; i < bodies.Count; i++)
            WriteObject(bodies[i], i + 2, materials.IndexOf((bodies[i].Material, bodies[i].Colour)), text);
        text.Line("</resources>");
        text.Line("<build>");
        for (var i = 0; i < bodies.Count; i++)
        {
            foreach (var place in bodies[i].Placements)
                text.Line($"<item objectid=\"{i + 2}\" transform=\"{Transform(place)}\"/>");
        }

        text.Line("</build>");
        text.Line("</model>");
    }

    private static void WriteObject(PlacedSolid body, int id, int material, TextBytes text)
    {
        text.Line(string.Create(
            CultureInfo.InvariantCulture,
            $"<object id=\"{id}\" type=\"model\" name=\"{XmlEscape.Of(body.Name)}\" pid=\"1\" pindex=\"{material}\"><mesh><vertices>"));
        foreach (var vertex in body.Mesh.Vertices)
            Put(text, "<vertex x=\""u8, vertex.X, "\" y=\""u8, vertex.Y, "\" z=\""u8, vertex.Z);
        text.Line("</vertices><triangles>");
        foreach (var triangle in body.Mesh.Triangles)
            Put(text, "<triangle v1=\""u8, triangle.A, "\" v2=\""u8, triangle.B, "\" v3=\""u8, triangle.C);
        text.Line("</triangles></mesh></object>");
    }

    private static void Put(
        TextBytes text, ReadOnlySpan<byte> first, double a, ReadOnlySpan<byte> second, double b, ReadOnlySpan<byte> third, double c)
    {
        text.Put(first);
        text.Put(a);
        text.Put(second);
        text.Put(b);
        text.Put(third);
        text.Put(c);
        text.Put("\"/>\n"u8);
    }

    /// <summary>Rows of the 4 x 3 matrix that points, as rows, are multiplied with.</summary>
    private static string Transform(Frame3 f) => string.Join(' ', new[] { f.X, f.Y, f.Z, f.Origin }.SelectMany(
        v => new[] { v.X, v.Y, v.Z }).Select(number => Numbers.Text(number, 9)));
}
