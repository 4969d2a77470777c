using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>Least strengths of metals as welded, and growth of 100 mm over 60 K.</summary>
public sealed class MetalStrengthTests
{
    /// <summary>
    /// ASTM A240: 304 and 316 205 and 515 MPa, their L grades 170 and 485 (a secondary copy; the straight grades from memory).
    /// Annealed 5052 9.5 ksi, annealed 3003 5 ksi, welded 6061 15 ksi (Aluminum Design Manual, from memory). Half a unit of the last digit.
    /// </summary>
    [Theory]
    [InlineData("stainless 304", 205, 515)]
    [InlineData("stainless 316", 205, 515)]
    [InlineData("stainless 304L", 170, 485)]
    [InlineData("stainless 316L", 170, 485)]
    [InlineData("aluminium 5052", 65.5, 172.4)]
    [InlineData("aluminium 5052-H32", 65.5, 172.4)]
    [InlineData("aluminium 3003-H14", 34.5, 96.5)]
    [InlineData("aluminium 6061-T6", 103.4, 165.5)]
    public void Least_yield_and_strength(string metal, double yield, double tensile)
    {
        Assert.Equal(yield, Of(metal).Yield, 0.05);
        Assert.Equal(tensile, Of(metal).Tensile, 0.05);
    }

    /// <summary>Typical groove welds (AlcoTec Technical Guide, p. 9): 5052 14, 3003 7, 6061 18 ksi;
    /// a least value lies below what is typical.</summary>
    [Theory]
    [InlineData("aluminium 5052", 14)]
    [InlineData("aluminium 3003", 7)]
    [InlineData("aluminium 6061", 18)]
    public void Least_values_lie_below_typical_ones(string metal, double typical) =>
        Assert.True(Of(metal).Yield < typical * Strengths.Ksi && Of(metal).YieldSource.Contains("least", StringComparison.Ordinal));

    [Theory]
    [InlineData("aluminium 6061", "0.142")]
    [InlineData("stainless 304", "0.104")]
    [InlineData("mild steel", "0.070")]
    public void Growth_of_a_hundred_millimetres_over_sixty_kelvins(string metal, string growth) =>
        Near.Printed(growth, Of(metal).Growth * 6000);

    [Fact]
    public void Every_metal_has_its_strength_whatever_its_temper()
    {
        Assert.All(Materials.All, metal => Assert.Equal(metal.Name, Strengths.Of(metal).Material));
        Assert.Equal(Of("aluminium 5052"), Of("aluminium 5052-H32"));
        Assert.All(Strengths.All, strength => Assert.Equal(strength.Material, Strengths.Of(Materials.Find(strength.Material)!).Material));
        Assert.All(Strengths.All, strength => Assert.True(strength.Yield < strength.Tensile));
    }

    /// <summary>Tables of ISO 898-1 print 36.6 mm2 for M8, 58.0 for M10, 157 for M16 (memory).</summary>
    [Theory]
    [InlineData(8, "36.6")]
    [InlineData(10, "58.0")]
    [InlineData(16, "157")]
    public void Stress_area_of_a_bolt(double diameter, string area) => Near.Printed(area, BoltStrength.Area(diameter));

    private static Strength Of(string metal) => Strengths.Of(Materials.Find(metal)!);
}
