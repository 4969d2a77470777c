using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// Parts the metal of a grid of holes into the pieces between three or four neighbours, all alike, and the rest along the
/// rims.
/// </summary>
internal sealed class GridPieces
{
    /// <summary>A hole that a piece lies between, by steps from the piece's first, and the sector of it that faces the piece.</summary>
    private readonly record struct Neighbour(int X, int J, int Sector);

    private static readonly ImmutableArray<Neighbour> _upright = [new(0, 0, 0), new(2, 0, 2), new(1, 1, 4)];
    private static readonly ImmutableArray<Neighbour> _inverted = [new(0, 0, 1), new(1, 1, 3), new(-1, 1, 5)];
    private static readonly ImmutableArray<Neighbour> _square = [new(0, 0, 0), new(2, 0, 1), new(2, 1, 2), new(0, 1, 3)];
    private static readonly ImmutableArray<Neighbour> _diamond = [new(0, 0, 0), new(1, 1, 1), new(0, 2, 2), new(-1, 1, 3)];

    /// <summary>Steps to the neighbours, counter-clockwise; sector s lies between the ways to neighbours s and s + 1.</summary>
    private static readonly ImmutableArray<(int X, int J)> _waysOfSix = [(2, 0), (1, 1), (-1, 1), (-2, 0), (-1, -1), (1, -1)];
    private static readonly ImmutableArray<(int X, int J)> _waysOfFour = [(2, 0), (0, 1), (-2, 0), (0, -1)];
    private static readonly ImmutableArray<(int X, int J)> _waysOfDiamond = [(1, 1), (-1, 1), (-1, -1), (1, -1)];

    private readonly GridLattice2 _grid;
    private readonly ImmutableArray<GridRow> _rows;
    private readonly int[] _firstHole;
    private readonly ImmutableArray<(int X, int J)> _ways;
    private readonly ImmutableArray<Neighbour>[] _kinds;
    private readonly double _start;
    private readonly int _perSector;

    public GridPieces(GridLattice2 grid, double chord)
    {
        _grid = grid;
        (_kinds, _ways, _start) = grid.Kind switch
        {
            GridKind.Staggered60 => (new[] { _upright, _inverted }, _waysOfSix, 0.0),
            GridKind.Square => (new[] { _square }, _waysOfFour, 0.0),
            GridKind.Staggered45 => (new[] { _diamond }, _waysOfDiamond, Math.PI / 4),
            _ => throw new ArgumentOutOfRangeException(nameof(grid)),
        };
        _rows = grid.Rows();
        _firstHole = new int[_rows.Length];
        for (var r = 1; r < _rows.Length; r++)
            _firstHole[r] = _firstHole[r - 1] + _rows[r - 1].Count;
        Holes = new(grid.Centers().ToArray(), _ => _start, HolePolygon.Of(grid.HoleRadius, chord, grid.Web, _ways.Length));
        _perSector = Holes.Corners / _ways.Length;
    }

    public HolePolygons Holes { get; }

    public void Fill(PerforatedMesher plate)
    {
        var filled = new byte[Holes.Holes];
        foreach (var kind in _kinds)
            FillWhole(kind, filled, plate);
        plate.Fill(plate.Rims.SelectMany(rim => rim).Concat(RestSides(filled)).ToList());
    }

    /// <summary>Fills all whole pieces of a kind alike, and notes which sectors of which holes they take.</summary>
    private void FillWhole(ImmutableArray<Neighbour> kind, byte[] filled, PerforatedMesher plate)
    {
        var pattern = Pattern(kind);
        Span<int> holes = stackalloc int[kind.Length];
        for (var r = 0; r < _rows.Length; r++)
        {
            for (var i = 0; i < _rows[r].Count; i++)
            {
                var x = _rows[r].X(i);
                if (!Find(kind, r, x, holes) || MeetsBore(kind, x, _rows[r].J))
                    continue;
                for (var k = 0; k < kind.Length; k++)
                    filled[holes[k]] |= (byte)(1 << kind[k].Sector);
                foreach (var (a, b, c) in pattern)
                    plate.AddTriangle(Corner(holes, a), Corner(holes, b), Corner(holes, c));
            }
        }
    }

    private int Corner(Span<int> holes, (int Neighbour, int Corner) at) => Holes.Index(holes[at.Neighbour], at.Corner);

    private bool Find(ImmutableArray<Neighbour> kind, int row, int x, Span<int> holes)
    {
        for (var k = 0; k < kind.Length; k++)
        {
            holes[k] = HoleAt(row + kind[k].J, x + kind[k].X);
            if (holes[k] < 0)
                return false;
        }

        return true;
    }

    private int HoleAt(int row, int x)
    {
        if (row < 0 || row >= _rows.Length)
            return -1;
        var index = _rows[row].IndexOf(x);
        return index < 0 ? -1 : _firstHole[row] + index;
    }

    /// <summary>Whether the circle round the neighbours' centres comes near the bore: whole holes may stand all round it.</summary>
    private bool MeetsBore(ImmutableArray<Neighbour> kind, int x, int j)
    {
        var bore = _grid.Within.Inner;
        if (bore == 0)
            return false;
        var centre = default(Point2);
        foreach (var neighbour in kind)
            centre += (1.0 / kind.Length) * _grid.At(x + neighbour.X, j + neighbour.J);
        var reach = (_grid.At(x, j) - centre).Length;
        return centre.Length < bore + _grid.Within.Margin + reach;
    }

    /// <summary>The facets of one piece: the outline from hole to hole, along each against its corners' order.</summary>
    private List<((int, int) A, (int, int) B, (int, int) C)> Pattern(ImmutableArray<Neighbour> kind)
    {
        var corners = new List<(int Neighbour, int Corner)>();
        for (var k = 0; k < kind.Length; k++)
        {
            for (var i = _perSector; i >= 0; i--)
                corners.Add((k, (kind[k].Sector * _perSector) + i));
        }

        var points = corners.ConvertAll(at =>
        {
            var (x, j) = (kind[at.Neighbour].X, kind[at.Neighbour].J);
            return new Point2(x * _grid.HalfStep, j * _grid.RowStep)
                + Point2.Polar(_grid.HoleRadius, _start + (Turns.Full * at.Corner / Holes.Corners));
        });
        var sides = Enumerable.Range(0, points.Count).Select(i => (i, (i + 1) % points.Count)).ToList();
        return [.. PlaneFill.Between(points, sides).Select(t => (corners[t.A], corners[t.B], corners[t.C]))];
    }

    /// <summary>The outlines of what whole pieces leave: sectors of holes, and lines to a neighbour with a piece on one side.</summary>
    private IEnumerable<(int From, int To)> RestSides(byte[] filled)
    {
        for (var r = 0; r < _rows.Length; r++)
        {
            for (var i = 0; i < _rows[r].Count; i++)
            {
                var hole = _firstHole[r] + i;
                for (var s = 0; s < _ways.Length; s++)
                {
                    var (left, right) = (IsFilled(filled[hole], s), IsFilled(filled[hole], s + _ways.Length - 1));
                    for (var c = s * _perSector; !left && c < (s + 1) * _perSector; c++)
                        yield return (Holes.Index(hole, c), Holes.Index(hole, c + 1));
                    if (left == right)
                        continue;
                    var neighbour = HoleAt(r + _ways[s].J, _rows[r].X(i) + _ways[s].X);
                    if (hole < neighbour)
                        yield return (Holes.Index(hole, s * _perSector), Holes.Index(neighbour, (s + (_ways.Length / 2)) * _perSector));
                }
            }
        }
    }

    private bool IsFilled(byte sectors, int sector) => (sectors & (1 << (sector % _ways.Length))) != 0;
}
