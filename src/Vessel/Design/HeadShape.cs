using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>
/// The two faces of a head that is a wall of revolution, as profiles in the head's own frame: its pole on -Z, z = 0 at the
/// shell's end, where the inner face ends.
/// </summary>
/// <param name="Frame">The head's own frame in the vessel; Z into the vessel, X the vessel's.</param>
/// <param name="Tip">Where a cone is as wide as this radius its port closes it: both faces end there, level; zero for
/// others, mm. See <see cref="TipOf"/>.</param>
public sealed record HeadShape(Profile Outer, Profile Inner, double Wall, Frame3 Frame, double Tip)
{
    /// <summary>Radius of the sphere that a half sphere's inner face is part of, mm; null for other shapes.</summary>
    public double? InnerSphere { get; init; }

    /// <summary>A flange or tip below this is none, mm: it cannot be made, and its directions would be lost in rounding.</summary>
    internal const double Least = 1e-3;

    /// <summary>Length from the shell's end to the inner pole, mm.</summary>
    public double Depth => -Inner.Start.V;

    /// <summary>Where the wall's two faces are told by one surface half-way between: its area counts for blanks.</summary>
    public Profile Middle => Inner.Offset(Wall / 2);

    /// <summary>Null for a flat head, and where a size is at fault.</summary>
    public static HeadShape? Of(VesselEnd end, VesselDesign design) => Of(
        end, design.Head(end), design.Shell.AtEnd(end),
            design.Ports.FirstOrDefault(port => IsAtPole(port, end)) is { } port ? TipOf(port) : 0);

    /// <param name="rim">The shell at that end.</param>
    /// <param name="tip">Radius of the port at the pole; zero for none.</param>
    public static HeadShape? Of(VesselEnd end, HeadDesign head, ShellSection rim, double tip)
    {
        var height = rim.Course.Shell.Height;
        var frame = end == VesselEnd.Top
            ? new Frame3(new(0, 0, height), Vector3.UnitX, -Vector3.UnitY, -Vector3.UnitZ)
            : Frame3.Identity;
        // Written so that a NaN does not pass.
        if (!(head.Wall > 0 && head.Wall < rim.OuterRadius && double.IsFinite(rim.OuterRadius + height)))
            return null;
        return head.Shape(rim, frame, tip);
    }

    /// <summary>
    /// A cone's tip is cut off by the port at its pole: where it is as wide as the bore of one that is set on, or the outside of
    /// one that passes in.
    /// </summary>
    public static double TipOf(PortDesign port) =>
        port.Place.Radius > 0 ? 0 : port.Joint == PortJoint.SetOn ? port.BoreRadius : port.OuterRadius;

    public static bool IsAtPole(PortDesign port, VesselEnd end) => port.End == end && port.Place.Radius == 0;

    /// <summary>A face as ports meet it: a cone up to its point.</summary>
    public static Profile Pointed(Profile face)
    {
        if (face.Pieces is not [LinePiece { A.U: 0 }, LinePiece cone])
            return face;
        return new(new LinePiece(new(0, cone.A.V - (cone.A.U * (cone.B.V - cone.A.V) / (cone.B.U - cone.A.U))), cone.B));
    }

    /// <summary>A profile of this head in the vessel's frame, upward; a top's ends on the axis.</summary>
    public Profile InVessel(Profile own) => Frame.Z.Z > 0 ? own : own.Flipped().Moved(Frame.Origin.Z);

    /// <summary>Distance of the inner face from the shell's end, outward, at a distance from the axis; zero beyond its rim.</summary>
    public double DepthAt(double radius) => radius >= Inner.End.U ? 0
        : -(Inner.FirstHit(new(radius, 0, Inner.Start.V), Vector3.UnitZ)?.At.Z ?? double.NaN);

    /// <summary>
    /// Distance from the axis, on the middle of the wall, of what lies square across it under a place of the outer face so far from the
    /// axis, mm; not a number beyond its rim.
    /// </summary>
    public double OnMiddle(double radius) => Outer.FirstHit(new(radius, 0, 0), Vector3.UnitZ) is { Grazes: false } foot
        ? OnMiddle(new Vector3(radius, 0, foot.At.Z)) : double.NaN;

    /// <summary>The same of a place in its own frame.</summary>
    public double OnMiddle(Vector3 at) => Middle.Nearest(new(double.Hypot(at.X, at.Y), at.Z)).At.U;
}
