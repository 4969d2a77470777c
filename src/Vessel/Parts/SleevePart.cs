using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>A sleeve: a tube that hangs from the top, or stands on the bottom.</summary>
internal static class SleevePart
{
    public static Part Build(SleeveDesign sleeve, VesselDesign vessel, WeldNumbers welds)
    {
        var face = HeadSite.Of(sleeve.HangsFrom, vessel).InnerFace;
        var lower = sleeve.HangsFrom == PortHost.Top ? face - sleeve.Length : face;
        return new WindowedTube(
            Slug.Of(sleeve.Name), sleeve.Name, PartKind.Sleeve, sleeve.Material,
            sleeve.OutsideDiameter / 2, sleeve.Wall, sleeve.Length,
            StockForm.Tube, WindowRows.Between(sleeve.Windows, sleeve.OutsideDiameter / 2),
            [.. sleeve.Windows.Select(row => new WindowRow(row, row.Up))],
            Frame3.At(new(0, 0, lower)),
            $"{sleeve.Name} {welds.Or(WeldNumbers.Fixing(sleeve.Path))}".TrimEnd(),
            sleeve.Path).ToPart();
    }
}
