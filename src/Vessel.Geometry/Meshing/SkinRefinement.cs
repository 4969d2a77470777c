namespace Vessel.Geometry;

/// <summary>A point of a skin: its place in the chart, from which the surface is read, and in space.</summary>
internal readonly record struct SkinPoint(Point2 Chart, Vector3 At);

/// <summary>Adds points inside a triangulated skin, at the worst facet first, until every facet lies within the chord.</summary>
/// <remarks>
/// A point goes to the middle of the circle round a facet (Chew 1993, "Guaranteed-quality mesh generation for curved
/// surfaces"): no other point is nearer to it than that circle's radius, so few are needed. On a sphere of radius R a
/// facet within the chord c fits a circle of radius sqrt(2 R c), whose equilateral triangle covers 3 sqrt(3) / 4 of its
/// square: no mesh with its vertices on the sphere has fewer than A / (3 sqrt(3) / 2 R c) facets on an area A. On a
/// cylinder it is 2 pi / acos(1 - c / R), two for each strip. Both derived here.
/// </remarks>
internal sealed class SkinRefinement
{
    /// <summary>Guards against a surface that is not smooth.</summary>
    private const int MostPoints = 4_000_000;

    /// <summary>A new point stands off a bound by at least this share of the bound's piece, lest it make needles.</summary>
    private const double LeastAltitude = 0.1;

    private readonly Triangulation _triangulation;
    private readonly Surface _on;
    private readonly double _chord;
    private readonly Func<Grid2, SkinPoint> _read;
    private readonly List<SkinPoint> _points;
    private readonly List<bool> _inside;
    private readonly PriorityQueue<(int T, int A, int B, int C), double> _open = new();

    /// <param name="points">Those of the triangulation, from its first on.</param>
    /// <param name="read">The skin's point at a place of the triangulation.</param>
    public SkinRefinement(
        Triangulation triangulation, Surface on, double chord, IEnumerable<SkinPoint> points, Func<Grid2, SkinPoint> read)
    {
        (_triangulation, _on, _chord, _read) = (triangulation, on, chord * (1 + 1e-6), read);
        _points = [.. points];
        _inside = [.. triangulation.Inside()];
    }

    /// <summary>Those given, then those added.</summary>
    public IReadOnlyList<SkinPoint> Points => _points;

    /// <summary>For each triangle whether it lies inside.</summary>
    public IReadOnlyList<bool> Inside => _inside;

    public void Run()
    {
        for (var t = 0; t < _triangulation.TriangleCount; t++)
            Take(t);
        while (_points.Count < MostPoints && _open.TryDequeue(out var facet, out _))
        {
            if (Corners(facet.T) == facet)
                Split(facet.T);
        }
    }

    /// <summary>Queues a facet that stands off too far.</summary>
    private void Take(int t)
    {
        if (_inside[t] && Worst(t) is var (off, _) && off > _chord)
            _open.Enqueue(Corners(t), -off);
    }

    private void Split(int t)
    {
        if (Centre(t) is not { } centre || !IsFree(t, centre) || !Insert(centre))
            Insert(Worst(t).Place);
    }

    private bool Insert(Grid2 place)
    {
        if (_triangulation.Insert(place) is var point && point < 0)
            return false;
        _points.Add(_read(place));
        // No flip crosses a bound, so all round the new point is inside, as the facet was that asked for it.
        while (_inside.Count < _triangulation.TriangleCount)
            _inside.Add(true);
        foreach (var t in _triangulation.Round(point))
            Take(t);
        return true;
    }

    /// <summary>Whether the place can be seen from the facet and does not lie too near to a bound.</summary>
    private bool IsFree(int facet, Grid2 place)
    {
        if (_triangulation.Seen(facet, place) is not { } t)
            return false;
        var at = _read(place).At;
        for (var k = 0; k < 3; k++)
        {
            var (a, b) = (Corner(t, k + 1).At, Corner(t, k + 2).At);
            if (_triangulation.IsFixed(t, k) && at.DistanceToSegment(a, b) < LeastAltitude * (b - a).Length)
                return false;
        }

        return true;
    }

    private (int T, int A, int B, int C) Corners(int t) =>
        (t, _triangulation.Corner(t, 0), _triangulation.Corner(t, 1), _triangulation.Corner(t, 2));

    private SkinPoint Corner(int t, int k) => _points[_triangulation.Corner(t, k % 3) - Triangulation.FirstPoint];

    private Grid2 Place(int t, int k) => _triangulation.Point(_triangulation.Corner(t, k % 3));

    /// <summary>Middle of the circle round the triangle; null when it is too far away to be of use.</summary>
    private Grid2? Centre(int t)
    {
        var (a, b, c) = (Place(t, 0), Place(t, 1), Place(t, 2));
        double bx = b.X - a.X, by = b.Y - a.Y, cx = c.X - a.X, cy = c.Y - a.Y;
        var twice = 2 * ((bx * cy) - (by * cx));
        var (bb, cc) = ((bx * bx) + (by * by), (cx * cx) + (cy * cy));
        var (x, y) = (((cy * bb) - (by * cc)) / twice, ((bx * cc) - (cx * bb)) / twice);
        return Math.Abs(x) + Math.Abs(y) < Triangulation.Farthest
            ? new(a.X + (long)Math.Round(x), a.Y + (long)Math.Round(y))
            : null;
    }

    /// <summary>Where, of the middles of the sides that may be split and a place inside, the facet stands off most.</summary>
    private (double Off, Grid2 Place) Worst(int t)
    {
        var (off, place) = StandOff(t, InnerShares(t));
        for (var k = 0; k < 3; k++)
        {
            if (_triangulation.IsFixed(t, k))
                continue;
            var side = StandOff(t, k switch { 0 => (0, 0.5, 0.5), 1 => (0.5, 0, 0.5), _ => (0.5, 0.5, 0) });
            if (side.Off > off)
                (off, place) = side;
        }

        return (off, place);
    }

    /// <summary>Shares of the corners in the middle of the circle round the facet if that lies inside it, else in its centroid.</summary>
    private (double A, double B, double C) InnerShares(int t)
    {
        var (a, b, c) = (Corner(t, 0).At, Corner(t, 1).At, Corner(t, 2).At);
        var (x, y, z) = ((c - b).Dot(c - b), (a - c).Dot(a - c), (b - a).Dot(b - a));
        var (i, j, k) = (x * (y + z - x), y * (z + x - y), z * (x + y - z));
        if (i <= 0 || j <= 0 || k <= 0)
            return (1.0 / 3, 1.0 / 3, 1.0 / 3);
        var sum = i + j + k;
        return (i / sum, j / sum, k / sum);
    }

    /// <summary>
    /// Distance of a facet's point from the surface, measured along the normal: a chart that stretches moves points
    /// within the surface, which does no harm.
    /// </summary>
    private (double Off, Grid2 Place) StandOff(int t, (double A, double B, double C) shares)
    {
        var (a, b, c) = (Corner(t, 0), Corner(t, 1), Corner(t, 2));
        var chart = (shares.A * a.Chart) + (shares.B * b.Chart) + (shares.C * c.Chart);
        var flat = (shares.A * a.At) + (shares.B * b.At) + (shares.C * c.At);
        var (p, q, r) = (Place(t, 0), Place(t, 1), Place(t, 2));
        return (
            Math.Abs((_on.At(chart) - flat).Dot(_on.Normal(chart))),
            new(
                (long)Math.Round((shares.A * p.X) + (shares.B * q.X) + (shares.C * r.X)),
                (long)Math.Round((shares.A * p.Y) + (shares.B * q.Y) + (shares.C * r.Y))));
    }
}
