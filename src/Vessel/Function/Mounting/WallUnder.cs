using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Function;

/// <summary>The shell's wall under the welds of one bracket: how it gives and how hard it is bent.</summary>
internal sealed class WallUnder
{
    public const string Source =
        "double Fourier series of local loads on a thin cylinder (P. P. Bijlaard, Trans. ASME 77, 1955) in the equations of W. Fluegge, "
        + "Stresses in Shells; "
        + "its ends stay round";

    /// <summary>The radius over the wall from which on a shell is thin.</summary>
    private const double Thin = 10;

    /// <summary>
    /// The bell's spread over the wall's own wave length, up to which it takes less than a fifth of the peak: 1 - 2 beta s sqrt(2 / pi).
    /// </summary>
    private const double Sharp = 0.125;

    /// <summary>Forces and moments of the welds' centre, and a couple all along the welds.</summary>
    private const int Cases = 7;

    private readonly CylinderSeries _series;

    private WallUnder(CylinderSeries series, ThinCylinder shell, double spread, double length)
    {
        _series = series;
        Turns = length / series.Give[Cases - 1, Cases - 1];
        Give = new(Cases - 1, Cases - 1);
        for (var i = 0; i < Give.Rows; i++)
        {
            for (var j = 0; j < Give.Columns; j++)
                Give[i, j] = series.Give[i, j];
        }

        var wave = Math.Pow(3 * (1 - (shell.Poisson * shell.Poisson)), 0.25) / Math.Sqrt(shell.Radius * shell.Wall);
        Holds = shell.Radius >= Thin * shell.Wall && (series.Spread <= spread || wave * series.Spread <= Sharp);
    }

    /// <summary>Whether the shell is thin, and the series as fine as the weld.</summary>
    public bool Holds { get; }

    /// <summary>mm and radians of the welds' centre for unit forces and moments there, in the vessel's directions.</summary>
    public SmallMatrix Give { get; }

    /// <summary>N mm on each mm of the welds, all along them, that turn the wall there by a radian.</summary>
    public double Turns { get; }

    public static WallUnder Of(double height, WeldGroup welds, ShellDesign design)
    {
        var course = design.CourseAt(height);
        var metal = Strengths.Of(design.Material);
        var shell =
            new ThinCylinder(course.OuterAt(height) - (course.Wall / 2), course.Height, course.Wall, metal.Elasticity, metal.Poisson);
        // Each half of the weld's leg as a strip, spread by half the wall on either side on its way to the wall's middle.
        var spread = ((welds.Leg / 2) + course.Wall) / Math.Sqrt(12);
        var series = CylinderSeries.Of(
            shell, [.. welds.All.SelectMany(piece => Patches(welds, piece, course, shell))], [.. Places(welds, course)], spread);
        return new(series, shell, spread, welds.Length);
    }

    /// <summary>MPa at its faces, by von Mises, where it is worst along the welds, for the worst direction.</summary>
    /// <param name="bent">N mm on each mm of the welds about their own line, either way.</param>
    public double Stress(Wrench load, Vector3 bent) => Math.Max(Worst(load, bent), Worst(load, -bent));

    private double Worst(Wrench load, Vector3 bent)
    {
        var (stresses, worst) = (_series.Stresses, 0.0);
        for (var at = 0; at < stresses.Length; at += 3 * Cases)
        {
            Vector3 Sum(int from)
            {
                var sum = stresses[from + Cases - 1] * bent;
                for (var unit = 0; unit < Cases - 1; unit++)
                    sum += stresses[from + unit] * load[unit];
                return sum;
            }

            var (along, round, shear) = (Sum(at), Sum(at + Cases), Sum(at + (2 * Cases)));
            // s1^2 - s1 s2 + s2^2 + 3 t^2 as a sum of squares.
            worst = Math.Max(worst, SpectralNorm.Of(along - (0.5 * round), Math.Sqrt(0.75) * round, Math.Sqrt(3) * shear));
        }

        return worst;
    }

    /// <summary>
    /// A piece of weld as two strips side by side a leg apart, so that they can bear a couple, too; the load half on each.
    /// </summary>
    private static IEnumerable<CylinderPatch> Patches(WeldGroup welds, WeldPiece piece, ShellCourse course, ThinCylinder shell)
    {
        foreach (var side in new[] { -1, 1 })
        {
            var at = piece.At + (side * welds.Leg / 2 * piece.Across);
            var outward = new Vector3(at.X, at.Y, 0).Unit();
            var round = new Vector3(-outward.Y, outward.X, 0);
            // The couple turns about the way upward or towards increasing angle, alike in all welds.
            var axis = Math.Abs(piece.Along.Z) > Math.Abs(piece.Along.Dot(round)) ? Vector3.UnitZ : round;
            var arm = side * Math.Sign(axis.Cross(piece.Across).Dot(outward)) / welds.Leg;
            yield return new(
                Math.Clamp(at.Z - course.Start, 0, course.Height),
                Math.Atan2(at.Y, at.X),
                piece.Length / 2 * Math.Abs(piece.Along.Z),
                piece.Length / 2 * Math.Abs(piece.Along.Dot(round)) / shell.Radius,
                [
                    .. Enumerable.Range(0, Cases - 1).Select(unit =>
                    {
                        var force = piece.Length / 2 * welds.Traction(unit, piece);
                        return new Vector3(force.Dot(outward), force.Dot(round), force.Z);
                    }),
                    new Vector3(piece.Length * arm, 0, 0),
                ]);
        }
    }

    /// <summary>Under each weld at its ends, between, and in its middle; where a couple bends most, to either side.</summary>
    private static IEnumerable<(double Along, double Angle)> Places(WeldGroup welds, ShellCourse course) =>
        from piece in welds.All.Where((_, i) => i % WeldGroup.Pieces is 0 or 2 or WeldGroup.Pieces / 2 or WeldGroup.Pieces - 1)
        from side in new[] { -1, 1 }
        let at = piece.At + (side * welds.Leg / 2 * piece.Across)
        select (Math.Clamp(at.Z - course.Start, 0, course.Height), Math.Atan2(at.Y, at.X));
}
