namespace Vessel.Geometry;

/// <summary>Fills a wall with rows of quadrilaterals, each cut along its shorter diagonal.</summary>
internal static class WallMesher
{
    private const int MostRows = 64;

    public static void Add(Wall wall, MeshBuilder mesh, Accuracy accuracy)
    {
        var (a, b) = (mesh.RingOf(wall.A), mesh.RingOf(wall.B));
        var rows = new List<List<int>> { a.ConvertAll(p => p.Vertex) };
        if (wall.Through is { } through)
        {
            var count = Rows(through, a.ConvertAll(p => p.Parameter), accuracy.Chord);
            for (var j = 1; j < count; j++)
                rows.Add(a.ConvertAll(p => mesh.AddVertex(through(p.Parameter, (double)j / count))));
        }

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

    /// <summary>As many rows as keep the bulge of each within the chord; a bulge falls with the square of the rows.</summary>
    private static int Rows(Func<double, double, Vector3> through, List<double> parameters, double chord)
    {
        var bulge = parameters.Max(t => through(t, 0.5).DistanceToSegment(through(t, 0), through(t, 1)));
        return Math.Clamp((int)Math.Ceiling(Math.Sqrt(bulge / chord)), 1, MostRows);
    }

    private static void AddQuad(MeshBuilder mesh, int a, int b, int c, int d, bool forward)
    {
        if (!forward)
            (b, d) = (d, b);
        if ((mesh.Vertex(a) - mesh.Vertex(c)).Length <= (mesh.Vertex(b) - mesh.Vertex(d)).Length)
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
