namespace Vessel.Geometry;

/// <summary>
/// Turns diagonals of a plane triangulation where that widens needles. Three neighbours on a gently bent outline lie on a wide empty
/// circle, so that the triangulation of Delaunay makes a triangle of them, as thin as their arc is deep; the other diagonal of it
/// and of the triangle behind it makes two wide ones.
/// </summary>
internal static class NeedleFlips
{
    /// <summary>
    /// Each turn makes the thinner of two triangles wider; sides without a neighbour stay. Says how many needles are left.
    /// </summary>
    /// <param name="triangles">Counter-clockwise.</param>
    /// <param name="least">Altitude below which a triangle is a needle, mm.</param>
    public static int Widen(List<Triangle> triangles, IReadOnlyList<Point2> at, double least)
    {
        var sides = new Dictionary<(int From, int To), int>(3 * triangles.Count);
        for (var i = 0; i < triangles.Count; i++)
            Enter(i);
        var open = new Queue<int>(Enumerable.Range(0, triangles.Count).Where(IsNeedle));
        // Few turns mend what can be mended; the limit is for triangles that overlap where outlines touch.
        for (var turns = 0; turns < 8 * triangles.Count && open.TryDequeue(out var thin); turns++)
        {
            if (!IsNeedle(thin))
                continue;
            // Longest first: behind it lies what the needle can be shared out to.
            foreach (var (tip, from, to) in Turned(triangles[thin]).OrderByDescending(t => (at[t.C] - at[t.B]).Length))
            {
                if (!sides.TryGetValue((to, from), out var behind))
                    continue;
                var far = Opposite(triangles[behind], from, to);
                var (one, other) = (new Triangle(tip, from, far), new Triangle(tip, far, to));
                if (Math.Min(Altitude(one, at), Altitude(other, at)) <= Math.Min(Altitude(triangles[thin], at),
                    Altitude(triangles[behind], at)))
                    continue;
                (triangles[thin], triangles[behind]) = (one, other);
                Enter(thin);
                Enter(behind);
                sides.Remove((from, to));
                sides.Remove((to, from));
                open.Enqueue(thin);
                open.Enqueue(behind);
                break;
            }
        }

        return Count(triangles, at, least);

        bool IsNeedle(int i) => Altitude(triangles[i], at) < least;

        void Enter(int i)
        {
            foreach (var (_, from, to) in Turned(triangles[i]))
                sides[(from, to)] = i;
        }
    }

    /// <summary>How many triangles have an altitude below the least, or are turned over.</summary>
    public static int Count(List<Triangle> triangles, IReadOnlyList<Point2> at, double least) =>
        triangles.Count(t => Altitude(t, at) < least);

    // Below zero where it is turned over.
    private static double Altitude(Triangle t, IReadOnlyList<Point2> at)
    {
        var (u, v, w) = (at[t.B] - at[t.A], at[t.C] - at[t.A], at[t.C] - at[t.B]);
        return u.Cross(v) / Math.Max(u.Length, Math.Max(v.Length, w.Length));
    }

    private static Triangle[] Turned(Triangle t) => [t, new(t.B, t.C, t.A), new(t.C, t.A, t.B)];

    private static int Opposite(Triangle t, int from, int to) =>
        t.A != from && t.A != to ? t.A : t.B != from && t.B != to ? t.B : t.C;
}
