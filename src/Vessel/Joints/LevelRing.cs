using Vessel.Geometry;

namespace Vessel.Joints;

/// <summary>A direction in a plane through the vessel's axis.</summary>
internal readonly record struct Way(double Radial, double Along)
{
    public static Way Outward => new(1, 0);

    public static Way Inward => new(-1, 0);

    /// <param name="sign">+1 up, -1 down.</param>
    public static Way Axial(int sign) => new(0, sign);

    public Way Back => new(-Radial, -Along);

    public static Way To(Point2 direction) => direction.Unit() is var unit ? new(unit.U, unit.V) : default;

    /// <summary>Through the air outside, from this way of a host to that of a part that goes on from it.</summary>
    /// <param name="up">+1 where the part lies above the root, -1 below.</param>
    public double AirTo(Way part, int up) =>
        Turns.From(up * (Math.Atan2(part.Along, part.Radial) - Math.Atan2(Along, Radial)), 0);

    public double AngleTo(Way other) => Math.Acos((Radial * other.Radial) + (Along * other.Along));
}

/// <summary>The path of a weld that runs level round the vessel's axis.</summary>
internal static class LevelRing
{
    /// <param name="host">The way the host's surface leaves the root.</param>
    /// <param name="part">The way the attached part's surface does.</param>
    /// <param name="through">Angle between the two through the air; unless given the lesser of the two that they make.</param>
    public static Func<double, Station> Along(double radius, double z, Way host, Way part, double gap, double? through = null)
    {
        var dihedral = through ?? host.AngleTo(part);
        return angle =>
        {
            var (sin, cos) = Math.SinCos(angle);
            Vector3 Turned(Way way) => new(way.Radial * cos, way.Radial * sin, way.Along);
            return new(
                new(radius * cos, radius * sin, z),
                new(-radius * sin, radius * cos, 0),
                Turned(host),
                Turned(part),
                dihedral,
                gap,
                gap);
        };
    }
}
