using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>The outline of a window or slot.</summary>
internal static class RoundedRectangle
{
    /// <summary>Clockwise, as a hole runs. A corner of half the smaller side makes the ends half circles.</summary>
    public static Loop2 Of(Point2 centre, double width, double height, double corner)
    {
        var (u, v) = ((width / 2) - corner, (height / 2) - corner);
        var edges = new List<Curve2>();
        // Corner centres clockwise from the upper right; each arc turns right by a quarter.
        Point2[] centres = [new(u, v), new(u, -v), new(-u, -v), new(-u, v)];
        for (var i = 0; i < centres.Length; i++)
        {
            var from = (Math.PI / 2) - (i * Math.PI / 2);
            var here = centre + centres[i];
            if (corner > 0)
                edges.Add(new Arc2(here, corner, from, -Math.PI / 2));
            var start = here + Point2.Polar(corner, from - (Math.PI / 2));
            var end = centre + centres[(i + 1) % centres.Length] + Point2.Polar(corner, from - (Math.PI / 2));
            if ((end - start).Length > 1e-9)
                edges.Add(new Line2(start, end));
        }

        return new([.. edges]);
    }
}
