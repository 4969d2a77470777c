using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Sites;

/// <summary>How a port stands in the shell: on a cylinder in closed form, on a cone by its line.</summary>
/// <param name="Course">The course that its axis stands in.</param>
/// <param name="Axis">Axis in the vessel's frame: origin where the axis meets the outside, Z out along it, X the side that faces down the
/// shell.</param>
/// <param name="Outside">Footprint on the outer face of its course, as if that had no ends.</param>
/// <param name="Inside">Footprint on the inner face.</param>
internal sealed record ShellFooting(ShellCourse Course, Frame3 Axis, Footprint Outside, Footprint Inside)
{
    /// <summary>How far past its wider edge a cone is taken to reach, in its own widths and heights.</summary>
    private const double Beyond = 10;

    /// <summary>Places and reaches are not numbers where a size is at fault or the axis misses the shell.</summary>
    public static ShellFooting Of(ShellDesign shell, PortDesign port)
    {
        var (place, course) = (port.Place, shell.CourseAt(port.Place.Height));
        var (sin, cos) = Math.SinCos(place.Angle);
        var (outward, sideways) = (new Vector3(cos, sin, 0), new Vector3(-sin, cos, 0));
        var (rise, level) = Math.SinCos(place.Tilt);
        var outer = course.OuterAt(place.Height);
        var reach = Math.Sqrt((outer - place.Offset) * (outer + place.Offset));
        var axis = new Frame3(
            (reach * outward) + (place.Offset * sideways) + (place.Height * Vector3.UnitZ),
            (rise * outward) - (level * Vector3.UnitZ),
            sideways,
            (level * outward) + (rise * Vector3.UnitZ));
        if (course.IsCone)
            return new(
                course, axis, new RevolvedFootprint(new(Endless(course.Outer)), axis),
                    new RevolvedFootprint(new(Endless(course.Inner)), axis));
        CylinderFootprint On(double radius) => new(radius, outer, place.Offset, place.Tilt);
        return new(course, axis, On(outer), On(outer - course.Wall));
    }

    /// <summary>Line from the tip to far past the wider edge.</summary>
    private static LinePiece Endless(LinePiece line)
    {
        var (narrow, wide) = line.A.U < line.B.U ? (line.A, line.B) : (line.B, line.A);
        var slope = (wide.V - narrow.V) / (wide.U - narrow.U);
        var far = wide.U + (Beyond * (wide.U + Math.Abs(wide.V - narrow.V)));
        var (tip, end) = (new Point2(0, narrow.V - (narrow.U * slope)), new Point2(far, wide.V + ((far - wide.U) * slope)));
        return line.A.U < line.B.U ? new(tip, end) : new(end, tip);
    }
}
