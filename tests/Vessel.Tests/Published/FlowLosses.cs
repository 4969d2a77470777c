using Vessel.Function;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>Loss coefficients of Idelchik's handbook; sudden changes also by momentum (Borda and Carnot).</summary>
public sealed class FlowLosses
{
    /// <summary>
    /// Diagram 8-1, a thin perforated plate across a duct, in the form of the later editions, on the velocity before it. The
    /// printed values take 0.707 as the root of a half in full, which moves them by less than 5e-4.
    /// </summary>
    [Theory]
    [InlineData(0.10, 249.517)]
    [InlineData(0.20, 52.5804)]
    [InlineData(0.30, 19.3157)]
    [InlineData(0.40, 8.75789)]
    [InlineData(0.50, 4.36953)]
    [InlineData(0.60, 2.25705)]
    [InlineData(0.70, 1.14836)]
    public void Perforated_plate(double open, double published) =>
        Near.Relative(published, StageLoss.Thin(open, open) / (open * open), 5e-4);

    [Theory]
    [InlineData(0.1, "0.81")]
    [InlineData(0.25, "0.5625")]
    [InlineData(0.5, "0.25")]
    [InlineData(0.75, "0.0625")]
    public void Sudden_expansion(double ratio, string published) => Near.Printed(published, StageLoss.Thick(1, ratio));

    [Theory]
    [InlineData(0.1, "0.462011")]
    [InlineData(0.25, "0.402964")]
    [InlineData(0.5, "0.297302")]
    [InlineData(0.75, "0.176777")]
    public void Sudden_contraction(double ratio, string published) => Near.Printed(published, StageLoss.Thick(ratio, 1));

    /// <summary>From and to wide rooms: sharp entry 0.5 and exit 1.</summary>
    [Fact]
    public void A_tube_between_rooms_loses_one_and_a_half_dynamic_pressures() => Near.Relative(1.5, StageLoss.Thick(0, 0), 1e-15);

    /// <summary>
    /// A sharp orifice with a discharge coefficient of 0.61 (air at 20 degC; 42.1751 L/min at a bore of 6 and 1000 Pa): 1 /
    /// 0.61^2 = 2.687 dynamic pressures. The thin edge between wide rooms has (1 + 0.707)^2 = 2.914; coefficients of 0.59 to
    /// 0.61 are printed for it.
    /// </summary>
    [Theory]
    [InlineData(6, 1000, 42.1751)]
    [InlineData(10, 500, 82.8397)]
    [InlineData(19.05, 250, 212.576)]
    public void Sharp_orifice(double bore, double pressure, double litresPerMinute)
    {
        var v = litresPerMinute / 60_000 / (Math.PI * bore * bore / 4e6);
        var dynamic = Air.Density(20, 101_325) * v * v / 2;

        Near.Relative(1 / (0.61 * 0.61), pressure / dynamic, 1e-5);
        Assert.InRange(1 / Math.Sqrt(StageLoss.Thin(0, 0)), 0.58, 0.61);
    }

    /// <summary>f = 0.4 at 0.2 m/s in air of 80 degC: 0.17508 Pa.</summary>
    [Fact]
    public void A_screen_across_slow_gas_loses_next_to_nothing() => Near.Relative(
        0.17508, StageLoss.Thin(0.4, 0.4) / 0.16 * Air.Density(80, 101_325) * 0.2 * 0.2 / 2, 5e-4);

    /// <summary>Published: 2.0 L at 6000 rpm and 0.9 takes in 5400 L/min, of which 0.2 to 1 % is 10.8 to 54.</summary>
    [Theory]
    [InlineData(2.0, 5400, 10.8, 54)]
    [InlineData(5.7, 15390, 30.78, 153.9)]
    public void Blow_by(double displacement, double intake, double low, double high)
    {
        var engine = new Vessel.Design.EngineDesign("engine", displacement, 6000, 0, Vessel.Design.EngineCondition.Sound);

        Near.Relative(intake, BlowBy.Intake(engine), 1e-12);
        Near.Relative(low, BlowBy.Of(engine).Low, 1e-12);
        Near.Relative(high, BlowBy.Of(engine).High, 1e-12);
    }

    /// <summary>Colebrook and White 1939, solved by repetition; Haaland 1983 claims 2 % from Re 4000 to 1e8. Moody's chart:
    /// 0.0222 at 1e5 and 0.001.</summary>
    [Theory]
    [InlineData(4e3, 0)]
    [InlineData(1e4, 0.003)]
    [InlineData(1e5, 0.001)]
    [InlineData(1e6, 0.01)]
    public void Friction_in_a_hose(double reynolds, double roughness)
    {
        var factor = 0.02;
        for (var i = 0; i < 60; i++)
            factor = Math.Pow(-2 * Math.Log10((roughness / 3.7) + (2.51 / (reynolds * Math.Sqrt(factor)))), -2);

        Near.Relative(factor, StageLoss.Haaland(reynolds, roughness), 0.02);
        Near.Relative(0.0222, StageLoss.Haaland(1e5, 0.001), 0.02);
    }
}
