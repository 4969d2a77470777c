using Vessel.Findings;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Model;

public sealed class MeasureTests
{
    public static TheoryData<int> Seeds => RandomDesigns.Seeds;

    [Theory]
    [InlineData(2, 4, true, true, 0.5)]
    [InlineData(5, 4, true, false, -0.25)]
    [InlineData(6, 4, false, true, 0.5)]
    [InlineData(3, 4, false, false, -0.25)]
    [InlineData(1, 0, false, true, null)]
    public void What_is_left_is_a_share_of_the_limit(double value, double limit, bool most, bool holds, double? free)
    {
        var figure = new Measured("gap", value, most ? Allowed.AtMost(limit) : Allowed.AtLeast(limit), "mm");

        Assert.Equal((holds, free), (figure.Holds, figure.Free));
    }

    /// <summary>An angle at its limit may come out a rounding beyond it, on its way through sines and degrees.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_figure_at_its_limit_holds_but_for_rounding(bool most)
    {
        var limit = most ? Allowed.AtMost(135) : Allowed.AtLeast(135);
        var beyond = most ? 1 : -1;

        Assert.True(limit.Holds(135));
        Assert.True(limit.Holds(135 + (beyond * 1e-8)));
        Assert.False(limit.Holds(135 + (beyond * 1e-6)));
    }

    [Theory]
    [InlineData(0.4, true, Severity.Warning, 0.5)]
    [InlineData(0.7, false, Severity.Warning, 0.5)]
    [InlineData(1.2, false, Severity.Error, 1)]
    public void What_is_worse_than_the_last_that_is_taken_is_one_step_graver(double gap, bool holds, Severity severity, double shown)
    {
        var limit = Allowed.AtMost(0.5, 1);
        var measure = new Measure("gap-too-wide", Severity.Warning, [], () => "",
            [new("gap", gap, limit, "mm"), new("beside", 9, null, "mm")], null);

        Assert.Equal((holds, severity, shown), (measure.Holds, measure.Severity, limit.For(gap)));
    }

    /// <summary>A condition that is no number is told only where it is not met.</summary>
    [Fact]
    public void A_measure_without_a_limit_never_holds()
    {
        Assert.False(new Measure("loose-disc", Severity.Note, [], () => "it rattles", [], null).Holds);
        Assert.False(new Measure("loose-disc", Severity.Note, [], () => "it rattles", [new("beside", 1, null, "mm")], null).Holds);
    }

    /// <summary>What is a row of the margins has a limit; what is said of a measure can be said whether or not it holds.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Every_margin_has_a_limit_and_every_measure_its_words(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        var measures = Assessment.Measures(vessel).ToList();

        Assert.Contains(measures, measure => measure.Of is not null);
        Assert.All(measures, measure => Assert.True(measure.Of is null || measure.Figures[0].Limit is not null, measure.Code));
        Assert.All(measures.Where(measure => measure.Of is not null), measure => Assert.True(
            double.IsFinite(measure.Figures[0].Value + (measure.Figures[0].Free ?? 0)), measure.Of));
        Assert.All(measures, measure => Assert.NotEmpty(measure.Message));
        Assert.All(measures, measure => Assert.Contains(FindingCodes.All, known => known.Code == measure.Code));
    });
}
