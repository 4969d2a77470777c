using Vessel.Export.Report.Drawing;
using Vessel.Function;

namespace Vessel.Export.Report.Sections;

/// <summary>Whether the vessel does its work: each chapter's figures, with formula, inputs and source in a fold-out.</summary>
internal static class FunctionSection
{
    public static ReportSection Section { get; } = new("function", "Function", Write)
    {
        AppliesTo = report => !report.Build.Function.IsEmpty,
    };

    private static void Write(ReportContext report, Html html)
    {
        foreach (var group in report.Build.Function)
            WriteGroup(group, html);
    }

    private static void WriteGroup(FigureGroup group, Html html)
    {
        html.Tag("h3", group.Title);
        if (!group.Figures.IsEmpty)
        {
            html.Table(
                $"figures-{group.Name}",
                $"{group.Title}: figures",
                ["Figure", Column.Figure("Likely"), Column.Figure("Low to high"), "Unit"],
                [
                    .. group.Figures.Select(figure => new Cell[]
                    {
                        Capital(figure.Title), Digits(figure.Value.Likely),
                        Range(figure.Value), figure.Unit,
                    }),
                ]);
        }

        foreach (var table in group.Tables)
        {
            html.Table(
                $"table-{table.Name}",
                Capital(table.Title),
                [
                    Capital(table.First),
                    .. table.Columns.Select(
                        column => Column.Figure(column.Unit.Length == 0 ? column.Title : $"{column.Title}, {column.Unit}")),
                ],
                [.. table.Rows.Select(
                    row => row.Values.Select(value => (Cell)(value is { } v ? Digits(v) : null)).Prepend(row.Label).ToArray())]);
        }

        foreach (var curve in group.Curves)
        {
            html.Tag("figure", () =>
            {
                CurvePicture.Of(curve).Write(html);
                html.Tag("figcaption", $"{Capital(curve.Title)}: likely as a line, between at least and at most shaded.");
            });
        }

        foreach (var words in group.Words)
            html.Tag("p", words);
        if (!group.Figures.IsEmpty)
            html.Tag("details", () => WriteBasis(group, html));
    }

    private static void WriteBasis(FigureGroup group, Html html)
    {
        html.Tag("summary", "Formulas, inputs and sources");
        foreach (var figure in group.Figures)
        {
            html.Tag("h4", Capital(figure.Title));
            html.Tag("p", () => html.Tag("code", figure.Formula));
            if (!figure.Inputs.IsEmpty)
            {
                html.Tag("ul", () =>
                {
                    foreach (var input in figure.Inputs)
                        html.Tag("li", $"{input.Symbol} = {Told(input.Value)} {input.Unit}: {input.Title} ({input.From})");
                });
            }

            html.Tag("p", $"Source: {figure.Source}. Holds: {figure.Validity.Range}"
                + (figure.Validity.Holds ? "." : "; here it is outside that."), ("class", "small"));
        }
    }

    private static string Told(Amount value) =>
        Range(value) is { } range ? $"{Digits(value.Likely)} ({range})" : Digits(value.Likely);

    /// <summary>None where both ends read alike.</summary>
    private static string? Range(Amount value) =>
        Digits(value.Low) == Digits(value.High) ? null : $"{Digits(value.Low)} to {Digits(value.High)}";

    /// <summary>Three digits that count, and all before the point.</summary>
    private static string Digits(double value) =>
        Sizes.Text(value, value == 0 ? 0 : Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6));

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
