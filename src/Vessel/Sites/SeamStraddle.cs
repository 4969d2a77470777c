using System.Collections.Immutable;
using MathNet.Numerics.RootFinding;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Sites;

/// <summary>
/// Ports of the shell that stand over the seam of a spun dish as well. Shell and dish stay whole until that seam is welded; then one hole
/// is made through both along the port's axis, and the tube's end follows both.
/// </summary>
public static class SeamStraddle
{
    /// <summary>How far past the shell's end the cylinder is thought to run on, shares of its radius.</summary>
    private const double Beyond = 4;

    /// <summary>A hole reaches over the seam by as much at least, mm: less would leave slivers.</summary>
    private const double Least = 0.2;

    private const int Samples = 144;

    /// <summary>Faces that lie nearer than this to each other at the seam are in line, mm.</summary>
    private const double Step = 1e-6;

    /// <summary>The head over whose seam a port's hole reaches by more than a wall; null where none.</summary>
    internal static VesselEnd? Of(PortSites walls, PortSite site)
    {
        var (shell, port) = (walls.Design.Shell, site.Port);
        // A bung's length is reckoned through the shell's wall alone.
        if (port is { Thread: not null, Joint: PortJoint.SetIn } || IsFarFromEnds(shell, port))
            return null;
        var hole = ShellOpening.Of(site).HoleHeights;
        VesselEnd? end = hole.Start < -shell.Wall ? VesselEnd.Bottom : hole.End > shell.Height + shell.Wall ? VesselEnd.Top : null;
        return end is { } head && walls.Shape(head) is { } shape && Carries(head, walls.Design, port) && CutsAllFaces(shape, site)
            ? head : null;
    }

    /// <summary>
    /// Most ports: no line of theirs is higher or lower by more than their slanted section and the climb across the shell.
    /// </summary>
    private static bool IsFarFromEnds(ShellDesign shell, PortDesign port)
    {
        var (height, tilt) = (port.Place.Height, port.Place.Tilt);
        var most = (port.HoleRadius / Math.Cos(tilt)) + (shell.OuterRadius * Math.Abs(Math.Tan(tilt)));
        return height - most > 0 && height + most < shell.Height;
    }

    /// <summary>The angles round a port at which lines of a radius meet a face at the seam's level, ascending.</summary>
    /// <param name="axis">Axis of the port, in the vessel's frame.</param>
    public static ImmutableArray<double> Crossings(Frame3 axis, Footprint face, double radius, double level)
    {
        double Over(double phi) => axis.ToOuter(face.At(radius, phi)).Z - level;
        var roots = ImmutableArray.CreateBuilder<double>();
        var before = Over(0);
        for (var i = 1; i <= Samples; i++)
        {
            var (from, to) = (Turns.Full * (i - 1) / Samples, Turns.Full * i / Samples);
            var after = Over(to);
            if (before >= 0 != after >= 0)
                roots.Add(Brent.FindRoot(Over, from, to, 1e-14, 200));
            before = after;
        }

        return roots.ToImmutable();
    }

    /// <summary>
    /// A tilted hole that crosses the seam outside may stay on one side of it inside; then its edge would run out in the wall.
    /// </summary>
    private static bool CutsAllFaces(HeadShape shape, PortSite site)
    {
        var (axis, radius, level) = (site.Frame, site.OpeningRadius, shape.Frame.Origin.Z);
        IEnumerable<Footprint> faces =
        [
            site.Outside,
            site.Inside,
            .. new[] { shape.Outer, shape.Inner }.Select(of => new RevolvedFootprint(shape.InVessel(RunOn(of, of.End.U)), axis)),
        ];
        return faces.All(face => face.Takes(radius) && Crossings(axis, face, radius, level) is [var first, var second]
            && Depth(face, first, second) > Least);

        // Half-way between both crossings a footprint lies furthest off the seam, or nearly so.
        double Depth(Footprint face, double first, double second) => new[] { (first + second) / 2, ((first + second) / 2) + Math.PI }
            .Min(phi => Math.Abs(axis.ToOuter(face.At(radius, phi)).Z - level));
    }

    /// <summary>
    /// Whether the head at that end can carry part of a port that stands in the shell there. A flush end cannot follow the step between two
    /// walls that are not alike.
    /// </summary>
    private static bool Carries(VesselEnd end, VesselDesign design, PortDesign port) =>
        design.Head(end) is { CarriesOverSeam: true } head
        && design.Shell.CourseOf(end) is { IsCone: false } course && course == design.Shell.CourseAt(port.Place.Height)
        && !(port.IsFlush && head.Wall != course.Wall);

    /// <summary>
    /// Both faces as the port meets them, in the vessel's frame: the dish and, from its edge on, the shell without an end.
    /// </summary>
    internal static ShellFooting Footing(VesselDesign design, HeadShape shape, VesselEnd end, Frame3 axis)
    {
        var course = design.Shell.CourseOf(end);
        RevolvedFootprint On(Profile dish, double radius) => new(shape.InVessel(RunOn(dish, radius)), axis);
        return new(course, axis, On(shape.Outer, course.Low), On(shape.Inner, course.Low - course.Wall));
    }

    /// <summary>A dish's profile in its own frame, and the cylinder of a radius from its edge on.</summary>
    public static Profile RunOn(Profile dish, double radius)
    {
        var (rim, far) = (new Point2(radius, dish.End.V), new Point2(radius, dish.End.V + (Beyond * radius)));
        // Walls of two thicknesses leave a step inside.
        return (rim - dish.End).Length < Step
            ? dish.Then(new(new LinePiece(dish.End, far with { U = dish.End.U })))
            : dish.Then(new(new LinePiece(dish.End, rim), new LinePiece(rim, far)));
    }
}
