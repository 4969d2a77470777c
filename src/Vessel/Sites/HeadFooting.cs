using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Sites;

/// <summary>How a port stands on a head that is a wall of revolution, told in the head's own frame.</summary>
/// <param name="Axis">Origin where the axis meets the outer face (or its level at a cone's tip), Z out along it, X away from the vessel's
/// axis.</param>
/// <param name="Outside">Footprint on the outer face.</param>
/// <param name="Inside">Footprint on the inner face.</param>
internal sealed record HeadFooting(Frame3 Axis, Footprint Outside, Footprint Inside)
{
    /// <summary>Null where the axis misses the head, or a size is at fault.</summary>
    public static HeadFooting? Of(HeadShape shape, PortDesign port)
    {
        var (place, frame) = (port.Place, shape.Frame);
        if (!double.IsFinite(place.Radius + place.Angle))
            return null;
        var (sin, cos) = Math.SinCos(place.Angle);
        var away = frame.ToLocal(frame.Origin + new Vector3(cos, sin, 0));
        if (shape.Outer.FirstHit(place.Radius * away, Vector3.UnitZ) is not { Grazes: false } foot)
            return null;
        var z = place.SquareToSurface && place.Radius > 0 ? foot.Normal : -Vector3.UnitZ;
        // Square to the axis in the plane of both axes.
        var x = z.Cross(away.Cross(z)).Unit();
        var axis = new Frame3(foot.At, x, z.Cross(x), z);
        return OnSphere(shape, port, axis)
            ?? new(axis, new RevolvedFootprint(HeadShape.Pointed(shape.Outer), axis),
                new RevolvedFootprint(HeadShape.Pointed(shape.Inner), axis));
    }

    /// <summary>Footing in closed form, where a port stays on a half sphere and off its flange.</summary>
    private static HeadFooting? OnSphere(HeadShape shape, PortDesign port, Frame3 axis)
    {
        if (shape.InnerSphere is not { } inner)
            return null;
        var outer = inner + shape.Wall;
        var (aside, wide) = (port.Place.Radius, Math.Max(port.OuterRadius, port.HoleRadius));
        var isUpright = axis.Z.Z == -1;
        if (!isUpright && !(Math.Asin(aside / outer) + Math.Asin(wide / inner) < Math.PI / 2))
            return null;
        SphereFootprint On(double radius) => new(radius, outer, isUpright ? aside : 0);
        return new(axis, On(outer), On(inner));
    }
}
