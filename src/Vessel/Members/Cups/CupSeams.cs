using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Members.Inside;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Members.Cups;

/// <summary>The welds of a cup: its skirt's own seam, the rim between plate and skirt, and what holds it.</summary>
internal static class CupSeams
{
    public static IEnumerable<Joint> Of(CupDesign cap, VesselDesign vessel)
    {
        var site = CupSite.Of(cap, vessel);
        var (skirt, plate) = CupParts.Ids(cap);
        var up = cap.Opens == CupOpening.Up;
        if (cap.MadeFrom == StockForm.Sheet)
            yield return Seam(cap, site, skirt);

        // Plate and skirt are flush outside: a corner, melted down from the edge.
        yield return new(
            $"{cap.Name} skirt to plate",
            [plate, skirt],
            JointKind.Corner,
            Interval.Turn,
            [],
            LevelRing.Along(
                cap.OutsideDiameter / 2, up ? site.Plate.End : site.Plate.Start, Way.Axial(up ? -1 : 1), Way.Axial(up ? 1 : -1), 0),
            cap.Wall,
            cap.Wall,
            $"{cap.Path}.skirt")
        {
            Role = WeldRole.Within,
            Owner = cap.Path,
            Words = new("") { Heed = InsideSeams.Quarters, Remedy = InsideSeams.Widen },
        };
        if (cap.IsWelded)
            yield return Hold(cap, site, vessel);
    }

    /// <summary>Opens up: outside the skirt against the head. Opens down: round the outlet on the plate's upper face.</summary>
    private static Joint Hold(CupDesign cap, CupSite site, VesselDesign vessel)
    {
        var (skirt, plate) = CupParts.Ids(cap);
        if (cap.Outlet is not { } name)
            return InsideSeams.ToHead(cap, vessel, (skirt, $"{cap.Name} skirt"), site.Skirt.End);

        var outlet = vessel.Ports.Single(port => port.Name == name);
        return InsideSeams.Fillet(
            cap, Slug.Of(name), (plate, $"{cap.Name} plate"), Math.Min(cap.Wall, outlet.Wall),
            LevelRing.Along(outlet.OuterRadius, site.Plate.End, Way.Axial(1), Way.Outward, cap.Clearance)) with
        {
            GapKey = $"{cap.Path}.clearance",
        };
    }

    private static Joint Seam(CupDesign cap, CupSite site, string skirt) => LongSeam.Along(
        $"long seam of {cap.Name} skirt", [skirt, skirt],
        new(new(cap.OutsideDiameter / 2, site.Skirt.Start), new(cap.OutsideDiameter / 2, site.Skirt.End)), cap.SeamAngle, 0, cap.Wall,
        (WeldRole.InnerSeam, $"{cap.Path}.seam_angle", cap.Path, null));
}
