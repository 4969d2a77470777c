namespace Vessel.Geometry;

/// <summary>
/// Turns the longest side of a needle where that widens it. Where lengths along a cylinder count little, corners of outlines that lie
/// far apart and nearly in line along it make one facet. So do corners of a straight edge near a smooth joint of two charts: such a
/// facet may even be turned over by microns, and its altitude counts below zero then.
/// </summary>
internal static class SkinNeedles
{
    /// <summary>Several times what a facet must have, so that a fan of needles can be taken from its wider end, mm.</summary>
    public const double Least = 0.005;

    /// <summary>
    /// Least altitude in a plane, where no turned side leaves the surface: so small that prints at a small scale are served too, mm.
    /// </summary>
    public const double LeastInPlane = 0.02;

    private const int MostPasses = 8;

    /// <param name="at">Place in space of a corner of the triangulation.</param>
    /// <param name="normal">Direction square to the surface at a corner, on the side from which the triangulation turns to the
    /// left.</param>
    /// <param name="least">Altitude below which a facet is a needle, mm.</param>
    public static void Widen(
        Triangulation triangulation, Func<int, Vector3> at, Func<int, Vector3> normal, IReadOnlyList<bool> inside, double least)
    {
        var turned = true;
        for (var pass = 0; pass < MostPasses && turned; pass++)
        {
            turned = false;
            for (var t = 0; t < triangulation.TriangleCount; t++)
                turned |= inside[t] && Altitude(Corner(t, 0), Corner(t, 1), Corner(t, 2)) < least && Turn(t);
        }

        bool Turn(int t)
        {
            var k = Enumerable.Range(0, 3).MaxBy(side => (at(Corner(t, side + 2)) - at(Corner(t, side + 1))).Length);
            if (!triangulation.MayFlip(t, k))
                return false;
            var (u, m) = triangulation.Across(t, k);
            var (apex, from, to, far) = (Corner(t, k), Corner(t, k + 1), Corner(t, k + 2), Corner(u, m));
            var before = Math.Min(Altitude(apex, from, to), Altitude(far, to, from));
            if (Math.Min(Altitude(apex, from, far), Altitude(far, to, apex)) <= before)
                return false;
            triangulation.Turn(t, k);
            return true;
        }

        double Altitude(int i, int j, int k)
        {
            var (a, b, c) = (at(i), at(j), at(k));
            var up = (normal(i) + normal(j) + normal(k)).Unit();
            return (b - a).Cross(c - a).Dot(up) / Math.Max((b - a).Length, Math.Max((c - b).Length, (a - c).Length));
        }

        int Corner(int t, int k) => triangulation.Corner(t, k % 3);
    }
}
