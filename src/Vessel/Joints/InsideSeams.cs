using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Joints;

/// <summary>The welds of sleeves and caps, all level rings but for a rolled skirt's seam.</summary>
internal static class InsideSeams
{
    public static IEnumerable<Joint> Of(VesselDesign vessel, WeldNumbers welds) =>
    [
        .. vessel.Inside.Sleeves.Where(sleeve => sleeve.Fixed == Fixing.Weld).Select(sleeve => Sleeve(sleeve, vessel, welds)),
        .. vessel.Inside.Caps.SelectMany(cap => Cap(cap, vessel, welds)),
    ];

    /// <summary>Outside the sleeve, in the angle with the head's inner face.</summary>
    private static Joint Sleeve(SleeveDesign sleeve, VesselDesign vessel, WeldNumbers welds)
    {
        var into = sleeve.HangsFrom == PortHost.Top ? -1 : 1;
        return Fillet(
            welds, WeldRole.SleeveHold, sleeve.Path, Names.Of(sleeve.HangsFrom), (Slug.Of(sleeve.Name), sleeve.Name),
            Math.Min(sleeve.Wall, vessel.Head(sleeve.HangsFrom).Wall),
            Ring.Along(
                sleeve.OutsideDiameter / 2, HeadSite.Of(sleeve.HangsFrom, vessel).InnerFace, Way.Outward, Way.Axial(into), 0));
    }

    private static IEnumerable<Joint> Cap(CapDesign cap, VesselDesign vessel, WeldNumbers welds)
    {
        var site = CapSite.Of(cap, vessel);
        var (skirt, plate) = CapParts.Ids(cap);
        var up = cap.Opens == CapOpening.Up;
        if (cap.MadeFrom == StockForm.Sheet)
            yield return Seam(cap, site, skirt, welds);

        // Plate and skirt are flush outside: a corner, melted down from the edge.
        yield return new(
            welds[WeldNumbers.Rim(cap.Path)],
            $"{cap.Name} skirt to plate",
            [plate, skirt],
            JointKind.Corner,
            Interval.Turn,
            [],
            Ring.Along(cap.OutsideDiameter / 2, up ? site.Plate.End : site.Plate.Start, Way.Axial(up ? -1 : 1), Way.Axial(up ? 1 : -1), 0),
            cap.Wall,
            cap.Wall,
            WeldNumbers.Rim(cap.Path))
        {
            Role = WeldRole.CapRim,
            Owner = cap.Path,
        };
        if (cap.Fixed == Fixing.Weld)
            yield return Hold(cap, site, vessel, welds);
    }

    /// <summary>Opens up: outside the skirt against the head. Opens down: round the outlet on the plate's upper face.</summary>
    private static Joint Hold(CapDesign cap, CapSite site, VesselDesign vessel, WeldNumbers welds)
    {
        var (skirt, plate) = CapParts.Ids(cap);
        if (cap.Outlet is not { } name)
        {
            return Fillet(
                welds, WeldRole.CapHold, cap.Path, Names.Of(cap.HangsFrom), (skirt, $"{cap.Name} skirt"),
                Math.Min(cap.Wall, vessel.Head(cap.HangsFrom).Wall),
                Ring.Along(cap.OutsideDiameter / 2, site.Skirt.End, Way.Outward, Way.Axial(-1), 0));
        }

        var outlet = vessel.Ports.Single(port => port.Name == name);
        return Fillet(
            welds, WeldRole.CapHold, cap.Path, Slug.Of(name), (plate, $"{cap.Name} plate"), Math.Min(cap.Wall, outlet.Wall),
            Ring.Along(outlet.OuterRadius, site.Plate.End, Way.Axial(1), Way.Outward, cap.Clearance)) with
        {
            GapKey = $"{cap.Path}.clearance",
        };
    }

    private static Joint Seam(CapDesign cap, CapSite site, string skirt, WeldNumbers welds) => LongSeam.Along(
        welds[WeldNumbers.Seam(cap.Path)], $"long seam of {cap.Name} skirt", [skirt, skirt],
        new(new(cap.OutsideDiameter / 2, site.Skirt.Start), new(cap.OutsideDiameter / 2, site.Skirt.End)), cap.SeamAngle, 0, cap.Wall,
        (WeldRole.SkirtSeam, WeldNumbers.Seam(cap.Path), cap.Path, null));

    private static Joint Fillet(
        WeldNumbers welds, WeldRole role, string owner, string host, (string Id, string Name) part, double wall, Func<double, Station> along) => new(
        welds[WeldNumbers.Fixing(owner)],
        $"{part.Name} to {host}",
        [host, part.Id],
        JointKind.Fillet,
        Interval.Turn,
        [],
        along,
        FilletThroat.Of(wall),
        wall,
        WeldNumbers.Fixing(owner))
        {
            Role = role,
            Owner = owner,
        };
}
