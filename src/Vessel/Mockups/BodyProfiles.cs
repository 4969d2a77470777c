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
    internal const double Step = Obstacle.Least;

    /// <summary>Heights that differ by less are one, mm: an arc's end is met only to rounding.</summary>
    private const double Hair = 1e-9;

    public static Profile Outside(ShellDesign shell, Chamber chamber)
    {
        var above = chamber.Top.Outside.Flipped().Moved(shell.Height);
        return Joined([.. chamber.Bottom.Outside.Pieces, .. shell.Courses.Select(course => course.Outer), .. above.Pieces]);
    }

    /// <summary>The room, where no wall is thinner than <paramref name="leastWall"/>, mm; null when none is left.</summary>
    public static Profile? Inside(ShellDesign shell, Chamber chamber, double leastWall)
    {
        var bore = Bore(shell, Math.Max(shell.Wall, leastWall));
        if (bore.Any(at => !(at.U > leastWall)))
            return null;
        var (bottom, top) = (chamber.Bottom.Inside(bore[0].U, leastWall), chamber.Top.Inside(bore[^1].U, leastWall));
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

    /// <summary>
    /// A head of revolution from its pole to the outer edge of the shell's end: a cone's edge stands back from that, and the weld fills
    /// what
    /// is between.
    /// </summary>
    internal static Profile Closed(HeadShape shape, double outer)
    {
        var face = HeadShape.Pointed(shape.Outer);
        return (face.End - new Point2(outer, 0)).Length < Step / 10 ? face : face.Then(Lines(face.End, new(outer, 0)));
    }

    /// <summary>Straight lines through places.</summary>
    internal static Profile Lines(params ReadOnlySpan<Point2> through)
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
