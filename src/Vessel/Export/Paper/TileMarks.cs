using Vessel.Export.Drawing;
using Vessel.Geometry;

namespace Vessel.Export.Paper;

/// <summary>Where a sheet meets its neighbours: a dashed line with the neighbour's number, and crosses that must meet.</summary>
internal static class TileMarks
{
    private const double Arm = 4;

    public static IEnumerable<Item> Of(Tile tile)
    {
        var core = tile.Core;
        Point2 lowerRight = new(core.Max.U, core.Min.V), upperLeft = new(core.Min.U, core.Max.V);
        return
        [
            .. Joint(tile.Left, core.Min, upperLeft),
            .. Joint(tile.Right, lowerRight, core.Max),
            .. Joint(tile.Below, core.Min, lowerRight),
            .. Joint(tile.Above, upperLeft, core.Max),
        ];
    }

    private static IEnumerable<Item> Joint(int? neighbour, Point2 from, Point2 to)
    {
        if (neighbour is not { } number)
            yield break;
        yield return Stroke.Line(from, to, Pens.PaleDashes);
        foreach (var share in new[] { 0, 0.5, 1 })
        {
            var at = from + (share * (to - from));
            foreach (var line in Stroke.Cross(at, Arm, Pens.Thin))
                yield return line;
        }

        var way = (to - from).Unit();
        yield return Text.Middle($"sheet {number}", from + (0.25 * (to - from)) + (2.5 * way.Turned), 2, way.Angle);
    }
}
