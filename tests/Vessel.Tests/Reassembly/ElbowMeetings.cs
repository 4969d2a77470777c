using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Tests.Reassembly;

/// <summary>The pieces of elbows at their mitres, and where the tubes then end. All planes come from the design's angles alone.</summary>
internal static class ElbowMeetings
{
    public static IEnumerable<Meeting> Of(Assembly vessel, IReadOnlyDictionary<string, CutPiece> pieces) =>
        vessel.Sites.Where(site => site.Port.Elbow is not null).SelectMany(site => Of(site, pieces));

    private static IEnumerable<Meeting> Of(PortSite site, IReadOnlyDictionary<string, CutPiece> pieces)
    {
        var (port, elbow) = (site.Port, site.Port.Elbow!);
        var bend = elbow.Angle / (elbow.Pieces - 1);
        var stretch = elbow.Radius * Math.Tan(bend / 2);
        // Along the port's axis, then turned about the line square to axis and direction.
        var way = site.Frame.Z;
        var (sin, cos) = Math.SinCos(elbow.Direction);
        var hinge = site.Frame.Z.Cross((cos * site.Frame.X) + (sin * site.Frame.Y));
        var at = site.Frame.Origin + ((port.Length + stretch) * way);
        for (var i = 0; i + 1 < elbow.Pieces; i++)
        {
            var next = (Math.Cos(bend) * way) + (Math.Sin(bend) * hinge.Cross(way));
            var plane = (way + next).Unit();
            var (before, beforeNumber) = Piece(i);
            var (after, afterNumber) = Piece(i + 1);
            foreach (var meeting in Faces(before, beforeNumber, upper: true, -plane).Concat(Faces(after, afterNumber, upper: false, plane)))
                yield return meeting;
            at += (i + 2 < elbow.Pieces ? 2 * stretch : stretch + elbow.EndLength) * next;
            way = next;
        }

        // The last piece's square end: a circle round the place where the axis then is.
        var (last, lastNumber) = Piece(elbow.Pieces - 1);
        foreach (var point in Edge(last, upper: true))
        {
            var off = last.InVessel(point, 0, lastNumber) - at;
            yield return new($"free end of {port.Name}",
                Math.Abs(off.Dot(way)) + Math.Abs(off.Length - port.OuterRadius), 2 * last.Allowed);
        }

        // On its own side of the plane all the way through the wall, and touching it: sawn with the outer edge.
        IEnumerable<Meeting> Faces(CutPiece piece, int number, bool upper, Vector3 own) => Edge(piece, upper).Select(point =>
        {
            double Off(double depth) => (piece.InVessel(point, depth, number) - at).Dot(own);
            var off = elbow.Cut == MitreCut.Sawn ? Off(0) : Math.Min(Off(0), Off(port.Wall));
            return new Meeting($"{piece.Part.Name} at its mitre", Math.Abs(off), piece.Allowed);
        });

        (CutPiece Piece, int Number) Piece(int i) => i == 0 ? (pieces[Slug.Of(port.Name)], 0)
            : i == elbow.Pieces - 1 ? (pieces[Slug.Of(ElbowDesign.EndOf(port.Name))], 0)
            : (pieces[Slug.Of(ElbowDesign.PieceOf(port.Name))], i - 1);
    }

    /// <summary>Points of the upper or lower edge of a wrap, but for those on its sides.</summary>
    private static IEnumerable<Point2> Edge(CutPiece piece, bool upper)
    {
        var (radius, loop) = (((WrappedDevelopment)piece.Part.Flat!.From).Radius, piece.Outline);
        var inner = loop.Where(p => p.U > piece.Allowed && p.U < (Turns.Full * radius) - piece.Allowed).ToList();
        // At every place round the tube the two edges are parted by the middle of the shortest line.
        var cut = piece.Part.Flat!.Cut.Outer.Edges;
        var (low, high) = (CurveMeasures.Bounds(cut[0]).Max.V, CurveMeasures.Bounds(cut[2]).Min.V);
        return low < high
            ? inner.Where(p => upper ? p.V > (low + high) / 2 : p.V < (low + high) / 2)
            : inner.Where(p => upper == (p.V > (Near(cut[0], p.U / radius).V + Near(cut[2], Turns.Full - (p.U / radius)).V) / 2));
    }

    private static Point2 Near(Curve2 edge, double t) => edge.At(edge is Line2 ? t / Turns.Full : t);
}
