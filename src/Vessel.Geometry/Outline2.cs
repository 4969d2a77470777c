using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A closed smooth curve in a chart, walked once by a parameter that comes round again.</summary>
/// <param name="Breaks">Where its slope or curvature may jump, inside the domain.</param>
/// <param name="Slope">d At / dt.</param>
public sealed record Outline2(Interval Domain, ImmutableArray<double> Breaks, Func<double, Point2> At, Func<double, Point2> Slope)
{
    /// <summary>Range from its leftmost to its rightmost place.</summary>
    public Interval Us => Extremes.Of(t => At(t).U, t => Slope(t).U, Domain);

    /// <summary>Range from its lowest to its highest place.</summary>
    public Interval Vs => Extremes.Of(t => At(t).V, t => Slope(t).V, Domain);

    public IEnumerable<Point2> Points(int count) => Enumerable.Range(0, count).Select(i => At(Domain.At((double)i / count)));
}
