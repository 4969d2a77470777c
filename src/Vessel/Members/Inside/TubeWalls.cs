using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Members.Inside;

/// <summary>What windows take out of a round wall inside, and where its mass then acts.</summary>
internal static class TubeWalls
{
    /// <summary>Each row has its share of what is open in the wall, even over its height.</summary>
    public static ImmutableArray<RoomPiece> InWindows(
        ImmutableArray<(WindowsDesign Design, double Sill)> rows, double volume, Interval wall)
    {
        var whole = rows.Sum(row => row.Design.Count * row.Design.AreaOfOne);
        return
        [
            .. rows.Select(row => new PrismPiece(
                new(row.Sill, row.Sill + row.Design.Height),
                volume * (row.Design.Count * row.Design.AreaOfOne / whole) / row.Design.Height,
                wall.Start,
                wall.End)),
        ];
    }

    /// <summary>Volume of a tube's whole wall, mm3.</summary>
    public static double Wall(double outsideDiameter, double wall, double length) =>
        Math.PI * (outsideDiameter - wall) * wall * length;

    /// <summary>Height at which the metal of a tube acts whose windows have theirs elsewhere, mm in the vessel's frame.</summary>
    /// <param name="part">The tube, its lower end at its place.</param>
    /// <param name="windows">Height of the middle of the windows' areas; anything where there are none.</param>
    public static Vector3 Centre(Part part, double gross, double length, double windows)
    {
        var foot = part.Placements[0].Origin.Z;
        return new(0, 0, ((gross * (foot + (length / 2))) - ((gross - part.Volume) * windows)) / part.Volume);
    }

    /// <summary>Middle of all windows by their areas over the edge that they are measured from, mm; zero where there are none.</summary>
    public static double Middle(ImmutableArray<WindowsDesign> rows) => rows.IsEmpty
        ? 0
        : rows.Sum(row => row.Count * row.AreaOfOne * (row.Up + (row.Height / 2))) / rows.Sum(row => row.Count * row.AreaOfOne);
}
