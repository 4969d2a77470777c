using Vessel.Function;

namespace Vessel.Export.Summary;

/// <summary>One entry of summary.json's <c>function</c>.</summary>
internal static class FunctionJson
{
    public static void Write(FigureGroup group, SummaryWriter json) => json.Object(() =>
    {
        json.Put("name", group.Name);
        json.Put("title", group.Title);
        json.List("figures", group.Figures, figure => Write(figure, json));
        json.List("tables", group.Tables, table => Write(table, json));
        json.List("words", group.Words, json.Value);
    });

    private static void Write(Figure figure, SummaryWriter json) => json.Object(() =>
    {
        json.Put("name", figure.Name);
        json.Put("symbol", figure.Symbol);
        json.Put("title", figure.Title);
        Value(figure.Value, figure.Unit, json);
        json.Put("formula", figure.Formula);
        json.List("inputs", figure.Inputs, input => json.Object(() =>
        {
            json.Put("symbol", input.Symbol);
            json.Put("title", input.Title);
            Value(input.Value, input.Unit, json);
            json.Put("from", input.From);
        }));
        json.Put("source", figure.Source);
        json.Put("valid_for", figure.Validity.Range);
        json.Put("inside", figure.Validity.Holds);
    });

    private static void Value(Amount value, string unit, SummaryWriter json)
    {
        json.Put("low", value.Low);
        json.Put("likely", value.Likely);
        json.Put("high", value.High);
        json.Put("unit", unit);
    }

    private static void Write(FigureTable table, SummaryWriter json) => json.Object(() =>
    {
        json.Put("name", table.Name);
        json.Put("title", table.Title);
        json.Put("first", table.First);
        json.List("columns", table.Columns, column => json.Object(() =>
        {
            json.Put("name", column.Name);
            json.Put("title", column.Title);
            json.Put("unit", column.Unit);
        }));
        json.List("rows", table.Rows, row => json.Object(() =>
        {
            json.Put("label", row.Label);
            json.List("values", row.Values, json.Value);
        }));
    });
}
