namespace Vessel.Geometry;

/// <summary>
/// Fills the outlines of a cut, if it can be without needles. Three neighbours on a gently bent outline lie on a wide empty circle and
/// make one of Delaunay's triangles, as thin as their arc is deep: where turned diagonals do not mend that, such points are left out at
/// first, and each joined to the corner behind its stretch.
/// </summary>
internal static class CapFill
{
    /// <summary>Points of a stretch, so that long outlines take no more than that many looks at each.</summary>
    private const int MostAlong = 64;

    /// <summary>
    /// How far the points of a stretch may lie off its chord, over the wanted altitude; tried until no triangle is too thin.
    /// </summary>
    private static readonly double[] _plays = [1.5, 1, 0.5, 0.25, 0.1, 0.05];

    /// <summary>Counter-clockwise triangles, like those of <see cref="PlaneFill.Between"/>; all points are used.</summary>
    /// <param name="sides">Each with what is filled on its left.</param>
    /// <param name="wanted">Altitude that triangles get where they can, mm.</param>
    /// <param name="least">Altitude below which a triangle is of no use, mm: rather many below the wanted one than one below this.</param>
    public static List<Triangle> Between(IReadOnlyList<Point2> points, IReadOnlyList<(int From, int To)> sides, double wanted, double least)
    {
        var best = PlaneFill.Between(points, sides).ToList();
        var needles = Needles(best);
        for (var i = 0; i < _plays.Length && (i == 0 ? needles.Thin : needles.Useless) > 0; i++)
        {
            if (Stretched(_plays[i] * wanted) is { } coarse && Needles(coarse) is var left && left.CompareTo(needles) < 0
                && coarse.TrueForAll(IsUpright))
                (best, needles) = (coarse, left);
        }

        return best;

        (int Useless, int Thin) Needles(List<Triangle> triangles) =>
            NeedleFlips.Widen(triangles, points, wanted) is var thin ? (NeedleFlips.Count(triangles, points, least), thin) : default;

        List<Triangle>? Stretched(double play)
        {
            try
            {
                return ByStretches(points, sides, play);
            }
            catch (InvalidOperationException)
            {
                // The chord of a stretch met another outline.
                return null;
            }
        }

        // The fan of a stretch that bends towards its corner by more than that is away would fold over.
        bool IsUpright(Triangle t) => (points[t.B] - points[t.A]).Cross(points[t.C] - points[t.A]) > 0;
    }

    private static List<Triangle> ByStretches(IReadOnlyList<Point2> points, IReadOnlyList<(int From, int To)> sides, double play)
    {
        var stretches = Stretches(points, sides, play);
        var corners = stretches.SelectMany(stretch => new[] { stretch[0], stretch[^1] }).Distinct().Order().ToList();
        var number = new Dictionary<int, int>(corners.Count);
        foreach (var corner in corners)
            number.Add(corner, number.Count);
        var along = stretches.Where(stretch => stretch.Count > 2).ToDictionary(stretch => (stretch[0], stretch[^1]));
        var filled = new List<Triangle>(points.Count);
        foreach (var t in PlaneFill.Between(
            corners.ConvertAll(corner => points[corner]), stretches.ConvertAll(stretch => (number[stretch[0]], number[stretch[^1]]))))
        {
            Fan(new(corners[t.A], corners[t.B], corners[t.C]));
        }

        return filled;

        // A side that is a stretch is parted by its points; the parts' other sides may be stretches too.
        void Fan(Triangle t)
        {
            foreach (var (tip, from, to) in (Triangle[])[t, new(t.B, t.C, t.A), new(t.C, t.A, t.B)])
            {
                if (!along.Remove((from, to), out var through))
                    continue;
                for (var i = 0; i + 1 < through.Count; i++)
                    Fan(new(tip, through[i], through[i + 1]));
                return;
            }

            filled.Add(t);
        }
    }

    /// <summary>The outlines, parted where they bend: points between the ends of a stretch lie within the play of its chord.</summary>
    private static List<List<int>> Stretches(IReadOnlyList<Point2> points, IReadOnlyList<(int From, int To)> sides, double play)
    {
        // Where outlines touch a point has several followers: none is left out then.
        if (sides.DistinctBy(side => side.From).Count() < sides.Count)
            return [.. sides.Select(side => new List<int> { side.From, side.To })];
        var next = sides.ToDictionary(side => side.From, side => side.To);
        var stretches = new List<List<int>>();
        var seen = new HashSet<int>();
        foreach (var (start, _) in sides)
        {
            if (seen.Contains(start))
                continue;
            var ring = Ring(start);
            var parted = Parted(ring).ToList();
            stretches.AddRange(parted.Count < 3 ? ring.Zip(ring.Skip(1), (from, to) => new List<int> { from, to }) : parted);
        }

        return stretches;

        // Closed, from where it bends most.
        List<int> Ring(int start)
        {
            var ring = new List<int>();
            for (var at = start; seen.Add(at); at = next[at])
                ring.Add(at);
            var bend = Enumerable.Range(0, ring.Count)
                .MaxBy(i => Off(ring[(i + ring.Count - 1) % ring.Count], ring[i], ring[(i + 1) % ring.Count]));
            return [.. ring.Skip(bend), .. ring.Take(bend + 1)];
        }

        IEnumerable<List<int>> Parted(List<int> ring)
        {
            for (var from = 0; from + 1 < ring.Count;)
            {
                var to = from + 1;
                while (to + 1 < ring.Count && to - from < MostAlong && IsStraight(from, to + 1))
                    to++;
                yield return ring[from..(to + 1)];
                from = to;
            }

            bool IsStraight(int from, int to) =>
                Enumerable.Range(from + 1, to - from - 1).All(i => Off(ring[from], ring[i], ring[to]) < play);
        }

        double Off(int from, int at, int to)
        {
            var (chord, arm) = (points[to] - points[from], points[at] - points[from]);
            var square = chord.Dot(chord);
            return (arm - ((square == 0 ? 0 : Math.Clamp(arm.Dot(chord) / square, 0, 1)) * chord)).Length;
        }
    }
}
