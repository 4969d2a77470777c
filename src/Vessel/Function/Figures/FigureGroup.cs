using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>Figures that belong together, ready to be shown.</summary>
/// <param name="Name">One word: <c>flow</c>.</param>
/// <param name="Title">Title of its chapter.</param>
/// <param name="Words">Remarks: bounds of what is known, cautions; full sentences.</param>
public sealed record FigureGroup(
    string Name,
    string Title,
    ImmutableArray<Figure> Figures,
    ImmutableArray<FigureTable> Tables,
    ImmutableArray<string> Words)
{
    /// <summary>For a picture; tables hold the same figures.</summary>
    public ImmutableArray<FigureCurve> Curves { get; init; } = [];

    /// <summary>The group without figures that sizes beyond all use have made endless, and with gaps for such in tables.</summary>
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

/// <summary>A range that goes with a size, in tenths of its decades.</summary>
/// <param name="Name">Unique in a vessel: <c>caught-curve</c>.</param>
/// <param name="Along">What the points stand at, greater than zero and rising.</param>
/// <param name="Most">Greatest value that there can be; the least is zero.</param>
public sealed record FigureCurve(
    string Name, string Title, FigureColumn Along, FigureColumn Up, double Most, ImmutableArray<(double At, Amount Value)> Points);

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
