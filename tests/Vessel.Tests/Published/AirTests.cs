using Vessel.Function;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>Air by the US Standard Atmosphere 1976 (constants from memory), to the digits that its formulas print.</summary>
public sealed class AirTests
{
    [Theory]
    [InlineData(0, "1.71608", "1.29227", "13.2796")]
    [InlineData(15, "1.78938", "1.22500", "14.6072")]
    [InlineData(20, "1.81341", "1.20411", "15.0602")]
    [InlineData(60, "1.99882", "1.05953", "18.8651")]
    [InlineData(80, "2.08737", "0.999529", "20.8836")]
    [InlineData(120, "2.25711", "0.897834", "25.1395")]
    public void Viscosity_and_density(double celsius, string viscosity, string density, string kinematic)
    {
        Near.Printed(viscosity, Air.Viscosity(celsius) * 1e5);
        Near.Printed(density, Air.Density(celsius, 101_325));
        Near.Printed(kinematic, Air.Viscosity(celsius) / Air.Density(celsius, 101_325) * 1e6);
    }

    /// <summary>Another set of constants (mu0 1.827e-5 at 291.15 K, S 120 K) lies 1.3 to 1.6 % higher.</summary>
    [Theory]
    [InlineData(20, 1.83692e-5)]
    [InlineData(80, 2.12082e-5)]
    public void Other_published_constants_differ_by_little(double celsius, double other) =>
        Assert.InRange(other / Air.Viscosity(celsius), 1.012, 1.017);
}
