using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>A loop's box, near enough to keep marks out of it.</summary>
internal static class LoopBox
{
    private const int Samples = 64;

    public static (Point2 Low, Point2 High) Of(Loop2 loop)
    {
        var points = loop.Edges
            .SelectMany(edge => Enumerable.Range(0, Samples + 1).Select(i => edge.At(edge.Domain.At((double)i / Samples))))
            .ToList();
        return (new(points.Min(p => p.U), points.Min(p => p.V)), new(points.Max(p => p.U), points.Max(p => p.V)));
    }
}
