using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Sites;

namespace Vessel.Members.Plates;

/// <summary>The edge of a plate that is cut square through its thickness to stand on the shell.</summary>
/// <remarks>
/// At u along the edge the plate's metal covers a strip of the shell of half width t/2 |sin roll|, sideways round
/// offset + u cos roll. The cut lies where that strip stands out the furthest: R where it holds the shell's ridge, else
/// sqrt(R^2 - s^2) at its side s nearer to the axis. So a level plate touches all through, an upright one along one line.
/// </remarks>
/// <param name="ShellRadius">Radius of the shell's outside, mm.</param>
public sealed record PlateCope(PlateDesign Plate, double ShellRadius)
{
    /// <summary>Half of what the plate's thickness takes up sideways, mm.</summary>
    public double HalfThickness => Plate.Thickness / 2 * Math.Abs(Math.Sin(Plate.Roll));

    /// <summary>The furthest that the plate reaches aside on the shell, mm.</summary>
    public double Furthest => Math.Abs(Plate.Offset) + (Plate.Width / 2 * Math.Cos(Plate.Roll)) + HalfThickness;

    /// <summary>Half the height that it takes up, mm; of either edge.</summary>
    public double HalfHeight => (Math.Max(Plate.Width, Plate.FreeWidth) / 2 * Math.Abs(Math.Sin(Plate.Roll)))
        + (Plate.Thickness / 2 * Math.Cos(Plate.Roll));

    /// <summary>Distance from the vessel's axis to the free edge, mm.</summary>
    public double FreeLevel => Level(0) + Plate.Depth;

    /// <summary>Level of the highest place of the cut, from the vessel's axis, mm.</summary>
    public double Highest => Level(Math.Cos(Plate.Roll) is var cos && cos > 1e-12
        ? Math.Clamp(-Plate.Offset / cos, -Plate.Width / 2, Plate.Width / 2)
        : 0);

    /// <summary>Sideways from the vessel's axis, in the middle of the thickness, at u along the edge from its middle, mm.</summary>
    public double Aside(double u) => Plate.Offset + (u * Math.Cos(Plate.Roll));

    /// <summary>Distance from the vessel's axis to the cut, along the line outward, mm.</summary>
    public double Level(double u) => Circles.HalfChord(ShellRadius, Nearest(u));

    /// <summary>d level / du.</summary>
    public double Slope(double u) =>
        Nearest(u) is var near && near == 0 ? 0 : -near / Level(u) * Math.Sign(Aside(u)) * Math.Cos(Plate.Roll);

    /// <summary>Where the cut's form changes along the edge, inside it; ascending.</summary>
    public IEnumerable<double> Breaks()
    {
        var cos = Math.Cos(Plate.Roll);
        if (HalfThickness == 0 || cos < 1e-12)
            return [];
        var half = Plate.Width / 2;
        return new[] { (-HalfThickness - Plate.Offset) / cos, (HalfThickness - Plate.Offset) / cos }
            .Where(u => Math.Abs(u) < half * (1 - 1e-9));
    }

    /// <summary>The least distance from the axis, sideways, that the metal at u has, mm.</summary>
    private double Nearest(double u) => Math.Max(0, Math.Abs(Aside(u)) - HalfThickness);

    /// <summary>Where a place of the plate on the shell's outside lies: angle round the vessel and height.</summary>
    /// <param name="u">Along the edge.</param>
    /// <param name="n">Through the thickness, from its middle.</param>
    public (double Angle, double Height) OnShell(double u, double n)
    {
        var (sin, cos) = Math.SinCos(Plate.Roll);
        return (
            Plate.Angle + Math.Asin(Math.Clamp((Plate.Offset + (u * cos) - (n * sin)) / ShellRadius, -1, 1)),
            Plate.Height + (u * sin) + (n * cos));
    }
}
