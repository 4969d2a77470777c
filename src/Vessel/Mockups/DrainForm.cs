using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>A drain hole as it is printed: upright through the bottom into the room inside.</summary>
internal sealed record DrainForm(DrainHoleDesign Hole, Imprint Outside, Imprint Inside)
{
    public double Angle => Hole.Angle;

    public static DrainForm Of(DrainHoleDesign hole, Profile outside, Profile inside, double scale)
    {
        var (sin, cos) = Math.SinCos(hole.Angle);
        var (away, down) = (new Vector3(cos, sin, 0), -Vector3.UnitZ);
        var axis = new Frame3(hole.Radius * away, away, down.Cross(away), down);
        var circle = LoopPath.Of(Loop2.Circle(default, hole.Diameter / 2 / scale));
        return new(hole, new(outside, axis, circle), new(inside, axis, circle));
    }
}
