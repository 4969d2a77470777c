using System.Globalization;
using System.IO.Compression;
using System.Text;
using Vessel.Export.Drawing;

namespace Vessel.Export.Pdf;

/// <summary>
/// A PDF 1.7 file (ISO 32000-1) of vector drawings: strokes, filled areas, single-stroke text. No clock, no chance: equal pages
/// give equal bytes. Viewers are asked to print it at its true size.
/// </summary>
public static class PdfDocument
{
    // Catalogue, page tree, information, font, its map to Unicode; then a letter shape per width; then the pages.
    private const int Font = 4;
    private const int ToUnicode = 5;
    private const int FirstShape = 6;

    /// <param name="title">Shown in the window's title and read aloud.</param>
    /// <exception cref="ArgumentException">There is no page.</exception>
    public static void Write(string title, string producer, IReadOnlyList<Page> pages, Stream to)
    {
        if (pages.Count == 0)
            throw new ArgumentException("a document needs a page");
        var letters = new PdfLetters();
        var contents = pages.Select(page => PdfContent.Of(page, letters)).ToList();
        var widths = letters.Letters.Select(Strokes.Advance).Distinct().Order().ToList();
        var firstPage = FirstShape + widths.Count;

        using var file = new PdfObjects();
        file.Add("<< /Type /Catalog /Pages 2 0 R /Lang (en) /ViewerPreferences << /PrintScaling /None /DisplayDocTitle true >> >>");
        file.Add(
            $"<< /Type /Pages /Count {pages.Count} /Kids [{string.Join(' ', pages.Select((_, i) => $"{firstPage + (2 * i)} 0 R"))}] >>");
        file.Add($"<< /Title {Words(title)} /Producer {Words(producer)} >>");
        AddFont(file, letters, widths);
        foreach (var (page, i) in pages.Select((page, i) => (page, i)))
        {
            file.Add(
                $"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 {Points(page.Width)} {Points(page.Height)}] "
                + $"/Resources << /Font << /F {Font} 0 R >> >> /Contents {firstPage + (2 * i) + 1} 0 R >>");
            file.AddStream("/Filter /FlateDecode", Deflated(contents[i]));
        }

        file.WriteTo(to);
    }

    private static void AddFont(PdfObjects file, PdfLetters letters, List<double> widths)
    {
        var names = letters.Letters.Select(letter => $"/w{widths.IndexOf(Strokes.Advance(letter))}").ToList();
        var shapes = string.Join(' ', widths.Select((_, i) => $"/w{i} {FirstShape + i} 0 R"));
        file.Add(
            $"<< /Type /Font /Subtype /Type3 /FontBBox [0 0 {Strokes.UnitsHigh} {Strokes.UnitsHigh}] /FontMatrix [1 0 0 1 0 0] "
            + $"/CharProcs << {shapes} >> /Encoding << /Type /Encoding /Differences [1 {string.Join(' ', names)}] >> "
            + $"/FirstChar 1 /LastChar {names.Count} /Widths "
            + $"[{string.Join(' ', letters.Letters.Select(l => Numbers.Text(Strokes.Advance(l))))}] "
            + $"/Resources << >> /ToUnicode {ToUnicode} 0 R >>");
        file.AddStream(string.Empty, Encoding.ASCII.GetBytes(UnicodeMap(letters)));
        foreach (var width in widths)
            file.AddStream(string.Empty, Encoding.ASCII.GetBytes($"{Numbers.Text(width)} 0 d0\n"));
    }

    private static string UnicodeMap(PdfLetters letters)
    {
        var map = new StringBuilder();
        map.Append("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n");
        map.Append("/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n");
        map.Append("/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n1 begincodespacerange\n<01> <FF>\nendcodespacerange\n");

        // One block holds at most a hundred.
        foreach (var block in letters.Letters.Select((letter, i) => (letter, Code: i + 1)).Chunk(100))
        {
            map.Append(CultureInfo.InvariantCulture, $"{block.Length} beginbfchar\n");
            foreach (var (letter, code) in block)
                map.Append(CultureInfo.InvariantCulture, $"<{code:X2}> <{Hex(letter.ToString())}>\n");
            map.Append("endbfchar\n");
        }

        return map.Append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n").ToString();
    }

    private static string Points(double millimetres) => Numbers.Text(millimetres * PdfContent.PointsPerMillimetre, 4);

    /// <summary>UTF-16 with its mark: every reader takes it, whatever the letters.</summary>
    private static string Words(string text) => $"<FEFF{Hex(text)}>";

    private static string Hex(string text) => Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text));

    private static byte[] Deflated(byte[] data)
    {
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Optimal, leaveOpen: true))
            zlib.Write(data);
        return packed.ToArray();
    }
}
