using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Geometry;

namespace Vessel.Export.Paper;

/// <summary>Rows of text under a header, ruled; columns as wide as their texts, made smaller together where they do not fit.</summary>
internal sealed record PaperTable(ImmutableArray<string> Header, ImmutableArray<ImmutableArray<string>> Rows, double Letter = 2.2)
{
    private const double Pad = 1.2;

    /// <summary>Height of a row in letters; more where it is filled in by hand.</summary>
    public double Spread { get; init; } = 2;

    /// <summary>Whether lines part the columns.</summary>
    public bool IsBoxed { get; init; }

    public double RowHeight => Spread * Letter;

    /// <param name="corner">Upper left.</param>
    /// <param name="rows">Those that are drawn.</param>
    public IEnumerable<Item> Items(Point2 corner, double width, IEnumerable<ImmutableArray<string>> rows)
    {
        var widths = Widths(width);
        var shown = rows.Prepend(Header).ToList();
        var right = corner.U + widths.Sum(column => column.Width);
        for (var i = 0; i < shown.Count; i++)
        {
            var line = corner.V - ((i + 1) * RowHeight);
            var left = corner.U;
            foreach (var (text, column) in shown[i].Zip(widths))
            {
                if (text.Length > 0)
                    yield return Text.Fitted(text, new(left + Pad, line + (Letter / 2)), Letter * column.Share, column.Width - (1.5 * Pad));
                left += column.Width;
            }

            yield return Stroke.Line(new(corner.U, line), new(right, line), i == 0 ? Pens.Edge : Pens.Pale);
        }

        if (!IsBoxed)
            yield break;
        var edge = corner.U;
        foreach (var column in widths.Select(column => column.Width).Prepend(0))
        {
            edge += column;
            yield return Stroke.Line(new(edge, corner.V), new(edge, corner.V - (shown.Count * RowHeight)), Pens.Pale);
        }
    }

    private ImmutableArray<(double Width, double Share)> Widths(double width)
    {
        var wanted = Header.Select((name, i) => Rows.Select(row => row[i]).Append(name).Max(text => Strokes.Width(text, Letter))
            + (2 * Pad)).ToList();
        var share = Math.Min(1, width / wanted.Sum());
        return [.. wanted.Select(w => (share * w, share))];
    }
}
