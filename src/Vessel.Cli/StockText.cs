using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Vessel.Export;
using Vessel.Stock;

namespace Vessel.Cli;

/// <summary>Tables of stock as text for people, as CSV, or as JSON.</summary>
internal static class StockText
{
    /// <summary>Each row on a line in columns; a source that holds for several rows is named once, below them.</summary>
    public static void Write(StockTable table, CommandConsole console)
    {
        var head = table.Columns[..^1];
        var sources = table.Rows.Select(row => Text(row[^1])).Distinct().ToList();
        var rows = table.Rows
            .Select(row => row[..^1].Select(Text).Append($"[{sources.IndexOf(Text(row[^1])) + 1}]").ToArray())
            .Prepend([.. head, ""])
            .ToList();
        console.Output.WriteLine(console.Style.Bold(table.Name));
        TextTable.Write(console.Output, rows, console.Width, indent: 2);
        for (var i = 0; i < sources.Count; i++)
            console.Output.WriteLine($"  [{i + 1}] {sources[i]}");
        foreach (var mark in Sources.Legend(sources))
            console.Output.WriteLine($"  {mark}");
    }

    public static void WriteCsv(StockTable table, TextWriter output)
    {
        using var memory = new MemoryStream();
        Csv.Write(memory, table.Columns, table.Rows.Select(row => row.Select(Cell).ToArray()));
        output.Write(Encoding.UTF8.GetString(memory.ToArray()));
    }

    public static void WriteJson(ImmutableArray<StockTable> tables, TextWriter output)
    {
        using var memory = new MemoryStream();
        using (var json = new Utf8JsonWriter(
            memory, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            foreach (var table in tables)
            {
                json.WriteStartArray(table.Name);
                foreach (var row in table.Rows)
                    WriteRow(table, row, json);
                json.WriteEndArray();
            }

            json.WriteEndObject();
        }

        output.WriteLine(Encoding.UTF8.GetString(memory.ToArray()));
    }

    private static void WriteRow(StockTable table, ImmutableArray<object?> row, Utf8JsonWriter json)
    {
        json.WriteStartObject();
        for (var i = 0; i < row.Length; i++)
        {
            json.WritePropertyName(table.Columns[i]);
            if (row[i] is double number)
                json.WriteRawValue(Numbers.Text(number));
            else
                json.WriteStringValue(row[i] as string);
        }

        json.WriteEndObject();
    }

    private static CsvCell Cell(object? cell) => cell is double number ? CsvCell.Exact(number) : cell as string;

    private static string Text(object? cell) => cell switch
    {
        null => "-",
        double number => Numbers.Text(number, 4),
        _ => (string)cell,
    };
}
