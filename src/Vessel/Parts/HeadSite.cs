using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>Where a head stands.</summary>
/// <param name="Frame">Z out of the vessel. Origin on the vessel's axis: on the inner face of a flat head, else at the
/// shell's end. X is the vessel's +X.</param>
/// <param name="Radius">The shell's outer radius there.</param>
public sealed record HeadSite(Frame3 Frame, double Radius)
{
    public static HeadSite Top(VesselDesign vessel) => Of(vessel.Top, vessel.Shell, vessel.Shell.Height, 1);

    public static HeadSite Bottom(VesselDesign vessel) => Of(vessel.Bottom, vessel.Shell, 0, -1);

    public static HeadSite Of(VesselEnd end, VesselDesign vessel) =>
        end == VesselEnd.Top ? Top(vessel) : Bottom(vessel);

    /// <summary>Height of a flat head's inner face, mm in the vessel's frame.</summary>
    public double InnerFace => Frame.Origin.Z;

    /// <param name="end">Height of the shell's end.</param>
    /// <param name="up">+1 at the top, -1 at the bottom: the way out.</param>
    private static HeadSite Of(HeadDesign head, ShellDesign shell, double end, int up)
    {
        var frame = new Frame3(
            new(0, 0, end - (up * head.Depth)), Vector3.UnitX, up * Vector3.UnitY, up * Vector3.UnitZ);
        return new(frame, (up > 0 ? shell.AtEnd(VesselEnd.Top) : shell.AtEnd(VesselEnd.Bottom)).OuterRadius);
    }
}
