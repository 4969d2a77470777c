namespace Vessel.Geometry;

/// <summary>
/// Meshes a plate with a field of holes. The metal is parted along straight lines from hole to hole into pieces that are
/// filled one by one: like pieces of a grid once for all, the rest between their outlines. All corners are those of holes
/// and rims, so that neighbouring pieces share them.
/// </summary>
internal sealed class PerforatedMesher
{
    private readonly MeshBuilder _mesh;
    private readonly HolePolygons _holes;
    private readonly int _upper;
    private readonly int _lower;
    private readonly PerforatedFaces _plate;
    private readonly List<(int Upper, int Lower, Point2 At)> _others = [];

    private PerforatedMesher(PerforatedFaces plate, HolePolygons holes, int extraPoints, MeshBuilder mesh)
    {
        (_plate, _mesh, _holes) = (plate, mesh, holes);
        var corners = holes.Holes * holes.Corners;
        var vertices = mesh.VertexCount + (2 * (corners + extraPoints));

        // Euler, for a closed mesh of that many vertices: V - F / 2 = 2 - 2 genus.
        var genus = plate.Bounds.Length - 1 + holes.Holes;
        mesh.Expect(vertices, (2 * vertices) - 4 + (4 * genus));
        _upper = mesh.VertexCount;
        _lower = _upper + corners;
        for (var i = 0; i < corners; i++)
            mesh.AddVertex(plate.Upper.At(holes.At(i)));
        for (var i = 0; i < corners; i++)
            mesh.AddVertex(plate.Lower.At(holes.At(i)));
        Rims = [.. plate.Bounds.Select(bound => TakeRim(bound.Upper, bound.Lower, bound.Image))];
    }

    /// <summary>Sides of each rim, the outer one first.</summary>
    public List<List<(int From, int To)>> Rims { get; }

    /// <summary>Index of the point that is added next.</summary>
    public int NextCorner => _lower - _upper + _others.Count;

    /// <summary>Adds both faces and the walls of the field's holes; the walls at the plate's rims are faces of their own.</summary>
    public static void Add(PerforatedFaces plate, MeshBuilder mesh, Accuracy accuracy)
    {
        switch (plate.Field)
        {
            case GridLattice2 grid:
                var pieces = new GridPieces(grid, accuracy.Chord);
                var ofGrid = new PerforatedMesher(plate, pieces.Holes, 0, mesh);
                pieces.Fill(ofGrid);
                ofGrid.AddWalls();
                break;
            case RingLattice2 rings:
                var zones = new RingZones(rings, accuracy.Chord);
                var ofRings = new PerforatedMesher(plate, zones.Holes, zones.ExtraPoints, mesh);
                zones.Fill(ofRings);
                ofRings.AddWalls();
                break;
            default:
                throw new ArgumentException($"no such lattice: {plate.Field}");
        }
    }

    /// <summary>A point of both faces that lies neither on a hole nor on a rim.</summary>
    public void AddPoint(Point2 at) => _others.Add((_mesh.AddVertex(_plate.Upper.At(at)), _mesh.AddVertex(_plate.Lower.At(at)), at));

    public Point2 PointAt(int corner) => corner < _lower - _upper ? _holes.At(corner) : Other(corner).At;

    /// <summary>
    /// A triangle of the upper face, counter-clockwise, and its image below; corners of holes, or of rims and added points
    /// after them.
    /// </summary>
    public void AddTriangle(int a, int b, int c)
    {
        _mesh.AddTriangle(new(Upper(a), Upper(b), Upper(c)));
        _mesh.AddTriangle(new(Lower(a), Lower(c), Lower(b)));
    }

    /// <summary>Fills the room between outlines given side by side.</summary>
    public void Fill(IReadOnlyCollection<(int From, int To)> sides)
    {
        if (sides.Count == 0)
            return;
        // Outlines close, so there are as many corners as sides.
        var points = new List<Point2>(sides.Count);
        var corners = new List<int>(sides.Count);
        var nodes = new Dictionary<int, int>(sides.Count);
        var local = sides.Select(side => (Node(side.From), Node(side.To))).ToList();
        foreach (var t in PlaneFill.Between(points, local))
            AddTriangle(corners[t.A], corners[t.B], corners[t.C]);

        int Node(int corner)
        {
            if (nodes.TryGetValue(corner, out var node))
                return node;
            nodes.Add(corner, points.Count);
            corners.Add(corner);
            points.Add(PointAt(corner));
            return points.Count - 1;
        }
    }

    private (int Upper, int Lower, Point2 At) Other(int corner) => _others[corner - (_lower - _upper)];

    private int Upper(int corner) => corner < _lower - _upper ? _upper + corner : Other(corner).Upper;

    private int Lower(int corner) => corner < _lower - _upper ? _lower + corner : Other(corner).Lower;

    private List<(int From, int To)> TakeRim(Edge3 upper, Edge3 lower, Func<double, Point2> image)
    {
        var (above, below) = (_mesh.RingOf(upper), _mesh.RingOf(lower));
        var first = _lower - _upper + _others.Count;
        for (var i = 0; i < above.Count; i++)
            _others.Add((above[i].Vertex, below[i].Vertex, image(above[i].Parameter)));
        return [.. Enumerable.Range(0, above.Count).Select(i => (first + i, first + ((i + 1) % above.Count)))];
    }

    private void AddWalls()
    {
        for (var hole = 0; hole < _holes.Holes; hole++)
        {
            for (var i = 0; i < _holes.Corners; i++)
            {
                var (a, b) = (_holes.Index(hole, i), _holes.Index(hole, i + 1));
                _mesh.AddTriangle(new(_upper + a, _upper + b, _lower + b));
                _mesh.AddTriangle(new(_upper + a, _lower + b, _lower + a));
            }
        }
    }
}
