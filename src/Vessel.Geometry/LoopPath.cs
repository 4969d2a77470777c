using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A loop walked by one parameter: edge i for t from i to i + 1.</summary>
/// <param name="Breaks">Where edges meet and where an edge itself breaks; a lone closed edge has none of the former.</param>
public sealed record LoopPath(Interval Domain, ImmutableArray<double> Breaks, Func<double, Point2> At)
{
    public static LoopPath Of(Loop2 loop)
    {
        var edges = loop.Edges;
        var breaks = ImmutableArray.CreateBuilder<double>();
        for (var i = 0; i < edges.Length; i++)
        {
            if (i > 0)
                breaks.Add(i);
            var domain = edges[i].Domain;
            foreach (var t in edges[i].Breaks)
                breaks.Add(i + ((t - domain.Start) / domain.Length));
        }

        return new(new(0, edges.Length), breaks.ToImmutable(), t =>
        {
            var i = Math.Min((int)t, edges.Length - 1);
            return edges[i].At(edges[i].Domain.At(t - i));
        });
    }
}
