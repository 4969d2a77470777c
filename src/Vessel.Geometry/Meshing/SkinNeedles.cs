namespace Vessel.Geometry;

/// <summary>
/// Turns the longest side of a needle where that widens it. Where lengths along a cylinder count little, corners of outlines that lie
/// far apart and nearly in line along it make one facet.
/// </summary>
internal static class SkinNeedles
{
    /// <summary>Several times what a facet must have, so that a fan of needles can be taken from its wider end, mm.</summary>
    private const double LeastAltitude = 0.005;

    private const int MostPasses = 8;

    /// <param name="at">In space, of a corner of the triangulation.</param>
    public static void Widen(Triangulation triangulation, Func<int, Vector3> at, IReadOnlyList<bool> inside)
    {
        var turned = true;
        for (var pass = 0; pass < MostPasses && turned; pass++)
        {
            turned = false;
            for (var t = 0; t < triangulation.TriangleCount; t++)
                turned |= inside[t] && Altitude(t) < LeastAltitude && Turn(t);
        }

        bool Turn(int t)
        {
            var k = Enumerable.Range(0, 3).MaxBy(side => (At(t, side + 2) - At(t, side + 1)).Length);
            if (!triangulation.MayFlip(t, k))
                return false;
            var (u, m) = triangulation.Across(t, k);
            var before = Math.Min(Altitude(t), Altitude(u));
            var (apex, from, to, far) = (At(t, k), At(t, k + 1), At(t, k + 2), At(u, m));
            if (Math.Min(Height(apex, from, far), Height(far, to, apex)) <= before)
                return false;
            triangulation.Turn(t, k);
            return true;
        }

        double Altitude(int t) => Height(At(t, 0), At(t, 1), At(t, 2));

        static double Height(Vector3 a, Vector3 b, Vector3 c) =>
            (b - a).Cross(c - a).Length / Math.Max((b - a).Length, Math.Max((c - b).Length, (a - c).Length));

        Vector3 At(int t, int corner) => at(triangulation.Corner(t, corner % 3));
    }
}
