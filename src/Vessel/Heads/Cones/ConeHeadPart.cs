using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Heads.Cones;

/// <summary>
/// The sheets of a cone that closes an end. Their edges are cut square in the flat, the narrow one for the port at the pole. A single
/// sheet's frame is the head's own; a segment has its middle over +X.
/// </summary>
internal static class ConeHeadPart
{
    public static IEnumerable<Part> Build(VesselEnd end, ConeHead head, VesselDesign vessel, ImmutableArray<PortSite> sites, Welds welds)
    {
        var whole = head.SheetAt(end, vessel);
        ImmutableArray<string> edges = [.. ShellWords.Rolling(whole.Rolls, whole.Development.Trim)];
        var (seams, ends) = (welds.Of(WeldRole.ConeSeam, head.Path), $"shell {welds.One(WeldRole.HeadSeam, head.Path)}");
        var height = PartCentre.Turned(HeadShape.Of(end, vessel)!);
        foreach (var piece in head.Pieces(end, vessel))
        {
            // The port at the pole, too, whose name the flat of a single sheet keeps clear of.
            var own = sites.Where(site => site.Port.End == end && (site.Port.Place.Radius == 0 || piece.Ports.Contains(site.Port)))
                .ToImmutableArray();
            var part = Build(head.Path, whole, piece with { Seams = seams, Ends = ends, EdgeNotes = edges }, own, welds);
            yield return part with
            {
                Centre = head.Segments > 1
                    ? PartCentre.LessHoles(part, Segments(part, whole, height.Centre.Z), own.Where(ConePart.IsDrilled))
                    : PartCentre.LessHoles(part, height, own),
            };
        }
    }

    private static Part Build(string path, ConeShape whole, SheetPiece piece, ImmutableArray<PortSite> own, Welds welds)
    {
        var (sheet, cone) = (whole.Sheet, whole.OfSegment(piece.Numbers[0]));
        var drilled = own.Where(ConePart.IsDrilled).ToImmutableArray();
        var flat = ConeFlat.Of(piece, cone, own, welds);
        var (low, high) = CurveMeasures.Bounds(flat.Cut.Outer);
        return new(
            piece.Id,
            piece.Name,
            PartKind.Cone,
            sheet.Material,
            sheet.Wall,
            StockPieces.Rectangle(high.U - low.U, high.V - low.V, sheet.Wall, sheet.Material),
            [.. piece.Numbers.Select(segment => whole.OfSegment(segment).Frame)],
            ConePart.Solid(cone, drilled),
            (cone.Middle.Area * sheet.Wall / sheet.Segments) - drilled.Sum(DrilledDome.DrilledOut),
            flat,
            [.. drilled.Select((site, i) => site.HoleInHost(i + 1, site.On(cone.Frame), null))],
            path)
        {
            Forming = Forming.Rolled,
            Making = ConePart.Making(piece.Name, !drilled.IsEmpty),
            StockNote = ConePart.ToBeRolled,
        };
    }

    /// <summary>
    /// Centre of the sectors of a thin cone: the mean of the radius, weighed by itself, times sin(h) / h for half angle h.
    /// </summary>
    private static (double Volume, Vector3 Centre) Segments(Part part, ConeShape whole, double height)
    {
        var (sheet, half) = (whole.Sheet, whole.Sheet.Pitch / 2);
        var (narrow, wide) = (whole.Middle.A.U, whole.Middle.B.U);
        var ring = 2.0 / 3 * ((narrow * narrow) + (narrow * wide) + (wide * wide)) / (narrow + wide) * Math.Sin(half) / half;
        var solid = sheet.Wall * whole.Middle.Area / sheet.Segments;
        var pieces = part.Placements.Select(frame => new Weight(solid, new Vector3(ring * frame.X.X, ring * frame.X.Y, height)));
        return (solid * part.Quantity, Weight.Sum(pieces).Centre);
    }
}
