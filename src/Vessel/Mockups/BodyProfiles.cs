using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>
/// Shell and heads as one body each, turned about the vessel's axis from the lower pole to the upper: the outside, and the room
/// inside. Gaps round inset plates count as filled, as their welds will do.
/// </summary>
internal static class BodyProfiles
{
    /// <summary>
    /// Steps lower than this are left out, mm: they are a layer of a print, and the circles on both sides would come nearer to
    /// each other than their chords.
    /// </summary>
    private const double Step = Obstacle.Least;

    public static Profile Outside(VesselDesign vessel)
    {
        var shell = vessel.Shell;
        var bottom = Outside(vessel.Bottom, shell);
        var top = Outside(vessel.Top, shell).Flipped().Moved(shell.Height);
        return Joined([.. bottom.Pieces, new LinePiece(new(shell.OuterRadius, 0), new(shell.OuterRadius, shell.Height)), .. top.Pieces]);
    }

    /// <summary>The room, where no wall is thinner than <paramref name="leastWall"/>, mm; null when none is left.</summary>
    public static Profile? Inside(VesselDesign vessel, double leastWall)
    {
        var shell = vessel.Shell;
        var radius = shell.OuterRadius - Math.Max(shell.Wall, leastWall);
        if (!(radius > leastWall))
            return null;
        var (bottom, top) = (Inside(vessel.Bottom, shell, radius, leastWall), Inside(vessel.Top, shell, radius, leastWall));
        if (bottom is null || top is null || !(shell.Height - top.End.V - bottom.End.V > leastWall))
            return null;
        var above = top.Flipped().Moved(shell.Height);
        return Joined([.. bottom.Pieces, new LinePiece(bottom.End, above.Start), .. above.Pieces]);
    }

    /// <summary>A bottom, from its pole to the shell's lower edge, z = 0.</summary>
    private static Profile Outside(HeadDesign head, ShellDesign shell)
    {
        var outer = shell.OuterRadius;
        switch (head)
        {
            case FlatHead { Seat: Seat.Inset, Recess: >= Step } inset:
                return Lines(new(0, inset.Recess), new(shell.InnerRadius, inset.Recess), new(shell.InnerRadius, 0), new(outer, 0));
            case FlatHead { Seat: Seat.Inset }:
                return Lines(new(0, 0), new(outer, 0));
            case FlatHead flat:
                var rim = flat.OutsideDiameter / 2;
                return Math.Abs(rim - outer) < Step
                    ? Lines(new(0, -flat.Wall), new(outer, -flat.Wall), new(outer, 0))
                    : Lines(new(0, -flat.Wall), new(rim, -flat.Wall), new(rim, 0), new(outer, 0));
            case HemisphereHead:
                return Domes.Sphere(outer);
            default:
                throw new ArgumentOutOfRangeException(nameof(head), head, "a head without an outline");
        }
    }

    /// <summary>A bottom, from its pole to where the shell's bore begins.</summary>
    private static Profile? Inside(HeadDesign head, ShellDesign shell, double radius, double leastWall)
    {
        var wall = Math.Max(head.Wall, leastWall);
        switch (head)
        {
            case FlatHead flat:
                var floor = (flat.Seat == Seat.Inset ? (flat.Recess >= Step ? flat.Recess : 0) : -flat.Wall) + wall;
                return Lines(new(0, floor), new(radius, floor));
            case HemisphereHead:
                var dome = shell.OuterRadius - wall;
                return dome <= leastWall ? null
                    : Math.Abs(dome - radius) < Step ? Domes.Sphere(radius)
                    : Domes.Sphere(dome).Then(Lines(new(dome, 0), new(radius, 0)));
            default:
                throw new ArgumentOutOfRangeException(nameof(head), head, "a head without an inside");
        }
    }

    private static Profile Lines(params ReadOnlySpan<Point2> through)
    {
        var pieces = ImmutableArray.CreateBuilder<ProfilePiece>(through.Length - 1);
        for (var i = 0; i + 1 < through.Length; i++)
            pieces.Add(new LinePiece(through[i], through[i + 1]));
        return new(pieces.MoveToImmutable());
    }

    /// <summary>Upright lines that follow each other made one.</summary>
    private static Profile Joined(ImmutableArray<ProfilePiece> pieces)
    {
        var joined = ImmutableArray.CreateBuilder<ProfilePiece>(pieces.Length);
        foreach (var piece in pieces)
        {
            if (piece is LinePiece next && joined.Count > 0 && joined[^1] is LinePiece last
                && last.A.U == last.B.U && next.A.U == next.B.U && last.B.U == next.A.U)
            {
                joined[^1] = last with { B = next.B };
            }
            else
            {
                joined.Add(piece);
            }
        }

        return new(joined.ToImmutable());
    }
}
