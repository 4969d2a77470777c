using Vessel.Design;
using Vessel.Reading;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Design;

public sealed class OwnLiquidTests
{
    private static Outcome<VesselDesign> Read(string liquid) => DesignReader.Read(Repository.Design("ferry-bilge-vent.yaml")
        .Replace("liquid: water", $"own_liquid: {liquid}", StringComparison.Ordinal));

    /// <summary>Two points of the table of water give water's figures between them, by the same law.</summary>
    [Fact]
    public void What_its_data_sheet_says_is_what_it_is()
    {
        var flow = Read("{ name: screenwash, like: water, source: its data sheet, at: [{ temperature: 0 degC, density: 1020 kg/m3, viscosity: 4 cSt }, "
            + "{ temperature: 40 degC, density: 1000 kg/m3, viscosity: 1 cSt }] }").Value!.Flow;

        Assert.Equal(("screenwash", LiquidKind.Water, "its data sheet"), (flow.Liquid.Word, flow.Liquid.Kind, flow.Liquid.Source));
        Near.Relative(1010, flow.OilDensity, 1e-12);
        Near.Relative(4, flow.Liquid.Viscosity(0), 1e-12);
        // Straight in the logarithm over 1 / T.
        var share = ((1 / 293.15) - (1 / 273.15)) / ((1 / 313.15) - (1 / 273.15));
        Near.Relative(4 * Math.Pow(0.25, share), flow.Liquid.Viscosity(20), 1e-12);
        Assert.True(flow.IsLiquidGiven);
    }

    [Theory]
    [InlineData("{ name: a, source: b, at: [{ temperature: 0 degC, density: 1000 kg/m3, viscosity: 1 cSt }] }")]
    [InlineData("{ name: a, source: b, at: [{ temperature: 0 degC, density: 1000 kg/m3, viscosity: 1 cSt }, { temperature: 1 degC, density: 9 }] }")]
    [InlineData("{ name: a, at: [] }")]
    [InlineData("{ name: a, source: b, at: [{ temperature: 0 degC, density: 1000 kg/m3, viscosity: 1 cSt }, "
        + "{ temperature: 32 degF, density: 900 kg/m3, viscosity: 1 cSt }] }")]
    public void What_is_missing_or_told_twice_is_a_fault(string liquid) => Assert.NotEmpty(Read(liquid).Faults);
}
