using Vessel.Geometry;

namespace Vessel.Export.General;

/// <summary>
/// Which stretches of a line nothing stands before. Exact against the facets: each that faces the viewer hides one stretch, whose
/// ends are roots of linear functions. Facets are found through a grid over the picture.
/// </summary>
internal sealed class HiddenLines
{
    /// <summary>A line is hidden by what stands at least so far before it, mm: facets stand off from the true surface by less.</summary>
    private readonly double _before;

    private readonly View _view;
    private readonly List<Facet> _facets = [];
    private readonly Box2 _bounds;
    private readonly int _columns;
    private readonly int _rows;
    private readonly int[] _starts;
    private readonly int[] _cells;
    private readonly int[] _seen;
    private int _query;

    public HiddenLines(View view, IEnumerable<(Mesh Mesh, Frame3 Frame)> bodies, double before)
    {
        (_view, _before) = (view, before);
        foreach (var (mesh, frame) in bodies)
            AddFacing(mesh, frame);
        _bounds = _facets.Aggregate(new Box2(default, default), (box, f) => box.Join(f.A).Join(f.B).Join(f.C));
        var side = (int)Math.Clamp(Math.Sqrt(_facets.Count), 1, 160);
        (_columns, _rows) = (side, side);
        (_starts, _cells) = Sorted();
        _seen = new int[_facets.Count];
    }

    /// <summary>The stretches of a segment that are seen.</summary>
    public List<(Point2 A, Point2 B)> Visible(Vector3 from, Vector3 to) => Visible(from, to, Vector3.Zero, Vector3.Zero);

    /// <summary>
    /// The stretches of a silhouette that are seen, looked for so far outside its own facets, which would hide it here and there.
    /// </summary>
    public List<(Point2 A, Point2 B)> Visible(Vector3 from, Vector3 to, Vector3 outsideFrom, Vector3 outsideTo)
    {
        var seen = new List<(Point2, Point2)>();
        var (a, b) = (_view.On(from), _view.On(to));
        if ((b - a).Length < 1e-6)
            return seen;
        var at = 0.0;
        var (p, q) = (from + outsideFrom, to + outsideTo);
        var hidden = Hidden(_view.On(p), _view.On(q), _view.Depth(p), _view.Depth(q));
        hidden.Sort();
        foreach (var (start, end) in hidden)
        {
            if (start > at + 1e-9)
                seen.Add((a + (at * (b - a)), a + (start * (b - a))));
            at = Math.Max(at, end);
        }

        if (at < 1 - 1e-9)
            seen.Add((a + (at * (b - a)), b));
        return seen;
    }

    /// <summary>
    /// In how many of four directions, slant in the picture, what lies close to a point is seen: a root between two parts is half hidden.
    /// </summary>
    public int SeenRound(Vector3 p)
    {
        const double close = 0.3;
        const double slant = 0.2;
        return new[] { (1, 1), (1, -1), (-1, 1), (-1, -1) }.Count(way =>
        {
            var step = (close * way.Item1 * _view.Right) + (slant * way.Item2 * _view.Up);
            var seen = Visible(p + (0.1 * step), p + step);
            return seen.Sum(part => (part.B - part.A).Length) > 0.8 * step.Length;
        });
    }

    private void AddFacing(Mesh mesh, Frame3 frame)
    {
        var flat = new (Point2 At, double Depth)[mesh.Vertices.Length];
        for (var i = 0; i < flat.Length; i++)
        {
            var p = frame.ToOuter(mesh.Vertices[i]);
            flat[i] = (_view.On(p), _view.Depth(p));
        }

        foreach (var t in mesh.Triangles)
        {
            var (a, b, c) = (flat[t.A], flat[t.B], flat[t.C]);
            var (u, v) = (b.At - a.At, c.At - a.At);
            var twice = u.Cross(v);
            if (twice < 1e-7)
                continue;
            // Depth is linear over the facet.
            var (du, dv) = (b.Depth - a.Depth, c.Depth - a.Depth);
            var slope = new Point2(((du * v.V) - (dv * u.V)) / twice, ((dv * u.U) - (du * v.U)) / twice);
            _facets.Add(new(a.At, b.At, c.At, a.Depth - slope.Dot(a.At), slope));
        }
    }

    private List<(double Start, double End)> Hidden(Point2 a, Point2 b, double depthA, double depthB)
    {
        var hidden = new List<(double, double)>();
        _query++;
        var (left, right) = Columns(Math.Min(a.U, b.U), Math.Max(a.U, b.U));
        var (low, high) = Rows(Math.Min(a.V, b.V), Math.Max(a.V, b.V));
        for (var row = low; row <= high; row++)
        {
            for (var column = left; column <= right; column++)
            {
                var cell = (row * _columns) + column;
                for (var i = _starts[cell]; i < _starts[cell + 1]; i++)
                {
                    var number = _cells[i];
                    if (_seen[number] == _query)
                        continue;
                    _seen[number] = _query;
                    if (Behind(_facets[number], a, b, depthA, depthB) is { } stretch)
                        hidden.Add(stretch);
                }
            }
        }

        return hidden;
    }

    /// <summary>Where the segment lies inside the facet's outline and behind its plane.</summary>
    private (double, double)? Behind(in Facet f, Point2 a, Point2 b, double depthA, double depthB)
    {
        var (from, to) = (0.0, 1.0);
        if (!Clip((f.B - f.A).Cross(a - f.A), (f.B - f.A).Cross(b - f.A), ref from, ref to)
            || !Clip((f.C - f.B).Cross(a - f.B), (f.C - f.B).Cross(b - f.B), ref from, ref to)
            || !Clip((f.A - f.C).Cross(a - f.C), (f.A - f.C).Cross(b - f.C), ref from, ref to)
            || !Clip(f.Depth(a) - depthA - _before, f.Depth(b) - depthB - _before, ref from, ref to))
        {
            return null;
        }

        return to - from > 1e-9 ? (from, to) : null;
    }

    /// <summary>Keeps where a linear function with these values at the ends is positive.</summary>
    private static bool Clip(double atStart, double atEnd, ref double from, ref double to)
    {
        if (atStart <= 0 && atEnd <= 0)
            return false;
        if (atStart < 0)
            from = Math.Max(from, atStart / (atStart - atEnd));
        else if (atEnd < 0)
            to = Math.Min(to, atStart / (atStart - atEnd));
        return from < to;
    }

    /// <summary>Facets by cell, as one array with the place where each cell's begin.</summary>
    private (int[] Starts, int[] Cells) Sorted()
    {
        var starts = new int[(_columns * _rows) + 1];
        ForCells((cell, _) => starts[cell + 1]++);
        for (var i = 1; i < starts.Length; i++)
            starts[i] += starts[i - 1];
        var next = starts.ToArray();
        var cells = new int[starts[^1]];
        ForCells((cell, facet) => cells[next[cell]++] = facet);
        return (starts, cells);
    }

    private void ForCells(Action<int, int> act)
    {
        for (var i = 0; i < _facets.Count; i++)
        {
            var f = _facets[i];
            var (left, right) = Columns(Math.Min(f.A.U, Math.Min(f.B.U, f.C.U)), Math.Max(f.A.U, Math.Max(f.B.U, f.C.U)));
            var (low, high) = Rows(Math.Min(f.A.V, Math.Min(f.B.V, f.C.V)), Math.Max(f.A.V, Math.Max(f.B.V, f.C.V)));
            for (var row = low; row <= high; row++)
            {
                for (var column = left; column <= right; column++)
                    act((row * _columns) + column, i);
            }
        }
    }

    private (int, int) Columns(double from, double to) => Cells(from, to, _bounds.Min.U, _bounds.Width, _columns);

    private (int, int) Rows(double from, double to) => Cells(from, to, _bounds.Min.V, _bounds.Height, _rows);

    private static (int, int) Cells(double from, double to, double start, double length, int count)
    {
        int Cell(double at) => length > 0 ? Math.Clamp((int)((at - start) / length * count), 0, count - 1) : 0;
        return (Cell(from), Cell(to));
    }

    /// <summary>A facet in the picture, counter-clockwise, and its depth as a linear function.</summary>
    private readonly record struct Facet(Point2 A, Point2 B, Point2 C, double AtOrigin, Point2 Slope)
    {
        public double Depth(Point2 p) => AtOrigin + Slope.Dot(p);
    }
}
