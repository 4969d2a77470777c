namespace Vessel.Geometry;

/// <summary>
/// A constrained Delaunay triangulation that grows point by point inside a large box. Exact on its integer grid.
/// </summary>
/// <remarks>
/// Insertion by walking and Lawson's flips; edges that must be there are recovered in the other file of this class. Corner k of
/// triangle t stands at 3t + k, and the neighbour across from it at the same index.
/// </remarks>
internal sealed partial class Triangulation
{
    private const int None = -1;

    private readonly List<Grid2> _points = [];
    private readonly List<int> _corner = [];
    private readonly List<int> _neighbour = [];
    private readonly List<bool> _fixed = [];
    private readonly Stack<int> _suspects = new();
    private int _last;
    private uint _walk;

    /// <param name="reach">All points to come have coordinates between -reach and reach; at most 2^27.</param>
    /// <param name="expected">About so many of them.</param>
    public Triangulation(long reach, int expected = 0)
    {
        // Two triangles a point.
        _points.Capacity = expected + FirstPoint;
        _corner.Capacity = _neighbour.Capacity = _fixed.Capacity = 3 * 2 * (expected + 1);
        var far = 3 * reach;
        _points.AddRange([new(-far, -far), new(far, -far), new(far, far), new(-far, far)]);
        AddTriangle(0, 1, 2);
        AddTriangle(0, 2, 3);
        Join(0, 1, 1, 2);
    }

    public int TriangleCount => _corner.Count / 3;

    /// <summary>The number of points in the box before the caller's first.</summary>
    public static int FirstPoint => 4;

    public int Corner(int triangle, int k) => _corner[(3 * triangle) + k];

    public bool IsFixed(int triangle, int k) => _fixed[(3 * triangle) + k];

    public Grid2 Point(int corner) => _points[corner];

    /// <summary>Further from a point of the caller's than this lies outside the box, whichever way.</summary>
    public const long Farthest = 1L << 29;

    /// <summary>The triangle across from corner k, or -1 outside the box.</summary>
    public int Neighbour(int triangle, int k) => _neighbour[(3 * triangle) + k];

    /// <summary>
    /// Adds a point and returns its index; -1, with nothing changed, when it lies on another point or on a fixed edge.
    /// </summary>
    public int Insert(Grid2 p)
    {
        var (t, edge) = Locate(p);
        for (var k = 0; k < 3; k++)
        {
            if (_points[Corner(t, k)] == p)
                return None;
        }

        if (edge != None && IsFixed(t, edge))
            return None;

        var index = _points.Count;
        _points.Add(p);
        if (edge == None)
            SplitTriangle(t, index);
        else
            SplitEdge(t, edge, index);
        Legalise();
        _last = _corner.Count / 3 - 1;
        return index;
    }

    /// <summary>The triangles round a point that was added.</summary>
    public IEnumerable<int> Round(int point) => Around(point).Select(at => at.Triangle);

    /// <summary>The triangle that holds p, reached from another without crossing a fixed edge; null when it is not reached so.</summary>
    public int? Seen(int from, Grid2 p)
    {
        const int mostSteps = 1000;
        var t = from;
        for (var step = 0; step < mostSteps; step++)
        {
            var k = 0;
            while (k < 3 && Grid2.Turn(_points[Corner(t, (k + 1) % 3)], _points[Corner(t, (k + 2) % 3)], p) >= 0)
                k++;
            if (k == 3)
                return t;
            if (IsFixed(t, k) || Neighbour(t, k) == None)
                return null;
            t = Neighbour(t, k);
        }

        return null;
    }

    /// <summary>Whether side k of t is free and the two triangles on it make a strictly convex quadrilateral.</summary>
    public bool MayFlip(int t, int k) => Neighbour(t, k) != None && !IsFixed(t, k) && IsConvex(t, k);

    /// <summary>The triangle on the other side of side k, and its corner there.</summary>
    public (int Triangle, int Corner) Across(int t, int k) => Neighbour(t, k) is var u ? (u, SideTowards(u, t)) : default;

    /// <summary>Gives the two triangles on side k of t their other diagonal, Delaunay or not.</summary>
    public void Turn(int t, int k) => Flip(t, k);

    private int AddTriangle(int a, int b, int c)
    {
        _corner.AddRange([a, b, c]);
        _neighbour.AddRange([None, None, None]);
        _fixed.AddRange([false, false, false]);
        return (_corner.Count / 3) - 1;
    }

    private void Join(int t, int k, int u, int m)
    {
        if (t != None)
            _neighbour[(3 * t) + k] = u;
        if (u != None)
            _neighbour[(3 * u) + m] = t;
    }

    private int SideTowards(int t, int neighbour)
    {
        for (var k = 0; k < 3; k++)
        {
            if (Neighbour(t, k) == neighbour)
                return k;
        }

        throw new InvalidOperationException("triangles are not neighbours");
    }

    /// <summary>The triangle that holds p, and the side that p lies on or -1.</summary>
    private (int Triangle, int Side) Locate(Grid2 p)
    {
        var t = _last;
        while (true)
        {
            var on = None;
            var moved = false;
            // A walk that always tries the sides in one order can go in circles where constraints stand.
            _walk = (_walk * 1664525) + 1013904223;
            var first = (int)(_walk >> 16) % 3;
            for (var i = 0; i < 3 && !moved; i++)
            {
                var k = (first + i) % 3;
                var turn = Grid2.Turn(_points[Corner(t, (k + 1) % 3)], _points[Corner(t, (k + 2) % 3)], p);
                if (turn == 0)
                    on = k;
                if (turn < 0)
                {
                    t = Neighbour(t, k);
                    moved = true;
                }
            }

            if (!moved)
            {
                _last = t;
                return (t, on);
            }
        }
    }

    private void SplitTriangle(int t, int p)
    {
        var (a, b, c) = (Corner(t, 0), Corner(t, 1), Corner(t, 2));
        var sides = Sides(t);
        var u = AddTriangle(b, c, p);
        var v = AddTriangle(c, a, p);
        Set(t, a, b, p);
        Attach(t, 2, sides[2]);
        Attach(u, 2, sides[0]);
        Attach(v, 2, sides[1]);
        Join(t, 0, u, 1);
        Join(u, 0, v, 1);
        Join(v, 0, t, 1);
        Suspect(t, 2);
        Suspect(u, 2);
        Suspect(v, 2);
    }

    /// <summary>Splits the two triangles on side k of t; p lies on that side.</summary>
    private void SplitEdge(int t, int k, int p)
    {
        var u = Neighbour(t, k);
        var m = SideTowards(u, t);
        var (apex, from, to, far) = (Corner(t, k), Corner(t, (k + 1) % 3), Corner(t, (k + 2) % 3), Corner(u, m));
        var (tFrom, tTo) = (Side(t, (k + 2) % 3), Side(t, (k + 1) % 3));
        var (uTo, uFrom) = (Side(u, (m + 2) % 3), Side(u, (m + 1) % 3));
        Set(t, apex, from, p);
        Set(u, far, to, p);
        var v = AddTriangle(to, apex, p);
        var w = AddTriangle(from, far, p);
        Attach(t, 2, tFrom);
        Attach(v, 2, tTo);
        Attach(u, 2, uTo);
        Attach(w, 2, uFrom);
        Join(t, 1, v, 0);
        Join(v, 1, u, 0);
        Join(u, 1, w, 0);
        Join(w, 1, t, 0);
        foreach (var triangle in (int[])[t, u, v, w])
            Suspect(triangle, 2);
    }

    private (int Neighbour, int Side, bool Fixed) Side(int t, int k)
    {
        var next = Neighbour(t, k);
        return (next, next == None ? None : SideTowards(next, t), IsFixed(t, k));
    }

    private (int Neighbour, int Side, bool Fixed)[] Sides(int t) => [Side(t, 0), Side(t, 1), Side(t, 2)];

    private void Attach(int t, int k, (int Neighbour, int Side, bool Fixed) side)
    {
        Join(t, k, side.Neighbour, side.Side);
        _fixed[(3 * t) + k] = side.Fixed;
    }

    private void Set(int t, int a, int b, int c)
    {
        (_corner[3 * t], _corner[(3 * t) + 1], _corner[(3 * t) + 2]) = (a, b, c);
        for (var k = 0; k < 3; k++)
            (_neighbour[(3 * t) + k], _fixed[(3 * t) + k]) = (None, false);
    }

    private void Suspect(int t, int k) => _suspects.Push((3 * t) + k);

    /// <summary>Flips suspects that are not Delaunay until none is left.</summary>
    private void Legalise()
    {
        while (_suspects.TryPop(out var suspect))
        {
            var (t, k) = (suspect / 3, suspect % 3);
            var u = Neighbour(t, k);
            if (u == None || IsFixed(t, k))
                continue;
            var far = _points[Corner(u, SideTowards(u, t))];
            if (!Grid2.InCircle(_points[Corner(t, 0)], _points[Corner(t, 1)], _points[Corner(t, 2)], far) || !IsConvex(t, k))
                continue;
            Flip(t, k);
            for (var side = 0; side < 3; side++)
            {
                Suspect(t, side);
                Suspect(u, side);
            }
        }
    }

    /// <summary>Whether the two triangles on side k of t make a strictly convex quadrilateral.</summary>
    private bool IsConvex(int t, int k)
    {
        var u = Neighbour(t, k);
        var (apex, from, to) = (_points[Corner(t, k)], _points[Corner(t, (k + 1) % 3)], _points[Corner(t, (k + 2) % 3)]);
        var far = _points[Corner(u, SideTowards(u, t))];
        return Grid2.Turn(apex, from, far) > 0 && Grid2.Turn(far, to, apex) > 0;
    }

    /// <summary>
    /// Turns the shared side of t and its neighbour u: t becomes (apex, from, far) kept at corners k, k+1, k+2, so
    /// that the new shared side lies across from corner k + 1.
    /// </summary>
    private void Flip(int t, int k)
    {
        var u = Neighbour(t, k);
        var m = SideTowards(u, t);
        var (k1, k2, m1, m2) = ((k + 1) % 3, (k + 2) % 3, (m + 1) % 3, (m + 2) % 3);
        var (apex, to, far) = (Corner(t, k), Corner(t, k2), Corner(u, m));
        var (tTo, uFrom) = (Side(t, k1), Side(u, m1));
        _corner[(3 * t) + k2] = far;
        _corner[(3 * u) + m2] = apex;
        Attach(t, k, uFrom);
        Attach(u, m, tTo);
        _fixed[(3 * t) + k1] = _fixed[(3 * u) + m1] = false;
        Join(t, k1, u, m1);
        System.Diagnostics.Debug.Assert(Corner(u, m1) == to, "the flip keeps the far triangle's second corner");
    }

    /// <summary>The triangles round a point that is not a corner of the box, with the point's corner in each.</summary>
    private IEnumerable<(int Triangle, int Corner)> Around(int point)
    {
        var (start, _) = Locate(_points[point]);
        var t = start;
        do
        {
            var k = IndexOf(t, point);
            yield return (t, k);
            t = Neighbour(t, (k + 1) % 3);
        }
        while (t != start);
    }

    private int IndexOf(int t, int point)
    {
        for (var k = 0; k < 3; k++)
        {
            if (Corner(t, k) == point)
                return k;
        }

        throw new InvalidOperationException("not a corner of that triangle");
    }
}
