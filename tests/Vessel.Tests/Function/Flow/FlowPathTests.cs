using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Members.Cups;
using Vessel.Members.Screens;
using Vessel.Parts;
using Vessel.Tests.Members.Inside;
using Vessel.Tests.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Function;

/// <summary>The stages that gas takes, their areas against the flats, and how losses go with the flow.</summary>
public sealed class FlowPathTests
{
    private static readonly Assembly _up = Compiler.Assemble(Flowing(InsideTests.Vessel(InsideTests.Cap(CupOpening.Up)), 60));

    private static readonly FlowPath _path = FlowPath.Of(_up)!;

    public static TheoryData<int> Seeds => [.. RandomDesigns.First(40)];

    public static VesselDesign Flowing(VesselDesign design, double? blowBy) =>
        design with { Flow = design.Flow with { BlowBy = blowBy } };

    /// <summary>The vessel of the inside's tests with two screens and wool between them.</summary>
    public static VesselDesign Packed(VesselDesign design)
    {
        ScreenDesign Screen(string name, double height) => new(
            $"inside.discs.{name}", name, design.Shell.Material, "sleeve", height, 1.5, 0.2, Fixing.Tabs, 0, 85.6,
            new("inside.discs", 3, 4.5, HolePattern.Staggered60, 3));
        return design.With(design.Inside with
        {
            Discs = [Screen("lower screen", 122), Screen("upper screen", 142)],
            Packings = [new("inside.packing", "packing", "stainless wool", Vessel.Stock.MaterialFamily.Stainless, "lower screen",
                "upper screen", 70, 0.05)],
        });
    }

    [Fact]
    public void Gas_comes_in_at_the_side_and_leaves_at_the_top() => Assert.Equal(("inlet", "outlet"), (_path.Inlet, _path.Vent));

    [Fact]
    public void The_stages_stand_in_the_order_of_the_gas()
    {
        var packed = FlowPath.Of(Compiler.Assemble(Packed(_up.Design)))!;

        Assert.Equal(
            [
                "inlet", "in front of inlet", "ring round sleeve, down 23 mm", "under the rim of sleeve", "rim of sleeve",
                "bore of sleeve, up 5.8 mm", "lower screen", "packing", "upper screen", "bore of sleeve, up 16.3 mm",
            ],
            packed.Stages.Take(10).Select(stage => stage.Name));
        Assert.Equal(StageKind.Packing, packed.Stages[7].Kind);
    }

    /// <summary>Closed forms: circles, rings and rounded rectangles.</summary>
    [Fact]
    public void Areas_are_those_of_the_shape()
    {
        Near.Relative(Math.PI * 13 * 13, Stage("inlet").Area, 1e-12);
        Near.Relative(Math.PI * ((58 * 58) - (45 * 45)), Stage("ring round sleeve, down 23 mm").Area, 1e-12);
        Near.Relative(Math.PI * 43 * 43, Stage("rim of sleeve").Area, 1e-12);
        // Down to the dome, whose inside of radius 58 lies below the shell's edge.
        Near.Relative(Math.PI * 86 * (117 + Math.Sqrt((58 * 58) - (43 * 43))), Stage("under the rim of sleeve").Area, 1e-9);
        Near.Relative(Math.PI * ((43 * 43) - (30 * 30)), Stage("ring round cap, up 18 mm").Area, 1e-12);
        Near.Relative(Math.PI * 14 * 14, Stage("outlet").Area, 1e-12);
        // The side of the inlet's bore over the way to the sleeve.
        Near.Relative(Math.PI * 26 * 13, Stage("in front of inlet").Area, 1e-9);
    }

    [Fact]
    public void Openings_are_what_the_flats_leave_open()
    {
        var built = Compiler.Assemble(Packed(_up.Design));
        var stages = FlowPath.Of(built)!.Stages;
        var skirt = built.Parts.Single(part => part.Word == "skirt").Flat!.Cut;
        var plate = built.Parts.Single(part => part.Word == "plate").Flat!.Cut;
        var screen = built.Parts.Single(part => part.Name == "lower screen");

        Near.Relative(
            CurveMeasures.Area(new Region2(skirt.Outer, [])) - CurveMeasures.Area(skirt) + (Math.PI * 30 * 30) - CurveMeasures.Area(plate),
            stages.Single(stage => stage.Name == "windows of cap and plate of cap").Area,
            1e-9);
        Near.Relative(
            (Math.PI * 43 * 43) - CurveMeasures.Area(screen.Flat!.Cut),
            stages.Single(stage => stage.Name == "lower screen").Area,
            1e-9);
    }

    [Fact]
    public void No_flow_loses_nothing_and_more_flow_loses_more()
    {
        var losses = Enumerable.Range(0, 6).Select(i => Sum(i == 0 ? 0 : Math.Pow(10, i - 6))).ToList();

        Assert.Equal(new Amount(0, 0, 0), losses[0]);
        Assert.All(losses.Zip(losses.Skip(1)), pair => Assert.True(
            pair.First.Low < pair.Second.Low && pair.First.Likely < pair.Second.Likely && pair.First.High < pair.Second.High));
        Assert.All(losses, loss => Assert.True(loss.Low <= loss.Likely && loss.Likely <= loss.High));
    }

    /// <summary>Beyond every friction and creeping the loss goes with the square of the flow.</summary>
    [Fact]
    public void Ten_times_a_large_flow_loses_a_hundred_times_as_much() =>
        // Friction goes with the power 1.75 and is less than a tenth here.
        Assert.InRange(Sum(10).Likely / Sum(1).Likely, 90, 100);

    [Fact]
    public void A_packing_adds_to_the_loss()
    {
        var design = Packed(_up.Design);
        var with = FlowPath.Of(Compiler.Assemble(design))!.Loss!.Value;
        var without = FlowPath.Of(Compiler.Assemble(design.With(design.Inside with { Packings = [] })))!.Loss!.Value;

        Assert.True(with.Low > without.Low && with.Likely > without.Likely && with.High > without.High);
    }

    [Fact]
    public void A_fitting_is_the_first_stage()
    {
        var port = _up.Design.Ports.Single(p => p.Name == "inlet") with { Fitting = Vessel.Stock.Threads.Find("dash 16") };
        var path = FlowPath.Of(Compiler.Assemble(_up.Design with { Ports = [port, .. _up.Design.Ports.Where(p => p.Name != "inlet")] }))!;

        Assert.Equal("fitting of inlet", path.Stages[0].Name);
        Near.Relative(Math.PI / 4 * Math.Pow(0.844 * 25.4, 2), path.InletArea, 1e-12);
    }

    [Fact]
    public void The_order_by_hand_is_taken_as_it_is()
    {
        var design = _up.Design with { Flow = _up.Design.Flow with { Order = ["inlet", "rim of sleeve", "plate of cap", "outlet"] } };
        var stages = FlowPath.Of(Compiler.Assemble(design))!.Stages;

        Assert.Contains(stages, stage => stage.Name == "plate of cap");
        Assert.DoesNotContain(stages, stage => stage.Name.Contains("windows", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("plate of cap", 1)]
    [InlineData("windows of cap", 0)]
    public void A_stage_narrower_than_the_inlet_is_found(string narrow, int found)
    {
        // The cap's drain of 5 mm is far smaller than the inlet, its windows are not.
        var design = _up.Design with { Flow = _up.Design.Flow with { Order = ["inlet", "rim of sleeve", narrow, "outlet"] } };
        var findings = Assessment.Of(Compiler.Assemble(design)).Where(finding => finding.Code == FindingCodes.StageBelowInlet).ToList();

        Assert.Equal(found, findings.Count);
        Assert.All(findings, finding => Near.Relative(Math.PI * 2.5 * 2.5, finding.Figures[0].Value, 1e-9));
    }

    [Fact]
    public void Windows_above_the_packing_lead_past_it()
    {
        var design = Packed(_up.Design);
        var windowed = InsideTests.Sleeve with { Windows = [new("inside.sleeve.windows", 3, 10, 10, 2, 45, 0)] };

        Assert.Contains(Codes(design.With(design.Inside with { Sleeves = [windowed] })), code => code == FindingCodes.MediaBypassed);
        Assert.DoesNotContain(Codes(design), code => code == FindingCodes.MediaBypassed);
    }

    [Theory]
    [InlineData(60, false)]
    [InlineData(3000, true)]
    public void Too_much_loss_is_found(double blowBy, bool found) =>
        Assert.Equal(found, Codes(Flowing(_up.Design, blowBy)).Contains(FindingCodes.LossTooGreat));

    [Fact]
    public void Without_a_flow_areas_are_told_and_nothing_else()
    {
        var group = Assert.Single(FunctionFigures.Of(Compiler.Assemble(Flowing(_up.Design, null))), group => group.Name == "flow");

        Assert.DoesNotContain(group.Figures, figure => figure.Name == "gas-loss");
        Assert.All(group.Tables[0].Rows, row => Assert.True(row.Values[0] > 0 && row.Values[2] is null));
    }

    [Fact]
    public void An_engine_stands_for_a_flow_with_its_range()
    {
        var design = Flowing(_up.Design, null);
        var engine = new EngineDesign("engine", 2, 3000, 0, EngineCondition.Sound);
        double Likely(EngineDesign of) => MovingGas.Of(design.Flow with { Engine = of }).Flow!.Value.Likely;

        Assert.True(Likely(engine) < Likely(engine with { Condition = EngineCondition.Worn }));
        Near.Relative(2 * Likely(engine), Likely(engine with { Boost = Air.Atmosphere }), 1e-12);
        Assert.False(MovingGas.Of(design.Flow with { Engine = engine }).Flow!.Value.IsSingle);
        // What is measured goes before what is estimated.
        Near.Relative(30.0 / 60_000, MovingGas.Of(design.Flow with { Engine = engine, BlowBy = 30 }).Flow!.Value.Likely, 1e-12);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Whatever_the_vessel_every_figure_is_finite_and_every_range_in_order(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var design in new[] { 0.01, 100_000 }.Select(blowBy => Flowing(vessel.Design, blowBy)))
        {
            var groups = FunctionFigures.Of(Plans.Under(design, vessel));

            Assert.All(groups.SelectMany(group => group.Figures), figure => Assert.True(
                figure.Value.IsFinite && figure.Value.Low <= figure.Value.Likely && figure.Value.Likely <= figure.Value.High, figure.Name));
            Assert.All(
                groups.SelectMany(group => group.Tables).SelectMany(table => table.Rows.Select(row => (table, row))),
                at => Assert.Equal(at.table.Columns.Length, at.row.Values.Count(value => value is null || double.IsFinite(value.Value))));
        }
    });

    /// <summary>An engine breathes in the open; in the vessel its gas is warmer and takes up more room,
    /// by the ratio of the absolute temperatures.</summary>
    [Fact]
    public void Gas_from_an_engine_swells_with_the_vessels_warmth()
    {
        var flow = Flowing(_up.Design, null).Flow with { Engine = new("engine", 2, 3000, 0, EngineCondition.Sound), Surroundings = 20 };
        double At(FlowDesign of) => MovingGas.Of(of).Flow!.Value.Likely;

        Near.Relative(353.15 / 293.15 * 2 * 1500 * 0.9 * 0.005 / 60_000, At(flow with { Temperature = 80 }), 1e-12);
        Near.Relative(At(flow with { Temperature = 20 }) / 1.1, At(flow with { Temperature = 20, Pressure = 0.1 * Air.Atmosphere }), 1e-12);
        // What is given is given as it is in the vessel.
        Near.Relative(At(flow with { BlowBy = 30 }), At(flow with { BlowBy = 30, Temperature = 20 }), 1e-12);
    }

    /// <summary>Hagen and Poiseuille at a crawl: 128 mu L Q / (pi D^4);
    /// a wide crankcase before it adds half a dynamic pressure at least.</summary>
    [Fact]
    public void A_hose_adds_the_loss_of_a_pipe()
    {
        var hosed = FlowPath.Of(Compiler.Assemble(_up.Design with { Flow = _up.Design.Flow with { Hose = new(2000, 20) } }))!;
        const double flow = 1e-6;
        var pipe = 128 * hosed.Gas.Viscosity * 2 * flow / (Math.PI * Math.Pow(0.02, 4));
        var speed = flow / (Math.PI / 4 * 0.02 * 0.02);

        Assert.Equal(("hose to inlet", StageKind.Hose), (hosed.Stages[0].Name, hosed.Stages[0].Kind));
        Near.Absolute(pipe, hosed.Losses(flow)[0].Likely, 1.5 * hosed.Gas.Density * speed * speed / 2);
        Assert.Equal(_path.InletArea, hosed.InletArea);
        Assert.True(hosed.Loss!.Value.Likely > _path.Loss!.Value.Likely);
        // Pushed over the tube of 30 unless a bore is given.
        var wide = FlowPath.Of(Compiler.Assemble(_up.Design with { Flow = _up.Design.Flow with { Hose = new(2000, null) } }))!;
        Near.Relative(Math.PI / 4 * 30 * 30, wide.Stages[0].Area, 1e-12);
        Assert.Contains(Codes(_up.Design with { Flow = _up.Design.Flow with { Hose = new(50_000, 6) } }),
            code => code == FindingCodes.LossTooGreat);
    }

    /// <summary>The gap round a screen is open where it is tacked and shut where it is welded all round: pi (43^2 - 42.8^2).</summary>
    [Fact]
    public void A_weld_all_round_shuts_a_discs_gap()
    {
        var tacked = Packed(_up.Design);
        var welded = tacked.With(tacked.Inside with { Discs = [.. tacked.Inside.Discs.Select(disc => disc with { Fixed = Fixing.Weld })] });
        double Open(VesselDesign design) =>
            FlowPath.Of(Compiler.Assemble(design))!.Stages.Single(stage => stage.Name == "lower screen").Area;

        Near.Relative(Math.PI * ((43 * 43) - (42.8 * 42.8)), Open(tacked) - Open(welded), 1e-9);
    }

    private static FlowStage Stage(string name) => _path.Stages.Single(stage => stage.Name == name);

    private static Amount Sum(double flow) => _path.Losses(flow).Aggregate(Amount.Exactly(0), (sum, loss) => sum + loss);

    private static ImmutableArray<string> Codes(VesselDesign design) =>
        [.. Assessment.Of(Compiler.Assemble(design)).Select(finding => finding.Code)];
}
