using Vessel.Function;

namespace Vessel.Export.Summary;

/// <summary>Layout of one entry of summary.json's <c>function</c>: a chapter of figures.</summary>
internal static class FunctionShape
{
    public static Shape<FigureGroup> Entry { get; } = new RecordShape<FigureGroup>("A chapter")
        .Text("name", "One word", group => group.Name)
        .Text("title", "In words", group => group.Title)
        .List("figures", "In the order of the report", group => group.Figures, OneFigure())
        .List("tables", "Figures of one kind for several things", group => group.Tables, Table())
        .Texts("words", "Remarks", "A sentence", group => group.Words);

    private static RecordShape<Figure> OneFigure() =>
        Value(
            new RecordShape<Figure>("A figure")
                .Text("name", "As explain takes it", figure => figure.Name)
                .Text("symbol", "As in its formula", figure => figure.Symbol)
                .Text("title", "In words", figure => figure.Title),
            figure => figure.Value,
            figure => figure.Unit,
            "Likely; the same as low and high where it is exact")
        .Text("formula", "In plain text", figure => figure.Formula)
        .List("inputs", "Inputs of the formula", figure => figure.Inputs, "An input", input =>
            Value(
                input.Text("symbol", "As in the formula", of => of.Symbol).Text("title", "In words", of => of.Title),
                of => of.Value,
                of => of.Unit,
                "Likely")
            .Text("from", "A key of the design, a table, or another figure", of => of.From))
        .Text("source", "Of the formula", figure => figure.Source)
        .Text("valid_for", "Where the formula holds", figure => figure.Validity.Range)
        .Flag("inside", "Whether the inputs lie there", figure => figure.Validity.Holds);

    private static RecordShape<T> Value<T>(RecordShape<T> shape, Func<T, Amount> amount, Func<T, string> unit, string likely) => shape
        .Number("low", "At least", of => amount(of).Low)
        .Number("likely", likely, of => amount(of).Likely)
        .Number("high", "At most", of => amount(of).High)
        .Text("unit", "Of the three", unit);

    private static RecordShape<FigureTable> Table() => new RecordShape<FigureTable>("A table")
        .Text("name", "One word", table => table.Name)
        .Text("title", "In words", table => table.Title)
        .Text("first", "Title of the rows' labels", table => table.First)
        .List("columns", "In order", table => table.Columns, "A column", column => column
            .Text("name", "Unique in the table", of => of.Name)
            .Text("title", "In words", of => of.Title)
            .Text("unit", "Of its values", of => of.Unit))
        .List("rows", "In order", table => table.Rows, "A row", row => row
            .Text("label", "Subject", of => of.Label)
            .List("values", "One a column", of => of.Values, Items.MaybeNumber("Null where there is none")));
}
