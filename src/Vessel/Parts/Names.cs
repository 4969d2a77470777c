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
}
