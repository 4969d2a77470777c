using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Straps;

namespace Vessel.Tests.Reassembly;

/// <summary>
/// Both halves of a strap round the shell: nowhere nearer than the liner lets them, somewhere on it at both edges, and the holes of each
/// back ear over one of the front half, a gap apart.
/// </summary>
internal static class StrapMeetings
{
    public static IEnumerable<Meeting> Of(StrapDesign strap, ShellSection shell, IReadOnlyDictionary<string, CutPiece> pieces)
    {
        var (back, front) = (pieces[Slug.Of(StrapDesign.BackOf(strap.Name))], pieces[Slug.Of(StrapDesign.FrontOf(strap.Name))]);
        var (outward, seat) = (new Vector3(Math.Cos(strap.Angle), Math.Sin(strap.Angle), 0), shell.OuterRadius + strap.Liner);
        foreach (var piece in new[] { back, front })
        {
            // Points along both long edges of the strip: the outline has none but its corners.
            var (low, high) = (piece.Outline.Min(at => at.V), piece.Outline.Max(at => at.V));
            var (from, to) = (piece.Outline.Min(at => at.U), piece.Outline.Max(at => at.U));
            var nearest = double.PositiveInfinity;
            foreach (var (v, height) in new[] { (low, strap.Low), (high, strap.High) })
            {
                for (var i = 0; i <= 200; i++)
                {
                    var at = piece.InVessel(new Point2(from + ((to - from) * i / 200), v), strap.Thickness);
                    nearest = Math.Min(nearest, new Point2(at.X, at.Y).Length - seat);
                    yield return new($"{strap.Name}'s edge", Math.Abs(at.Z - height), piece.Allowed);
                }
            }

            yield return new($"{strap.Name} round shell", Math.Abs(nearest), piece.Allowed);
        }

        Vector3 Middle(CutPiece piece, IReadOnlyCollection<Point2> hole) => piece.InVessel(
            new Point2((hole.Min(at => at.U) + hole.Max(at => at.U)) / 2, (hole.Min(at => at.V) + hole.Max(at => at.V)) / 2),
            strap.Thickness);
        var ours = back.Holes.Select(hole => Middle(back, hole)).ToList();
        foreach (var hole in front.Holes.Select(hole => Middle(front, hole)))
        {
            yield return new(
                $"bolt of {strap.Name}", ours.Min(other => (other - hole - (strap.Gap * outward)).Length), back.Allowed + front.Allowed);
        }
    }
}
