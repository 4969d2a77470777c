namespace Vessel.Geometry;

/// <summary>Fills a wall with rows of quadrilaterals, each cut along its shorter diagonal.</summary>
internal static class WallMesher
{
    /// <summary>Halvings of rows and of pieces that stand off, at most.</summary>
    private const int MostPasses = 12;

    /// <summary>
    /// Share of the chord that a row may use up between its two sides. The rest is left to the pieces along it, so that halving them always
    /// ends: one shorter than the rest stands off no more.
    /// </summary>
    private const double RowShare = 0.5;

    /// <summary>Where a row or a piece is looked at, as shares of it.</summary>
    private static readonly double[] _shares = [0.25, 0.5, 0.75];

    /// <summary>
    /// Where a row is looked at across, as shares of it: with its two sides, where the sides of facets lie inside the wall.
    /// </summary>
    private static readonly double[] _across = [0, 0.25, 0.5, 0.75, 1];

    /// <summary>Where warped facets stand off most.</summary>
    private static readonly double[] _middle = [0.5];

    public static void Add(SideFace wall, MeshBuilder mesh, Accuracy accuracy)
    {
        var (a, b) = (mesh.RingOf(wall.A), mesh.RingOf(wall.B));
        var rows = new List<List<int>> { a.ConvertAll(p => p.Vertex) };
        foreach (var w in Levels(wall, a.ConvertAll(p => p.Parameter), accuracy.Chord)[1..^1])
            rows.Add(a.ConvertAll(p => mesh.AddVertex(wall.At(p.Parameter, w))));
        rows.Add(b.ConvertAll(p => p.Vertex));
        // The skin on edge A is there already; the wall runs against it.
        var forward = !mesh.Runs(rows[0][0], rows[0][1]);
        for (var j = 0; j + 1 < rows.Count; j++)
        {
            for (var i = 0; i < a.Count; i++)
            {
                var next = (i + 1) % a.Count;
                AddQuad(mesh, rows[j][i], rows[j][next], rows[j + 1][next], rows[j + 1][i], forward);
            }
        }
    }

    /// <summary>
    /// Parameters of both edges, with more of them where the wall between stands off its facets by more than the chord: it may bend more
    /// sharply than its edges do, and where they turn against each other its quadrilaterals are warped.
    /// </summary>
    /// <param name="walls">Walls that take these parameters.</param>
    /// <param name="parameters">Ascending, from the domain's start to its end.</param>
    public static List<double> Refined(IReadOnlyList<SideFace> walls, IEnumerable<double> parameters, double chord)
    {
        var refined = parameters.ToList();
        for (var pass = 0; pass < MostPasses; pass++)
        {
            var open = new bool[refined.Count - 1];
            foreach (var wall in walls)
            {
                var levels = Levels(wall, refined, chord);
                for (var i = 0; i < open.Length; i++)
                    open[i] |= StandsOff(wall, refined[i], refined[i + 1], levels, chord);
            }

            if (!open.Contains(true))
                break;
            refined = [refined[0], .. open.SelectMany((split, i) =>
                split ? [(refined[i] + refined[i + 1]) / 2, refined[i + 1]] : new[] { refined[i + 1] })];
        }

        return refined;
    }

    /// <summary>
    /// Shares of the way from A to B between which the rows lie, from 0 to 1: halved where the wall bulges. A wall that runs out tangent
    /// to its host bends without limit at one edge and hardly at the other.
    /// </summary>
    private static List<double> Levels(SideFace wall, List<double> parameters, double chord)
    {
        var levels = new List<double> { 0 };
        Add(0, 1, wall.Through is null ? MostPasses : 0);
        return levels;

        void Add(double from, double to, int depth)
        {
            if (depth < MostPasses && parameters.Exists(t => Bulge(wall, t, from, to) > RowShare * chord))
            {
                Add(from, (from + to) / 2, depth + 1);
                Add((from + to) / 2, to, depth + 1);
            }
            else
            {
                levels.Add(to);
            }
        }
    }

    private static double Bulge(SideFace wall, double t, double from, double to)
    {
        var (a, b) = (wall.At(t, from), wall.At(t, to));
        return _shares.Max(share => wall.At(t, from + (share * (to - from))).DistanceToSegment(a, b));
    }

    private static bool StandsOff(SideFace wall, double from, double to, List<double> levels, double chord)
    {
        // Equal need gives pieces at the limit itself; rounding may not push them over it.
        var limit = chord * (1 + 1e-6);
        // A straight wall bends with its edges, which have been looked at.
        var along = wall.Through is null ? _middle : _shares;
        foreach (var (low, high) in levels.Zip(levels.Skip(1)))
        {
            var (a, b, c, d) = (wall.At(from, low), wall.At(to, low), wall.At(to, high), wall.At(from, high));
            foreach (var t in along)
            {
                foreach (var w in wall.Through is null ? _middle : _across)
                {
                    if (ToQuad(wall.At(from + (t * (to - from)), low + (w * (high - low))), a, b, c, d) > limit)
                        return true;
                }
            }
        }

        return false;
    }

    private static double ToQuad(Vector3 at, Vector3 a, Vector3 b, Vector3 c, Vector3 d) => AlongFirst(a, b, c, d)
        ? Math.Min(at.DistanceToTriangle(a, b, c), at.DistanceToTriangle(a, c, d))
        : Math.Min(at.DistanceToTriangle(a, b, d), at.DistanceToTriangle(b, c, d));

    private static bool AlongFirst(Vector3 a, Vector3 b, Vector3 c, Vector3 d) => (a - c).Length <= (b - d).Length;

    private static void AddQuad(MeshBuilder mesh, int a, int b, int c, int d, bool forward)
    {
        if (!forward)
            (b, d) = (d, b);
        if (AlongFirst(mesh.Vertex(a), mesh.Vertex(b), mesh.Vertex(c), mesh.Vertex(d)))
        {
            mesh.AddTriangle(new(a, b, c));
            mesh.AddTriangle(new(a, c, d));
        }
        else
        {
            mesh.AddTriangle(new(a, b, d));
            mesh.AddTriangle(new(b, c, d));
        }
    }
}
