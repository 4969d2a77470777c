using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// A field of a turned surface that is raised out of it or sunk into it: walls square to the surface, its face parallel to it. A
/// body gets no handle by it.
/// </summary>
/// <param name="On">The straight piece of the profile that it lies on: a plane, cylinder or cone.</param>
/// <param name="Outline">Closed, in any chart.</param>
/// <param name="At">The place in space of a chart point, so far out of the surface.</param>
/// <param name="Rise">mm, above zero out of the body.</param>
/// <param name="Stations">Arc lengths of the whole profile that it takes up, with room on both sides.</param>
/// <param name="Angle">About which it lies, radians.</param>
public sealed record Relief(
    LinePiece On, LoopPath Outline, Func<Point2, double, Vector3> At, double Rise, Interval Stations, double Angle)
{
    /// <summary>Walls and face of the relief, and what it leaves out of the surface.</summary>
    public (ImmutableArray<Face> Faces, Opening Opening) Build()
    {
        var (foot, top) = (EdgeAt(0), EdgeAt(Rise));
        var zone = ProfileZone.Of(new Profile(On.Offset(Rise)));
        var face = new Skin(zone.On, [new(top, t => zone.ChartOf(top.At(t), Angle))], zone.Outward);
        return ([new SideFace(foot, top), face], new([foot], Stations, Angle));
    }

    /// <summary>A point within a straight side would lie a hair beside it on the grid of its face, with a needle between.</summary>
    private Edge3 EdgeAt(double depth) => new(t => At(Outline.At(t), depth), Outline.Domain, Outline.Breaks) { LeastPieces = 3 };
}
