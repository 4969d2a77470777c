using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Findings;

/// <summary>What a port does for the vessel as a whole.</summary>
internal static class PortRules
{
    /// <summary>A fitting may take this share of its tube's bore area. Common practice, no source.</summary>
    private const double LeastBoreShare = 0.5;

    /// <summary>A set-in tube reaches at least this share of the way through its host. Common practice, no source.</summary>
    private const double LeastDepthShare = 0.5;

    private const int Samples = 360;

    public static IEnumerable<Finding> Of(Assembly assembly)
    {
        var design = assembly.Design;
        foreach (var site in assembly.Sites)
        {
            if (Chokes(site, design) is { } chokes)
                yield return chokes;
            if (Short(site, design) is { } tooShort)
                yield return tooShort;
        }

        if (!assembly.Cavity.OpenPorts.Any())
        {
            yield return new(
                FindingCodes.NoOpenPort,
                Severity.Error,
                [],
                "no port is open to the air: a closed volume that is heated builds pressure (20 to 600 degC triples it) and the "
                + "vessel is not one for pressure; add a port with a tube.",
                [],
                design.PlaceOf("ports"));
        }
    }

    private static Finding? Chokes(PortSite site, VesselDesign design)
    {
        var port = site.Port;
        if (port.Fitting?.Bore is not { } bore)
            return null;
        var share = bore * bore / (port.Bore * port.Bore);
        if (share >= LeastBoreShare)
            return null;
        return new(
            FindingCodes.FittingChokes,
            Severity.Warning,
            [Slug.Of(port.Name)],
            $"the bore of {port.Fitting.Name} ({NoteText.Length(bore)} mm) has {Math.Round(100 * share)} % of the area of "
            + $"{port.Name}'s tube ({NoteText.Length(port.Bore)} mm): choose a larger fitting, or a smaller tube.",
            [new("share of area", share, LeastBoreShare, string.Empty)],
            design.PlaceOf($"{port.Path}.fitting"));
    }

    /// <summary>How far a set-in tube's square end stays short of the host's inner face at its worst place.</summary>
    private static Finding? Short(PortSite site, VesselDesign design)
    {
        var port = site.Port;
        if (port.Joint == PortJoint.SetOn || port.IsFlush)
            return null;
        var missing = Enumerable.Range(0, Samples)
            .Max(i => site.InnerEnd - site.Inside.Reach(port.OuterRadius, Turns.Full * i / Samples));
        var limit = LeastDepthShare * site.HostWall;
        if (missing <= limit)
            return null;
        return new(
            FindingCodes.EndShortOfInside,
            Severity.Warning,
            [Slug.Of(port.Name)],
            $"the inner end of {port.Name}, square as it is, stays up to {NoteText.Length(missing)} mm short of the inside of the "
            + $"{Names.Of(port.Host)}: give an inside_length of {NoteText.Length(port.InsideLength + missing)} mm or more.",
            [new("short by", missing, limit, "mm")],
            design.PlaceOf($"{port.Path}.inside_length"));
    }
}
