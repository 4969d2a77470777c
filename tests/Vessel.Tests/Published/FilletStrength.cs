using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// Allowable loads on a fillet: 0.30 of the filler's strength on the throat for steel (AISC, AWS D1.1), least shear strength
/// over 1.95 for aluminium (Aluminum Design Manual); from memory, recomputed. Growth of 100 mm over 60 K.
/// </summary>
public sealed class FilletStrength
{
    private const double NewtonsPerPound = 4.448222;

    [Theory]
    [InlineData("mild steel", "1855.9")]
    [InlineData("stainless 304", "1988.4")]
    [InlineData("aluminium 6061", "521.2")]
    [InlineData("aluminium 5052", "770.4")]
    public void Pounds_on_an_inch_of_an_eighth_fillet(string metal, string pounds)
    {
        var throat = 25.4 / 8 / Math.Sqrt(2);

        // 1 ksi is 6.894757 MPa to seven digits.
        Near.Relative(
            double.Parse(pounds, System.Globalization.CultureInfo.InvariantCulture), Of(metal).WeldShear * throat * 25.4 / NewtonsPerPound, 3e-4);
    }

    /// <summary>3.2 mm with E70: 327.55 N/mm.</summary>
    [Fact]
    public void Newtons_on_a_millimetre() => Near.Relative(327.55, Of("mild steel").WeldShear * 3.2 / Math.Sqrt(2), 3e-4);

    [Theory]
    [InlineData("aluminium 6061", "0.142")]
    [InlineData("stainless 304", "0.104")]
    [InlineData("mild steel", "0.070")]
    public void Growth_of_a_hundred_millimetres_over_sixty_kelvins(string metal, string growth) => Near.Printed(growth, Of(metal).Growth * 6000);

    [Fact]
    public void Every_metal_has_its_strength_whatever_its_temper()
    {
        Assert.All(Materials.All, metal => Assert.Equal(metal.Name, Strengths.Of(metal).Material));
        Assert.Equal("aluminium 5052", Strengths.Of(Materials.Find("aluminium 5052-H32")!).Material);
        // As welded nothing is stronger than the annealed or heat-softened metal.
        Assert.All(Strengths.All, strength => Assert.True(strength.Yield < 250 && strength.WeldShear < strength.Yield));
    }

    /// <summary>Tables of ISO 898-1 print 36.6 mm2 for M8, 58.0 for M10, 157 for M16 (memory).</summary>
    [Theory]
    [InlineData(8, "36.6")]
    [InlineData(10, "58.0")]
    [InlineData(16, "157")]
    public void Stress_area_of_a_bolt(double diameter, string area) => Near.Printed(area, BoltStrength.Area(diameter));

    private static Strength Of(string metal) => Strengths.Of(Materials.Find(metal)!);
}
