namespace Vessel.Geometry;

/// <summary>A stretch of a profile, turned about the axis, with the chart that suits it best.</summary>
/// <param name="On">Surface in the frame of the profile.</param>
/// <param name="Outward">Whether the chart's d/du x d/dv points out of the body.</param>
/// <param name="ChartOf">
/// The chart point of a point of the surface, with the angle about which the places lie that belong together: where the
/// chart comes round again they are not torn apart within half a turn of it.
/// </param>
internal sealed record ProfileZone(Surface On, bool Outward, Func<Vector3, double, Point2> ChartOf)
{
    private const double Hair = 1e-9;

    /// <param name="profile">Smooth, with one of its ends on the axis at most.</param>
    public static ProfileZone Of(Profile profile) => profile.Pieces switch
    {
        [LinePiece line] when Math.Abs(line.A.U - line.B.U) < Hair => Cylinder(line.A.U, line.Normal(0).U > 0),
        [LinePiece line] when Math.Abs(line.A.V - line.B.V) < Hair => Plane(line.A.V, line.Normal(0).V > 0),
        [ArcPiece { Center.U: 0 } arc] => Sphere(arc),
        _ => Revolved(profile),
    };

    private static ProfileZone Cylinder(double radius, bool outward) => new(
        new CylinderSurface(radius),
        outward,
        (point, around) => new(radius * (around + Turns.Signed(Math.Atan2(point.Y, point.X) - around)), point.Z));

    private static ProfileZone Plane(double height, bool up) => new(
        new PlaneSurface(Frame3.At(new(0, 0, height))), up, (point, _) => new(point.X, point.Y));

    private static ProfileZone Sphere(ArcPiece arc)
    {
        // The chart is cast from the pole that is further away.
        var frame = Frame(arc.Angles.At(0.5) > 0, arc.Center.V);
        var sphere = new SphereSurface(arc.Radius);
        return new(new PlacedSurface(sphere, frame), false, (point, _) => sphere.ChartOf(frame.ToLocal(point)));
    }

    private static ProfileZone Revolved(Profile profile)
    {
        // The chart starts at the narrower end.
        var flipped = profile.Start.U > profile.End.U;
        var frame = Frame(flipped, 0);
        var standing = flipped ? profile.Flipped() : profile;
        var surface = new RevolvedSurface(standing);
        return new(new PlacedSurface(surface, frame), false, (point, _) => surface.ChartOf(frame.ToLocal(point)));
    }

    private static Frame3 Frame(bool flipped, double height) => flipped
        ? new(new(0, 0, height), Vector3.UnitX, -Vector3.UnitY, -Vector3.UnitZ)
        : Frame3.At(new(0, 0, height));
}
