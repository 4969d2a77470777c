using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Members.InnerTubes;

/// <summary>An inner tube: a straight tube with windows that hangs from the top, or stands on the bottom.</summary>
internal static class InnerTubePart
{
    /// <param name="lower">Height of its lower end, mm in the vessel's frame.</param>
    public static Part Build(InnerTubeDesign sleeve, double lower, Welds welds)
    {
        return new WindowedTube(
            Slug.Of(sleeve.Name), sleeve.Name, "sleeve", sleeve.Material,
            sleeve.OutsideDiameter / 2, sleeve.Wall, sleeve.Length,
            StockForm.Tube, WindowRows.Between(sleeve.Windows, sleeve.OutsideDiameter / 2),
            [.. sleeve.Windows.Select(row => new WindowRow(row, row.Up))],
            Frame3.At(new(0, 0, lower)),
            $"{sleeve.Name} {string.Concat(welds.Of(WeldRole.Hold, sleeve.Path))}".TrimEnd(),
            sleeve.Path).ToPart();
    }
}
