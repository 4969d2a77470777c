using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>Figures that belong together, ready to be shown.</summary>
/// <param name="Name">One word: <c>flow</c>.</param>
/// <param name="Title">Of its chapter.</param>
/// <param name="Words">What no figure says: bounds of what is known, cautions; full sentences.</param>
public sealed record FigureGroup(
    string Name,
    string Title,
    ImmutableArray<Figure> Figures,
    ImmutableArray<FigureTable> Tables,
    ImmutableArray<string> Words)
{
    /// <summary>The same without figures that sizes beyond all use have made endless, and with gaps for such in tables.</summary>
    public FigureGroup Finite() => this with
    {
        Figures = [.. Figures.Where(figure => figure.Value.IsFinite && figure.Inputs.All(input => input.Value.IsFinite))],
        Tables = [.. Tables.Select(table => table with { Rows = [.. table.Rows.Select(row => row.Finite())] })],
    };
}

/// <summary>Figures of one kind for several things.</summary>
/// <param name="Name">Unique in a vessel: <c>stages</c>.</param>
/// <param name="First">What the rows' labels are.</param>
public sealed record FigureTable(
    string Name, string Title, string First, ImmutableArray<FigureColumn> Columns, ImmutableArray<FigureRow> Rows);

/// <param name="Name">Unique in the table, as <c>area_mm2</c>.</param>
public sealed record FigureColumn(string Name, string Title, string Unit);

/// <param name="Values">One a column; null where there is none. Finite.</param>
public sealed record FigureRow(string Label, ImmutableArray<double?> Values)
{
    internal FigureRow Finite() => this with
    {
        Values = [.. Values.Select(value => value is { } figure && double.IsFinite(figure) ? value : null)],
    };
}
