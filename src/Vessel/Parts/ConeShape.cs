using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>The sheet of a cone, a head or a part of the shell, between its two edges; in its own frame, its tip on -Z.</summary>
/// <param name="Outer">Line from the narrow to the wide edge, as <paramref name="Inner"/>: places at one length lie square across.</param>
public sealed record ConeShape(ConeSheet Sheet, Frame3 Frame, LinePiece Outer, LinePiece Inner)
{
    /// <summary>Half of what a sector and its trimmed ends may turn through, radians.</summary>
    private const double MostTurn = 0.95 * Math.PI;

    /// <summary>Rolls that the sheet is rolled on.</summary>
    public RollsShop Rolls { get; init; } = RollsShop.Unknown;

    /// <summary>Lies half-way between the faces and keeps its lengths.</summary>
    public LinePiece Middle => Outer.Offset(-Sheet.Wall / 2);

    public double Length => Outer.Length;

    /// <summary>Development of the whole sheet, or of a segment in its own frame (<see cref="OfSegment"/>).</summary>
    public ConeDevelopment Development
    {
        get
        {
            var sin = Math.Sin(Sheet.HalfAngle);
            var lengths = new Interval(Middle.A.U / sin, Middle.B.U / sin);
            // A top's own frame looks at the vessel from below: angles there run the other way.
            var seam = Sheet.Segments > 1 ? -Sheet.Pitch / 2 : IsTop ? -Sheet.SeamAngle : Sheet.SeamAngle;
            // Of a flat cone the two strips would meet.
            var trim = (Math.PI / Sheet.Segments * sin) + Math.Asin(Math.Min(1, Rolls.Trim / lengths.Start)) < MostTurn ? Rolls.Trim : 0;
            return new(Sheet.HalfAngle, seam, Rolls.BlankGap(Sheet.RootGap), lengths, IsTop) { Segments = Sheet.Segments, Trim = trim };
        }
    }

    private bool IsTop => Frame.Z.Z < 0;

    /// <summary>
    /// The sheet of a conical course, from which its level edges are dressed: at the narrow one some of the outside goes, at the wide
    /// one some of the inside.
    /// </summary>
    public static ConeShape Of(ShellCourse course)
    {
        var finished = Finished(course);
        var (own, outer) = (finished.Sheet, finished.Outer);
        var (sin, cos) = Math.SinCos(own.HalfAngle);
        var (down, across) = (own.Wall * sin / cos * new Point2(sin, cos), own.Wall * new Point2(cos, -sin));
        return finished with { Outer = new(outer.A - down, outer.B), Inner = new(outer.A - down - across, outer.B - across) };
    }

    /// <summary>Between its level edges; places at one length lie level across.</summary>
    public static ConeShape Finished(ShellCourse course)
    {
        var frame = course.NarrowsUp
            ? new Frame3(new(0, 0, course.End), Vector3.UnitX, -Vector3.UnitY, -Vector3.UnitZ)
            : Frame3.At(new(0, 0, course.Start));
        LinePiece Own(double narrow, double wide) => new(new(narrow, 0), new(wide, course.Height));
        var (least, most) = (Math.Min(course.Low, course.High), Math.Max(course.Low, course.High));
        return new(
            new(course.Shell.Material, course.Wall, course.HalfAngle, course.Seams, course.RootGap),
            frame,
            Own(least, most),
            Own(least - course.Across, most - course.Across))
        {
            Rolls = course.Shell.Rolls,
        };
    }

    /// <summary>Shape in the frame of one of several segments, its middle over +X; of a single sheet the cone's own.</summary>
    public ConeShape OfSegment(int segment)
    {
        if (Sheet.Segments == 1)
            return this;
        var (sin, cos) = Math.SinCos(Sheet.SeamAngle + (Sheet.Pitch * (segment + 0.5)));
        var (x, z) = (new Vector3(cos, sin, 0), Frame.Z);
        return this with { Frame = new(Frame.Origin, x, z.Cross(x), z) };
    }

    /// <summary>A place of the middle from the flat's (angle, distance from the tip), in the head's own frame.</summary>
    public Vector3 OnMiddle(Point2 place)
    {
        var (ring, height) = Middle.At(place.V - (Middle.A.U / Math.Sin(Sheet.HalfAngle)));
        return new(ring * Math.Cos(place.U), ring * Math.Sin(place.U), height);
    }

    /// <summary>The inverse, for a place on or near the sheet.</summary>
    public Point2 PlaceOf(Vector3 at)
    {
        var along = Middle.Project(new(double.Hypot(at.X, at.Y), at.Z)).Along;
        return new(Math.Atan2(at.Y, at.X), along + (Middle.A.U / Math.Sin(Sheet.HalfAngle)));
    }

    /// <summary>How <see cref="PlaceOf"/> changes as a place moves.</summary>
    /// <param name="way">Direction in the head's own frame.</param>
    public Point2 PlaceSlope(Vector3 at, Vector3 way)
    {
        var ring = double.Hypot(at.X, at.Y);
        var outward = ((at.X * way.X) + (at.Y * way.Y)) / ring;
        return new(
            ((at.X * way.Y) - (at.Y * way.X)) / (ring * ring),
            (outward * Math.Sin(Sheet.HalfAngle)) + (way.Z * Math.Cos(Sheet.HalfAngle)));
    }
}
