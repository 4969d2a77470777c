using Vessel.Design;

namespace Vessel.Sites;

/// <summary>A port, and how it fits the walls that it is to stand in.</summary>
/// <param name="Site">
/// Null where its axis misses its host or a size is at fault; in the shell also where not all lines round it meet the wall.
/// </param>
internal sealed record PortStand(PortDesign Port, PortSite? Site, PortMisfit Misfit);

/// <summary>Why a port does not fit its host.</summary>
internal enum PortMisfit
{
    /// <summary>All lines round the port and its hole meet the host.</summary>
    None,

    /// <summary>A size of one or the other is at fault, so that nothing can be said.</summary>
    AtFault,

    /// <summary>The port's axis or outside does not meet the host's outer face all round.</summary>
    Foot,

    /// <summary>The hole does not meet the host's inner face all round.</summary>
    Hole,
}
