using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Planning;
using Vessel.Sites;
using Vessel.Stock;
using static Vessel.Model.Allowed;

namespace Vessel.Ports;

/// <summary>What is ill-advised about a port.</summary>
internal static class PortRules
{
    /// <summary>A fitting may take this share of its tube's bore area. Common practice, no source.</summary>
    private const double LeastBoreShare = 0.5;

    /// <summary>A set-in tube reaches at least this share of the way through its host. Common practice, no source.</summary>
    private const double LeastDepthShare = 0.5;

    /// <summary>Length of tube that a hose is pushed over, in tube diameters. Common practice, no source.</summary>
    private const double HoseGrip = 1;

    /// <summary>A dip of less runs out as the vessel moves, mm. Common practice, no source.</summary>
    private const double LeastPocket = 1;

    private const int Samples = 360;

    public static IEnumerable<Measure> Of(PortSite site, Assembly assembly)
    {
        var (port, design) = (site.Port, assembly.Design);
        if (port.Fitting is { Bore: { } bore } fitting)
            yield return Chokes(port, fitting, bore, design);
        if (port.Thread is { Face: { } face } thread)
            yield return Narrow(port, thread, face, design);
        if (port.Joint == PortJoint.SetIn && !port.IsFlush)
            yield return Short(site, design);
        if (port.Elbow is { } elbow)
        {
            if (port.Fitting is null)
                yield return Grip(site, elbow, design);
            yield return Pocket(site, elbow, design);
        }

        if (site.Over is { } end)
            yield return Crossed(port, end, assembly);
    }

    private static Measure Chokes(PortDesign port, ThreadSize fitting, double bore, VesselDesign design)
    {
        var share = bore * bore / (port.Bore * port.Bore);
        return new(
            FindingCodes.FittingChokes,
            Severity.Warning,
            [Slug.Of(port.Name)],
            () => $"the bore of {fitting.Name} ({NoteText.Length(bore)} mm) has {Math.Round(100 * share)} % of the area of the "
            + $"tube of '{port.Name}' ({NoteText.Length(port.Bore)} mm): choose a larger fitting, or a smaller tube.",
            [new("share of area", share, AtLeast(LeastBoreShare), string.Empty)],
            design.PlaceOf($"{port.Path}.fitting"),
            $"bore of {fitting.Name} over the tube's of '{port.Name}', areas");
    }

    private static Measure Narrow(PortDesign port, ThreadSize thread, double face, VesselDesign design) => new(
        FindingCodes.FaceTooNarrow,
        Severity.Warning,
        [Slug.Of(port.Name)],
        () => $"the bung of '{port.Name}' is {NoteText.Length(port.OutsideDiameter)} mm across: the washer of {thread.Name} seals on a face of "
            + $"{NoteText.Length(face)} mm; use a wider bung, or a smaller thread.",
        [new("across", port.OutsideDiameter, AtLeast(face), "mm")],
        design.PlaceOf(port.SizeKey),
        $"face of '{port.Name}' for the washer of {thread.Name}");

    /// <summary>Weld over weld; swarf and a root out of reach where it can only be made on the closed vessel.</summary>
    private static Measure Crossed(PortDesign port, VesselEnd end, Assembly assembly)
    {
        var design = assembly.Design;
        var (head, late) = (Names.Of(end), WorkTasks.ClosingEnd(design, assembly.Sites) == end);
        return new(
            FindingCodes.PortOverHeadSeam,
            late ? Severity.Warning : Severity.Note,
            [Names.PortPart(port, design), head, Slug.Of(port.Name)],
            () => $"'{port.Name}' stands over the seam of the {head}: weld that seam first, dress it flush under the port and look at it, "
            + "then drill through both"
            + (late ? ". It is the seam that closes the vessel: swarf falls in, and the root is out of reach." : "."),
            [],
            design.PlaceOf($"{port.Path}.at.height"));
    }

    /// <summary>Whether a hose finds a tube that is whole all round beyond an elbow's last mitre.</summary>
    private static Measure Grip(PortSite site, ElbowDesign elbow, VesselDesign design)
    {
        var port = site.Port;
        var (whole, wanted) = (site.Legs[^1].Length - (elbow.Slope * port.OuterRadius), HoseGrip * port.OutsideDiameter);
        return new(
            FindingCodes.HoseGripShort,
            Severity.Warning,
            [PortPieces.Ids(port)[^1]],
            () => $"beyond the last mitre of the elbow of '{port.Name}' the tube is straight all round for {NoteText.Length(whole)} mm "
            + "only: a hose is pushed over one "
            + $"diameter ({NoteText.Length(wanted)} mm) before it is clamped; give an end_length of "
            + $"{NoteText.Length(elbow.EndLength + wanted - whole)} mm or more.",
            [new("straight end", whole, AtLeast(wanted), "mm")],
            design.PlaceOf($"{elbow.Path}.end_length"),
            $"straight end of the elbow of '{port.Name}'");
    }

    /// <summary>Whether the axis dips below both ends of the tube, so that oil stays in the elbow.</summary>
    private static Measure Pocket(PortSite site, ElbowDesign elbow, VesselDesign design)
    {
        var port = site.Port;
        var mouth = site.Frame.ToOuter(new(0, 0, site.InnerEnd)).Z;
        var lowest = site.Legs[..^1].Min(leg => leg.End.Origin.Z);
        var depth = Math.Min(mouth, site.FreeEnd.Origin.Z) - lowest;
        return new(
            FindingCodes.ElbowHoldsOil,
            Severity.Warning,
            [.. PortPieces.Ids(port).Distinct()],
            () => $"the elbow of '{port.Name}' dips {NoteText.Length(depth)} mm below both ends of its tube: condensed liquid stays there"
            + (depth >= port.Bore ? " and shuts the bore" : "") + "; turn it to another side, or tilt the port up.",
            [new("dip", depth, AtMost(LeastPocket), "mm")],
            design.PlaceOf($"{elbow.Path}.direction"),
            $"dip of the elbow of '{port.Name}' below its ends");
    }

    /// <summary>How far a set-in tube's square end stays short of the host's inner face at its worst place.</summary>
    private static Measure Short(PortSite site, VesselDesign design)
    {
        var port = site.Port;
        var missing = Enumerable.Range(0, Samples)
            .Max(i => site.InnerEnd - site.Inside.Reach(port.OuterRadius, Turns.Full * i / Samples));
        var limit = LeastDepthShare * site.HostWall;
        return new(
            FindingCodes.EndShortOfInside,
            Severity.Warning,
            [Slug.Of(port.Name)],
            () => $"the inner end of '{port.Name}', square as it is, stays up to {NoteText.Length(missing)} mm short of the inside of the "
            + $"{Names.Of(port.Host)}: give an inside_length of {NoteText.Length(port.InsideLength + missing)} mm or more.",
            [new("short by", missing, AtMost(limit), "mm")],
            design.PlaceOf(port.DepthKey),
            $"inner end of '{port.Name}' short of the inside");
    }
}
