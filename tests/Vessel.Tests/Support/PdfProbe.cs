using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using Vessel.Geometry;

namespace Vessel.Tests.Support;

/// <summary>Reads back what the PDF writer wrote: its table of objects, its pages, their strokes and their text; lengths in mm.</summary>
internal sealed partial class PdfProbe
{
    private readonly byte[] _file;
    private readonly string _text;

    public PdfProbe(byte[] file)
    {
        _file = file;
        _text = Encoding.Latin1.GetString(file);
        var table = int.Parse(Regex.Match(_text, @"startxref\n(\d+)\n%%EOF\n$").Groups[1].Value, CultureInfo.InvariantCulture);
        Starts =
        [
            .. Regex.Matches(_text[table..], @"^(\d{10}) 00000 n $", RegexOptions.Multiline)
                .Select(m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture)),
        ];
        var letters = Letters();
        Pages = [.. Numbers(Regex.Match(Body(2), @"/Kids \[(.*?)\]").Groups[1].Value).Where((_, i) => i % 2 == 0)
            .Select(n => Page((int)n, letters))];
    }

    /// <summary>Where each object begins, the first that of object 1.</summary>
    public ImmutableArray<int> Starts { get; }

    public ImmutableArray<PdfProbePage> Pages { get; }

    public string At(int start, int length) => _text.Substring(start, length);

    public string Body(int number)
    {
        var start = Starts[number - 1];
        return _text[start.._text.IndexOf("endobj", start, StringComparison.Ordinal)];
    }

    private Dictionary<int, string> Letters() => Regex.Matches(Body(5), "^<(..)> <(.+)>$", RegexOptions.Multiline)
        .Where(m => m.Groups[2].Length >= 4)
        .ToDictionary(
            m => Convert.ToInt32(m.Groups[1].Value, 16),
            m => Encoding.BigEndianUnicode.GetString(Convert.FromHexString(m.Groups[2].Value)));

    private PdfProbePage Page(int number, Dictionary<int, string> letters)
    {
        const double millimetre = 25.4 / 72;
        var page = Body(number);
        var box = Numbers(Regex.Match(page, @"/MediaBox \[(.*?)\]").Groups[1].Value);
        var content = (int)Numbers(Regex.Match(page, "/Contents (.*?) R").Groups[1].Value)[0];
        var reader = new PdfContentProbe(letters);
        reader.Read(Inflated(content));
        return new(box[2] * millimetre, box[3] * millimetre, [.. reader.Strokes], [.. reader.Texts]);
    }

    private string Inflated(int number)
    {
        var start = _text.IndexOf("stream\n", Starts[number - 1], StringComparison.Ordinal) + 7;
        var length = int.Parse(Regex.Match(Body(number), @"/Length (\d+)").Groups[1].Value, CultureInfo.InvariantCulture);
        using var zlib = new ZLibStream(new MemoryStream(_file, start, length), CompressionMode.Decompress);
        using var reader = new StreamReader(zlib, Encoding.ASCII);
        return reader.ReadToEnd();
    }

    private static double[] Numbers(string text) =>
        [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(n => n != "R")
            .Select(n => double.Parse(n, CultureInfo.InvariantCulture))];
}

/// <param name="Width">mm.</param>
/// <param name="Strokes">In the order in which they are drawn.</param>
internal sealed record PdfProbePage(double Width, double Height, ImmutableArray<PdfProbeStroke> Strokes,
    ImmutableArray<PdfProbeText> Texts);

internal sealed record PdfProbeStroke(ImmutableArray<Point2> Points, bool Closed, double Width, double Gray, string Dash)
{
    public double Length => Points.Zip(Points.Skip(1)).Sum(pair => (pair.Second - pair.First).Length);
}

/// <param name="Height">Of a capital, mm.</param>
internal sealed record PdfProbeText(string Words, Point2 Start, double Height, double Angle);
