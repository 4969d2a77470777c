using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>How the vessel stands: the one thing that knows which way is up.</summary>
/// <param name="Angle">Angle of the vessel's axis from the plumb line, radians, at least zero and below a quarter turn.</param>
/// <param name="Toward">Angle round the vessel to which its top tips, radians; liquid gathers on that side.</param>
public readonly record struct Position(double Angle, double Toward)
{
    public static Position Upright => default;

    public bool IsUpright => Angle == 0;

    /// <summary>Unit, against gravity, in the vessel's frame.</summary>
    public Vector3 Up
    {
        get
        {
            var (sin, cos) = Math.SinCos(Angle);
            return new(-sin * Math.Cos(Toward), -sin * Math.Sin(Toward), cos);
        }
    }

    /// <summary>
    /// What a steady sideways acceleration does to the oil: it lies square to gravity and inertia together, as in a vessel
    /// that leans by the arc tangent of their ratio.
    /// </summary>
    /// <param name="share">Acceleration as a share of gravity's.</param>
    /// <param name="toward">Angle to which inertia drives the oil, against the acceleration, radians.</param>
    public static Position OfSideways(double share, double toward) => new(Math.Atan(share), toward);
}
