using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

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
            + design.Inside.Sleeves.Where(sleeve => sleeve.Name != lower.Fits && sleeve.OutsideDiameter / 2 < radius)
                .Sum(sleeve => ThroughSleeve(sleeve, design, from, to));
        return (Math.PI * radius * radius * (to - from)) - through;
    }

    private static DiscDesign? Disc(string? name, VesselDesign design) =>
        name is null ? null : design.Inside.Discs.FirstOrDefault(disc => disc.Name == name);

    /// <summary>The tube of a head's port, bore and all: packing does not stand in it.</summary>
    private static double ThroughPort(PortSite site, double from, double to)
    {
        if (site.Port.Host == PortHost.Shell || site.Port.Joint == PortJoint.SetOn)
            return 0;
        var (end, root) = (site.Frame.ToOuter(new(0, 0, site.InnerEnd)).Z, site.Frame.Origin.Z);
        return Across(site.Port.OuterRadius, Math.Min(end, root), Math.Max(end, root), from, to);
    }

    private static double ThroughSleeve(SleeveDesign sleeve, VesselDesign design, double from, double to)
    {
        var root = HeadSite.Of(sleeve.HangsFrom, design).InnerFace;
        var end = sleeve.HangsFrom == PortHost.Top ? root - sleeve.Length : root + sleeve.Length;
        return Across(sleeve.OutsideDiameter / 2, Math.Min(end, root), Math.Max(end, root), from, to);
    }

    private static double Across(double radius, double low, double high, double from, double to) =>
        Math.PI * radius * radius * Math.Max(0, Math.Min(high, to) - Math.Max(low, from));
}
