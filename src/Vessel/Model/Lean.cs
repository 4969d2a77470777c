using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>How the vessel stands.</summary>
/// <param name="Angle">Of its axis from the plumb line, radians, at least zero and below a quarter turn.</param>
/// <param name="Toward">Where its top tips to, round the vessel, radians; oil gathers on that side.</param>
public readonly record struct Lean(double Angle, double Toward)
{
    public static Lean Upright => default;

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
    /// <param name="share">Of gravity.</param>
    /// <param name="toward">Where inertia drives the oil: against the acceleration, radians.</param>
    public static Lean OfSideways(double share, double toward) => new(Math.Atan(share), toward);
}
