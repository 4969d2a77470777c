using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>The outline of a window, slot or strip.</summary>
internal static class RoundedRectangle
{
    /// <summary>Clockwise, as a hole runs. A corner of half the smaller side makes the ends half circles.</summary>
    public static Loop2 Of(Point2 centre, double width, double height, double corner) => Run(centre, width, height, corner, -1);

    /// <summary>Rounded rectangle counter-clockwise, as an outline runs.</summary>
    public static Loop2 Outline(Point2 centre, double width, double height, double corner) => Run(centre, width, height, corner, 1);

    /// <param name="way">1 counter-clockwise, -1 clockwise.</param>
    private static Loop2 Run(Point2 centre, double width, double height, double corner, int way)
    {
        var (u, v) = ((width / 2) - corner, (height / 2) - corner);
        var edges = new List<Curve2>();
        // Corner centres from the upper right on; each arc turns by a quarter.
        Point2[] centres = way > 0
            ? [new(u, v), new(-u, v), new(-u, -v), new(u, -v)]
            : [new(u, v), new(u, -v), new(-u, -v), new(-u, v)];
        for (var i = 0; i < centres.Length; i++)
        {
            var from = way > 0 ? i * Math.PI / 2 : (Math.PI / 2) - (i * Math.PI / 2);
            var here = centre + centres[i];
            if (corner > 0)
                edges.Add(new Arc2(here, corner, from, way * Math.PI / 2));
            var start = here + Point2.Polar(corner, from + (way * Math.PI / 2));
            var end = centre + centres[(i + 1) % centres.Length] + Point2.Polar(corner, from + (way * Math.PI / 2));
            if ((end - start).Length > 1e-9)
                edges.Add(new Line2(start, end));
        }

        return new([.. edges]);
    }
}
