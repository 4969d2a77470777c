using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// Tables of the curve in which two cylinders meet: derived by analytic geometry, recomputed to 20 digits. Equal
/// cylinders meet in ellipses (classical, after Steinmetz).
/// </summary>
public sealed class CylinderIntersections
{
    // Gauss-Kronrod stops at 1e-12 of each piece; the rest is rounding near the ends of the range of k.
    private const double ClosedForm = 1e-9;

    private static double Rad(double degrees) => degrees * Math.PI / 180;

    private static double WeldLength((VesselDesign Vessel, PortSite Site) tee) =>
        PortSeam.Of(tee.Site, tee.Vessel).Length;

    /// <summary>Of the branch's outside on the shell's outside, laid flat. The wall is nothing, so bore and outside are one.</summary>
    private static double HoleArea(double shell, double branch, double offset, double beta)
    {
        var (vessel, site) = Designs.Tee(shell, branch, 0, offset, (Math.PI / 2) - beta, shell / 1e6, StockForm.Tube);
        var opening = ShellOpening.Of(site);
        var outline = opening.OnFlat(new WrappedDevelopment(shell, Math.PI, 0), shell).Edges.Single();
        return Quadrature.Periodic(
            t => (outline.At(t) - outline.Start).Cross(outline.Slope(t)) / -2, outline.Domain, outline.Breaks);
    }

    /// <summary>The same outline as it is cut.</summary>
    private static Loop2 CutHole(double shell, double branch, double offset, double beta)
    {
        var (vessel, site) = Designs.Tee(shell, branch, 0, offset, (Math.PI / 2) - beta, shell / 1e6, StockForm.Tube);
        return ShellOpening.Of(site).OnFlat(new WrappedDevelopment(shell, Math.PI, 0), shell);
    }

    [Theory]
    [InlineData(1e-3)]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(0.99)]
    [InlineData(0.999999)]
    public void Right_and_centred_length_is_an_elliptic_integral(double k)
    {
        var tau = Math.Asin(k) / 2;

        var length = WeldLength(Designs.Tee(50, 50 * k));

        Near.Relative(4 * 50 * k * Elliptic.E(Math.Sin(tau) * Math.Sin(tau)) / Math.Cos(tau), length, ClosedForm);
    }

    [Theory]
    [InlineData(90)]
    [InlineData(60)]
    [InlineData(45)]
    [InlineData(30)]
    [InlineData(120)]
    public void Equal_diameters_meet_in_two_half_ellipses(double beta)
    {
        var half = Rad(beta) / 2;
        var (sin, cos) = Math.SinCos(half);

        var length = WeldLength(Designs.Tee(50, 50, tilt: (Math.PI / 2) - Rad(beta)));

        Near.Relative(
            (2 * 50 / sin * Elliptic.E(cos * cos)) + (2 * 50 / cos * Elliptic.E(sin * sin)), length, ClosedForm);
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.5)]
    [InlineData(0.95)]
    public void Right_and_centred_hole_area_is_an_elliptic_integral(double k)
    {
        var m = k * k;
        var area = HoleArea(50, 50 * k, 0, Math.PI / 2);

        // The closed form itself loses digits as k falls: E and (1 - m) K differ by m^2 only.
        Near.Relative(4 * 2500 * (Elliptic.E(m) - ((1 - m) * Elliptic.K(m))), area, ClosedForm);
    }

    public static TheoryData<int> Digits => [.. Enumerable.Range(1, 9)];

    [Theory]
    [MemberData(nameof(Digits))]
    public void Nearly_equal_diameters_keep_the_closed_forms(int digits)
    {
        var k = 1 - Math.Pow(10, -digits);
        var (tau, m) = (Math.Asin(k) / 2, k * k);
        var hole = CutHole(50, 50 * k, 0, Math.PI / 2);

        var length = WeldLength(Designs.Tee(50, 50 * k));

        Near.Relative(4 * 50 * k * Elliptic.E(Math.Sin(tau) * Math.Sin(tau)) / Math.Cos(tau), length, ClosedForm);
        Near.Relative(length, CurveMeasures.Length(hole), ClosedForm);
        // 1 - m without the rounding of m.
        Near.Relative(4 * 2500 * (Elliptic.E(m) - ((1 - k) * (1 + k) * Elliptic.K(m))), -CurveMeasures.Area(hole), ClosedForm);
    }

    [Theory]
    [InlineData(90)]
    [InlineData(60)]
    [InlineData(30)]
    public void The_hole_of_an_equal_branch_has_the_area_of_four_squares_of_the_radius_over_the_sine(double beta)
    {
        var hole = CutHole(50, 50, 0, Rad(beta));

        Near.Relative(4 * 2500 / Math.Sin(Rad(beta)), -CurveMeasures.Area(hole), ClosedForm);
        Near.Relative(WeldLength(Designs.Tee(50, 50, tilt: (Math.PI / 2) - Rad(beta))), CurveMeasures.Length(hole), ClosedForm);
    }

    [Theory]
    [InlineData(29, 90, 1e-3)]
    [InlineData(-25, 60, 1e-6)]
    [InlineData(10, 120, 1e-9)]
    public void An_offset_branch_up_to_the_tangent_keeps_the_sums_of_its_formula(double offset, double beta, double off)
    {
        var r = (50 * (1 - off)) - Math.Abs(offset);
        // Of a periodic function the plain sum converges faster than any power, once its steps are finer than its peaks:
        // these are as wide as the square root of what is missing to the tangent.
        const int steps = 1 << 20;
        var (sum, sin, cos) = (0.0, Math.Sin(Rad(beta)), Math.Cos(Rad(beta)));
        for (var i = 0; i < steps; i++)
        {
            var (s, c) = Math.SinCos(Turns.Full * (i + 0.5) / steps);
            var y = offset + (r * s);
            var x = Math.Sqrt((50 - y) * (50 + y));
            var (across, along) = (50 * r * c / x, ((cos * -y * r * c / x) + (r * s)) / sin);
            sum += Math.Sqrt((across * across) + (along * along)) * Turns.Full / steps;
        }

        Near.Relative(sum, WeldLength(Designs.Tee(50, r, 0, offset, (Math.PI / 2) - Rad(beta))), ClosedForm);
        Near.Relative(sum, CurveMeasures.Length(CutHole(50, r, offset, Rad(beta))), ClosedForm);
    }

    [Theory]
    [InlineData(0, 60)]
    [InlineData(20, 45)]
    [InlineData(-10, 30)]
    [InlineData(29, 120)]
    public void A_slanted_hole_is_larger_by_one_over_the_sine(double offset, double beta) =>
        Near.Relative(HoleArea(50, 20, offset, Math.PI / 2) / Math.Sin(Rad(beta)), HoleArea(50, 20, offset, Rad(beta)), ClosedForm);

    [Theory]
    [InlineData(0.10, "1.0006278", "6.2871302", "1.0012547", "1.0016742", "0.0501256")]
    [InlineData(0.20, "1.0025464", "6.2991850", "1.0050766", "1.0067896", "0.1010205")]
    [InlineData(0.25, "1.0040212", "6.3084512", "1.0080018", "1.0107210", "0.1270167")]
    [InlineData(0.40, "1.0108028", "6.3510614", "1.0213110", "1.0287921", "0.2087122")]
    [InlineData(0.50, "1.0177145", "6.3944889", "1.0346316", "1.0471976", "0.2679492")]
    [InlineData(0.60, "1.0272243", "6.4542409", "1.0525481", "1.0725018", "0.3333333")]
    [InlineData(0.75, "1.0491466", "6.5919825", "1.0919621", "1.1307494", "0.4514162")]
    [InlineData(0.90, "1.0919609", "6.8609926", "1.1606800", "1.2441883", "0.6267890")]
    [InlineData(0.99, "1.1676067", "7.3362894", "1.2493096", "1.4436938", "0.8676087")]
    [InlineData(1.00, "1.2160067", "7.6403956", "1.2732395", "1.5707963", "1.0000000")]
    public void Table_by_ratio(double k, string girth, string length, string area, string width, string depth)
    {
        var r = 50 * k;
        var host = (CylinderFootprint)Designs.Tee(50, r).Site.Outside;

        Near.Printed(length, WeldLength(Designs.Tee(50, r)) / r);
        Near.Printed(girth, WeldLength(Designs.Tee(50, r)) / (2 * Math.PI * r));
        Near.Printed(area, HoleArea(50, r, 0, Math.PI / 2) / (Math.PI * r * r));
        Near.Printed(width, 50 * host.Place(r, Math.PI / 2).U / r);
        Near.Printed(depth, (host.Reach(r, 0) - host.Reach(r, Math.PI / 2)) / r);
    }

    [Theory]
    [InlineData(2, 0.5, 0, 90, "3.15422559", "0.791682766")]
    [InlineData(1.5, 0.75, 0, 90, "4.79586669", "1.82834499")]
    [InlineData(50, 20, 0, 90, "127.021229", "1283.41725")]
    [InlineData(50, 20, 10, 90, "128.685390", "1315.34843")]
    [InlineData(50, 20, 20, 90, "135.009639", "1432.61125")]
    [InlineData(50, 20, 29, 90, "155.230973", "1746.59504")]
    [InlineData(50, 20, 0, 60, "137.009075", "1481.96259")]
    [InlineData(50, 20, 0, 45, "154.371529", "1815.02608")]
    [InlineData(50, 20, 0, 30, "195.460845", "2566.83450")]
    [InlineData(50, 20, 10, 60, "138.970157", "1518.83354")]
    [InlineData(50, 45, 0, 90, "308.744666", "7383.92716")]
    [InlineData(50.8, 19.05, 0, 90, "120.819948", "1161.27411")]
    [InlineData(50.8, 19.05, 25.4, 90, "134.273766", "1395.93475")]
    [InlineData(1, 1, 0, 60, "8.23318292", "4.6188022")]
    [InlineData(1, 1, 0, 45, "9.23431552", "5.6568542")]
    [InlineData(1, 1, 0, 30, "11.5150644", "8.0000000")]
    public void Worked_lengths_and_areas(double shell, double branch, double offset, double beta, string length, string area)
    {
        var tee = Designs.Tee(shell, branch, 0, offset, (Math.PI / 2) - Rad(beta), shell / 50);

        Near.Printed(length, WeldLength(tee));
        Near.Printed(area, HoleArea(shell, branch, offset, Rad(beta)));
    }

    [Theory]
    [InlineData(0, 0, 90, "50.000000", "0.000000", "-20.000000")]
    [InlineData(30, 0, 90, "48.989795", "10.067896", "-17.320508")]
    [InlineData(60, 0, 90, "46.904158", "17.687080", "-10.000000")]
    [InlineData(90, 0, 90, "45.825757", "20.575842", "0.000000")]
    [InlineData(180, 0, 90, "50.000000", "0.000000", "20.000000")]
    [InlineData(270, 0, 90, "45.825757", "-20.575842", "0.000000")]
    [InlineData(0, 10, 90, "48.989795", "10.067896", "-20.000000")]
    [InlineData(30, 10, 90, "45.825757", "20.575842", "-17.320508")]
    [InlineData(60, 10, 90, "41.875886", "28.903597", "-10.000000")]
    [InlineData(90, 10, 90, "40.000000", "32.175055", "0.000000")]
    [InlineData(270, 10, 90, "48.989795", "-10.067896", "0.000000")]
    [InlineData(0, 0, 60, "46.188022", "0.000000", "5.7735027")]
    [InlineData(30, 0, 60, "46.568542", "10.067896", "8.2842712")]
    [InlineData(60, 0, 60, "48.386753", "17.687080", "15.533123")]
    [InlineData(90, 0, 60, "52.915026", "20.575842", "26.457513")]
    [InlineData(180, 0, 60, "69.282032", "0.000000", "51.961524")]
    [InlineData(270, 0, 60, "52.915026", "-20.575842", "26.457513")]
    public void Profile_points(double phi, double offset, double beta, string along, string girth, string height)
    {
        // The table counts along the branch, and up the shell, from the foot of the common perpendicular of both axes.
        var tilt = (Math.PI / 2) - Rad(beta);
        var host = (CylinderFootprint)Designs.Tee(50, 20, 0, offset, tilt).Site.Outside;
        var foot = Math.Sqrt(2500 - (offset * offset)) / Math.Cos(tilt);
        var place = host.Place(20, Rad(phi));

        Near.Printed(along, foot + host.Reach(20, Rad(phi)));
        Near.Printed(girth, 50 * place.U);
        Near.Printed(height, place.V + (foot * Math.Sin(tilt)));
    }
}
