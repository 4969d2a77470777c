using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>
/// A port's tube or bung: straight with a square free end, its other end plain or coped, in the port's frame; and the further pieces
/// of its elbow.
/// </summary>
internal static class PortPart
{
    public static ImmutableArray<Part> Build(PortSite site, Welds welds)
    {
        var pieces = PortPieces.Of(site);
        return [First(site, pieces[0], welds), .. pieces[1..].Select(piece => OfElbow(site, piece, welds))];
    }

    private static Part First(PortSite site, PortPiece piece, Welds welds)
    {
        var port = site.Port;
        var flat = TubeWrap.OfPort(site, piece.Shape, welds);
        var length = CurveMeasures.Bounds(flat.Cut.Outer).Height;
        return new(
            piece.Id,
            piece.Name,
            port.Thread is null ? PartKind.Branch : PartKind.Bung,
            port.Material,
            port.Wall,
            port.Thread is null
                ? StockPieces.Tube(port.OutsideDiameter, port.Wall, length, port.Material)
                : StockPieces.Bar(port.OutsideDiameter, length, port.Material),
            piece.Placements,
            piece.Shape.Solid(),
            piece.Shape.Volume,
            flat,
            port.Thread is { } thread
                ? [new(1, $"thread of {port.Name}", default, null, thread.TapDrill, null, thread, HoleMethod.DrillAndTap, null)]
                : piece.Shape.Windows.Table(flat.Cut.Holes),
            port.Path)
        {
            Centre = Centre(piece),
            Forming = port.Thread is null ? Forming.None : Forming.Turned,
            SawNote = port.Elbow is { } elbow ? $"free end mitred {NoteText.Degrees(elbow.Slant)} deg from square" : null,
        };
    }

    private static Part OfElbow(PortSite site, PortPiece piece, Welds welds)
    {
        var (port, elbow) = (site.Port, site.Port.Elbow!);
        var flat = TubeWrap.OfElbow(site, piece, welds);
        var length = CurveMeasures.Bounds(flat.Cut.Outer).Height;
        return new(
            piece.Id,
            piece.Name,
            PartKind.Elbow,
            port.Material,
            port.Wall,
            StockPieces.Tube(port.OutsideDiameter, port.Wall, length, port.Material),
            piece.Placements,
            piece.Shape.Solid(),
            piece.Shape.Volume,
            flat,
            [],
            elbow.Path)
        {
            Centre = Centre(piece),
            SawNote = piece.Shape.Upper.IsPlain
                ? $"one end mitred {NoteText.Degrees(elbow.Slant)} deg from square, the other square"
                : $"both ends mitred {NoteText.Degrees(elbow.Slant)} deg from square, leaning towards each other: turn the tube half round "
                    + "between the cuts",
        };
    }

    /// <summary>Centre of mass of all pieces that are alike.</summary>
    private static Vector3 Centre(PortPiece piece) => 1.0 / piece.Placements.Length
        * piece.Placements.Aggregate(Vector3.Zero, (sum, frame) => sum + frame.ToOuter(piece.Shape.Centre));
}
