using Vessel.Design;

namespace Vessel.Ports;

/// <summary>
/// Where a cylinder of radius r about a port's axis meets a cylinder of radius R about the vessel's axis.
/// The axis lies at the offset e from the vessel's axis and rises at the tilt t; it meets the shell's outside
/// (radius Ro) at height h. For phi counted round the axis from its upper side, y = e + r sin(phi) is the lateral
/// place and x = sqrt(R^2 - y^2) the forward one. With x0 = sqrt(Ro^2 - e^2):
/// z = h + (x - x0) tan(t) + r cos(phi) / cos(t), and along the axis from its own meeting with the outside
/// s = (x - x0) / cos(t) + r cos(phi) tan(t). Derived here; needs |e| + r no greater than R.
/// </summary>
internal sealed record BranchAxis(ShellSection Shell, PortPlace Place)
{
    /// <summary>Points round a port: the extremes of a smooth outline are then off by under 1e-5 of its radius.</summary>
    public const int Samples = 720;

    private double Forward => HalfChord(Shell.OuterRadius, Place.Offset);

    /// <summary>NaN where the circle of that radius is not reached.</summary>
    public static double HalfChord(double radius, double lateral) => Math.Sqrt((radius - lateral) * (radius + lateral));

    /// <summary>Angle round the vessel and height above the shell's lower edge.</summary>
    public (double Angle, double Z) OnCylinder(double radius, double around, double phi)
    {
        var y = Place.Offset + (around * Math.Sin(phi));
        var z = Place.Height + ((HalfChord(radius, y) - Forward) * Math.Tan(Place.Tilt))
            + (around * Math.Cos(phi) / Math.Cos(Place.Tilt));
        // Rounding can carry a touching line a hair beyond the circle.
        return (Place.Angle + Math.Asin(Math.Clamp(y / radius, -1, 1)), z);
    }

    /// <summary>The greatest distance, outward along the axis from the axis's own meeting with the outside, at which
    /// the shell is met; mm.</summary>
    public double GreatestReach(double around) => Phis().Max(phi =>
    {
        var y = Place.Offset + (around * Math.Sin(phi));
        return ((HalfChord(Shell.OuterRadius, y) - Forward) / Math.Cos(Place.Tilt))
            + (around * Math.Cos(phi) * Math.Tan(Place.Tilt));
    });

    /// <summary>
    /// How far a square-ended tube may reach in, along the axis from the shell's inside, before it meets the far wall.
    /// </summary>
    public double GreatestInsideLength(double around)
    {
        var near = HalfChord(Shell.InnerRadius, Place.Offset) / Math.Cos(Place.Tilt);
        return Phis().Min(phi =>
        {
            var y = Place.Offset + (around * Math.Sin(phi));
            var far = ((around * Math.Cos(phi) * Math.Sin(Place.Tilt)) - HalfChord(Shell.InnerRadius, y))
                / Math.Cos(Place.Tilt);
            return near - far;
        });
    }

    public static IEnumerable<double> Phis() =>
        Enumerable.Range(0, Samples).Select(i => 2 * Math.PI * i / Samples);
}
