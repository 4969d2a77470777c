using System.Collections.Immutable;
using System.CommandLine;
using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Cli.Commands;

/// <summary><c>stock</c>: prints the tables of metals, gauges, tubes, perforated sheet, fittings, threads, fillers and rods.</summary>
internal static class StockCommand
{
    private static readonly ImmutableArray<StockTable> _tables = [.. StockTable.All, ShopFigures.Defaults];

    private static readonly string[] _names = [.. _tables.Select(t => t.Name)];

    public static Command Create(CommandConsole console)
    {
        var name = new Argument<string?>("table")
        {
            Description = $"One of {string.Join(", ", _names)}; all unless given.",
            Arity = ArgumentArity.ZeroOrOne,
            HelpName = "TABLE",
        };
        name.AcceptOnlyFromAmong(_names);
        var filter = new Option<string?>("--filter") { Description = "Only rows with this text in a cell.", HelpName = "TEXT" };
        var format = new Option<string>("--format")
        {
            Description = "text (unless given), csv (of one table), or json.",
            DefaultValueFactory = _ => "text",
        };
        format.AcceptOnlyFromAmong("text", "csv", "json");
        var command = new Command("stock", "Print the tables of metals, gauges, tubes, patterns, fittings, threads, rods, speeds and the "
            + "shop's defaults, with sources.")
        {
            name, filter, format,
        };
        command.SetAction(parsed =>
        {
            var tables = Chosen(parsed.GetValue(name), parsed.GetValue(filter));
            switch (parsed.GetValue(format))
            {
                case "csv" when parsed.GetValue(name) is null:
                    console.Complain("CSV holds one table: name it, as 'stock threads --format csv'.");
                    return ExitCodes.Usage;
                case "csv":
                    StockText.WriteCsv(tables[0], console.Output);
                    return ExitCodes.Good;
                case "json":
                    StockText.WriteJson(tables, console.Output);
                    return ExitCodes.Good;
                default:
                    return WriteText(tables, console);
            }
        });
        return command;
    }

    private static ImmutableArray<StockTable> Chosen(string? name, string? filter) =>
    [
        .. _tables
            .Where(table => name is null || table.Name == name)
            .Select(table => filter is null ? table : table with
            {
                Rows = [.. table.Rows.Where(row => row[..^1].Any(
                    cell => cell is string text && text.Contains(filter, StringComparison.OrdinalIgnoreCase)
                        || cell is double number && Export.Numbers.Text(number).StartsWith(filter, StringComparison.Ordinal)))],
            }),
    ];

    private static int WriteText(ImmutableArray<StockTable> tables, CommandConsole console)
    {
        var filled = tables.Where(table => !table.Rows.IsEmpty).ToList();
        if (filled.Count == 0)
            console.Error.WriteLine("No row has that text in it.");
        foreach (var table in filled)
            StockText.Write(table, console);
        return ExitCodes.Good;
    }
}
