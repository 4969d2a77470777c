using System.Globalization;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// Gores of a sphere: widths and heights as Math Central (University of Regina, 18 gores) gives them; polygon radii and
/// lengths of the sides, E(-(pi / N)^2), as worked out with the arithmetic-geometric mean apart from this code; blanks of
/// shallow caps by equal area (Hodgson, "Machines and Tools Employed in the Working of Sheet Metals").
/// </summary>
public sealed class Gores
{
    [Theory]
    [InlineData(6, "0.5235988", "0.5000000", "0.5773503", "13.40", "0.9069", "1.0472", "6.537")]
    [InlineData(8, "0.3926991", "0.3826834", "0.4142136", "7.612", "0.9481", "1.0262", "3.750")]
    [InlineData(10, "0.3141593", "0.3090170", "0.3249197", "4.894", "0.9669", "1.0166", "2.424")]
    [InlineData(12, "0.2617994", "0.2588190", "0.2679492", "3.407", "0.9770", "1.0115", "1.692")]
    [InlineData(16, "0.1963495", "0.1950903", "0.1989124", "1.921", "0.9871", "1.0065", "0.957")]
    [InlineData(24, "0.1308997", "0.1305262", "0.1316525", "0.856", "0.9943", "1.0029", "0.427")]
    public void Half_widths_polygon_radii_and_stretch_of_a_sphere_of_radius_one(
        int count, string half, string inscribed, string circumscribed, string errorPercent, string middle, string corner,
        string stretchPercent)
    {
        var flat = Whole(1, count);

        var (apothem, vertex) = (1 - flat.FlatInside, 1 + flat.FlatOutside);

        AssertPrinted(half, flat.HalfWidth(0));
        AssertPrinted(middle, apothem);
        AssertPrinted(corner, vertex);
        AssertPrinted(inscribed, flat.HalfWidth(0) / vertex);
        AssertPrinted(circumscribed, flat.HalfWidth(0) / apothem);
        AssertPrinted(errorPercent, 100 * flat.RadialError);
        AssertPrinted(stretchPercent, 100 * flat.Stretch);
    }

    [Theory]
    [InlineData(0, "19.634954")]
    [InlineData(30, "17.004369")]
    [InlineData(60, "9.817477")]
    public void Half_width_at_a_latitude_of_eight_gores_of_radius_50(double degrees, string half) =>
        AssertPrinted(half, Whole(50, 8).HalfWidth(50 * degrees * Math.PI / 180));

    [Fact]
    public void Eighteen_gores_inscribed_are_0_3473_radii_wide_and_a_quarter_of_the_girth_high()
    {
        var flat = Whole(50, 18);

        // The chord is that of the same polygon drawn into the circle instead of round as long as it.
        var chord = 2 * flat.HalfWidth(0) / (1 + (flat.FlatOutside / 50));

        AssertPrinted("0.3473", chord / 50);
        AssertPrinted("78.539816", CurveMeasures.Bounds(flat.Outline()).Height);
    }

    [Theory]
    [InlineData(100, 10, "101.98039")]
    [InlineData(100, 25, "111.80340")]
    [InlineData(4, 0.75, "4.2720019")]
    public void Blank_of_a_spherical_cap_by_rim_and_height(double rim, double height, string diameter)
    {
        const double wall = 0.2;
        var meanRadius = ((rim * rim / 4) + (height * height)) / (2 * height);
        var vessel = GoreVessels.Of(GoreVessels.Gores(8, rim), radius: meanRadius + (wall / 2), wall: wall);

        var cap = Compiler.Assemble(vessel).Parts.Single(part => part.Id == "bottom-cap");

        AssertPrinted(diameter, 2 * cap.Flat!.Cut.Outer.AsCircle!.Radius);
    }

    private static GoreDevelopment Whole(double radius, int count) => new(Domes.Sphere(radius), Math.PI / count, PoleUp: false);

    /// <summary>Within half of the last printed digit, and a hair for a tie.</summary>
    private static void AssertPrinted(string printed, double actual)
    {
        var half = 0.500001 * Math.Pow(10, printed.IndexOf('.', StringComparison.Ordinal) + 1 - printed.Length);
        Assert.Equal(double.Parse(printed, CultureInfo.InvariantCulture), actual, half);
    }
}
