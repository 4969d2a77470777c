using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Heads;
using Vessel.Joints;
using Vessel.Members;
using Vessel.Model;
using Vessel.Parts;
using Vessel.Planning;
using Vessel.Ports;
using Vessel.Shells;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

public sealed class WorkOrderTests
{
    private const string Launch = "harbour-launch-breather.yaml";

    public static TheoryData<string> DesignFiles() => Repository.DesignFiles();

    [Fact]
    public void Random_vessels_have_an_order_that_keeps_every_link()
    {
        for (var seed = 0; seed < 100; seed++)
        {
            var design = RandomDesigns.At(seed).With(RandomInsides.At(seed));
            if (design.Inside.Caps.Any(cap => cap.Outlet is not null))
                design = design with
                {
                    Ports = [.. design.Ports,
                    Designs.OnHead("way out", VesselEnd.Top, 20, 2, 0) with { Path = "ports[99]", Joint = PortJoint.SetIn }]
                };
            var sites = design.Ports.Select(PortSites.Of(design).Of).ToImmutableArray();
            ImmutableArray<Member> members = [.. sites.Select(site => new Port(site, design)), .. MemberKinds.Build(design, sites)];
            var chamber = new Chamber(
                Courses.Build(design, sites), HeadKinds.Build(VesselEnd.Top, design, sites), HeadKinds.Build(VesselEnd.Bottom, design, sites));

            AssertKept(WorkOrder.Of(design, sites, chamber.Heads, members, [], new([.. chamber.Joints, .. members.SelectMany(member => member.Joints)])));
        }
    }

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Every_design_has_an_order_that_keeps_every_link(string file) => AssertKept(Plans.Of(file).Order);

    [Fact]
    public void Tasks_that_wait_for_each_other_are_a_bug_that_is_told()
    {
        ImmutableArray<WorkTask> tasks = [new("a", WorkKind.Fit, "a", 0, []), new("b", WorkKind.Fit, "b", 0, [])];

        Assert.Throws<InvalidOperationException>(() => WorkOrder.Of(tasks, [new("a", "b", ""), new("b", "a", "")]));
        Assert.Equal(["b", "a"], WorkOrder.Of(tasks, [new("b", "a", "")]).Tasks.Select(t => t.Id));
    }

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void The_closing_seam_is_the_last_weld_over_a_clean_inside_with_a_port_open(string file)
    {
        var plan = Plans.Of(file);
        var welds = plan.Order.Tasks.Where(t => t.Kind == WorkKind.Weld).ToList();
        var ids = plan.Order.Tasks.Select(t => t.Id).ToList();

        Assert.Equal(WeldRole.HeadSeam, welds[^1].Weld!.Role);
        Assert.Equal(ids.IndexOf(welds[^1].Id) - 1, ids.IndexOf("clean"));
        Assert.Equal(ids.IndexOf(welds[^1].Id) + 1, ids.IndexOf("leak test"));
        Assert.Contains("stays open as vent", plan.Steps.Single(s => s.Task == welds[^1] && s.Kind == StepKind.Weld).What,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("weld W1", "round shell.seam_angle")]
    [InlineData("round shell.seam_angle", "weld W4")]
    [InlineData("weld W4", "weld W3")]
    [InlineData("weld W6", "weld W3")]
    [InlineData("weld W10", "fit inside.packing")]
    [InlineData("fit inside.packing", "weld W11")]
    [InlineData("weld W9", "weld W7")]
    [InlineData("plug ports[2]", "weld W6")]
    [InlineData("weld W6", "chase ports[2]")]
    [InlineData("dress ports[0]", "weld W2")]
    [InlineData("weld W12", "clean")]
    [InlineData("weld W5", "weld W9")]
    [InlineData("weld W5", "weld W7")]
    [InlineData("fitting ports[0]", "weld W4")]
    public void The_launch_breather_is_built_in_order(string before, string after)
    {
        var ids = Plans.Of(Launch).Order.Tasks.Select(t => t.Id).ToList();

        Assert.Contains(before, ids);
        Assert.InRange(ids.IndexOf(before), 0, ids.IndexOf(after) - 1);
    }

    [Fact]
    public void A_cap_that_hangs_from_the_outlet_is_welded_to_it_before_the_lid_is_in_the_way()
    {
        var plan = Plans.Of("shop-compressor-catch-can.yaml");
        string Id(WeldRole role, string path) =>
            plan.Order.Tasks.Single(t => t.Weld?.Role == role && (path.Length == 0
            ? t.Weld.Owner == plan.Assembly.Design.Inside.Caps[0].Path : t.Weld.Path.StartsWith(path, StringComparison.Ordinal))).Id;
        var outlet = plan.Assembly.Design.Ports.Single(p => p.Name == plan.Assembly.Design.Inside.Caps[0].Outlet);

        Assert.Contains(plan.Order.Links, l => l.Before == Id(WeldRole.Hold, "") && l.After == Id(WeldRole.PortSeam, outlet.Path));
    }

    [Fact]
    public void The_parts_at_a_weld_are_those_that_hang_together_by_then()
    {
        var order = Plans.Of(Launch).Order;
        ImmutableHashSet<string> At(string id) => order.PartsAt(order.Tasks.Single(t => t.Id == id));

        Assert.Equal(["shell"], At("weld W1"));
        Assert.Equal(["bottom", "drain"], At("weld W6").Order());
        Assert.Equal(["cap-plate", "cap-skirt", "outlet", "top"], At("weld W9").Order());
        Assert.Equal(["lower-screen", "sleeve"], At("weld W10").Order());
        // All of them at last.
        Assert.Equal(Plans.Of(Launch).Assembly.Parts.Select(p => p.Id).Order(), At("weld W2").Order());
    }

    /// <summary>A joint that is only tacked, as a disc's, has no tacks beside its beads.</summary>
    [Fact]
    public void Each_weld_is_fitted_tacked_welded_cooled_where_it_is_hot_and_checked()
    {
        var plan = Plans.Of(Launch);

        Assert.Equal(Enumerable.Range(1, plan.Steps.Length), plan.Steps.Select(s => s.Number));
        Assert.All(plan.Procedures, weld => Assert.Equal(
            (StepKind[])
            [
                .. weld.Role == WeldRole.Mount ? Array.Empty<StepKind>() : !weld.Joint.Runs.IsEmpty
                    ? [StepKind.Fit] : [StepKind.Fit, StepKind.Tack],
                StepKind.Weld,
                .. weld.CoolBelow is null ? Array.Empty<StepKind>() : [StepKind.Cool],
                StepKind.Check,
            ],
            plan.Steps.Where(s => s.Task.Weld == weld.Joint).Select(s => s.Kind)));
    }

    /// <summary>Fitted as one, tacked as one, and only then is the first of them welded.</summary>
    [Theory]
    [InlineData(Launch, WeldRole.Mount, 2)]
    [InlineData("grain-dryer-fuel-trap.yaml", WeldRole.Mount, 2)]
    [InlineData("sawmill-generator-breather.yaml", WeldRole.GoreSeam, 12)]
    [InlineData("trawler-winch-breather.yaml", WeldRole.LongSeam, 2)]
    public void What_hangs_together_is_all_tacked_before_the_first_bead(string file, WeldRole role, int count)
    {
        var plan = Plans.Of(file);
        var groups = plan.Order.Tasks.Where(task => task.Tacked.Any(joint => joint.Role == role)).ToList();
        var steps = plan.Steps.ToList();

        Assert.NotEmpty(groups);
        Assert.All(groups, group =>
        {
            Assert.Equal(count, group.Tacked.Length);
            Assert.Equal([StepKind.Fit, StepKind.Tack], plan.Steps.Where(step => step.Task == group).Select(step => step.Kind));
            var tacked = steps.FindIndex(step => step.Task == group && step.Kind == StepKind.Tack);
            foreach (var joint in group.Tacked)
            {
                Assert.True(tacked < steps.FindIndex(step => step.Task.Weld == joint));
                Assert.DoesNotContain(steps, step => step.Task.Weld == joint && step.Kind is StepKind.Fit or StepKind.Tack
                    && step.Task.Weld == joint);
                Assert.Contains($"{joint.Number}", plan.Steps[tacked].What, StringComparison.Ordinal);
            }
        });
    }

    /// <summary>A muffler for a workshop blower: wool round a perforated pipe that hangs from one end,
    /// between two plates of the shell.</summary>
    private static string Muffler(string pipe, string inside) => $$"""
        vessel: Muffler
        material: mild steel
        shell: { outside_diameter: 120, wall: 2, height: 260, made_from: sheet, seam_angle: 180 }
        top: { shape: flat, thickness: 3, seat: inset, recess: 0, clearance: 0.2 }
        bottom: { shape: flat, thickness: 3, seat: inset, recess: 0, clearance: 0.2 }
        ports:
          - { name: way in, in: shell, at: { height: 30, angle: 0 }, tube: { outside_diameter: 30, wall: 2 }, length: 40 }
          {{pipe}}
        inside:
          {{inside}}
          packing: { material: steel wool, between: [far plate, near plate], density: 90 kg/m3 }
        """;

    private const string Plates = """
        discs:
            - { name: far plate, fits: shell, at: { height: 70 }, thickness: 2, clearance: 0.3, fixed: weld, bore: 46, hole_diameter: 4, pitch: 9, pattern: staggered_60, margin: 4 }
            - { name: near plate, fits: shell, at: { height: 210 }, thickness: 2, clearance: 0.3, fixed: weld, bore: 46, hole_diameter: 4, pitch: 9, pattern: staggered_60, margin: 4 }
        """;

    private static string Pipe(string end, int inside) =>
        $"- {{ name: pipe, in: {end}, at: {{ radius: 0 }}, tube: {{ outside_diameter: 42, wall: 2 }}, length: 40, joint: set_in, "
            + $"inside_length: {inside} }}";

    [Theory]
    [InlineData("top", "bottom", "discs[1]", "discs[0]")]
    [InlineData("bottom", "top", "discs[0]", "discs[1]")]
    public void A_pipe_through_the_wool_is_there_before_the_wool_and_the_wool_before_what_shuts_it_in(string end, string other,
        string near, string far)
    {
        var plan = Plans.OfText(Muffler(Pipe(end, 200), Plates));
        var ids = plan.Order.Tasks.Select(task => task.Id).ToList();
        int At(string path) => ids.IndexOf(WorkTask.Welding(plan.Assembly.Welds.Single(weld => weld.Joint.Path == path).Joint.Number));

        AssertKept(plan.Order);
        Assert.True(At($"inside.{near}.fixed") < At(end));
        Assert.True(At(end) < ids.IndexOf("fit inside.packing"));
        Assert.True(ids.IndexOf("fit inside.packing") < At($"inside.{far}.fixed"));
        Assert.True(At($"inside.{far}.fixed") < At(other));
        Assert.Contains("round 'pipe'", plan.Steps.Single(step => step.Task.Id == "fit inside.packing").What, StringComparison.Ordinal);
        Assert.Contains("stays open as vent", plan.Steps.Single(step => step.Task.Weld?.Path == other && step.Kind == StepKind.Weld).What,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_sleeve_through_the_wool_is_there_before_it_too()
    {
        var plan = Plans.OfText(
            Muffler("", "sleeve: { tube: { outside_diameter: 42, wall: 2 }, length: 200, hangs_from: top, fixed: weld }\n  " + Plates));
        var ids = plan.Order.Tasks.Select(task => task.Id).ToList();
        int At(string path) => ids.IndexOf(WorkTask.Welding(plan.Assembly.Welds.Single(weld => weld.Joint.Path == path).Joint.Number));

        Assert.True(At("inside.sleeve.fixed") < At("top"));
        Assert.True(At("top") < ids.IndexOf("fit inside.packing"));
        Assert.True(ids.IndexOf("fit inside.packing") < At("inside.discs[0].fixed"));
        Assert.True(At("inside.discs[0].fixed") < At("bottom"));
    }

    [Fact]
    public void A_pipe_that_ends_above_the_wool_changes_nothing()
    {
        var plan = Plans.OfText(Muffler(Pipe("top", 20), Plates));
        var ids = plan.Order.Tasks.Select(task => task.Id).ToList();
        int At(string path) => ids.IndexOf(WorkTask.Welding(plan.Assembly.Welds.Single(weld => weld.Joint.Path == path).Joint.Number));

        Assert.True(At("inside.discs[0].fixed") < ids.IndexOf("fit inside.packing"));
        Assert.True(ids.IndexOf("fit inside.packing") < At("inside.discs[1].fixed"));
        Assert.Equal(ids.IndexOf("leak test") - 1, At("top"));
    }

    /// <summary>Nothing of no size is asked for, and no range from a figure to itself.</summary>
    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void No_step_says_what_nobody_can_do(string file) => Assert.All(Plans.Of(file).Steps, step =>
    {
        Assert.DoesNotContain("gap to 0 mm", step.What, StringComparison.Ordinal);
        Assert.DoesNotContain("gap 0 mm", step.What, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\b(\d+\.\d) to \1 mm", step.What);
        Assert.DoesNotMatch(@" 0\.0 mm from the middle", step.What);
    });

    /// <summary>The inlet is ground to the shell; the outlet goes straight through the lid and gets a plain saw cut.</summary>
    [Fact]
    public void Only_a_coped_end_is_ground()
    {
        var steps = Plans.Of(Launch).Steps.Where(s => s.Kind == StepKind.Make).ToDictionary(s => s.Task.Id, s => s.What);

        Assert.Contains("grind", steps["make inlet"], StringComparison.Ordinal);
        Assert.DoesNotContain("grind", steps["make outlet"], StringComparison.Ordinal);
    }

    /// <summary>Every part but the bracket's own bending is a cut of its own; the drain's thread is plugged and chased.</summary>
    [Theory]
    [InlineData(StepKind.Make, 12)]
    [InlineData(StepKind.Plug, 1)]
    [InlineData(StepKind.Chase, 1)]
    [InlineData(StepKind.Dress, 1)]
    [InlineData(StepKind.Round, 1)]
    [InlineData(StepKind.Clean, 1)]
    [InlineData(StepKind.Test, 1)]
    [InlineData(StepKind.Finish, 0)]
    public void The_launch_breather_takes_so_many(StepKind kind, int count) =>
        Assert.Equal(count, Plans.Of(Launch).Steps.Count(s => s.Kind == kind));

    [Theory]
    [InlineData("passivated", "pickle")]
    [InlineData("painted", "prime")]
    [InlineData("powder_coated", "oven")]
    [InlineData("anodised", "anodise")]
    public void A_finish_is_the_last_step(string finish, string word) =>
        Assert.Contains(word, Plans.OfText(Repository.Design(Launch), $"finish={finish}").Steps[^1].What, StringComparison.Ordinal);

    /// <summary>Weld purging guides: 3 L at 5 L/min take 3.0 min for 5 changes and 6.0 for 10; 7.65 changes leave 100 ppm.</summary>
    [Theory]
    [InlineData(1411.6, 3.0)]
    [InlineData(100, 4.588)]
    [InlineData(9.511, 6.0)]
    public void Purge_time(double oxygen, double minutes) => Assert.Equal(minutes, Purge.Of(3, 5, oxygen).Minutes, 1e-3);

    private static void AssertKept(WorkOrder order)
    {
        var place = order.Tasks.Select((t, i) => (t.Id, i)).ToDictionary(t => t.Id, t => t.i);

        Assert.All(order.Links, link => Assert.InRange(place[link.Before], 0, place[link.After] - 1));
    }
}
