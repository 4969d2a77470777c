using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using Vessel.Geometry;

namespace Vessel.Tests.Support;

/// <summary>Reads closed chains of bulges by the definition of a bulge, apart from the code that makes them.</summary>
internal static class BulgeChain
{
    /// <summary>Signed: the polygon plus a circular segment for each bulge.</summary>
    public static double Area(IReadOnlyList<Bulge> vertices) => Pairs(vertices).Sum(pair =>
    {
        var (a, b) = pair;
        var sweep = 4 * Math.Atan(a.Value);
        var radius = Radius(a, b);
        var segment = a.Value == 0 ? 0 : radius * radius * (sweep - Math.Sin(sweep)) / 2;
        return (a.At.Cross(b.At) / 2) + segment;
    });

    /// <summary>Greatest change of direction at a vertex, radians.</summary>
    public static IEnumerable<double> Kinks(IReadOnlyList<Bulge> vertices)
    {
        var sides = Pairs(vertices).Select(pair =>
        {
            var chord = (pair.B.At - pair.A.At).Angle;
            var half = 2 * Math.Atan(pair.A.Value);
            return (First: chord - half, Last: chord + half);
        }).ToList();
        return sides.Select((side, i) => Math.Abs(Turns.Signed(sides[(i + 1) % sides.Count].First - side.Last)));
    }

    /// <summary>Points of the chain, so many a segment.</summary>
    public static List<Point2> Points(IReadOnlyList<Bulge> vertices, int perSegment)
    {
        var points = new List<Point2>();
        foreach (var (a, b) in Pairs(vertices))
        {
            // A point of the arc at the share s: chord direction turned by half the rest of the sweep, as in the
            // theorem of the inscribed angle: |a - p| = 2 r sin(s sweep / 2).
            var sweep = 4 * Math.Atan(a.Value);
            var chord = b.At - a.At;
            for (var i = 0; i < perSegment; i++)
            {
                var s = (double)i / perSegment;
                var length = sweep == 0 ? s : Math.Sin(s * sweep / 2) / Math.Sin(sweep / 2);
                var turn = Point2.Polar(length, (s - 1) * sweep / 2);
                points.Add(a.At + (turn.U * chord) + (turn.V * chord.Turned));
            }
        }

        return points;
    }

    public static List<Point2> Points(Loop2 loop, int perEdge) =>
        [.. loop.Edges.SelectMany(edge => Enumerable.Range(0, perEdge).Select(i => edge.At(edge.Domain.At((double)i / perEdge))))];

    /// <summary>Greatest distance from one of the points to the closed polygon through the others.</summary>
    public static double Distance(List<Point2> points, List<Point2> polygon)
    {
        var ring = new LineString([.. polygon.Append(polygon[0]).Select(p => new Coordinate(p.U, p.V))]);
        var index = new IndexedFacetDistance(ring);
        return points.Max(p => index.Distance(new NetTopologySuite.Geometries.Point(p.U, p.V)));
    }

    private static double Radius(Bulge a, Bulge b) => (b.At - a.At).Length * (1 + (a.Value * a.Value)) / (4 * Math.Abs(a.Value));

    private static IEnumerable<(Bulge A, Bulge B)> Pairs(IReadOnlyList<Bulge> vertices) =>
        vertices.Select((vertex, i) => (vertex, vertices[(i + 1) % vertices.Count]));
}
