using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// One cut. Vertices nearly in the plane count as in it, so that no edge is cut at its very end, and neighbours on an outline that
/// nearly coincide are made one, so that no facet becomes a needle.
/// </summary>
internal sealed class PlaneCutter
{
    /// <summary>mm.</summary>
    public const double InPlane = 0.0015;

    /// <summary>
    /// Least altitude of a triangle, mm: thinner ones lose their direction in single precision at 150 mm. With room for its rounding.
    /// </summary>
    private const double LeastAltitude = 0.0012;

    /// <summary>What a cap's triangles get where they can, mm: a later cut across leaves less of them.</summary>
    private const double WantedAltitude = 0.02;

    /// <summary>Points of the caps closer than this are one, mm; coarser for large meshes, as <see cref="PlaneFill"/> is.</summary>
    private const double LeastGrid = 1.0 / (1 << 18);

    private readonly Mesh _mesh;
    private readonly Frame3 _plane;
    private readonly List<Vector3> _vertices;
    private readonly sbyte[] _side;
    private readonly List<Triangle> _kept;
    private readonly Dictionary<(int, int), int> _cuts = [];
    private readonly ImmutableArray<Peg> _pegs;

    public PlaneCutter(Mesh mesh, Frame3 plane, ImmutableArray<Peg> pegs)
    {
        (_mesh, _plane, _pegs) = (mesh, plane, pegs);
        _vertices = [.. mesh.Vertices];
        _kept = new(mesh.Triangles.Length);
        _side = new sbyte[mesh.Vertices.Length];
        for (var i = 0; i < _side.Length; i++)
            _side[i] = Height(mesh.Vertices[i]) is var h && Math.Abs(h) < InPlane ? (sbyte)0 : (sbyte)Math.Sign(h);
    }

    /// <param name="close">Neighbours on an outline that are nearer than so become one, mm, and triangles at the plane must keep the least
    /// altitude; zero for neither.</param>
    public PlaneCut Cut(double close)
    {
        foreach (var triangle in _mesh.Triangles)
            Keep(triangle);
        var rim = Rim();
        if (rim.Count == 0)
            return new(Compact(_kept), [], 0);
        Weld(rim, close);
        _kept.RemoveAll(t => t.A == t.B || t.B == t.C || t.C == t.A);
        RemoveFlaps();
        var sides = Rim();
        TakeTouching(sides, close);
        var cap = Cap([.. sides, .. _pegs.SelectMany(AddPeg)]);
        _kept.AddRange(cap.Select(t => new Triangle(t.A, t.C, t.B)));
        if (close > 0 && _kept.Exists(IsThin))
            throw new InvalidOperationException("a cut left a needle");
        var area = cap.Sum(t => (InPlaneAt(t.B) - InPlaneAt(t.A)).Cross(InPlaneAt(t.C) - InPlaneAt(t.A))) / 2;
        return new(Compact(_kept), Outlines(sides), area);
    }

    private double Height(Vector3 at) => (at - _plane.Origin).Dot(_plane.Z);

    private bool IsInPlane(int vertex) => vertex >= _side.Length || _side[vertex] == 0;

    private Point2 InPlaneAt(int vertex)
    {
        var local = _plane.ToLocal(_vertices[vertex]);
        return new(local.X, local.Y);
    }

    private void Keep(Triangle t)
    {
        Span<int> corners = [t.A, t.B, t.C];
        var (above, below) = (0, 0);
        foreach (var corner in corners)
        {
            above += _side[corner] > 0 ? 1 : 0;
            below += _side[corner] < 0 ? 1 : 0;
        }

        if (above == 0)
            return;
        if (below == 0)
        {
            _kept.Add(t);
            return;
        }

        var outline = new List<int>(4);
        for (var k = 0; k < 3; k++)
        {
            var (a, b) = (corners[k], corners[(k + 1) % 3]);
            if (_side[a] >= 0)
                outline.Add(a);
            if (_side[a] * _side[b] < 0)
                outline.Add(CutOf(a, b));
        }

        AddPolygon(outline);
    }

    /// <summary>The vertex where the plane cuts a side; the same for both of its triangles.</summary>
    private int CutOf(int a, int b)
    {
        if (a > b)
            (a, b) = (b, a);
        if (_cuts.TryGetValue((a, b), out var known))
            return known;
        var (h, k) = (Height(_vertices[a]), Height(_vertices[b]));
        _vertices.Add(_vertices[a] + ((h / (h - k)) * (_vertices[b] - _vertices[a])));
        return _cuts[(a, b)] = _vertices.Count - 1;
    }

    /// <summary>Three or four corners; four are parted along the shorter diagonal.</summary>
    private void AddPolygon(List<int> p)
    {
        if (p.Count == 3)
        {
            _kept.Add(new(p[0], p[1], p[2]));
        }
        else if ((_vertices[p[0]] - _vertices[p[2]]).Length <= (_vertices[p[1]] - _vertices[p[3]]).Length)
        {
            _kept.Add(new(p[0], p[1], p[2]));
            _kept.Add(new(p[0], p[2], p[3]));
        }
        else
        {
            _kept.Add(new(p[0], p[1], p[3]));
            _kept.Add(new(p[1], p[2], p[3]));
        }
    }

    /// <summary>
    /// Sides in the plane that only one kept triangle has, as that triangle runs along them: seen against the plane's Z the
    /// cap lies on their left.
    /// </summary>
    private HashSet<(int From, int To)> Rim()
    {
        var rim = new HashSet<(int From, int To)>();
        void Side(int a, int b)
        {
            if (IsInPlane(a) && IsInPlane(b) && !rim.Remove((b, a)) && !rim.Add((a, b)))
                throw new InvalidOperationException("outlines touch: a side of a cut stands twice");
        }

        foreach (var t in _kept)
        {
            Side(t.A, t.B);
            Side(t.B, t.C);
            Side(t.C, t.A);
        }

        return rim;
    }

    /// <summary>Makes one of points of the rim that are nearer than so. Throws where that turns a triangle over.</summary>
    private void Weld(HashSet<(int From, int To)> rim, double close)
    {
        var touched = new List<(int Index, Vector3 Normal)>();
        for (var i = 0; i < _kept.Count; i++)
        {
            if (IsAtPlane(_kept[i]))
                touched.Add((i, Normal(_kept[i])));
        }

        var welded = Welded(rim, close);
        int Stays(int vertex) => welded.GetValueOrDefault(vertex, vertex);
        foreach (var (i, before) in touched)
        {
            var t = _kept[i] = new(Stays(_kept[i].A), Stays(_kept[i].B), Stays(_kept[i].C));
            if (close > 0 && t.A != t.B && t.B != t.C && t.C != t.A && Normal(t).Dot(before) < 0)
                throw new InvalidOperationException("a cut turned a triangle over");
        }
    }

    private Vector3 Normal(Triangle t) => (_vertices[t.B] - _vertices[t.A]).Cross(_vertices[t.C] - _vertices[t.A]);

    /// <summary>
    /// For each point of the rim that is to go the neighbour on whose place it nearly falls; the rest are moved into the plane, on
    /// the grid.
    /// </summary>
    private Dictionary<int, int> Welded(HashSet<(int From, int To)> rim, double close)
    {
        var at = rim.Select(side => side.From).Distinct().Order().ToDictionary(vertex => vertex, InPlaneAt);
        var into = at.Keys.ToDictionary(vertex => vertex);
        int Stays(int vertex)
        {
            while (into[vertex] != vertex)
                vertex = into[vertex];
            return vertex;
        }

        // The lower number stays: both halves number alike, and vertices of the mesh come before points of the cut.
        foreach (var (from, to) in rim.Order())
        {
            var (a, b) = (Stays(from), Stays(to));
            if (a != b && (at[a] - at[b]).Length < close)
                into[Math.Max(a, b)] = Math.Min(a, b);
        }

        var size = at.Values.Max(p => Math.Max(Math.Abs(p.U), Math.Abs(p.V)));
        var grid = Math.Max(LeastGrid, size / (1 << 24));
        var places = new Dictionary<(long, long), int>();
        foreach (var vertex in at.Keys.Where(vertex => into[vertex] == vertex))
        {
            var place = ((long)Math.Round(at[vertex].U / grid), (long)Math.Round(at[vertex].V / grid));
            if (places.TryAdd(place, vertex))
                _vertices[vertex] = _plane.ToOuter(new(grid * place.Item1, grid * place.Item2, 0));
            else
                into[vertex] = places[place];
        }

        return at.Keys.ToDictionary(vertex => vertex, Stays);
    }

    /// <summary>
    /// Points in the plane that no outline passes: there the mesh only touches the plane, and its cap would touch it. Outlines that
    /// come together would make caps that hang together in a point.
    /// </summary>
    private void TakeTouching(HashSet<(int From, int To)> sides, double close)
    {
        var rim = sides.Select(side => side.From).ToHashSet();
        var touching = new HashSet<int>();
        foreach (var t in _kept)
        {
            Take(t.A);
            Take(t.B);
            Take(t.C);
        }

        if (close > 0 && (touching.Count > 0 || OutlineRoom.Touch([.. sides.Order()], InPlaneAt)))
            throw new InvalidOperationException("outlines touch: a cut grazes the mesh");
        foreach (var vertex in touching)
            _vertices[vertex] -= Height(_vertices[vertex]) * _plane.Z;

        void Take(int vertex)
        {
            if (IsInPlane(vertex) && !rim.Contains(vertex))
                touching.Add(vertex);
        }
    }

    /// <summary>What is left of a tip whose outline has become two sides, there and back: two triangles on one place.</summary>
    private void RemoveFlaps()
    {
        var seen = new HashSet<Triangle>();
        var flaps = new HashSet<Triangle>();
        foreach (var t in _kept)
        {
            if (!IsAtPlane(t))
                continue;
            if (seen.Contains(FromLeast(t.A, t.C, t.B)))
                flaps.UnionWith([FromLeast(t.A, t.B, t.C), FromLeast(t.A, t.C, t.B)]);
            seen.Add(FromLeast(t.A, t.B, t.C));
        }

        if (flaps.Count > 0)
            _kept.RemoveAll(t => flaps.Contains(FromLeast(t.A, t.B, t.C)));

        static Triangle FromLeast(int a, int b, int c) => a < b && a < c ? new(a, b, c) : b < c ? new(b, c, a) : new(c, a, b);
    }

    private bool IsAtPlane(Triangle t) => IsInPlane(t.A) || IsInPlane(t.B) || IsInPlane(t.C);

    private bool IsThin(Triangle t)
    {
        if (!IsAtPlane(t))
            return false;
        var (u, v, w) = (_vertices[t.B] - _vertices[t.A], _vertices[t.C] - _vertices[t.A], _vertices[t.C] - _vertices[t.B]);
        return u.Cross(v).Length < LeastAltitude * Math.Max(u.Length, Math.Max(v.Length, w.Length));
    }

    /// <summary>Triangles between the sides, counter-clockwise seen against the plane's Z.</summary>
    private List<Triangle> Cap(List<(int From, int To)> sides)
    {
        var order = sides.SelectMany(side => new[] { side.From, side.To }).Distinct().Order().ToList();
        if (order.Count == 0)
            return [];
        var index = order.Select((vertex, i) => (vertex, i)).ToDictionary(pair => pair.vertex, pair => pair.i);
        var filled = CapFill.Between(
            [.. order.Select(InPlaneAt)], [.. sides.Order().Select(side => (index[side.From], index[side.To]))], WantedAltitude,
            LeastAltitude);
        return filled.ConvertAll(t => new Triangle(order[t.A], order[t.B], order[t.C]));
    }

    /// <summary>A peg's or socket's wall and end; its circle in the plane is left out of the cap.</summary>
    private List<(int From, int To)> AddPeg(Peg peg)
    {
        const int sides = 24;
        var first = _vertices.Count;
        // The cap looks against the plane's Z, and so does a peg.
        foreach (var (radius, height) in ((double, double)[])[(peg.Radius, 0), (peg.Tip, -peg.Depth)])
        {
            for (var i = 0; i < sides; i++)
            {
                var (x, y) = peg.Centre + Point2.Polar(radius, Turns.Full * i / sides);
                _vertices.Add(_plane.ToOuter(new(x, y, height)));
            }
        }

        for (var i = 0; i < sides; i++)
        {
            var (a, b) = (first + i, first + ((i + 1) % sides));
            _kept.Add(new(b, a, a + sides));
            _kept.Add(new(b, a + sides, b + sides));
            if (i > 0 && i + 1 < sides)
                _kept.Add(new(first + sides, b + sides, a + sides));
        }

        // As the walls run along them: the cap lies on their left.
        return [.. Enumerable.Range(0, sides).Select(i => (first + ((i + 1) % sides), first + i))];
    }

    private ImmutableArray<ImmutableArray<Point2>> Outlines(HashSet<(int From, int To)> sides)
    {
        var next = sides.Order().GroupBy(side => side.From)
            .ToDictionary(group => group.Key, group => new Stack<int>(group.Select(side => side.To)));
        var outlines = ImmutableArray.CreateBuilder<ImmutableArray<Point2>>();
        foreach (var start in sides.Order().Select(side => side.From))
        {
            var outline = ImmutableArray.CreateBuilder<Point2>();
            for (var at = start; next[at].TryPop(out var following); at = following)
                outline.Add(InPlaneAt(at));
            if (outline.Count > 0)
                outlines.Add(outline.ToImmutable());
        }

        return outlines.ToImmutable();
    }

    private Mesh Compact(List<Triangle> triangles)
    {
        // Numbered in the order in which they are first used; zero for those that are not.
        var number = new int[_vertices.Count];
        var vertices = ImmutableArray.CreateBuilder<Vector3>(Math.Min(_vertices.Count, triangles.Count));
        int Of(int vertex)
        {
            if (number[vertex] == 0)
            {
                vertices.Add(_vertices[vertex]);
                number[vertex] = vertices.Count;
            }

            return number[vertex] - 1;
        }

        var kept = ImmutableArray.CreateBuilder<Triangle>(triangles.Count);
        foreach (var t in triangles)
            kept.Add(new(Of(t.A), Of(t.B), Of(t.C)));
        return new(vertices.DrainToImmutable(), kept.DrainToImmutable());
    }
}
