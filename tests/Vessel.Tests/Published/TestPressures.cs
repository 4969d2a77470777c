using Vessel.Function;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// Thin shells and plates (Civil Engineering Handbook, 2nd ed., eq. 47.72 to 47.76), and stored energy in the form of ASME
/// PCC-2 501-II; figures recomputed.
/// </summary>
public sealed class TestPressures
{
    [Theory]
    [InlineData(0.1, 100, 2, "2.5", "1.25")]
    [InlineData(15, 4, 0.125, "240", "120")]
    [InlineData(0.103421, 101.6, 3.175, "1.654736", "0.827368")]
    public void Thin_cylinder(double pressure, double diameter, double wall, string hoop, string lengthwise)
    {
        Near.Printed(hoop, ThinWalls.Hoop(pressure, diameter, wall));
        Near.Printed(lengthwise, ThinWalls.Lengthwise(pressure, diameter, wall));
    }

    [Theory]
    [InlineData(0.1, 50, 3, 68900, 0.33, "173970.4", "0.05613384", "0.2249574", "20.83333", "13.85417", "34.68750")]
    [InlineData(0.1, 50, 2, 193000, 0.29, "140481.1", "0.06951556", "0.2850677", "46.87500", "30.23437", "77.10938")]
    [InlineData(5, 2, 0.125, 10e6, 0.33, "1826.511", "0.0006843648", "0.002742605", "960.0", "638.4", "1598.4")]
    [InlineData(1, 3, 0.0625, 29e6, 0.30, "648.3588", "0.001952044", "0.007958334", "1728.0", "1123.2", "2851.2")]
    public void Flat_disc(
        double pressure, double radius, double wall, double elasticity, double poisson, string stiffness, string clamped, string supported,
        string atRim, string middle, string supportedMiddle)
    {
        var d = ThinWalls.Stiffness(elasticity, poisson, wall);

        Near.Printed(stiffness, d);
        Near.Printed(clamped, ThinWalls.ClampedDeflection(pressure, radius, d));
        Near.Printed(supported, ThinWalls.SupportedDeflection(pressure, radius, d, poisson));
        Near.Printed(atRim, ThinWalls.ClampedStress(pressure, radius, wall));
        Near.Printed(middle, ThinWalls.ClampedMiddleStress(pressure, radius, wall, poisson));
        Near.Printed(supportedMiddle, ThinWalls.SupportedStress(pressure, radius, wall, poisson));
    }

    /// <summary>A crown and knuckle of one radius are a sphere; a cone without an angle is a cylinder.</summary>
    [Fact]
    public void Dishes_and_cones_pass_into_spheres_and_cylinders()
    {
        Near.Relative(ThinWalls.Lengthwise(0.1, 100, 2), ThinWalls.Torisphere(0.1, 50, 50, 2), 1e-15);
        Near.Relative(ThinWalls.Hoop(0.1, 100, 2), ThinWalls.Cone(0.1, 100, 2, 0), 1e-15);
        Assert.True(ThinWalls.Torisphere(0.1, 100, 10, 2) > ThinWalls.Torisphere(0.1, 100, 20, 2));
    }

    /// <summary>A disc on a free rim bends 4.076923 times as far as a clamped one at 0.3.</summary>
    [Fact]
    public void A_free_rim_bends_four_times_as_far() =>
        Near.Printed("4.076923", ThinWalls.SupportedDeflection(1, 1, 1, 0.3) / ThinWalls.ClampedDeflection(1, 1, 1));

    [Theory]
    [InlineData(34_474, 0.001, "27.24966", "39.76774", "0.0002701")]
    [InlineData(103_421, 0.001, "93.19672", "144.0259", "0.002431")]
    [InlineData(103_421, 0.003, "279.5902", "432.0777", "0.007293")]
    [InlineData(689_476, 0.001, "877.8704", "1624.869", "0.10804")]
    [InlineData(6_894_757, 0.01, "122743.3", "296268.1", "108.04")]
    public void Stored_energy(double gauge, double volume, string air, string isothermal, string water)
    {
        // The printed joules come from pressures with one digit more than is printed: seven digits become five.
        Near.Relative(double.Parse(air, System.Globalization.CultureInfo.InvariantCulture), StoredEnergy.Air(gauge, volume), 2e-5);
        Near.Relative(double.Parse(isothermal, System.Globalization.CultureInfo.InvariantCulture),
            StoredEnergy.AirIsothermal(gauge, volume), 2e-5);
        Near.Printed(water, StoredEnergy.Water(gauge, volume));
    }

    /// <summary>The long tube's formula in full: steel 205 GPa, 0.29, t/D 1/100 collapses at 0.4477 MPa; short ones later.</summary>
    [Fact]
    public void A_long_tube_folds_by_the_classical_formula_and_a_shorter_one_later()
    {
        Near.Relative(2 * 205_000 / (1 - (0.29 * 0.29)) * 1e-6, ThinWalls.CylinderCollapse(100, 1, 1e5, 205_000, 0.29), 1e-12);
        Assert.True(ThinWalls.CylinderCollapse(100, 1, 100, 205_000, 0.29) > 2 * ThinWalls.CylinderCollapse(100, 1, 1e5, 205_000, 0.29));
        Assert.True(ThinWalls.CylinderCollapse(100, 1, 100, 205_000, 0.29) > ThinWalls.CylinderCollapse(100, 1, 200, 205_000, 0.29));
    }
}
