using System.Buffers;
using System.Globalization;
using System.Text;

namespace Vessel.Export;

/// <summary>Tables as RFC 4180 has them: commas, CRLF, quotes doubled; UTF-8 without a byte order mark.</summary>
public static class Csv
{
    private static readonly SearchValues<char> _special = SearchValues.Create("\",\r\n");

    public static void Write(Stream to, IReadOnlyList<string> header, IEnumerable<IReadOnlyList<CsvCell>> rows)
    {
        using var writer = new StreamWriter(to, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine(string.Join(',', header));
        foreach (var row in rows)
        {
            if (row.Count != header.Count)
                throw new ArgumentException($"a row of {row.Count} cells under {header.Count} columns");
            writer.WriteLine(string.Join(',', row.Select(cell => Quoted(cell.Text))));
        }
    }

    private static string Quoted(string text) =>
        text.AsSpan().ContainsAny(_special) ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}

/// <summary>One cell: a figure, or words. Words never begin as a formula does.</summary>
public readonly record struct CsvCell
{
    private readonly string? _text;

    private CsvCell(string text) => _text = text;

    public string Text => _text ?? string.Empty;

    public static implicit operator CsvCell(double value) => new(Numbers.Text(value));

    public static implicit operator CsvCell(double? value) => value is { } number ? number : default(CsvCell);

    public static implicit operator CsvCell(int value) => new(value.ToString(CultureInfo.InvariantCulture));

    // A spreadsheet runs what starts so; an apostrophe makes it plain text.
    public static implicit operator CsvCell(string? words) =>
        new(words is ['=' or '+' or '-' or '@' or '\t' or '\r' or '\n', ..] ? "'" + words : words ?? string.Empty);
}
