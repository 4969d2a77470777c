using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Cones;
using Vessel.Heads.Dishes;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Function;

/// <summary>
/// What whole vessels with each shape of head hold below a level that leans, against closed forms derived here: stretching a ball along its
/// axis makes an ellipsoid and keeps planes plane; a plane across a cone leaves a third of its ellipse times the apex' distance.
/// </summary>
public sealed class LeaningHeadsTests
{
    private const double R = 50;

    private static readonly ShellDesign _shell = Designs.Shell(2 * (R + 2), 2, 80, StockForm.Tube);

    /// <summary>
    /// In the ball the plane z cos t - x sin t = s becomes z' k cos t - x sin t = s with k = depth over radius: its distance from the
    /// middle is s / sqrt(k^2 cos^2 t + sin^2 t), and its normal leans by atan(tan t / k).
    /// </summary>
    [Theory]
    [InlineData(0, 10)]
    [InlineData(10, 5)]
    [InlineData(15, 7)]
    [InlineData(20, 5)]
    public void An_ellipsoid_and_a_half_sphere_hold_a_stretched_balls_cap(double degrees, double above)
    {
        Assert.All(
            new HeadDesign[] { new EllipsoidHead("bottom", Designs.Stainless, 2), Designs.Dome(_shell, "bottom") },
            head =>
            {
                var cavity = Cavity(head);
                var (depth, lean) = (-Lowest(cavity), degrees * Math.PI / 180);
                var k = depth / R;
                var (sin, cos) = Math.SinCos(lean);
                var level = (above - depth) * cos;
                var from = level / double.Hypot(k * cos, sin);
                // The highest point of the circle in which the plane cuts the ball stays below the rim.
                var tipped = Math.Atan2(sin, k * cos);
                Assert.True((from * Math.Cos(tipped)) + (Math.Sqrt((R * R) - (from * from)) * Math.Sin(tipped)) < 0,
                    "the plane passes the rim");

                Near.Relative(k * Math.PI / 3 * Math.Pow(R + from, 2) * ((2 * R) - from), Held(cavity, level, lean), 1e-9);
            });
    }

    /// <summary>
    /// Half angle 45 degrees: at the height z over the apex the circle has the radius z. The plane z cos t - x sin t = s meets the outline
    /// at z = s / (cos t +- sin t); at the middle of the ellipse the circle's chord is its minor axis. The tip below its port is no room.
    /// </summary>
    [Theory]
    [InlineData(0, 25)]
    [InlineData(10, 25)]
    [InlineData(15, 30)]
    [InlineData(20, 28)]
    public void A_cone_holds_a_third_of_its_ellipse_times_its_height(double degrees, double above)
    {
        const double bore = 8;
        var cavity = Cavity(
            new ConeHead("bottom", Designs.Stainless, 2, Math.PI / 4, 0, 0.5),
            Designs.OnHead("drain", VesselEnd.Bottom, 2 * (bore + 3), 3, 0));
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        var (apex, s) = (Lowest(cavity) - bore, above * cos);
        var (low, high) = (s / (cos + sin), s / (cos - sin));
        Assert.True(low > bore && high < R, "the plane passes the rim or the tip");
        var (x, z) = ((high - low) / 2, (high + low) / 2);
        var (major, minor) = (double.Hypot(high + low, high - low) / 2, Math.Sqrt((z * z) - (x * x)));

        Near.Relative(
            (Math.PI / 3 * major * minor * s) - (Math.PI / 3 * Math.Pow(bore, 3)),
            Held(cavity, (apex * cos) + s, degrees * Math.PI / 180),
            1e-9);
    }

    /// <summary>
    /// No closed form: columns of oil on the dish by the midpoint rule. On a cell of 0.05 mm that is exact but where a column ends, and
    /// there of second order; the knuckle's steep rim is the worst:
    /// its slope of at most 40 over half a cell moves an edge by less than a cell.
    /// </summary>
    [Theory]
    [InlineData(0, 12)]
    [InlineData(15, 14)]
    [InlineData(30, 40)]
    public void A_torisphere_holds_what_columns_of_oil_add_up_to(double degrees, double above)
    {
        const double crown = 100;
        const double knuckle = 12;
        const double cell = 0.05;
        var cavity = Cavity(new TorisphereHead("bottom", Designs.Stainless, 2, crown, knuckle, null));
        var tan = Math.Tan(degrees * Math.PI / 180);
        // Crown and knuckle touch where the line through their middles meets them: knuckle's middle at R - knuckle,
        // its height from the crown's.
        var aside = R - knuckle;
        var up = Math.Sqrt(((crown - knuckle) * (crown - knuckle)) - (aside * aside));
        var touch = aside * crown / (crown - knuckle);
        double Floor(double r) => crown - (r <= touch
            ? Math.Sqrt((crown * crown) - (r * r))
            : up + Math.Sqrt(Math.Max(0, (knuckle * knuckle) - ((r - aside) * (r - aside)))));
        var held = 0.0;
        for (var x = -R + (cell / 2); x < R; x += cell)
        {
            for (var y = cell / 2; (x * x) + (y * y) < R * R; y += cell)
                held += 2 * cell * cell * Math.Max(0, Math.Min(crown - up + 80, above + (x * tan)) - Floor(Math.Sqrt((x * x) + (y * y))));
        }

        Near.Relative(held, Held(cavity, (Lowest(cavity) + above) * Math.Cos(degrees * Math.PI / 180), degrees * Math.PI / 180), 1e-4);
    }

    private static Cavity Cavity(HeadDesign bottom, params ReadOnlySpan<PortDesign> ports) =>
        Compiler.Assemble(Designs.Vessel(_shell, ports) with { Bottom = bottom }).Cavity;

    private static double Lowest(Cavity cavity) => new Attitude(cavity, Position.Upright).Depth.Start;

    private static double Held(Cavity cavity, double level, double lean) => cavity.Rooms.Sum(room => room.VolumeBelow(level, new(lean, 0)));
}
