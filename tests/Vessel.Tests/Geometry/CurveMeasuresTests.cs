using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

public sealed class CurveMeasuresTests
{
    private const double Relative = 1e-10;

    [Fact]
    public void An_ellipse_has_area_pi_a_b()
    {
        var expected = Math.PI * 50 * 30;

        Assert.Equal(expected, CurveMeasures.Area(Curves.Ellipse(50, 30, 0.3)), expected * Relative);
    }

    [Fact]
    public void An_ellipse_has_the_perimeter_of_its_mean_series()
    {
        // pi (a + b) sum of (binomial(1/2, n) h^n)^2 with h = (a - b) / (a + b), h^2 = 1/16: thirty terms are exact.
        double a = 50, b = 30;
        var h = (a - b) / (a + b);
        double term = 1, sum = 1;
        for (var n = 0; n < 30; n++)
        {
            term *= h * (0.5 - n) / (n + 1);
            sum += term * term;
        }

        var expected = Math.PI * (a + b) * sum;
        Assert.Equal(expected, CurveMeasures.Length(Curves.Ellipse(a, b)), expected * Relative);
    }

    [Fact]
    public void A_turned_ellipse_has_bounds_of_its_support_function()
    {
        // Half-width in direction u: sqrt(a^2 cos^2 + b^2 sin^2).
        double a = 50, b = 30, turned = 0.7;
        var half = new Point2(
            Math.Sqrt(Math.Pow(a * Math.Cos(turned), 2) + Math.Pow(b * Math.Sin(turned), 2)),
            Math.Sqrt(Math.Pow(a * Math.Sin(turned), 2) + Math.Pow(b * Math.Cos(turned), 2)));

        var bounds = CurveMeasures.Bounds(Curves.Ellipse(a, b, turned));

        Assert.Equal(half.U, bounds.Max.U, half.U * Relative);
        Assert.Equal(half.V, bounds.Max.V, half.V * Relative);
        Assert.Equal(-half.U, bounds.Min.U, half.U * Relative);
        Assert.Equal(-half.V, bounds.Min.V, half.V * Relative);
    }

    [Fact]
    public void A_saddle_reaches_as_far_as_its_arc_sines()
    {
        var bounds = CurveMeasures.Bounds(Curves.Saddle(62, 30, 18));

        Assert.Equal(62 * Math.Asin(48.0 / 62), bounds.Max.U, 62 * Relative);
        Assert.Equal(62 * Math.Asin(12.0 / 62), bounds.Min.U, 62 * Relative);
        Assert.Equal(36, bounds.Height, 36 * Relative);
    }

    [Fact]
    public void A_saddle_has_the_area_of_its_strips()
    {
        // Width at the height z: R (asin((e + w)/R) - asin((e - w)/R)) with w = sqrt(r^2 - z^2); integrated over
        // z = r sin s by the midpoint rule, which for a smooth periodic integrand converges faster than any power.
        double shell = 62, e = 30, r = 18;
        const int n = 400;
        var expected = Enumerable.Range(0, n).Sum(i =>
        {
            var s = -(Math.PI / 2) + ((i + 0.5) * Math.PI / n);
            var w = r * Math.Cos(s);
            return shell * (Math.Asin((e + w) / shell) - Math.Asin((e - w) / shell)) * w * Math.PI / n;
        });

        Assert.Equal(expected, Math.Abs(CurveMeasures.Area(Curves.Saddle(shell, e, r))), expected * Relative);
    }

    [Fact]
    public void A_wave_of_whole_periods_leaves_the_area_of_the_strip()
    {
        Assert.Equal(130 * 40, CurveMeasures.Area(Curves.WavyStrip(130, 40, 9)), 130 * 40 * Relative);
    }

    [Fact]
    public void Turning_a_loop_round_changes_the_sign_of_the_area_and_nothing_else()
    {
        var loop = Curves.Saddle(62, 30, 18);
        var reversed = Curves.Reversed(loop);

        Assert.Equal(CurveMeasures.Area(loop), -CurveMeasures.Area(reversed), 1e-8);
        Assert.Equal(CurveMeasures.Length(loop), CurveMeasures.Length(reversed), 1e-8);
    }

    [Fact]
    public void A_circle_has_closed_forms()
    {
        var circle = Loop2.Circle(new(2000, 300), 7, clockwise: true);

        Assert.Equal(-Math.PI * 49, CurveMeasures.Area(circle), 1e-9);
        Assert.Equal(Math.PI * 14, CurveMeasures.Length(circle), 1e-12);
        Assert.Equal(new Box2(new(1993, 293), new(2007, 307)), CurveMeasures.Bounds(circle));
    }

    [Fact]
    public void An_arc_that_passes_no_compass_point_is_bounded_by_its_ends()
    {
        var arc = new Arc2(new(0, 0), 10, 0.2, 1.1);

        var bounds = CurveMeasures.Bounds(arc);

        Assert.Equal(new Box2(new(arc.End.U, arc.Start.V), new(arc.Start.U, arc.End.V)), bounds);
    }

    [Fact]
    public void Holes_are_taken_from_the_plate()
    {
        var plate = new Region2(Loop2.Polygon(new(0, 0), new(30, 0), new(30, 20), new(0, 20)),
            [Loop2.Circle(new(10, 10), 4, clockwise: true)]);

        Assert.Equal(600 - (16 * Math.PI), CurveMeasures.Area(plate), 1e-10);
    }
}
