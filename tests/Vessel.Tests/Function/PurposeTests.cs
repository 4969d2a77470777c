using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Model;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Function;

/// <summary>
/// A cylinder of bore 100 and height 300 between a plate set 3 mm in and half a sphere, with tubes of bore 28: what they are for decides
/// what liquid and gas do.
/// </summary>
public sealed class PurposeTests
{
    private const double Bore = 14;

    private static readonly ShellDesign _shell = Designs.Shell(104, 2, 300);

    private static PortDesign Side(string name, double height, PortPurpose? purpose) =>
        Designs.Branch(name, 32, 2, new(height, 1, 0, 0, 0)) with { Purpose = purpose };

    private static PortDesign Top(string name, PortPurpose? purpose) =>
        Designs.OnHead(name, VesselEnd.Top, 32, 2, 0) with { Purpose = purpose };

    private static Assembly Vessel(params ReadOnlySpan<PortDesign> ports) => Compiler.Assemble(Designs.Vessel(_shell, ports));

    /// <summary>mm3 up to a height above the shell's lower edge.</summary>
    private static double Below(double height) => (2.0 / 3 * Math.PI * 125000) + (Math.PI * 2500 * height);

    private static IEnumerable<string> Codes(Assembly vessel) => Compiler.Assess(vessel).Select(finding => finding.Code);

    [Theory]
    [InlineData(PortPurpose.LiquidOut)]
    [InlineData(PortPurpose.LiquidIn)]
    [InlineData(PortPurpose.Fill)]
    [InlineData(PortPurpose.Sensor)]
    [InlineData(PortPurpose.Spare)]
    public void What_is_shut_or_full_in_use_is_no_spill(PortPurpose purpose)
    {
        var vessel = Vessel(Side("side", 100, purpose), Top("vent", PortPurpose.Vent));

        Near.Relative(Below(297), vessel.Capacity.Usable, 1e-12);
        Assert.Null(vessel.Flow);
        Assert.Contains("vent", vessel.Capacity.LimitedBy, StringComparison.Ordinal);
    }

    [Fact]
    public void An_overflow_sets_the_working_level_and_seals_nothing()
    {
        var capacity = Vessel(
            Side("in", 250, PortPurpose.GasIn), Side("spill", 150, PortPurpose.Overflow), Top("out", PortPurpose.GasOut)).Capacity;

        Near.Relative(Below(150 - Bore), capacity.Usable, 1e-12);
        Assert.Equal("oil runs out through the overflow 'spill'", capacity.LimitedBy);
        Assert.DoesNotContain(capacity.Events, e => e.What.Contains("seals", StringComparison.Ordinal) && e.What.Contains("spill", StringComparison.Ordinal));
    }

    [Fact]
    public void Gas_comes_in_and_leaves_where_it_is_said()
    {
        var vessel = Vessel(Side("upper", 250, PortPurpose.GasIn), Side("lower", 150, PortPurpose.GasOut), Top("mouth", PortPurpose.Spare));

        Assert.Equal(("upper", "lower"), (vessel.Flow!.Inlet, vessel.Flow.Vent));
    }

    /// <summary>As before there were purposes: the highest open one is the vent.</summary>
    [Fact]
    public void Ports_that_say_nothing_carry_gas()
    {
        var vessel = Vessel(Side("lower", 150, null), Side("upper", 250, null));

        Assert.Equal(("lower", "upper"), (vessel.Flow!.Inlet, vessel.Flow.Vent));
    }

    [Fact]
    public void A_bung_may_be_open_and_a_tube_plugged()
    {
        var bung = Designs.Branch("breather", 32, 2, new(250, 1, 0, 0, 0)) with { Thread = Designs.Thread, Purpose = PortPurpose.Vent };

        Assert.Equal(["breather"], Vessel(bung, Top("tube", PortPurpose.Plugged)).Cavity.OpenPorts.Select(port => port.Name));
    }

    [Fact]
    public void The_drain_is_the_port_that_is_for_it_though_another_lies_lower()
    {
        var vessel = Vessel(Side("drain", 60, PortPurpose.Drain), Side("suction", 20, PortPurpose.LiquidOut), Top("vent", PortPurpose.Vent));

        Assert.Equal("drain", Drain.Of(vessel, null)!.Port);
    }

    [Theory]
    [InlineData(200, false)]
    [InlineData(280, true)]
    public void An_overflow_above_a_vents_mouth_never_runs(double height, bool found)
    {
        // Liquid reaches the gas outlet at 250 - 14.
        var vessel = Vessel(Side("in", 270, PortPurpose.GasIn), Side("out", 250, PortPurpose.GasOut), Side("spill", height, PortPurpose.Overflow) with
        {
            Place = new(height, 3, 0, 0, 0),
        });

        Assert.Equal(found, Codes(vessel).Contains(FindingCodes.OverflowTooHigh));
    }

    [Theory]
    [InlineData(0.0, true)]
    [InlineData(0.9, false)]
    public void A_fillers_rim_stands_above_the_working_level(double tilt, bool found)
    {
        // Level, its rim is 50 mm below the mouth of the overflow; tilted up by 0.9, its tube of 160 mm rises by 125.
        var filler = Designs.Branch("filler", 32, 2, new(150, 3, 0, tilt, 0)) with { Purpose = PortPurpose.Fill, Length = 160 };
        var vessel = Vessel(filler, Side("spill", 200, PortPurpose.Overflow), Top("vent", PortPurpose.Vent));

        Assert.Equal(found, Codes(vessel).Contains(FindingCodes.FillTooLow));
    }

    [Theory]
    [InlineData(20, false)]
    [InlineData(240, true)]
    public void An_outlet_lies_under_the_working_level(double height, bool found)
    {
        var outlet = Side("suction", height, PortPurpose.LiquidOut) with { Place = new(height, 3, 0, 0, 0) };

        Assert.Equal(
            found, Codes(Vessel(outlet, Side("spill", 200, PortPurpose.Overflow), Top("vent", PortPurpose.Vent))).Contains(FindingCodes.OutletTooHigh));
    }

    [Theory]
    [InlineData(PortPurpose.Overflow, FindingCodes.OverflowIsVent)]
    [InlineData(PortPurpose.LiquidOut, FindingCodes.NoOpenPort)]
    [InlineData(PortPurpose.Vent, null)]
    public void A_vessel_without_a_vent_is_told_so(PortPurpose purpose, string? code)
    {
        string[] both = [FindingCodes.OverflowIsVent, FindingCodes.NoOpenPort];

        Assert.Equal(code is null ? [] : [code], Codes(Vessel(Side("only", 200, purpose))).Where(both.Contains));
    }

    [Fact]
    public void Every_purpose_has_a_word_of_its_own()
    {
        var all = Enum.GetValues<PortPurpose>().ToImmutableArray();

        Assert.Equal(all, PortPurposes.Words.Select(word => PortPurposes.Find(word)!.Value));
        Assert.Null(PortPurposes.Find("gas"));
    }
}
