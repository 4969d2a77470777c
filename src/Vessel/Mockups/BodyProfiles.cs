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

    /// <summary>Heights that differ by less are one, mm: an arc's end is met only to rounding.</summary>
    private const double Hair = 1e-9;

    public static Profile Outside(VesselDesign vessel)
    {
        var shell = vessel.Shell;
        var bottom = Outside(PortHost.Bottom, vessel);
        var top = Outside(PortHost.Top, vessel).Flipped().Moved(shell.Height);
        return Joined([.. bottom.Pieces, .. shell.Courses.Select(course => course.Outer), .. top.Pieces]);
    }

    /// <summary>The room, where no wall is thinner than <paramref name="leastWall"/>, mm; null when none is left.</summary>
    public static Profile? Inside(VesselDesign vessel, double leastWall)
    {
        var shell = vessel.Shell;
        var bore = Bore(shell, Math.Max(shell.Wall, leastWall));
        if (bore.Any(at => !(at.U > leastWall)))
            return null;
        var (bottom, top) = (Inside(PortHost.Bottom, vessel, bore[0].U, leastWall), Inside(PortHost.Top, vessel, bore[^1].U, leastWall));
        if (bottom is null || top is null || !(shell.Height - top.End.V - bottom.End.V > leastWall))
            return null;
        var above = top.Flipped().Moved(shell.Height);
        // Heads that reach in cut the bore off where they end.
        Point2 On(double height) => new(Enumerable.Range(1, bore.Length - 1).Select(i => new LinePiece(bore[i - 1], bore[i]))
            .First(line => line.B.V >= height).RadiusAt(height), height);
        var (low, high) = (bottom.End.V > 0 ? On(bottom.End.V) : bottom.End,
            above.Start.V < shell.Height ? On(above.Start.V) : above.Start);
        var through = bore.Where(at => at.V > low.V + Hair && at.V < high.V - Hair).Prepend(low).Append(high).ToArray();
        return Joined(
            [.. WithRim(bottom, low).Pieces, .. Lines(through).Pieces, .. WithRim(above.Flipped(), new(high.U, -high.V)).Flipped().Pieces]);
    }

    /// <summary>The corners of the bore upward, where no wall is thinner than that square to it; mm.</summary>
    private static ImmutableArray<Point2> Bore(ShellDesign shell, double wall)
    {
        var courses = shell.Courses;
        double In(ShellCourse course) => course.IsCone ? wall / Math.Cos(course.HalfAngle) : wall;
        var corners = ImmutableArray.CreateBuilder<Point2>();
        corners.Add(new(courses[0].Low - In(courses[0]), 0));
        for (var i = 1; i < courses.Length; i++)
        {
            // Where the two lines, moved in, cross: one of them is upright.
            var (below, above) = (courses[i - 1], courses[i]);
            var (upright, cone) = below.IsCone ? (above, below) : (below, above);
            var slope = (cone.High - cone.Low) / cone.Height;
            corners.Add(new(upright.Low - wall, cone.Start + ((upright.Low - wall - cone.Low + In(cone)) / slope)));
        }

        corners.Add(new(courses[^1].High - In(courses[^1]), shell.Height));
        return corners.ToImmutable();
    }

    /// <summary>A flat floor that ends where the bore stands at its level.</summary>
    private static Profile WithRim(Profile head, Point2 rim) =>
        head.End == rim || head.Pieces is not [LinePiece floor] ? head : new(floor with { B = rim });

    /// <summary>A bottom, from its pole to the shell's lower edge, z = 0.</summary>
    private static Profile Outside(PortHost end, VesselDesign vessel)
    {
        var (head, shell) = (vessel.Head(end), vessel.Shell.AtEnd(end));
        var outer = shell.OuterRadius;
        switch (head)
        {
            case FlatHead { Seat: Seat.Inset, Recess: >= Step } inset:
                var deep = vessel.Shell.IsPlain ? shell.InnerRadius
                    : vessel.Shell.CourseOf(end).InnerAt(end == PortHost.Top ? vessel.Shell.Height - inset.Recess : inset.Recess);
                return Lines(new(0, inset.Recess), new(deep, inset.Recess), new(shell.InnerRadius, 0), new(outer, 0));
            case FlatHead { Seat: Seat.Inset }:
                return Lines(new(0, 0), new(outer, 0));
            case FlatHead flat:
                var rim = flat.OutsideDiameter / 2;
                return Math.Abs(rim - outer) < Step
                    ? Lines(new(0, -flat.Wall), new(outer, -flat.Wall), new(outer, 0))
                    : Lines(new(0, -flat.Wall), new(rim, -flat.Wall), new(rim, 0), new(outer, 0));
            default:
                // A cone's edge stands back from the shell's; the weld fills what is between.
                var face = HeadShape.Pointed(HeadShape.Of(end, vessel)!.Outer);
                return (face.End - new Point2(outer, 0)).Length < Step / 10 ? face : face.Then(Lines(face.End, new(outer, 0)));
        }
    }

    /// <summary>A bottom, from its pole to where the shell's bore begins.</summary>
    private static Profile? Inside(PortHost end, VesselDesign vessel, double radius, double leastWall)
    {
        var (head, shell) = (vessel.Head(end), vessel.Shell.AtEnd(end));
        var wall = Math.Max(head.Wall, leastWall);
        switch (head)
        {
            case FlatHead flat:
                var floor = (flat.Seat == Seat.Inset ? (flat.Recess >= Step ? flat.Recess : 0) : -flat.Wall) + wall;
                return Lines(new(0, floor), new(radius, floor));
            case DishedHead dish:
                var dome = shell.OuterRadius - wall;
                if (dome <= leastWall)
                    return null;
                var even = Math.Abs(dome - radius) < Step;
                return Thickened(end, dish, vessel, even ? shell.OuterRadius - radius : wall) is not { } inner ? null
                    : even ? inner
                    : inner.Then(Lines(new(dome, 0), new(radius, 0)));
            case ConeHead cone:
                var face = HeadShape.Pointed(HeadShape.Of(end, vessel)!.Outer).End;
                // The wall is square to the line; up to the level of the shell's end.
                var (sin, cos) = Math.SinCos(cone.HalfAngle);
                var wide = face.U - (wall / cos) - (face.V * sin / cos);
                return wide <= leastWall ? null
                    : Math.Abs(wide - radius) < Step ? Lines(new(0, -radius * cos / sin), new(radius, 0))
                    : Lines(new(0, -wide * cos / sin), new(wide, 0), new(radius, 0));
            default:
                throw new ArgumentOutOfRangeException(nameof(vessel), head, "a head without an inside");
        }
    }

    /// <summary>The inside of a dish with that much wall; null where its knuckle is used up.</summary>
    private static Profile? Thickened(PortHost end, DishedHead dish, VesselDesign vessel, double wall)
    {
        var shape = HeadShape.Of(end, vessel)!;
        var more = wall - dish.Wall;
        if (more <= 0 || (dish is not EllipsoidHead && dish.Sharpest > more))
            return shape.Outer.Offset(-wall);
        if (dish is not EllipsoidHead)
            return null;
        // Less both half axes by one length, a 2:1 ellipse stands off by 2 sqrt(2) / 3 of it at least.
        var (a, b) = (shape.Inner.End.U - more, (shape.Inner.End.U / 2) - (more * 3 / (2 * Math.Sqrt(2))));
        if (b <= 0)
            return null;
        var inner = Domes.Ellipsoid(a, b);
        return dish.Flange == 0 ? inner : inner.Moved(-dish.Flange).Then(Lines(new(a, -dish.Flange), new(a, 0)));
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
