namespace Vessel.Geometry;

/// <summary>Whether outlines in a plane keep clear of each other and of themselves.</summary>
internal static class OutlineRoom
{
    /// <summary>
    /// Less than neighbours on an outline keep (<see cref="PlaneCut.Usual"/>), and many times the step of single precision at 200 mm, mm.
    /// </summary>
    private const double Least = 0.001;

    /// <summary>Whether a point has several followers, or two sides without a common point come nearer than so.</summary>
    public static bool Touch(IReadOnlyList<(int From, int To)> sides, Func<int, Point2> at)
    {
        if (sides.Select(side => side.From).Distinct().Count() < sides.Count)
            return true;
        // From left to right; a side is looked at against those that begin before it ends.
        var all = sides.Select(side => new Side(side.From, side.To, at(side.From), at(side.To))).OrderBy(side => side.Left).ToList();
        for (var i = 0; i < all.Count; i++)
        {
            for (var k = i + 1; k < all.Count && all[k].Left < all[i].Right + Least; k++)
            {
                if (all[i].IsNear(all[k]))
                    return true;
            }
        }

        return false;
    }

    private readonly record struct Side(int From, int To, Point2 A, Point2 B)
    {
        public double Left => Math.Min(A.U, B.U);

        public double Right => Math.Max(A.U, B.U);

        public bool IsNear(Side other)
        {
            if (Math.Min(A.V, B.V) > Math.Max(other.A.V, other.B.V) + Least || Math.Max(A.V, B.V) < Math.Min(other.A.V, other.B.V) - Least)
                return false;
            if (From == other.From || From == other.To || To == other.From || To == other.To)
                return false;
            return Segments.Distance(In(A), In(B), In(other.A), In(other.B)) < Least;
        }

        private static Vector3 In(Point2 at) => new(at.U, at.V, 0);
    }
}
