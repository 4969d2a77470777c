using System.Collections.Immutable;

namespace Vessel.Export.Report;

/// <summary>A heading of a table. <paramref name="IsFigure"/>: its cells stand flush right.</summary>
internal readonly record struct Column(string Title, bool IsFigure = false)
{
    public static implicit operator Column(string title) => new(title);

    public static Column Figure(string title) => new(title, true);
}

/// <summary>What stands in a cell: words, or whatever <paramref name="Write"/> writes.</summary>
internal readonly record struct Cell(Action<Html> Write)
{
    public static implicit operator Cell(string? words) => new(html => html.Text(words ?? "\u2013"));

    public static Cell Link(string path, string text) => new(html => html.Link(path, text));
}

internal static class HtmlTable
{
    /// <summary>A table that a reader of screens can walk: caption, column heads, the first cell of each row its head.</summary>
    /// <param name="id">Anchor of the table, unique in the page.</param>
    /// <param name="rowIds">Anchors of the rows; null for none.</param>
    /// <param name="hasTotal">Whether the last row sums up the others.</param>
    public static void Table(
        this Html html,
        string id,
        string caption,
        ImmutableArray<Column> columns,
        IReadOnlyList<Cell[]> rows,
        Func<int, string?>? rowIds = null,
        bool hasTotal = false)
    {
        void Row(int i) => html.Tag(
            "tr",
            () =>
            {
                for (var j = 0; j < columns.Length; j++)
                {
                    var cell = rows[i][j];
                    var kind = columns[j].IsFigure ? "figure" : null;
                    if (j == 0)
                        html.Tag("th", () => cell.Write(html), ("scope", "row"), ("class", kind));
                    else
                        html.Tag("td", () => cell.Write(html), ("class", kind));
                }
            },
            ("id", rowIds?.Invoke(i)));

        // It may be wider than a phone: then it moves sideways by itself, by keyboard too.
        html.Tag(
            "div",
            () => html.Tag("table", () =>
            {
                html.Tag("caption", caption, ("id", $"{id}-caption"));
                html.Tag("thead", () => html.Tag("tr", () =>
                {
                    foreach (var column in columns)
                        html.Tag("th", column.Title, ("scope", "col"), ("class", column.IsFigure ? "figure" : null));
                }));
                var last = hasTotal ? rows.Count - 1 : rows.Count;
                html.Tag("tbody", () =>
                {
                    for (var i = 0; i < last; i++)
                        Row(i);
                });
                if (hasTotal)
                    html.Tag("tfoot", () => Row(last));
            }),
            ("class", "wide"),
            ("tabindex", "0"),
            ("role", "region"),
            ("aria-labelledby", $"{id}-caption"));
    }
}
