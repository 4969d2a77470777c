using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// A surface in space with a plane chart, mm on both sides. Charts are chosen so that lengths near any point are
/// nearly true: facets that are well shaped in the chart are well shaped in space. A closed set.
/// </summary>
public abstract record Surface
{
    private protected Surface()
    {
    }

    /// <summary>The chart's u comes round again after this much; null when it does not.</summary>
    public virtual double? Period => null;

    /// <summary>
    /// How much a length along v counts against one along u when facets are chosen: little where v runs straight, so
    /// that facets become long that way.
    /// </summary>
    public virtual double WeightOfV => 1;

    /// <summary>Straight lines of the chart that no facet may bridge.</summary>
    public virtual ImmutableArray<Crease> Creases => [];

    public abstract Vector3 At(Point2 chart);

    /// <summary>Unit normal, on the side of d/du x d/dv.</summary>
    public abstract Vector3 Normal(Point2 chart);
}

/// <summary>Another surface, moved to where the frame stands.</summary>
public sealed record PlacedSurface(Surface On, Frame3 Frame) : Surface
{
    public override double? Period => On.Period;

    public override double WeightOfV => On.WeightOfV;

    public override ImmutableArray<Crease> Creases => On.Creases;

    public override Vector3 At(Point2 chart) => Frame.ToOuter(On.At(chart));

    public override Vector3 Normal(Point2 chart) => Frame.Turn(On.Normal(chart));
}

/// <summary>The plane through the frame's X and Y.</summary>
public sealed record PlaneSurface(Frame3 Frame) : Surface
{
    public override Vector3 At(Point2 chart) => Frame.Origin + (chart.U * Frame.X) + (chart.V * Frame.Y);

    public override Vector3 Normal(Point2 chart) => Frame.Z;
}

/// <summary>The cylinder round +Z: u = radius x angle, v = height.</summary>
public sealed record CylinderSurface(double Radius) : Surface
{
    public override double? Period => Turns.Full * Radius;

    public override double WeightOfV => 0.02;

    public override Vector3 At(Point2 chart)
    {
        var angle = chart.U / Radius;
        return new(Radius * Math.Cos(angle), Radius * Math.Sin(angle), chart.V);
    }

    public override Vector3 Normal(Point2 chart) => new(Math.Cos(chart.U / Radius), Math.Sin(chart.U / Radius), 0);

    /// <summary>The chart point of a place (angle, height).</summary>
    public Point2 ChartOf(Point2 place) => new(Radius * place.U, place.V);
}

/// <summary>
/// A cone round +Z that is wider at one end of its line than at the other: u = angle x the greater radius, v = length along
/// the line from its start.
/// </summary>
public sealed record ConeSurface(LinePiece Line) : Surface
{
    private readonly double _scale = Math.Max(Line.A.U, Line.B.U);

    public override double? Period => Turns.Full * _scale;

    public override double WeightOfV => 0.02;

    public override Vector3 At(Point2 chart)
    {
        var (sin, cos) = Math.SinCos(chart.U / _scale);
        var (ring, height) = Line.At(chart.V);
        return new(ring * cos, ring * sin, height);
    }

    public override Vector3 Normal(Point2 chart)
    {
        var (sin, cos) = Math.SinCos(chart.U / _scale);
        var (across, up) = Line.Normal(0);
        return new(across * cos, across * sin, up);
    }

    /// <summary>The chart point of the place nearest to a point, near the angle <paramref name="around"/>.</summary>
    public Point2 ChartOf(Vector3 point, double around = 0) => ChartOf(
        around + Turns.Signed(Math.Atan2(point.Y, point.X) - around),
        Line.Project(new(double.Hypot(point.X, point.Y), point.Z)).Along);

    /// <summary>The chart point at an angle round the axis and a length along the line.</summary>
    public Point2 ChartOf(double around, double along) => new(_scale * around, along);
}

/// <summary>
/// The sphere round the origin, cast from its upper pole on the plane that touches the lower one (stereographic): angles
/// are true and circles stay circles, so that the best facets in the chart are the best in space. A point at the angle
/// A from the lower pole lies 2 R tan(A / 2) from the chart's origin.
/// </summary>
public sealed record SphereSurface(double Radius) : Surface
{
    public override Vector3 At(Point2 chart)
    {
        var square = chart.Dot(chart) / (4 * Radius * Radius);
        var share = 1 / (1 + square);
        return new(share * chart.U, share * chart.V, -Radius * (1 - square) * share);
    }

    public override Vector3 Normal(Point2 chart) => (-1 / Radius) * At(chart);

    /// <summary>The chart point of a point on the sphere; not of the upper pole.</summary>
    public Point2 ChartOf(Vector3 point) => (2 * Radius / (Radius - point.Z)) * new Point2(point.X, point.Y);

    /// <summary>The chart point at an angle from the lower pole, less than pi, and an angle round the axis.</summary>
    public Point2 ChartOf(double fromPole, double around) => Point2.Polar(2 * Radius * Math.Tan(fromPole / 2), around);
}

/// <summary>
/// A face of a folded sheet, so far below the viewed one. The chart is the flat; the bends lie along one of its axes.
/// </summary>
public sealed record FoldedSurface(FoldedSheet Sheet, double Depth) : Surface
{
    private const double Straight = 0.3;

    /// <summary>
    /// Bends run straight along their lines, so facets become long that way; not so long that holes in the flat strips
    /// make needles.
    /// </summary>
    public override double WeightOfV => Math.Abs(Sheet.Across.U) > Math.Abs(Sheet.Across.V) ? Straight : 1 / Straight;

    public override ImmutableArray<Crease> Creases => [.. Sheet.Creases.Select(at => new Crease(Sheet.Across, at))];

    public override Vector3 At(Point2 chart) => Sheet.At(chart, Depth);

    public override Vector3 Normal(Point2 chart) => Sheet.Normal(chart);
}

/// <summary>The points of a chart whose share along the unit direction <paramref name="Across"/> is <paramref name="At"/>.</summary>
public readonly record struct Crease(Point2 Across, double At)
{
    /// <summary>
    /// Points as near as this are on the line, mm: more than a mesher's grid. A facet that reaches so far past it leaves
    /// the surface, which bends away from its tangent, by the square of that alone.
    /// </summary>
    private const double Near = 1e-3;

    /// <summary>Signed distance from the line, mm.</summary>
    public double Beyond(Point2 chart) => chart.Dot(Across) - At;

    internal bool Holds(Point2 chart) => Math.Abs(Beyond(chart)) < Near;
}
