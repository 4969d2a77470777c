using Vessel.Geometry;

namespace Vessel.Export.Pictures;

/// <summary>Where a picture is seen from, at right angles to it, and how millimetres become samples.</summary>
/// <param name="Eye">Unit, from the vessel to the viewer.</param>
/// <param name="Scale">Samples a millimetre.</param>
/// <param name="Corner">What lies in the picture's upper left corner: right and up, mm.</param>
internal sealed record Outlook(Vector3 Eye, Vector3 Right, Vector3 Up, double Scale, Point2 Corner, int Width, int Height)
{
    /// <summary>The whole of what is shown, with a margin; both sides even numbers of samples.</summary>
    /// <param name="round">Angle of the viewer round the vessel, radians.</param>
    /// <param name="above">Angle of the viewer above the horizon, radians.</param>
    /// <param name="most">Samples of the longer side.</param>
    public static Outlook Of(IEnumerable<Vector3> points, double round, double above, int most, int margin)
    {
        var ((sr, cr), (sa, ca)) = (Math.SinCos(round), Math.SinCos(above));
        var (eye, right, up) = (new Vector3(ca * cr, ca * sr, sa), new Vector3(-sr, cr, 0), new Vector3(-sa * cr, -sa * sr, ca));
        var box = points.Aggregate(Box2.Empty, (all, point) => all.Join(new Point2(point.Dot(right), point.Dot(up))));
        var scale = (most - (2 * margin)) / Math.Max(Math.Max(box.Width, box.Height), 1e-9);
        int Even(double length) => 2 * (int)Math.Ceiling(((scale * length) + (2 * margin)) / 2);
        var corner = new Point2(box.Min.U - (margin / scale), box.Max.V + (margin / scale));
        return new(eye, right, up, scale, corner, Even(box.Width), Even(box.Height));
    }

    /// <summary>Place of a point in samples, y down; depth in samples, greater nearer to the viewer.</summary>
    public Vector3 Seen(Vector3 point) => new(
        Scale * (point.Dot(Right) - Corner.U), Scale * (Corner.V - point.Dot(Up)), Scale * point.Dot(Eye));
}
