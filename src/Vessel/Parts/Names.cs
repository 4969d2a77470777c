using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Parts;

/// <summary>What the welder calls the parts that the file does not name.</summary>
public static class Names
{
    public const string Shell = "shell";

    /// <summary>Id of the part that a host is.</summary>
    public static string Of(PortHost host) => host switch
    {
        PortHost.Shell => Shell,
        PortHost.Top => Of(VesselEnd.Top),
        PortHost.Bottom => Of(VesselEnd.Bottom),
        _ => throw new ArgumentOutOfRangeException(nameof(host)),
    };

    /// <summary>Id of the head at an end.</summary>
    public static string Of(VesselEnd end) => end == VesselEnd.Top ? "top" : "bottom";

    /// <summary>Ids of the parts of the shell that are welded to a head.</summary>
    public static ImmutableArray<string> ShellParts(VesselEnd end, VesselDesign vessel) => ShellParts(vessel.Shell.CourseOf(end), vessel);

    /// <summary>Ids of the parts of the shell at a height, mm.</summary>
    public static ImmutableArray<string> ShellParts(double height, VesselDesign vessel) =>
        ShellParts(vessel.Shell.CourseAt(height), vessel);

    /// <summary>Ids of the parts that a course of the shell is rolled or cut from.</summary>
    public static ImmutableArray<string> ShellParts(ShellCourse course, VesselDesign vessel) =>
        [.. SheetPiece.Of(course, vessel).Select(piece => piece.Id)];

    /// <summary>Ids of the parts of the shell that a weld on it runs over.</summary>
    /// <param name="places">Along the weld, in the vessel's frame.</param>
    public static ImmutableArray<string> ShellParts(IEnumerable<Vector3> places, double height, VesselDesign vessel)
    {
        var course = vessel.Shell.CourseAt(height);
        var ids = SheetPiece.Ids(SheetPiece.Of(course, vessel));
        return [.. places.Select(at => ids[course.Seams.SheetAt(Math.Atan2(at.Y, at.X))]).Distinct()];
    }

    /// <summary>Ids of all parts of the shell.</summary>
    public static ImmutableArray<string> ShellParts(VesselDesign vessel) =>
        [.. vessel.Shell.Courses.SelectMany(course => ShellParts(course, vessel))];

    /// <summary>Id of the part that a port stands in.</summary>
    public static string PortPart(PortDesign port, VesselDesign vessel) => port.Host == PortHost.Shell
        ? SheetPiece.Of(vessel.Shell.CourseAt(port.Place.Height), vessel).First(piece => piece.Ports.Contains(port)).Id
        : vessel.Head(port).PartOf(port, vessel);

    /// <summary>Id of the part that is welded to the shell at that end, of several a first one.</summary>
    public static string RimPart(VesselEnd end, VesselDesign vessel) => RimParts(end, vessel)[0];

    /// <summary>Ids of all parts that are welded to the shell at that end.</summary>
    public static ImmutableArray<string> RimParts(VesselEnd end, VesselDesign vessel) => vessel.Head(end).RimParts(end, vessel);
}
