using System.Globalization;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Dxf;

/// <summary>
/// The layout for the drill press: where each tool goes. Nothing in it is to be cut, so the layer CUT is empty: the
/// part's outline is on NOTE, for reference; centres, tools and numbers are on MARK.
/// </summary>
public static class HolesDxf
{
    // The cross reaches so far beyond the tool's circle, mm, that it can be seen with the tool in place.
    private const double Overreach = 2;

    public static void Write(Part part, DrawingOptions options, Stream to)
    {
        DxfEntity[] outline = part.Flat is { } flat ? [FlatDxf.Outline(flat.Cut.Outer, DxfLayer.Note, options.Tolerance)] : [];
        DxfEntity[] drawn = [.. outline, .. part.Holes.SelectMany(Drawn)];
        var bounds = drawn.Aggregate(Box2.Empty, (box, entity) => box.Join(entity.Bounds));
        DxfDocument.Write(
            [.. drawn, .. FlatDxf.Notes([$"{part.Name}: holes to drill, mm", "numbers as in the table of holes"], bounds)],
            options.Release,
            to);
    }

    private static IEnumerable<DxfEntity> Drawn(Hole hole)
    {
        var arm = (hole.Diameter / 2) + Overreach;
        var (across, up) = (new Point2(arm, 0), new Point2(0, arm));
        var height = Math.Clamp(hole.Diameter / 4, 2.5, 5);
        var beside = new Point2(arm + height, arm);
        var number = hole.Number.ToString(CultureInfo.InvariantCulture);
        return
        [
            new DxfLine(DxfLayer.Mark, hole.Center - across, hole.Center + across),
            new DxfLine(DxfLayer.Mark, hole.Center - up, hole.Center + up),
            new DxfCircle(DxfLayer.Mark, hole.Center, hole.Diameter / 2),
            .. FlatDxf.Letters(new(number, hole.Center + beside, height, 0)),
        ];
    }
}
