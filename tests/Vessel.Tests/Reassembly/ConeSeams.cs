using Vessel.Geometry;
using Vessel.Heads.Cones;

namespace Vessel.Tests.Reassembly;

/// <summary>The seams of a cone that is rolled from one sheet or from several equal ones.</summary>
internal static class ConeSeams
{
    /// <summary>
    /// On the seam's edges, neither round nor narrow: of each pair at one distance from the tip. Rolled up, two edges stand the gap's arc
    /// apart, for which its chord is given; the neighbour's is the nearest.
    /// </summary>
    public static IEnumerable<Meeting> Of(
        string name, IReadOnlyList<(CutPiece Cut, int Number)> sheets, double halfAngle, double gap, double wall, bool tipUp)
    {
        foreach (var (piece, number) in sheets)
        {
            var (wide, narrow) = (piece.Outline.Max(at => at.Length), piece.Outline.Min(at => at.Length));
            foreach (var from in Enumerable.Range(1, 3).Select(i => narrow + (i / 4.0 * (wide - narrow))))
            {
                var turn = (Math.PI / sheets.Count * Math.Sin(halfAngle)) - Math.Asin(gap / 2 / from);
                var way = tipUp ? -1 : 1;
                Point2 At(int side) => way * from * new Point2(Math.Sin(side * turn), Math.Cos(side * turn));
                var edges = piece.Outline.Zip([.. piece.Outline[1..], piece.Outline[0]]).ToList();
                foreach (var side in new[] { -1, 1 })
                    yield return new($"{name}'s seam edge",
                        edges.Min(edge => FromSegment(At(side), edge.First, edge.Second)), piece.Allowed);
                var mine = piece.InVessel(At(1), wall / 2, number);
                var apart = sheets.Min(other => (other.Cut.InVessel(At(-1), wall / 2, other.Number) - mine).Length);
                var arc = 2 * Math.Asin(gap / 2 / from) / Math.Sin(halfAngle);
                yield return new($"{name}'s seam",
                    Math.Abs(apart - (2 * double.Hypot(mine.X, mine.Y) * Math.Sin(arc / 2))), 2 * piece.Allowed);
            }
        }
    }

    private static double FromSegment(Point2 at, Point2 a, Point2 b)
    {
        var along = Math.Clamp((at - a).Dot(b - a) / (b - a).Dot(b - a), 0, 1);
        return (a + (along * (b - a)) - at).Length;
    }
}
