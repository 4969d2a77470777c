using Vessel.Design;
using Vessel.Function;
using Vessel.Planning;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

public sealed class TimingTests
{
    private const string Launch = "harbour-launch-breather.yaml";

    public static TheoryData<string> DesignFiles() => Repository.DesignFiles();

    /// <summary>
    /// Common practice, no source: a one-off separator of about 100 mm with two ports, internals, head and bracket takes 6 to
    /// 10 h by hand. The rates were fixed before it was timed. The launch breather made so: a body of 100 mm, no drain.
    /// </summary>
    [Fact]
    public void A_small_separator_is_a_days_work_by_hand()
    {
        var text = Repository.Design(Launch);
        var drain = text.IndexOf("  - name: drain", StringComparison.Ordinal);
        text = text.Remove(drain, text.IndexOf("inside:\n", drain, StringComparison.Ordinal) - drain);
        var plan = Plans.OfText(text, "dimensions.body=100", "inside.cap.outside_diameter=50", "inside.sleeve.tube.outside_diameter=70",
            "bracket.at.angle=150");

        Assert.Equal(2, plan.Assembly.Design.Ports.Length);
        Assert.InRange(plan.Timing.Hand.Likely / 60, 6, 10);
    }

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void A_laser_saves_time_and_ranges_are_in_order(string file)
    {
        var timing = Plans.Of(file).Timing;

        Assert.True(timing.Laser.Likely < timing.Hand.Likely);
        Assert.All(timing.Items.SelectMany(i => new[] { i.Hand, i.Laser }).OfType<Estimate>(), e =>
        {
            Assert.InRange(e.Low, 0, e.Likely);
            Assert.InRange(e.Likely, 0, e.High);
        });
    }

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void The_steps_and_the_set_up_are_the_total(string file)
    {
        var plan = Plans.Of(file);
        var setUp = plan.Timing.Items.Single(i => i.Task == "set-up");

        // Sums of the same numbers in another order.
        Assert.Equal(plan.Timing.Hand.Likely, plan.Steps.Sum(s => plan.Timing.Of(s).Hand.Likely) + setUp.Hand!.Value.Likely, 1e-6);
        Assert.Equal(plan.Timing.Laser.High, plan.Steps.Sum(s => plan.Timing.Of(s).Laser.High) + setUp.Laser!.Value.High, 1e-6);
    }

    [Fact]
    public void Totals_do_not_depend_on_the_order_of_the_parts()
    {
        var assembly = Plans.Of(Launch).Assembly;
        var turned = Plans.Reversed(assembly);

        Assert.Equal(Plans.Of(Launch).Timing.Hand.Likely, Plan.Of(turned).Timing.Hand.Likely, 1e-6);
        Assert.Equal(Plans.Of(Launch).Timing.Laser.Likely, Plan.Of(turned).Timing.Laser.Likely, 1e-6);
    }

    [Theory]
    [InlineData("passivated", "passivate")]
    [InlineData("painted", "paint")]
    [InlineData("anodised", "send_out")]
    public void A_finish_takes_its_time(string finish, string rate)
    {
        var plan = Plans.OfText(Repository.Design(Launch), $"finish={finish}");
        var item = plan.Timing.Items.Single(i => i.Step == StepKind.Finish);

        Assert.Equal((rate, HandRates.All.Single(r => r.Name == rate).Likely), (item.Operation, item.Hand!.Value.Likely));
        Assert.Equal(Plans.Of(Launch).Timing.Hand.Likely + item.Hand.Value.Likely, plan.Timing.Hand.Likely, 1e-6);
    }

    /// <summary>The half sphere is spun elsewhere; gores are not.</summary>
    [Theory]
    [InlineData("harbour-launch-breather.yaml", 1)]
    [InlineData("sawmill-generator-breather.yaml", 0)]
    public void A_spun_head_is_sent_out(string file, int heads) =>
        Assert.Equal(heads, Plans.Of(file).Timing.Items.Where(i => i.Operation == "send_out").Sum(i => i.Quantity));

    [Fact]
    public void An_own_rate_is_used()
    {
        var usual = Plans.Of(Launch).Timing;
        var design = Compiler.Read(Repository.Design(Launch), DesignSettings.None with { Shop = "rates: { fit_up: 14 }" }).Value!;

        var slow = Plan.Of(Compiler.Assemble(design)).Timing;

        // Twice the usual 7 min for each of 13 joints.
        Assert.Equal(usual.Hand.Likely + (13 * HandRates.FitUp.Likely), slow.Hand.Likely, 1e-6);
    }

    /// <summary>3 on 5 is sold; 3 on 9 is not, nor any grid that is not staggered.</summary>
    [Theory]
    [InlineData("5", "staggered_60", false)]
    [InlineData("9", "staggered_60", true)]
    [InlineData("5", "square", true)]
    public void A_screen_is_drilled_only_where_its_pattern_is_not_sold(string pitch, string pattern, bool drilled)
    {
        var plan = Plans.OfText(Repository.Design(Launch), $"inside.discs[0].pitch={pitch}", $"inside.discs[0].pattern={pattern}");
        var item = plan.Timing.Items.Single(i => i.Task == "make lower-screen" && i.Operation == "field_hole");
        var holes = plan.Assembly.Parts.Single(p => p.Id == "lower-screen").Fields[0].Lattice.Count;

        Assert.Equal(drilled ? holes * HandRates.FieldHole.Likely : 0, item.Hand!.Value.Likely, 1e-9);
    }

    /// <summary>The inlet is ground to the shell, the outlet passes square through the lid, the drain is turned and tapped.</summary>
    [Theory]
    [InlineData("make inlet", "cope_end", true)]
    [InlineData("make outlet", "cope_end", false)]
    [InlineData("make outlet", "saw_tube", true)]
    [InlineData("make drain", "turn_bung", true)]
    [InlineData("make drain", "saw_tube", false)]
    [InlineData("make shell", "roll", true)]
    [InlineData("make bracket", "bend", true)]
    [InlineData("make top", "bend", false)]
    public void Each_part_takes_the_operations_that_it_needs(string task, string operation, bool takes) =>
        Assert.Equal(takes, Plans.Of(Launch).Timing.Items.Any(i => i.Task == task && i.Operation == operation));

    [Fact]
    public void Every_rate_lies_in_its_own_range_under_its_own_name()
    {
        Assert.All(HandRates.All, r => Assert.True(0 < r.Low && r.Low < r.Likely && r.Likely < r.High));
        Assert.Equal(HandRates.All.Length, HandRates.All.Select(r => r.Name).Distinct().Count());
    }
}
