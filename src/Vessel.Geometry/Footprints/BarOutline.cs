using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// The smallest hole with walls square to a rolled sheet that lets a straight bar through, along a line square to the axis:
/// the outline, in (angle, height), of all the places for which some radius of the wall lies inside the bar.
/// </summary>
/// <remarks>
/// At radius p the bar's side s lies at the angle asin(s / p), heights stay. So at every height the hole runs from the least
/// to the greatest such angle over the wall: each side is taken on the inner face where that leads further out, on the
/// outer face where not, and sides change face where they cross the line s = 0. Derived here.
/// </remarks>
/// <param name="Corners">Corners of the bar's section, convex, counter-clockwise: sideways of the line, and height, mm.</param>
public sealed record BarOutline(ImmutableArray<Point2> Corners, double InnerRadius, double OuterRadius)
{
    /// <summary>Outline on the cylinder of that radius laid flat, counter-clockwise.</summary>
    /// <param name="origin">Where the bar's line and height 0 lie on the flat.</param>
    public Loop2 On(double radius, Point2 origin = default) => Chained(Sides(), radius, origin);

    /// <summary>Outline on the cylinder of that radius laid flat, clockwise as a hole runs.</summary>
    public Loop2 Cut(double radius, Point2 origin) =>
        Chained(Sides().Reverse().Select(side => (side.To, side.From, side.Face)), radius, origin);

    /// <summary>Where sides are taken on different faces, or the bar's section is level, a level line joins them.</summary>
    private static Loop2 Chained(IEnumerable<(Point2 From, Point2 To, double Face)> sides, double radius, Point2 origin)
    {
        var curves = sides.Select(side => Curve(side.From, side.To, side.Face, radius, origin)).ToList();
        var edges = ImmutableArray.CreateBuilder<Curve2>();
        for (var i = 0; i < curves.Count; i++)
        {
            edges.Add(curves[i]);
            var next = curves[(i + 1) % curves.Count];
            if ((next.Start - curves[i].End).Length > 1e-12 * radius)
                edges.Add(new Line2(curves[i].End, next.Start));
        }

        return new(edges.ToImmutable());
    }

    /// <summary>Stretches of the sides that are not level, each with the radius that it is taken on.</summary>
    private IEnumerable<(Point2 From, Point2 To, double Face)> Sides()
    {
        for (var i = 0; i < Corners.Length; i++)
        {
            var (a, b) = (Corners[i], Corners[(i + 1) % Corners.Length]);
            if (Math.Abs(b.V - a.V) < 1e-12 * OuterRadius)
                continue;
            var across = a.U * b.U < 0 ? a + (a.U / (a.U - b.U) * (b - a)) : b;
            yield return (a, across, Face(a, across));
            if (across != b)
                yield return (across, b, Face(across, b));
        }
    }

    /// <summary>A side that climbs bounds the bar towards greater angles.</summary>
    private double Face(Point2 a, Point2 b) => b.V > a.V == a.U + b.U > 0 ? InnerRadius : OuterRadius;

    private static Curve2 Curve(Point2 a, Point2 b, double face, double radius, Point2 origin)
    {
        Point2 At(double t)
        {
            var (u, v) = a + (t * (b - a));
            return origin + new Point2(radius * Math.Asin(u / face), v);
        }

        return a.U == b.U
            ? new Line2(At(0), At(1))
            : new GraphCurve2(At, t => Slope(a.U + (t * (b.U - a.U))), new(0, 1), []);

        Point2 Slope(double u) => new(radius * (b.U - a.U) / Math.Sqrt((face - u) * (face + u)), b.V - a.V);
    }
}
