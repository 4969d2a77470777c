using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Parts;

/// <summary>What the welder calls the parts that the file does not name.</summary>
public static class Names
{
    public const string Shell = "shell";

    /// <summary>Of a host: the id of its part.</summary>
    public static string Of(PortHost host) => host switch
    {
        PortHost.Shell => Shell,
        PortHost.Top => "top",
        PortHost.Bottom => "bottom",
        _ => throw new ArgumentOutOfRangeException(nameof(host)),
    };

    public static string Gore(PortHost end) => GoreDesign.GoreOf(Of(end));

    public static string PolarCap(PortHost end) => GoreDesign.CapOf(Of(end));

    /// <summary>Id of the part that ports stand in: of a head of gores the polar cap, for all stand at the pole; of a cone in
    /// segments a first one.</summary>
    public static string PortPart(PortHost host, VesselDesign vessel) =>
        IsOfGores(host, vessel) ? Slug.Of(PolarCap(host)) : RimPart(host, vessel);

    /// <summary>Id of the part of the shell that is welded to a head.</summary>
    public static string ShellPart(PortHost end, VesselDesign vessel) => vessel.Shell.CourseOf(end).Id;

    /// <summary>Id of the part of the shell at a height, mm.</summary>
    public static string ShellPart(double height, VesselDesign vessel) => vessel.Shell.CourseAt(height).Id;

    /// <summary>Ids of all parts of the shell.</summary>
    public static ImmutableArray<string> ShellParts(VesselDesign vessel) => [.. vessel.Shell.Courses.Select(course => course.Id)];

    /// <summary>Id of the part that a port stands in.</summary>
    public static string PortPart(PortDesign port, VesselDesign vessel) =>
        port.Host == PortHost.Shell ? ShellPart(port.Place.Height, vessel) :
        port.Host != PortHost.Shell && port.Place.Radius > 0 && vessel.Head(port.Host) is ConeHead cone
            ? ConePiece.IdOf(cone.SegmentAt(port.Place.Angle), port.Host, cone, vessel)
            : PortPart(port.Host, vessel);

    /// <summary>Id of the part that is welded to the shell at that end, of a cone in segments a first one.</summary>
    public static string RimPart(PortHost end, VesselDesign vessel) => RimParts(end, vessel)[0];

    /// <summary>Ids of all parts that are welded to the shell at that end.</summary>
    public static ImmutableArray<string> RimParts(PortHost end, VesselDesign vessel) =>
        IsOfGores(end, vessel) ? [Slug.Of(Gore(end))]
        : end != PortHost.Shell && vessel.Head(end) is ConeHead cone ? [.. ConePiece.Of(end, cone, vessel).Select(piece => piece.Id)]
        : [Of(end)];

    private static bool IsOfGores(PortHost host, VesselDesign vessel) =>
        host != PortHost.Shell && vessel.Head(host) is DishedHead { Gores: not null };
}
