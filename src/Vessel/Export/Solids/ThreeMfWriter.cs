using System.Globalization;
using System.IO.Compression;
using System.Security;
using System.Text;
using Vessel.Geometry;

namespace Vessel.Export.Solids;

/// <summary>
/// 3MF (3MF Consortium, "Core Specification" 1.3): a ZIP with one model, unit millimetre; each body a named object with
/// its material's colour and a build item for each of its places.
/// </summary>
public static class ThreeMfWriter
{
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

    public static void Write(IReadOnlyList<Body> bodies, string title, Stream to)
    {
        // Written to a stream that cannot seek a ZIP comes out alike everywhere: no field is filled in afterwards.
        using var zip = new ZipArchive(new ForwardStream(to), ZipArchiveMode.Create, leaveOpen: true);
        Add(zip, "[Content_Types].xml", text => text.Write(ContentTypes));
        Add(zip, "_rels/.rels", text => text.Write(Relationships));
        Add(zip, ModelPath, text => WriteModel(bodies, title, text));
    }

    private static void Add(ZipArchive zip, string path, Action<StreamWriter> write)
    {
        var entry = zip.CreateEntry(path, CompressionLevel.Fastest);
        entry.LastWriteTime = _noTime;
        using var text = new StreamWriter(entry.Open(), new UTF8Encoding(false), 1 << 16) { NewLine = "\n" };
        write(text);
    }

    private static void WriteModel(IReadOnlyList<Body> bodies, string title, StreamWriter text)
    {
        var materials = bodies.Select(body => (body.Material, body.Colour)).Distinct().ToList();
        text.WriteLine("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
        text.WriteLine("<model unit=\"millimeter\" xml:lang=\"en-US\" xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">");
        text.WriteLine($"<metadata name=\"Title\">{Escaped(title)}</metadata>");
        text.WriteLine("<resources>");
        text.WriteLine("<basematerials id=\"1\">");
        foreach (var (name, colour) in materials)
            text.WriteLine($"<base name=\"{Escaped(name)}\" displaycolor=\"{colour.Hex}\"/>");
        text.WriteLine("</basematerials>");
        for (var i = 0; i < bodies.Count; i++)
            WriteObject(bodies[i], i + 2, materials.IndexOf((bodies[i].Material, bodies[i].Colour)), text);
        text.WriteLine("</resources>");
        text.WriteLine("<build>");
        for (var i = 0; i < bodies.Count; i++)
        {
            foreach (var place in bodies[i].Placements)
                text.WriteLine($"<item objectid=\"{i + 2}\" transform=\"{Transform(place)}\"/>");
        }

        text.WriteLine("</build>");
        text.WriteLine("</model>");
    }

    private static void WriteObject(Body body, int id, int material, StreamWriter text)
    {
        text.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"<object id=\"{id}\" type=\"model\" name=\"{Escaped(body.Name)}\" pid=\"1\" pindex=\"{material}\"><mesh><vertices>"));
        var digits = new DigitWriter(text);
        foreach (var vertex in body.Mesh.Vertices)
        {
            digits.Put("<vertex x=\"", vertex.X);
            digits.Put("\" y=\"", vertex.Y);
            digits.Put("\" z=\"", vertex.Z);
            text.Write("\"/>\n");
        }

        text.WriteLine("</vertices><triangles>");
        foreach (var triangle in body.Mesh.Triangles)
        {
            digits.Put("<triangle v1=\"", triangle.A);
            digits.Put("\" v2=\"", triangle.B);
            digits.Put("\" v3=\"", triangle.C);
            text.Write("\"/>\n");
        }

        text.WriteLine("</triangles></mesh></object>");
    }

    /// <summary>Rows of the 4 x 3 matrix that points, as rows, are multiplied with.</summary>
    private static string Transform(Frame3 f) => string.Join(' ', new[] { f.X, f.Y, f.Z, f.Origin }.SelectMany(
        v => new[] { v.X, v.Y, v.Z }).Select(number => Numbers.Text(number, 9)));

    /// <summary>XML has no place for most control characters.</summary>
    private static string Escaped(string text) =>
        SecurityElement.Escape(new string([.. text.Where(letter => !char.IsControl(letter))]));

    /// <summary>Numbers straight into the text, since there are millions of them.</summary>
    private sealed class DigitWriter(StreamWriter text)
    {
        /// <summary>Lengths are written to 1e-5 mm, finer than single precision holds at 150 mm.</summary>
        private const int Decimals = 5;

        private readonly char[] _digits = new char[32];

        public void Put(string before, double length)
        {
            text.Write(before);
            var units = (long)Math.Round(length * 1e5);
            if (units < 0)
                text.Write('-');
            Write((ulong)Math.Abs(units), Decimals);
        }

        public void Put(string before, int number)
        {
            text.Write(before);
            Write((ulong)number, 0);
        }

        /// <summary>From the last digit back; zeros behind the point are left out.</summary>
        private void Write(ulong units, int decimals)
        {
            var at = _digits.Length;
            for (var i = 0; i < decimals; i++, units /= 10)
            {
                var digit = (int)(units % 10);
                if (digit != 0 || at < _digits.Length)
                    _digits[--at] = (char)('0' + digit);
            }

            if (at < _digits.Length)
                _digits[--at] = '.';
            do
            {
                _digits[--at] = (char)('0' + (int)(units % 10));
                units /= 10;
            }
            while (units > 0);
            text.Write(_digits, at, _digits.Length - at);
        }
    }
}
