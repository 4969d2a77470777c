using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Parts;

/// <summary>The room that a packing fills.</summary>
internal static class PackingRoom
{
    /// <summary>
    /// Between the facing faces of its two discs, across the bore that the lower one fits, less what passes through
    /// upright, mm3; null when a disc is missing.
    /// </summary>
    public static double? Of(PackingDesign packing, VesselDesign design, ImmutableArray<PortSite> sites)
    {
        var (lower, upper) = (Disc(packing.Lower, design), Disc(packing.Upper, design));
        if (lower is null || upper is null)
            return null;
        var (from, to) = (lower.Height + lower.Thickness, upper.Height);
        if (to <= from)
            return 0;
        var radius = InternalHost.InnerRadius(lower, design);
        var through = sites.Sum(site => ThroughPort(site, from, to))
            + Tubes(design).Where(tube => tube.Name != lower.Fits && tube.OutsideDiameter / 2 < radius)
                .Sum(tube => ThroughTube(tube, design, from, to));
        return (Math.PI * radius * radius * (to - from)) - through;
    }

    /// <summary>
    /// The end from which a tube passes on into a packing between discs of the shell; null where none does, or from both.
    /// </summary>
    public static VesselEnd? EnteredFrom(PackingDesign packing, VesselDesign design, ImmutableArray<PortSite> sites) =>
        Disc(packing.Lower ?? packing.Upper, design) is { Fits: null } ? Through(packing, design, sites)?.From : null;

    /// <summary>
    /// Whether the discs and packings of a bore are put in from below, the uppermost first: a tube hangs down into one of its packings,
    /// from the top or in its sleeve.
    /// </summary>
    /// <param name="fits">Name of the sleeve; null for the shell.</param>
    public static bool IsFilledFromBelow(string? fits, VesselDesign design, ImmutableArray<PortSite> sites) => design.All<PackingDesign>()
        .Where(packing => Disc(packing.Lower ?? packing.Upper, design) is { } disc && disc.Fits == fits)
        .Select(packing => Through(packing, design, sites))
        .FirstOrDefault(tube => tube is not null) is { From: VesselEnd.Top };

    /// <summary>The disc that shuts a packing in, put in after it; null where there is none.</summary>
    public static DividerSpec? Shutting(PackingDesign packing, VesselDesign design, ImmutableArray<PortSite> sites)
    {
        var (lower, upper) = (Disc(packing.Lower, design), Disc(packing.Upper, design));
        return (lower ?? upper) is { } disc && IsFilledFromBelow(disc.Fits, design, sites) ? lower : upper;
    }

    /// <summary>
    /// The tube, of a port or a sleeve, that is there before the packing is stuffed round it, and the end that it comes from: of several
    /// that which passes furthest in. In a sleeve only what comes from the sleeve's own end. Null where tubes come from both ends, or none.
    /// </summary>
    public static (string Name, VesselEnd From)? Through(PackingDesign packing, VesselDesign design, ImmutableArray<PortSite> sites)
    {
        if (Disc(packing.Lower ?? packing.Upper, design) is not { } disc)
            return null;
        var room = HeightsOf(packing, disc, design);
        var own = Tubes(design).FirstOrDefault(tube => tube.Name == disc.Fits)?.HangsFrom;
        var tubes = sites.Where(site => site.UprightBody is not null).Select(site => (Body: site.UprightBody!, From: site.Port.End!.Value))
            .Concat(Tubes(design).Where(tube => tube.Name != disc.Fits).Select(tube => (Body: tube.Body(design), From: tube.HangsFrom)))
            .Where(tube => (own is null || tube.From == own) && tube.Body.Rings
                .Any(ring => ring.Outer < InternalHost.InnerRadius(disc, design)
                && ring.Low < room.End - Ring.Hair && ring.High > room.Start + Ring.Hair))
            .Select(tube => (tube.Body.Name, tube.From,
                Deep: tube.Body.Rings.Max(ring => Math.Min(ring.High, room.End) - Math.Max(ring.Low, room.Start))))
            .OrderByDescending(tube => tube.Deep)
            .ToList();
        return tubes.Count > 0 && tubes.TrueForAll(tube => tube.From == tubes[0].From) ? (tubes[0].Name, tubes[0].From) : null;
    }

    /// <summary>Whether a port's tube comes through the shell into a packing.</summary>
    public static bool IsReached(PackingDesign packing, PortSite site, VesselDesign design)
    {
        if (site.Port is not { Host: PortHost.Shell, InsideLength: > 0 } || Disc(packing.Lower ?? packing.Upper, design) is not { } disc)
            return false;
        var room = HeightsOf(packing, disc, design);
        var body = new InsideBody(
            packing.Path, packing.Name, [new Ring(0, InternalHost.InnerRadius(disc, design) - Ring.Hair, room.Start, room.End)]);
        return new TubeLines(site).FirstMeeting(body) is not null;
    }

    /// <summary>Heights from disc to disc, or to the end of the bore where there is only one.</summary>
    private static Interval HeightsOf(PackingDesign packing, DividerSpec disc, VesselDesign design)
    {
        var (bore, lower, upper) = (InternalHost.Heights(disc.Fits, design), Disc(packing.Lower, design), Disc(packing.Upper, design));
        return new(lower is null ? bore.Start : lower.Height + lower.Thickness, upper?.Height ?? bore.End);
    }

    /// <summary>What hangs inside and is a tube that others can stand in.</summary>
    private static IEnumerable<HangingSpec> Tubes(VesselDesign design) =>
        design.All<HangingSpec>().Where(hanging => hanging.BoreLength is not null);

    private static DividerSpec? Disc(string? name, VesselDesign design) =>
        name is null ? null : design.All<DividerSpec>().FirstOrDefault(disc => disc.Name == name);

    /// <summary>The tube of a head's port, bore and all: packing does not stand in it.</summary>
    private static double ThroughPort(PortSite site, double from, double to)
    {
        if (site.Port.Host == PortHost.Shell || site.Port.Joint == PortJoint.SetOn)
            return 0;
        var (end, root) = (site.Frame.ToOuter(new(0, 0, site.InnerEnd)).Z, site.Frame.Origin.Z);
        return Across(site.Port.OuterRadius, Math.Min(end, root), Math.Max(end, root), from, to);
    }

    private static double ThroughTube(HangingSpec sleeve, VesselDesign design, double from, double to)
    {
        var root = HeadSite.Of(sleeve.HangsFrom, design).InnerFace;
        var end = sleeve.HangsFrom == VesselEnd.Top ? root - sleeve.BoreLength!.Value : root + sleeve.BoreLength!.Value;
        return Across(sleeve.OutsideDiameter / 2, Math.Min(end, root), Math.Max(end, root), from, to);
    }

    private static double Across(double radius, double low, double high, double from, double to) =>
        Math.PI * radius * radius * Math.Max(0, Math.Min(high, to) - Math.Max(low, from));
}
