using System.Collections.Immutable;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>Local loads on thin cylinders, against a benchmark of shell theory and against closed forms.</summary>
public sealed class LocalLoads
{
    /// <summary>
    /// Two opposed unit loads on a cylinder with stiff round ends: R 300, L 600, t 3, E 3e6, nu 0.3 move their places by 1.8248e-5 (the
    /// pinched cylinder of Lindberg, Olson and Cowper 1969, a usual benchmark; from memory). The bell of width s that loads and ways are
    /// spread by takes s^2 ln(1 / k s) / 2 pi D of a point's own dent, the integral of (1 - exp(-q^2 s^2)) / 2 pi D q^3 from the wave k on
    /// from which the wall bends as a plate; k is known to a factor of two, hence the dent to s^2 ln(2) / 2 pi D, 0.4 % of the whole.
    /// </summary>
    [Fact]
    public void The_pinched_cylinder()
    {
        var shell = new ThinCylinder(300, 600, 3, 3e6, 0.3);
        ImmutableArray<Vector3> inward = [new(-1, 0, 0)];
        var series = CylinderSeries.Of(shell, [new(300, 0, 0, 0, inward), new(300, Math.PI, 0, 0, inward)], [(300, 0)], 0);

        // Both loads work on one and the same way.
        var bending = 3e6 * 27 / (12 * (1 - 0.09));
        var wave = Math.Pow(3 * (1 - 0.09), 0.25) / Math.Sqrt(300 * 3);
        double Dent(double factor) => series.Spread * series.Spread * factor / (Turns.Full * bending);
        Near.Absolute(1.8248e-5 - Dent(Math.Log(1 / (wave * series.Spread))), series.Give[0, 0] / 2, Dent(Math.Log(2)));
    }

    /// <summary>
    /// A ring of load on a long cylinder is a beam on an elastic foundation (Timoshenko, Hetenyi): b^4 = 3 (1 - nu^2) / R^2 t^2,
    /// w = q R^2 b / 2 E t and M = q / 4 b under the load, beside it times e^-y (cos y + sin y) and e^-y (cos y - sin y), y = b x. The bell
    /// takes the mean of these over its width, of the way twice: where loads are spread and where ways are seen.
    /// </summary>
    [Fact]
    public void A_ring_of_load_is_a_beam_on_an_elastic_foundation()
    {
        var (radius, wall, elasticity, poisson) = (100.0, 1.0, 200_000.0, 0.3);
        var b = Math.Pow(3 * (1 - (poisson * poisson)), 0.25) / Math.Sqrt(radius * wall);
        const double Line = 1;
        var force = Line * Turns.Full * radius;
        // Of one patch that reaches all round, all waves but the even one are nothing.
        var series = CylinderSeries.Of(
            new(radius, 400, wall, elasticity, poisson), [new(200, 0, 0, Math.PI, [new(force, 0, 0)])], [(200, 1)], 0.4);
        double Mean(double sine, double spread) => Enumerable.Range(-800, 1601).Sum(i =>
        {
            var (at, y) = (i / 100.0, b * Math.Abs(i / 100.0) * spread);
            return Math.Exp(-at * at / 2) * Math.Exp(-y) * (Math.Cos(y) + (sine * Math.Sin(y))) / (100 * Math.Sqrt(Turns.Full));
        });

        // The series ends where the bell is down to 3 %, and Fluegge's equations keep what is t / R of the beam's.
        Near.Relative(Line * radius * radius * b / (2 * elasticity * wall) * Mean(1, Math.Sqrt(2) * series.Spread),
            series.Give[0, 0] / force, 0.02);
        var (inner, outer) = (series.Stresses[0], series.Stresses[3]);
        Near.Relative(6 * Line / (4 * b) / (wall * wall) * Mean(-1, series.Spread), (outer - inner) / 2, 0.02);
    }

    /// <summary>Work is mutual: what case i's loads do on case j's way is what j's do on i's (Betti).</summary>
    [Fact]
    public void Loads_work_on_each_others_ways_alike()
    {
        ImmutableArray<Vector3> first = [new(1, 0, 0), new(0, 0, 0), new(0.3, 0.5, -0.2)];
        ImmutableArray<Vector3> second = [new(0, 0, 0), new(0, 1, 1), new(-0.4, 0.1, 0.7)];
        var give =
            CylinderSeries.Of(new(60, 150, 2, 193_000, 0.29), [new(50, 0.3, 2, 0.01, first), new(110, 1.4, 0, 0.05, second)], [], 2).Give;

        for (var i = 0; i < 3; i++)
        {
            Assert.True(give[i, i] > 0);
            for (var j = 0; j < i; j++)
                Near.Absolute(give[i, j], give[j, i], 1e-9 * Math.Sqrt(give[i, i] * give[j, j]));
        }
    }
}
