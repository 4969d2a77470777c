using System.Collections.Immutable;

namespace Vessel.Geometry;

public enum GridKind
{
    /// <summary>Equilateral triangles: rows C sqrt(3)/2 apart, each shifted by half a pitch.</summary>
    Staggered60,

    /// <summary>Squares on their corners: rows C/sqrt(2) apart, in-row pitch C sqrt(2), each shifted by half of that.</summary>
    Staggered45,

    /// <summary>Squares along the axes.</summary>
    Square,
}

/// <summary>
/// Holes in straight rows. The hole (X, j) of row j stands at ((X + phase.U) x half the in-row pitch,
/// (j + phase.V) x the distance of rows), where X runs in steps of two: even, or as odd as j where rows are staggered.
/// </summary>
public sealed record GridLattice2 : Lattice2
{
    /// <param name="phase">Where the hole (0, 0) stands, in halves of the in-row pitch and in rows.</param>
    public GridLattice2(GridKind kind, Annulus2 within, double holeRadius, double pitch, Point2 phase)
        : base(within, holeRadius, pitch)
    {
        (Kind, Phase) = (kind, phase);
        (HalfStep, RowStep) = kind switch
        {
            GridKind.Staggered60 => (pitch / 2, pitch * Math.Sqrt(3) / 2),
            GridKind.Staggered45 => (pitch / Math.Sqrt(2), pitch / Math.Sqrt(2)),
            GridKind.Square => (pitch / 2, pitch),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };
    }

    public GridKind Kind { get; }

    public Point2 Phase { get; }

    /// <summary>Half the in-row pitch, mm.</summary>
    public double HalfStep { get; }

    /// <summary>Distance of rows, mm.</summary>
    public double RowStep { get; }

    /// <summary>Number of holes, found by the lengths of the rows: the cost grows with their number, not with that of the holes.</summary>
    public override int Count
    {
        get
        {
            var count = 0;
            var (first, last) = RowRange();
            for (var j = first; j <= last; j++)
                count += RowAt(j).Count;
            return count;
        }
    }

    /// <summary>The phase that fits most holes, see <see cref="GridPhase"/>.</summary>
    public static GridLattice2 Fullest(GridKind kind, Annulus2 within, double holeRadius, double pitch) =>
        new(kind, within, holeRadius, pitch, GridPhase.Fullest(
            phase => new GridLattice2(kind, within, holeRadius, pitch, phase).Count));

    /// <summary>Row by row upward, each from left to right.</summary>
    public override IEnumerable<Point2> Centers()
    {
        foreach (var row in Rows())
        {
            for (var i = 0; i < row.Count; i++)
                yield return At(row.X(i), row.J);
        }
    }

    internal Point2 At(int x, int j) => new((x + Phase.U) * HalfStep, (j + Phase.V) * RowStep);

    /// <summary>Rows from the lowest to the highest that could hold a hole.</summary>
    internal ImmutableArray<GridRow> Rows()
    {
        var (first, last) = RowRange();
        var rows = ImmutableArray.CreateBuilder<GridRow>(Math.Max(0, last - first + 1));
        for (var j = first; j <= last; j++)
            rows.Add(RowAt(j));
        return rows.MoveToImmutable();
    }

    private (int First, int Last) RowRange() => (
        (int)Math.Ceiling((-Most / RowStep) - Phase.V),
        (int)Math.Floor((Most / RowStep) - Phase.V));

    private GridRow RowAt(int j)
    {
        var y = Math.Abs((j + Phase.V) * RowStep);
        if (y > Most)
            return new(j, 0, -2, 0, -2);
        var parity = Kind == GridKind.Square ? 0 : j & 1;
        // In units of a whole step from the row's own hole next to X = 0.
        double Steps(double x) => ((x / HalfStep) - Phase.U - parity) / 2;
        int First(double x) => parity + (2 * (int)Math.Ceiling(Steps(x)));
        int Last(double x) => parity + (2 * (int)Math.Floor(Steps(x)));

        // (R - y)(R + y): R^2 - y^2 loses its digits near the tangent.
        var half = Math.Sqrt((Most - y) * (Most + y));
        if (y >= Least)
            return new(j, First(-half), Last(half), 0, -2);
        var gap = Math.Sqrt((Least - y) * (Least + y));
        return new(j, First(-half), Last(-gap), First(gap), Last(half));
    }
}

/// <summary>The holes X of one row, in steps of two: from First to Last, and again beyond the bore.</summary>
internal readonly record struct GridRow
{
    public GridRow(int j, int first, int last, int firstBeyond, int lastBeyond)
    {
        (J, First, FirstBeyond) = (j, first, firstBeyond);
        Before = Math.Max(0, ((last - first) / 2) + 1);
        Count = Before + Math.Max(0, ((lastBeyond - firstBeyond) / 2) + 1);
    }

    public int J { get; }

    public int Count { get; }

    private int First { get; }

    private int FirstBeyond { get; }

    private int Before { get; }

    public int X(int index) => index < Before ? First + (2 * index) : FirstBeyond + (2 * (index - Before));

    /// <summary>-1 when there is no such hole.</summary>
    public int IndexOf(int x)
    {
        var (before, beyond) = ((x - First) / 2, Before + ((x - FirstBeyond) / 2));
        if (x >= First && before < Before)
            return before;
        return x >= FirstBeyond && beyond < Count ? beyond : -1;
    }
}
