using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;

namespace Vessel.Tests.Reassembly;

/// <summary>Tabs of a bracket in the slots of the shell, both as they were cut.</summary>
internal static class TabMeetings
{
    /// <summary>The piece as if it had no tabs: what is cut deeper than the shell's outside is left out of its outline.</summary>
    public static CutPiece Plain(BracketDesign bracket, ShellSection shell, CutPiece piece)
    {
        if (bracket.Tabs is null)
            return piece;
        var outline = piece.Outline;
        return piece with
        {
            Loops = [.. piece.Holes, [.. outline.Where(at => Nearest(piece, at) > shell.OuterRadius - piece.Allowed)]],
        };
    }

    /// <summary>Every place of a tab's edge lies off the bore, and in a slot with its clearance at whatever depth it lies.</summary>
    public static IEnumerable<Meeting> Of(BracketDesign bracket, ShellSection shell, CutPiece piece, ImmutableArray<CutPiece> rolled)
    {
        if (bracket.Tabs is not { } tabs)
            yield break;
        var both = piece.Allowed + rolled.Max(sheet => sheet.Allowed);
        var slots = rolled.SelectMany(sheet =>
            sheet.Holes.Select(hole => hole.Select(at => Unrolled(sheet.InVessel(at, 0), bracket)).ToList())).ToList();
        var met = new HashSet<int>();
        foreach (var at in piece.Outline.Where(at => Nearest(piece, at) < shell.OuterRadius - (10 * piece.Allowed)))
        {
            yield return new($"a tab of {bracket.Name} into the bore", Math.Max(0, shell.InnerRadius - Nearest(piece, at)), piece.Allowed);
            foreach (var point in Through(piece, at).Where(point => FromAxis(point) < shell.OuterRadius))
            {
                var (angle, height) = Unrolled(point, bracket);
                double Room(List<Point2> slot) => Inside(
                    [.. slot.Select(corner => new Point2(FromAxis(point) * corner.U, corner.V))], new(FromAxis(point) * angle, height));
                var slot = Enumerable.Range(0, slots.Count).MaxBy(i => Room(slots[i]));
                met.Add(slot);
                // The nearest way to a slanted side is a little shorter round the wall than across it.
                yield return new($"a tab of {bracket.Name} in its slot", Math.Max(0, (0.99 * tabs.Clearance) - Room(slots[slot])), both);
            }
        }

        yield return new($"slots of {bracket.Name} that hold a tab", Math.Abs(met.Count - ShellTab.Of(bracket).Length), 0.5);
    }

    private static double Nearest(CutPiece piece, Point2 at) => Through(piece, at).Min(FromAxis);

    private static IEnumerable<Vector3> Through(CutPiece piece, Point2 at) =>
        Enumerable.Range(0, 33).Select(i => piece.InVessel(at, piece.Part.Thickness * i / 32));

    private static double FromAxis(Vector3 p) => Math.Sqrt((p.X * p.X) + (p.Y * p.Y));

    private static Point2 Unrolled(Vector3 at, BracketDesign bracket) => new(Turns.Signed(Math.Atan2(at.Y, at.X) - bracket.Angle), at.Z);

    /// <summary>How far a point lies inside a polygon, by its nearest side; negative outside.</summary>
    private static double Inside(List<Point2> polygon, Point2 at)
    {
        var sides = polygon.Zip([.. polygon.Skip(1), polygon[0]]).ToList();
        var crossings = sides.Count(side => (side.First.V > at.V) != (side.Second.V > at.V)
            && at.U < side.First.U + ((at.V - side.First.V) / (side.Second.V - side.First.V) * (side.Second.U - side.First.U)));
        var nearest = sides.Min(side =>
        {
            var (from, way) = (at - side.First, side.Second - side.First);
            var share = way.Length == 0 ? 0 : Math.Clamp(from.Dot(way) / way.Dot(way), 0, 1);
            return (from - (share * way)).Length;
        });
        return crossings % 2 == 1 ? nearest : -nearest;
    }
}
