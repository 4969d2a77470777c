using System.Buffers;
using System.Globalization;
using System.Text;

namespace Vessel.Export;

/// <summary>
/// Tables as RFC 4180 has them: commas, CRLF, quotes doubled; UTF-8 without a byte order mark. They are for people, so their figures are
/// rounded to what a hand can use (<see cref="HandFigures"/>); summary.json has all digits.
/// </summary>
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
            writer.WriteLine(string.Join(',', row.Select((cell, i) => Quoted(cell.Under(header[i])))));
        }
    }

    private static string Quoted(string text) =>
        text.AsSpan().ContainsAny(_special) ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
}

/// <summary>One cell: a figure, or words. Words never begin as a formula does.</summary>
public readonly record struct CsvCell
{
    private readonly string? _text;

    private readonly double? _figure;

    private CsvCell(string? text, double? figure) => (_text, _figure) = (text, figure);

    /// <summary>A figure to be written with all its digits: of a table that programs read, too.</summary>
    public static CsvCell Exact(double value) => new(Numbers.Text(value), null);

    /// <summary>Text as it is written in the column of that name.</summary>
    public string Under(string column) => _figure is { } figure ? HandFigures.Text(figure, column) : _text ?? string.Empty;

    public static implicit operator CsvCell(double value) => new(null, value);

    public static implicit operator CsvCell(double? value) => value is { } number ? number : default(CsvCell);

    public static implicit operator CsvCell(int value) => new(value.ToString(CultureInfo.InvariantCulture), null);

    // A spreadsheet runs what starts so; an apostrophe makes it plain text.
    public static implicit operator CsvCell(string? words) =>
        new(words is ['=' or '+' or '-' or '@' or '\t' or '\r' or '\n', ..] ? "'" + words : words ?? string.Empty, null);
}
