using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>Liquids against the standards that they are sold by.</summary>
public sealed class LiquidFigures
{
    /// <summary>SAE J300: mm2/s at 100 degC, the second number of a grade (from memory).</summary>
    [Theory]
    [InlineData("engine oil sae 30", 9.3, 12.5)]
    [InlineData("engine oil sae 40", 12.5, 16.3)]
    [InlineData("engine oil 5w-30", 9.3, 12.5)]
    [InlineData("engine oil 10w-30", 9.3, 12.5)]
    [InlineData("engine oil 5w-40", 12.5, 16.3)]
    [InlineData("engine oil 10w-40", 12.5, 16.3)]
    [InlineData("engine oil 15w-40", 12.5, 16.3)]
    [InlineData("engine oil 20w-50", 16.3, 21.9)]
    public void Engine_oils_lie_in_their_grade(string name, double low, double high) =>
        Assert.InRange(Find(name).Viscosity(100), low, high);

    /// <summary>ISO 3448: the number is mm2/s at 40 degC, within a tenth.</summary>
    [Theory]
    [InlineData("hydraulic oil 32", 32)]
    [InlineData("hydraulic oil 46", 46)]
    [InlineData("hydraulic oil 68", 68)]
    [InlineData("compressor oil 100", 100)]
    public void Hydraulic_oils_have_the_viscosity_of_their_number(string name, double grade) =>
        Near.Relative(grade, Find(name).Viscosity(40), 0.1);

    /// <summary>EN 590 (from memory): 820 to 845 kg/m3 at 15 degC, 2 to 4.5 mm2/s at 40.</summary>
    [Fact]
    public void Diesel_is_within_its_standard()
    {
        Assert.InRange(Find("diesel").Density(15), 820, 845);
        Assert.InRange(Find("diesel").Viscosity(40), 2, 4.5);
    }

    /// <summary>Dynamic viscosity of water (IAPWS, from memory): 1.3059 mPa s at 10 degC, 0.7972 at 30, 0.4658 at 60,
    /// 0.3141 at 90.</summary>
    [Theory]
    [InlineData(10, 1.3059)]
    [InlineData(30, 0.7972)]
    [InlineData(60, 0.4658)]
    [InlineData(90, 0.3141)]
    public void Water_by_its_dynamic_viscosity(double celsius, double millipascals) =>
        Near.Relative(millipascals, Find("water").Viscosity(celsius) * Find("water").Density(celsius) * 1e-3, 2e-3);

    /// <summary>Half and half by volume: ASHRAE Fundamentals prints 66.73 lb/ft3 at 90 degF and 65.05 at 170,
    /// neither a point of the table.</summary>
    [Theory]
    [InlineData(90, 66.73)]
    [InlineData(170, 65.05)]
    public void Coolant_between_its_points(double fahrenheit, double poundsPerCubicFoot) =>
        Near.Relative(poundsPerCubicFoot * 16.01846, Find("coolant").Density((fahrenheit - 32) / 1.8), 1e-3);

    /// <summary>EN 228 (from memory): 720 to 775 kg/m3 at 15 degC.</summary>
    [Fact]
    public void Petrol_is_within_its_standard() => Assert.InRange(Find("petrol").Density(15), 720, 775);

    /// <summary>Specific gravity of sodium chloride brine of 20 % by mass at 15 degC: 1.152 (Lange's Handbook of Chemistry, table 5.13).</summary>
    [Fact]
    public void Brine_has_the_density_of_the_handbook() =>
        Near.Relative(1.152 * Find("water").Density(15), Find("brine").Density(15), 2e-3);

    [Fact]
    public void All_thin_out_as_they_warm_and_pass_through_their_points()
    {
        foreach (var liquid in Liquids.All)
        {
            Assert.All(liquid.Points, point => Near.Relative(point.Viscosity, liquid.Viscosity(point.Celsius), 1e-9));
            Assert.All(liquid.Points, point => Near.Relative(point.Density, liquid.Density(point.Celsius), 1e-12));
            Assert.All(Enumerable.Range(-6, 30), i => Assert.True(
                liquid.Viscosity(10 * i) >= liquid.Viscosity((10 * i) + 10) && liquid.Viscosity((10 * i) + 10) > 0
                    && liquid.Density(10 * i) > 500));
        }
    }

    private static Liquid Find(string name) => Liquids.Find(name)!;
}
