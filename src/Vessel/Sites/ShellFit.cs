using Vessel.Design;

namespace Vessel.Sites;

/// <summary>Whether a port fits the course of the shell that its axis stands in.</summary>
internal static class ShellFit
{
    /// <summary>What sizes alone tell: all of a cylinder; of a cone whether there is one to meet.</summary>
    public static PortMisfit BySizes(ShellCourse course, PortDesign port)
    {
        var (place, side, hole) = (port.Place, Math.Abs(port.Place.Offset), port.HoleRadius);
        var isSound = hole > 0 && double.IsFinite(place.Height + place.Angle + place.Tilt + port.OuterRadius + hole);
        if (course.IsCone)
        {
            return !isSound || !double.IsFinite(course.Start + course.Height + course.Low + course.High + side)
                || !(Math.Min(course.Low, course.High) > course.Across) ? PortMisfit.AtFault
                : side < course.OuterAt(place.Height) ? PortMisfit.None : PortMisfit.Foot;
        }

        var (outer, inner) = (course.Low, course.Low - course.Wall);
        // Drilled along the port's axis, or passed by a tube, the wall must be met as far as its inner face.
        var isThrough = port.Joint == PortJoint.SetIn || !course.IsRolled;
        return side + port.OuterRadius > outer ? PortMisfit.Foot
            : isThrough && side + hole > inner ? PortMisfit.Hole
            // Written so that a NaN does not pass.
            : isSound && inner > 0 && side + hole <= (isThrough ? inner : outer) && side + port.OuterRadius <= outer ? PortMisfit.None
            : PortMisfit.AtFault;
    }

    /// <summary>What lines round a port tell that fits a cone by its sizes.</summary>
    public static PortMisfit ByLines(ShellCourse course, PortDesign port, ShellFooting footing) => !course.IsCone ? PortMisfit.None
        : !footing.Outside.Takes(Math.Max(port.OuterRadius, port.HoleRadius)) ? PortMisfit.Foot
        : !footing.Inside.Takes(port.HoleRadius) ? PortMisfit.Hole
        : PortMisfit.None;
}
