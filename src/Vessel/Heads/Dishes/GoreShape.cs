using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Heads.Dishes;

/// <summary>
/// How a dished head is divided into gores and a polar cap, in the head's own frame. Cuts are square to the wall, so both faces have
/// the same angles at them. Lengths in mm, angles in radians.
/// </summary>
/// <param name="Head">The whole of both faces.</param>
/// <param name="Middle">Middle of the wall, from pole to rim.</param>
/// <param name="CapReach">Length from the pole to the seam of the polar cap, along the middle of the wall.</param>
/// <param name="Flat">Flat of one gore, with what bending and dishing it means.</param>
public sealed record GoreShape(
    DishedHead Design, GoreDesign Gores, HeadShape Head, Profile Middle, double CapReach, GoreDevelopment Flat)
{
    /// <summary>Angle from a gore's centre line to its side, round the axis.</summary>
    public double HalfAngle => Flat.HalfAngle;

    /// <summary>Radius of the outer face at the rim, mm.</summary>
    public double OuterRadius => Head.Outer.End.U;

    /// <summary>Where the polar cap's seam lies on the outer face, as an arc length from its pole.</summary>
    public double CapReachOutside => OnFace(Head.Outer, CapReach);

    /// <summary>Zone of the wall that all gores make together.</summary>
    public WallZone Strips => new(
        Head.Outer.Part(new(CapReachOutside, Head.Outer.Length)),
        Head.Inner.Part(new(OnFace(Head.Inner, CapReach), Head.Inner.Length)));

    public WallZone Cap => new(
        Head.Outer.Part(new(0, CapReachOutside)), Head.Inner.Part(new(0, OnFace(Head.Inner, CapReach))));

    /// <summary>Null for a head that is not of gores.</summary>
    public static GoreShape? Of(VesselEnd end, VesselDesign vessel)
    {
        if (vessel.Head(end) is not DishedHead { Gores: { } gores } head || HeadShape.Of(end, vessel) is not { } shape)
            return null;
        var middle = shape.Middle;
        var reach = ReachOf(middle, gores.CapDiameter / 2);
        return new(
            head, gores, shape, middle, reach,
            new(middle.Part(new(reach, middle.Length)), Math.PI / gores.Count, end == VesselEnd.Top));
    }

    /// <summary>The place of a face that lies square across the wall from an arc length of its middle.</summary>
    public Point2 Across(Profile face, double along)
    {
        var half = ReferenceEquals(face, Head.Outer) ? Head.Wall / 2 : -Head.Wall / 2;
        return Middle.At(along) + (half * Middle.Normal(along));
    }

    /// <summary>Direction from the axis, in the vessel, of a seam; the first is number 0, the middle of the first gore 0.5.</summary>
    public double Direction(double seam) => Gores.SeamAngle + (2 * HalfAngle * seam);

    private double OnFace(Profile face, double along) => face.Nearest(Across(face, along)).Along;

    /// <summary>How far from the pole a dish is so far from its axis.</summary>
    private static double ReachOf(Profile middle, double radius) =>
        middle.FirstHit(new(radius, 0, middle.Start.V), Vector3.UnitZ)?.Station
            ?? throw new ArgumentException("a polar cap is narrower than its head");
}
