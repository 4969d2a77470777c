namespace Vessel.Geometry;

/// <summary>
/// Lengths, areas and bounds of exact curves. Lines and arcs in closed form; graph curves by adaptive Gauss-Kronrod
/// quadrature between their breaks and quarter points, good to about 1e-10 of the result.
/// </summary>
public static class CurveMeasures
{
    // A sample every few degrees of a closed curve: two extremes of one coordinate must lie further apart than that.
    private const int Samples = 128;

    // Golden section shrinks a bracket by 0.618 a step: 40 steps leave 4e-9 of it, and a value at an extreme is off
    // by the square of that.
    private const int GoldenSteps = 40;

    /// <summary>Arc length, mm.</summary>
    public static double Length(Curve2 curve) => curve switch
    {
        Line2 line => (line.B - line.A).Length,
        Arc2 arc => arc.Radius * Math.Abs(arc.Sweep),
        _ => Integrate(curve, t => curve.Slope(t).Length),
    };

    /// <summary>Perimeter, mm.</summary>
    public static double Length(Loop2 loop) => loop.Edges.Sum(Length);

    /// <summary>Enclosed area, mm2: positive when the loop runs counter-clockwise.</summary>
    public static double Area(Loop2 loop)
    {
        // Sectors are taken from a point of the loop, so that a loop far from the origin loses no digits.
        var pole = loop.Edges[0].Start;
        return loop.Edges.Sum(edge => Sector(edge, pole));
    }

    /// <summary>Metal left, mm2: the outer loop less the holes, those of fields too.</summary>
    public static double Area(Region2 region) =>
        Area(region.Outer) + region.Holes.Sum(Area) - region.Fields.Sum(field => field.Area);

    /// <summary>Centre of a region's area, its fields left out.</summary>
    public static Point2 Centre(Region2 region)
    {
        // From a point of the outline, so that one far from the origin loses no digits.
        var pole = region.Outer.Edges[0].Start;
        var loops = region.Holes.Prepend(region.Outer).ToList();
        double Moment(Func<Point2, Point2, double> integrand) =>
            loops.Sum(loop => loop.Edges.Sum(edge => Integrate(edge, t => integrand(edge.At(t) - pole, edge.Slope(t)))));
        var area = loops.Sum(Area);
        return pole + new Point2(
            Moment((at, slope) => at.U * at.U * slope.V / 2) / area, -Moment((at, slope) => at.V * at.V * slope.U / 2) / area);
    }

    /// <summary>Length of all outlines of the region together, mm.</summary>
    public static double Length(Region2 region) =>
        Length(region.Outer) + region.Holes.Sum(Length) + region.Fields.Sum(field => field.Length);

    /// <summary>The smallest rectangle that holds the loop.</summary>
    public static Box2 Bounds(Loop2 loop) => loop.Edges.Aggregate(Box2.Empty, (box, edge) => box.Join(Bounds(edge)));

    /// <summary>The smallest rectangle that holds the curve.</summary>
    public static Box2 Bounds(Curve2 curve)
    {
        var ends = new Box2(curve.Start, curve.Start).Join(curve.End);
        return curve switch
        {
            Line2 => ends,
            Arc2 arc => ends.Join(Extremes(arc)),
            _ => Pieces(curve).Aggregate(ends, (box, piece) => box.Join(Extremes(curve, piece))),
        };
    }

    /// <summary>The smooth pieces between the breaks, in order.</summary>
    public static IEnumerable<Interval> Pieces(Curve2 curve)
    {
        var start = curve.Domain.Start;
        foreach (var end in curve.Breaks.Append(curve.Domain.End))
        {
            if (end > start)
                yield return new(start, end);
            start = Math.Max(start, end);
        }
    }

    // Swept by the ray from the pole: half the integral of (p - pole) x dp.
    private static double Sector(Curve2 curve, Point2 pole) => curve switch
    {
        Line2 line => (line.A - pole).Cross(line.B - pole) / 2,
        Arc2 arc => ((arc.Radius * arc.Radius * arc.Sweep) + (arc.Center - pole).Cross(arc.End - arc.Start)) / 2,
        _ => Integrate(curve, t => (curve.At(t) - pole).Cross(curve.Slope(t)) / 2),
    };

    private static double Integrate(Curve2 curve, Func<double, double> integrand) =>
        Quadrature.Periodic(integrand, curve.Domain, curve.Breaks);

    private static Box2 Extremes(Arc2 arc)
    {
        var box = Box2.Empty;
        var low = Math.Min(arc.From, arc.From + arc.Sweep);
        var high = Math.Max(arc.From, arc.From + arc.Sweep);
        for (var quarter = Math.Ceiling(low / (Math.PI / 2)); quarter * (Math.PI / 2) <= high; quarter++)
            box = box.Join(arc.Center + (arc.Radius * Compass(quarter)));
        return box;
    }

    // Exact, where the sine of a multiple of a right angle is not.
    private static Point2 Compass(double quarter) => (quarter - (4 * Math.Floor(quarter / 4))) switch
    {
        0 => new(1, 0),
        1 => new(0, 1),
        2 => new(-1, 0),
        _ => new(0, -1),
    };

    private static Box2 Extremes(Curve2 curve, Interval piece) => new(
        new(Lowest(t => curve.At(t).U, piece), Lowest(t => curve.At(t).V, piece)),
        new(-Lowest(t => -curve.At(t).U, piece), -Lowest(t => -curve.At(t).V, piece)));

    private static double Lowest(Func<double, double> value, Interval piece)
    {
        var best = Enumerable.Range(0, Samples + 1).MinBy(i => value(piece.At((double)i / Samples)));
        var low = piece.At(Math.Max(best - 1, 0) / (double)Samples);
        var high = piece.At(Math.Min(best + 1, Samples) / (double)Samples);
        return Math.Min(value(piece.At((double)best / Samples)), GoldenSection(value, low, high));
    }

    private static double GoldenSection(Func<double, double> value, double low, double high)
    {
        const double Share = 0.6180339887498949;
        var (left, right) = (high - (Share * (high - low)), low + (Share * (high - low)));
        var (atLeft, atRight) = (value(left), value(right));
        for (var step = 0; step < GoldenSteps; step++)
        {
            if (atLeft < atRight)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - (Share * (high - low));
                atLeft = value(left);
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + (Share * (high - low));
                atRight = value(right);
            }
        }

        return Math.Min(atLeft, atRight);
    }
}
