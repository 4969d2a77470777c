namespace Vessel.Geometry;

/// <summary>Fills closed outlines in a plane with triangles between their points; none is added.</summary>
internal static class PlaneFill
{
    private const long Reach = 1L << 27;

    /// <summary>Counter-clockwise triangles between the outlines; what lies inside an odd number of them is filled.</summary>
    /// <param name="sides">The outlines, side by side, as indices of points; each point belongs to some side.</param>
    public static IEnumerable<Triangle> Between(IReadOnlyList<Point2> points, IReadOnlyList<(int From, int To)> sides)
    {
        var (low, high) = (points[0], points[0]);
        foreach (var p in points)
        {
            low = new(Math.Min(low.U, p.U), Math.Min(low.V, p.V));
            high = new(Math.Max(high.U, p.U), Math.Max(high.V, p.V));
        }

        var centre = 0.5 * (low + high);
        var scale = 2 * Reach / Math.Max(high.U - low.U, high.V - low.V);
        var triangulation = new Triangulation(Reach, points.Count);
        var order = CoarseToFine(points.Count);
        var nodes = new int[points.Count];
        foreach (var i in order)
        {
            var p = points[i];
            nodes[i] = triangulation.Insert(
                new((long)Math.Round(scale * (p.U - centre.U)), (long)Math.Round(scale * (p.V - centre.V))));
            if (nodes[i] < 0)
                throw new InvalidOperationException("outlines touch: two points of a plate coincide");
        }

        foreach (var (from, to) in sides)
            triangulation.Fix(nodes[from], nodes[to]);
        var inside = triangulation.Inside();
        for (var t = 0; t < inside.Length; t++)
        {
            if (inside[t])
                yield return new(Point(t, 0), Point(t, 1), Point(t, 2));
        }

        int Point(int t, int k) => order[triangulation.Corner(t, k) - Triangulation.FirstPoint];
    }

    /// <summary>
    /// Indices by halving steps: points in a row along an arc, which lie on one circle, would each upset all triangles of
    /// those before.
    /// </summary>
    private static int[] CoarseToFine(int count)
    {
        var order = new List<int>(count) { 0 };
        for (var step = (int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)count); step > 1; step /= 2)
        {
            for (var i = step / 2; i < count; i += step)
                order.Add(i);
        }

        return [.. order];
    }
}
