using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.FlatHeads;
using Vessel.Members.Cups;
using Vessel.Tests.Members.Inside;
using Vessel.Tests.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Function;

/// <summary>Leak test, draining and catch volume: laws, and findings that come and go.</summary>
public sealed class DutyTests
{
    private static readonly VesselDesign _sleeved = FlowPathTests.Flowing(InsideTests.Vessel(InsideTests.Cap(CupOpening.Up)), 60);

    [Theory]
    [InlineData(20_000, false)]
    [InlineData(60_000, true)]
    public void A_test_above_the_published_limits_is_found(double pressure, bool found) => Assert.Equal(
        found, Has(_sleeved with { LeakTest = LeakTestDesign.Usual with { Pressure = pressure } }, FindingCodes.TestPressureHigh));

    [Theory]
    [InlineData(3, false)]
    [InlineData(0.4, true)]
    public void A_lid_that_yields_at_the_test_is_found(double thickness, bool found)
    {
        var lid = (FlatHead)_sleeved.Top;

        Assert.Equal(found,
            Has((_sleeved with { Top = lid with { Wall = thickness } }).With(InsideDesign.None), FindingCodes.TestOverstress));
    }

    [Theory]
    [InlineData(2, 10_000, false)]
    [InlineData(0.5, 90_000, true)]
    public void A_shell_that_may_fold_is_found(double wall, double suction, bool found)
    {
        var shell = Designs.Shell(300, wall, 400);
        var design = Designs.Vessel(shell) with { LeakTest = LeakTestDesign.Usual with { Suction = suction } };

        Assert.Equal(found, Has(design, FindingCodes.MayCollapse));
    }

    /// <summary>
    /// A lid of 3 mm whose free radius is a: at a port s = 2 x 3 (3 + nu) / 8 p a^2 / t^2 and without one the more of 3/4 and 3 (3 + nu) /
    /// 8. The mean of rim and middle, which stood here once, is less than either.
    /// </summary>
    [Fact]
    public void The_lids_stress_is_the_largest_and_doubles_at_a_port()
    {
        var bare = LeakTest.Of(
            Compiler.Assemble(_sleeved with { Ports = [.. _sleeved.Ports.Where(port => port.Host == PortHost.Shell)], Members = [] }));
        var (holed, lid) = (LeakTest.Of(Compiler.Assemble(_sleeved)), (FlatHead)_sleeved.Top);
        var poisson = Vessel.Stock.Strengths.Of(lid.Material).Poisson;
        var supported = 3 * (3 + poisson) / 8 * 0.02 * Math.Pow(_sleeved.Shell.InnerRadius / lid.Wall, 2);

        Near.Relative(supported, bare.EndStress(bare.Heads[0]), 1e-12);
        Near.Relative(2 * supported, holed.EndStress(holed.Heads[0]), 1e-12);
    }

    /// <summary>No more than one atmosphere can be missing, so that no figure says so, and a stout shell is said to stand it.</summary>
    [Theory]
    [InlineData(110, 2, 180, true)]
    [InlineData(300, 1, 600, false)]
    [InlineData(300, 0.5, 600, false)]
    public void No_suction_is_more_than_full_vacuum(double diameter, double wall, double height, bool bears)
    {
        var group = FunctionFigures.Of(Compiler.Assemble(Designs.Vessel(Designs.Shell(diameter, wall, height))))
            .Single(g => g.Name == "leak_test");
        var collapse = group.Figures.SingleOrDefault(figure => figure.Name == "collapse");

        Assert.Equal(bears, collapse is null);
        Assert.Equal(bears, group.Words.Any(word => word.Contains("does not fold the shell", StringComparison.Ordinal)));
        Assert.True(collapse is null || collapse.Value.High <= Air.Atmosphere / 100);
        // The stresses are linear: at the usual 200 mbar and at an atmosphere.
        var greatest = group.Figures.Where(figure => figure.Name.EndsWith("-stress", StringComparison.Ordinal)
            && figure.Name != "vacuum-stress").Max(figure => figure.Value.High);
        Near.Relative(greatest * Air.Atmosphere / 20_000, Value(group, "vacuum-stress").Likely, 1e-12);
    }

    [Fact]
    public void Nothing_is_called_a_vessel_for_pressure()
    {
        var group = FunctionFigures.Of(Compiler.Assemble(_sleeved)).Single(g => g.Name == "leak_test");

        Assert.Contains(group.Words, word => word.Contains("not a pressure vessel", StringComparison.Ordinal));
        Assert.True(Value(group, "energy-air").Likely > 1000 * Value(group, "energy-water").Likely);
    }

    [Fact]
    public void No_pressure_stores_nothing_and_more_stores_more()
    {
        Assert.Equal((0, 0, 0), (StoredEnergy.Air(0, 1), StoredEnergy.AirIsothermal(0, 1), StoredEnergy.Water(0, 1)));
        for (var p = 100.0; p < 1e7; p *= 3)
        {
            Assert.True(StoredEnergy.Air(p, 1) < StoredEnergy.AirIsothermal(p, 1));
            Assert.True(StoredEnergy.Air(p, 1) < StoredEnergy.Air(2 * p, 1));
        }
    }

    [Fact]
    public void Thick_oil_runs_by_Poiseuille_and_thin_oil_by_its_fall()
    {
        // 32 nu L v / D^2 = g h, when the dynamic pressure is nothing to it: here below 1e-6.
        Near.Relative(Air.Gravity * 0.3 * 1e-4 / (32 * 1e-2 * 0.5), OilFlow.Speed(0.3, 0.01, 0.5, 1e-2), 1e-5);
        // Without friction: 1.5 v^2 / 2 = g h.
        Near.Relative(Math.Sqrt(Air.Gravity * 0.3 / 0.75), OilFlow.Speed(0.3, 0.01, 0.5, 0), 1e-12);
        Assert.Equal(0, OilFlow.Speed(0, 0.01, 0.5, 1e-5));
        Assert.Equal(0, OilFlow.Speed(-1, 0.01, 0.5, 1e-5));
    }

    /// <summary>
    /// Thick oil out of a plain cylinder: dV/dt = -k h gives t = A / k ln(h0 / h1), with h from the bung's outer end. The sum
    /// of 40 slices takes each at its middle: its error is below a per cent while a slice is a fifth of what is left.
    /// </summary>
    [Fact]
    public void Thick_oil_empties_a_cylinder_by_its_logarithm()
    {
        var shell = Designs.Shell(104, 2, 300);
        var bung = Designs.OnHead("drain", VesselEnd.Bottom, 22, (22 - Designs.Thread.TapDrill) / 2, 0) with
        {
            Joint = PortJoint.SetIn,
            Length = 20,
            InsideLength = 0,
            Clearance = 0.1,
            Thread = Designs.Thread,
        };
        var design = Designs.Vessel(shell, Designs.OnHead("vent", VesselEnd.Top, 32, 2, 0), bung);
        design = design with
        {
            Bottom = Designs.Inset(shell, "bottom"),
            Flow = design.Flow with { OilViscosity = 5000 },
        };
        var built = Compiler.Assemble(design);
        var drain = Drain.Of(built, null)!;
        var (bore, length) = (Designs.Thread.TapDrill * 1e-3, drain.Length * 1e-3);
        var rate = Math.PI / 4 * bore * bore * Air.Gravity * bore * bore / (32 * 5e-3 * length);
        var area = Math.PI / 4 * 0.1 * 0.1;
        var (from, to) = (built.Capacity.Events[0].Height - drain.Mouth, 1.0);

        Near.Relative(area / rate * Math.Log(((from * 1e-3) + length) / ((to * 1e-3) + length)) / 60, drain.TimeToEmpty, 0.01);
    }

    [Theory]
    [InlineData(200, 500, false)]
    [InlineData(200, 5000, true)]
    public void Oil_that_the_depression_holds_up_is_found(double head, double depression, bool found)
    {
        var drain = Designs.OnHead("drain", VesselEnd.Bottom, 22, (22 - Designs.Thread.TapDrill) / 2, 0) with
        {
            Path = "ports[2]",
            Joint = PortJoint.SetIn,
            Length = 8,
            InsideLength = 3,
            Clearance = 0.1,
            Thread = Designs.Thread,
        };
        var design = _sleeved with { Ports = [.. _sleeved.Ports, drain], DrainBack = new("drain_back", head, null, null, depression) };

        Assert.Equal(found, Has(design, FindingCodes.OilHeldUp));
        // p / (rho g), with 870 kg/m3.
        Near.Relative(depression / (870 * 9.80665) * 1000, Drain.Of(Compiler.Assemble(design), null)!.Held!.Value, 1e-12);
    }

    [Theory]
    [InlineData(1, false)]
    [InlineData(1000, true)]
    public void A_catch_that_is_too_small_is_found(double hours, bool found) =>
        Assert.Equal(found,
            Has(_sleeved with { Capacity = CapacityDesign.Usual with { BetweenDrains = hours } }, FindingCodes.CatchTooSmall));

    /// <summary>Oil alone goes in; with the water of cold gas it does not, and how long it lasts is shorter.</summary>
    [Fact]
    public void Water_that_the_gas_drops_counts_to_what_gathers()
    {
        var design = FlowPathTests.Flowing(_sleeved, 120) with { Capacity = CapacityDesign.Usual with { BetweenDrains = 40 } };
        design = design with { Flow = design.Flow with { Surroundings = 0 } };
        var (cold, hot) = (Compiler.Assemble(design), Compiler.Assemble(design with { Flow = design.Flow with { Surroundings = 80 } }));
        var water = Value(cold, "separation", "water-left");

        Assert.True(40 * 15 / 870.0 < hot.Capacity.Usable / 1e6);
        Assert.DoesNotContain(Assessment.Of(hot), finding => finding.Code == FindingCodes.CatchTooSmall);
        var found = Assert.Single(Assessment.Of(cold), finding => finding.Code == FindingCodes.CatchTooSmall);
        Assert.Contains("of water", found.Message, StringComparison.Ordinal);
        Near.Relative(40 * water.High / 1000, Value(cold, "catch", "water-gathered").High, 1e-12);
        Near.Relative(cold.Capacity.Usable / 1e6 / ((water.High / 1000) + (15 / 870.0)), Value(cold, "catch", "drain-within").Low, 1e-12);
    }

    [Fact]
    public void Words_and_figures_follow_the_liquid_that_is_named()
    {
        var liquid = Vessel.Stock.Liquids.Find("diesel")!;
        var design = _sleeved with { Flow = _sleeved.Flow with { Liquid = liquid, OilDensity = liquid.Density(20), Temperature = 20 } };
        var built = Compiler.Assemble(design);
        var groups = FunctionFigures.Of(built);
        var said = groups.Where(g => g.Name is "catch" or "drain" or "separation")
            .SelectMany(g => g.Figures.Select(f => f.Title).Append(g.Title).Concat(g.Words)).Append(built.Capacity.LimitedBy);

        Assert.DoesNotContain(said, text => text.Contains(" oil", StringComparison.OrdinalIgnoreCase)
            || text.StartsWith("oil", StringComparison.OrdinalIgnoreCase));
        Assert.Equal("Diesel that it holds", groups.Single(g => g.Name == "catch").Title);
        Assert.StartsWith("diesel seals the gas path", built.Capacity.LimitedBy, StringComparison.Ordinal);
    }

    /// <summary>Appendix J, 2016: 2 L up to 2000 cm3, 3 L above.</summary>
    [Theory]
    [InlineData(1.6, 2)]
    [InlineData(2.0, 2)]
    [InlineData(2.5, 3)]
    public void The_rule_book_goes_by_displacement(double displacement, double litres)
    {
        var design = _sleeved with
        {
            Capacity = CapacityDesign.Usual with { Rule = "fia appendix j" },
            Flow = _sleeved.Flow with { Engine = new("engine", displacement, 6000, 0, EngineCondition.Sound) },
        };

        Assert.Equal(litres, Value(Compiler.Assemble(design), "catch", "catch-by-rule").Likely);
    }

    /// <summary>10 mbar hold 1000 / (870 x 9.80665) m of oil.</summary>
    [Fact]
    public void Gas_pushes_oil_aside_by_its_own_pressure()
    {
        Near.Relative(1000 / (870 * 9.80665) * 1000, Value(Compiler.Assemble(_sleeved), "catch", "blow-through").Likely, 1e-12);
        var (slow, fast) = (Compiler.Assemble(FlowPathTests.Flowing(_sleeved, 10)),
            Compiler.Assemble(FlowPathTests.Flowing(_sleeved, 500)));
        Assert.True(Value(slow, "catch", "level-step").Likely < Value(fast, "catch", "level-step").Likely);
    }

    private static Amount Value(Assembly built, string group, string figure) =>
        Value(FunctionFigures.Of(built).Single(g => g.Name == group), figure);

    private static Amount Value(FigureGroup group, string figure) => group.Figures.Single(f => f.Name == figure).Value;

    private static bool Has(VesselDesign design, string code) =>
        Assessment.Of(Compiler.Assemble(design)).Any(finding => finding.Code == code);
}
