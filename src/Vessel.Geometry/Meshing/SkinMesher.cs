namespace Vessel.Geometry;

/// <summary>Triangulates one skin between its flattened bounds and adds points inside until the facets lie close.</summary>
internal sealed class SkinMesher
{
    /// <summary>Chart coordinates are scaled to stay below this on the integer grid.</summary>
    private const long Reach = 1L << 27;

    private readonly Skin _skin;
    private readonly MeshBuilder _mesh;
    private readonly Accuracy _accuracy;
    private readonly double? _cut;
    private readonly List<(Point2 Chart, int Vertex)> _nodes = [];
    private readonly Dictionary<(int Vertex, bool Right), int> _nodeOf = [];
    private readonly List<(int From, int To)> _segments = [];
    private readonly List<(int From, int To)> _creases = [];

    private SkinMesher(Skin skin, double? cut, MeshBuilder mesh, Accuracy accuracy)
    {
        _skin = skin;
        _cut = cut;
        _mesh = mesh;
        _accuracy = accuracy;
    }

    /// <summary>Adds the skin's triangles to the mesh, facing out of the metal.</summary>
    public static void Add(Skin skin, double? cut, MeshBuilder mesh, Accuracy accuracy)
    {
        var mesher = new SkinMesher(skin, cut, mesh, accuracy);
        mesher.TakeBounds();
        mesher.CloseCut();
        mesher.TakeCreases();
        mesher.Triangulate();
    }

    private void TakeBounds()
    {
        foreach (var bound in _skin.Bounds)
        {
            foreach (var (from, to) in _mesh.SidesOf(bound.Edge))
            {
                var (a, b) = (Unrolled(bound.Image(from.Parameter)), Unrolled(bound.Image(to.Parameter)));
                // A point on the cut stands on both of its sides; each segment takes the side it lies on.
                _segments.Add((Node(from.Vertex, a, b), Node(to.Vertex, b, a)));
            }
        }
    }

    /// <summary>The chart point with u counted from the cut, in [0, period).</summary>
    private Point2 Unrolled(Point2 chart)
    {
        if (_cut is not { } cut)
            return chart;
        var period = _skin.On.Period!.Value;
        var turns = (chart.U - cut) / period;
        turns -= Math.Floor(turns);
        // The demanded crossings lie on the cut to within rounding; nothing else comes that near.
        return new(turns is < 1e-7 or > 1 - 1e-7 ? 0 : turns * period, chart.V);
    }

    private int Node(int vertex, Point2 at, Point2 other)
    {
        var right = _cut is not null && at.U == 0 && other.U > _skin.On.Period / 2;
        if (_nodeOf.TryGetValue((vertex, right), out var node))
            return node;
        return AddNode(vertex, right, right ? at with { U = _skin.On.Period!.Value } : at);
    }

    private int AddNode(int vertex, bool right, Point2 chart)
    {
        _nodes.Add((chart, vertex));
        _nodeOf.Add((vertex, right), _nodes.Count - 1);
        return _nodes.Count - 1;
    }

    /// <summary>Joins, on both sides of the cut, the points between which the cut runs through the skin.</summary>
    private void CloseCut()
    {
        if (_cut is null)
            return;
        var period = _skin.On.Period!.Value;
        var onCut = _nodes
            .Where(node => node.Chart.U == 0 || node.Chart.U == period)
            .GroupBy(node => node.Vertex)
            .Select(group => group.First())
            .OrderBy(node => node.Chart.V)
            .ToList();
        if (onCut.Count % 2 != 0)
            throw new InvalidOperationException("the cut through a skin meets its bounds an odd number of times");
        for (var i = 0; i < onCut.Count; i += 2)
        {
            _segments.Add((SideNode(onCut[i], false), SideNode(onCut[i + 1], false)));
            _segments.Add((SideNode(onCut[i], true), SideNode(onCut[i + 1], true)));
        }

        int SideNode((Point2 Chart, int Vertex) node, bool right) =>
            _nodeOf.TryGetValue((node.Vertex, right), out var found)
                ? found
                : AddNode(node.Vertex, right, new(right ? period : 0, node.Chart.V));
    }

    /// <summary>
    /// Joins the bounds' points on each crease, one to the next; through a hole as well, where it does no harm, so that
    /// a bound that only touches the line needs no care.
    /// </summary>
    private void TakeCreases()
    {
        foreach (var crease in _skin.On.Creases)
        {
            var on = Enumerable.Range(0, _nodes.Count)
                .Where(node => crease.Holds(_nodes[node].Chart))
                .OrderBy(node => _nodes[node].Chart.Dot(crease.Across.Turned))
                .ToList();
            foreach (var node in on)
            {
                var (chart, vertex) = _nodes[node];
                _nodes[node] = (chart - (crease.Beyond(chart) * crease.Across), vertex);
            }

            _creases.AddRange(on.Zip(on.Skip(1)).Where(pair =>
                !_segments.Contains((pair.First, pair.Second)) && !_segments.Contains((pair.Second, pair.First))));
        }
    }

    private void Triangulate()
    {
        var (lowU, highU) = (_nodes.Min(n => n.Chart.U), _nodes.Max(n => n.Chart.U));
        var (lowV, highV) = (_nodes.Min(n => n.Chart.V), _nodes.Max(n => n.Chart.V));
        var weight = _skin.On.WeightOfV;
        var centre = new Point2((lowU + highU) / 2, (lowV + highV) / 2);
        var scale = 2 * Reach / Math.Max(highU - lowU, weight * (highV - lowV));
        Grid2 ToGrid(Point2 p) => new(
            (long)Math.Round(scale * (p.U - centre.U)), (long)Math.Round(scale * weight * (p.V - centre.V)));

        var triangulation = new Triangulation(Reach);
        foreach (var node in _nodes)
        {
            if (triangulation.Insert(ToGrid(node.Chart)) < 0)
                throw new InvalidOperationException("outlines touch: two points of a skin coincide");
        }

        foreach (var (from, to) in _segments)
            triangulation.Fix(from + Triangulation.FirstPoint, to + Triangulation.FirstPoint);
        foreach (var (from, to) in _creases)
            triangulation.FixCrease(from + Triangulation.FirstPoint, to + Triangulation.FirstPoint);

        if (_skin.On is PlaneSurface)
        {
            var inside = triangulation.Inside();
            SkinNeedles.Widen(
                triangulation, corner => _mesh.Vertex(VertexOf(corner)), _ => _skin.On.Normal(default), inside, SkinNeedles.LeastInPlane);
            AddFacets(triangulation, inside);
            return;
        }

        SkinPoint Read(Grid2 p)
        {
            var chart = OnSurface(centre + new Point2(p.X / scale, p.Y / (scale * weight)));
            return new(chart, _skin.On.At(chart));
        }

        var refinement = new SkinRefinement(
            triangulation,
            _skin.On,
            _accuracy.Chord,
            _nodes.Select(node => new SkinPoint(OnSurface(node.Chart), _mesh.Vertex(node.Vertex))),
            Read);
        refinement.Run();
        foreach (var point in refinement.Points.Skip(_nodes.Count).ToList())
            _nodes.Add((point.Chart, _mesh.AddVertex(point.At)));
        SkinPoint At(int corner) => refinement.Points[corner - Triangulation.FirstPoint];
        SkinNeedles.Widen(
            triangulation, corner => At(corner).At, corner => _skin.On.Normal(At(corner).Chart), refinement.Inside, SkinNeedles.Least);
        AddFacets(triangulation, refinement.Inside);
    }

    private void AddFacets(Triangulation triangulation, IReadOnlyList<bool> inside)
    {
        for (var t = 0; t < triangulation.TriangleCount; t++)
        {
            if (!inside[t])
                continue;
            var (a, b, c) = (VertexOf(triangulation.Corner(t, 0)), VertexOf(triangulation.Corner(t, 1)),
                VertexOf(triangulation.Corner(t, 2)));
            _mesh.AddTriangle(_skin.Outward ? new(a, b, c) : new(a, c, b));
        }
    }

    private int VertexOf(int point) => _nodes[point - Triangulation.FirstPoint].Vertex;

    private Point2 OnSurface(Point2 unrolled) => _cut is { } cut ? unrolled with { U = unrolled.U + cut } : unrolled;
}
