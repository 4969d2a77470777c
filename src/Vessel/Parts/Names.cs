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

    /// <summary>Id of the part that ports stand in: of a head of gores the polar cap, for all stand at the pole.</summary>
    public static string PortPart(PortHost host, VesselDesign vessel) =>
        IsOfGores(host, vessel) ? Slug.Of(PolarCap(host)) : Of(host);

    /// <summary>Id of the part that is welded to the shell at that end.</summary>
    public static string RimPart(PortHost end, VesselDesign vessel) =>
        IsOfGores(end, vessel) ? Slug.Of(Gore(end)) : Of(end);

    private static bool IsOfGores(PortHost host, VesselDesign vessel) =>
        host != PortHost.Shell && vessel.Head(host) is DishedHead { Gores: not null };
}
