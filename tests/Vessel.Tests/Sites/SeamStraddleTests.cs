using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Dishes;
using Vessel.Parts;
using Vessel.Planning;
using Vessel.Reading;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Ports;

/// <summary>
/// Ports over the seam of shell and dish. That coped ends lie on both, and that solids close, random designs tell (re-assembly, solid
/// laws); volumes and weld lengths of tilted and offset ones stand against an independent kernel (Readers/kernel/over-seam.yaml).
/// </summary>
public sealed class OverSeamTests
{
    private const double Radius = 16;

    private static PortDesign Level(double height) => Designs.Branch("inlet", 2 * (Radius + 2), 2, new(height, 0.5, 0, 0, 0));

    private static Assembly Vessel(PortDesign port, HeadDesign? bottom = null, StockForm form = StockForm.Tube) =>
        Compiler.Assemble(Designs.Vessel(Designs.Shell(madeFrom: form), port) is var vessel && bottom is not null
            ? vessel with { Bottom = bottom } : vessel);

    private static double Weld(Assembly vessel) => vessel.Welds.Single(weld => weld.Joint.Path == "ports[0]").Length;

    private static double Volume(Assembly vessel, string part) => vessel.Parts.Single(p => p.Id == part).Volume;

    /// <summary>
    /// With its axis through the centre of a half sphere, in the seam's plane, a port's lower half stands on the sphere as on a lid with a
    /// round hole and its upper half on a cylinder.
    /// </summary>
    [Fact]
    public void A_port_through_the_middle_of_a_half_sphere_has_half_a_circle_and_half_a_saddle()
    {
        var (over, plain) = (Vessel(Level(0)), Vessel(Level(90)));

        Near.Relative((Math.PI * (Radius + 2)) + (Weld(plain) / 2), Weld(over), 1e-9);
    }

    /// <summary>The drill leaves of a ball of radius R the part with (R^2 - r^2)^(3/2); half of one side of it is in the notch.</summary>
    [Fact]
    public void Its_notches_are_half_a_hole_through_the_tube_and_half_a_hole_through_the_ball()
    {
        var shell = Designs.Shell(madeFrom: StockForm.Tube);
        var (over, plain, none) = (Vessel(Level(0)), Vessel(Level(90)), Vessel(Designs.OnHead("inlet", VesselEnd.Top, 36, 2, 0)));
        double Bored(double r) => 2 * Math.PI / 3 * (Math.Pow(r, 3) - Math.Pow((r * r) - (Radius * Radius), 1.5));
        var hole = Volume(none, "shell") - Volume(plain, "shell");

        Near.Relative(hole / 2, Volume(none, "shell") - Volume(over, "shell"), 1e-8);
        Near.Relative(
            (Bored(shell.OuterRadius) - Bored(shell.InnerRadius)) / 2, Volume(none, "bottom") - Volume(over, "bottom"), 1e-8);
    }

    /// <summary>Rolled from sheet it is drilled as well, since the hole waits for the seam.</summary>
    [Fact]
    public void A_rolled_shell_is_drilled_along_the_axis_too()
    {
        var (sheet, tube) = (Vessel(Level(0), form: StockForm.Sheet), Vessel(Level(0)));
        var flat = sheet.Parts.Single(part => part.Id == "shell").Flat!;

        Near.Relative(Volume(tube, "shell"), Volume(sheet, "shell"), 1e-12);
        Assert.Empty(flat.Cut.Holes);
        Assert.Equal(HoleTime(sheet), HoleTime(tube));
        static bool HoleTime(Assembly vessel) => vessel.Parts.Single(part => part.Id == "shell").Holes.Single().IsLater;
    }

    /// <summary>Every place of a notch's wall is as far from the port's axis as the hole is wide,
    /// and no metal is left beyond the seam.</summary>
    [Theory]
    [InlineData(0, 0, 6)]
    [InlineData(18, 0.4, 8)]
    [InlineData(-30, -0.3, 2)]
    public void The_walls_of_a_notch_are_the_drills(double offset, double tilt, double height)
    {
        var vessel = Vessel(Level(height) with { Place = new(height, 0.5, offset, tilt, 0) });
        var site = vessel.Sites.Single();
        var edges = new[]
        {
            (Edge: NotchedEdge.OfShell(VesselEnd.Bottom, vessel.Design.Shell.Courses[0], vessel.Sites, null), Above: true),
            (Edge: NotchedEdge.OfDish(VesselEnd.Bottom, HeadShape.Of(VesselEnd.Bottom, vessel.Design)!, vessel.Sites), Above: false),
        };

        foreach (var (edge, above) in edges)
        {
            foreach (var (t, w) in from i in Enumerable.Range(0, 25) from j in Enumerable.Range(0, 5) select (i / 24.0, j / 4.0))
            {
                var at = edge.At(t, w);
                var local = site.Frame.ToLocal(at);
                // Both roots are found to a hair of the turn.
                Assert.Equal(site.OpeningRadius, new Point2(local.X, local.Y).Length, 1e-9);
                Assert.True(above ? at.Z > -1e-9 : at.Z < 1e-9);
                Assert.True(t is > 0 and < 1 || Math.Abs(at.Z) < 1e-9);
            }
        }

        // At the seam's level the two parts share their edge on the outside, to the same hair.
        Assert.Equal(0, (edges[0].Edge.At(0, 0) - edges[1].Edge.At(0, 0)).Length, 1e-9);
        Assert.Equal(0, (edges[0].Edge.At(1, 0) - edges[1].Edge.At(1, 0)).Length, 1e-9);
    }

    [Fact]
    public void Its_hole_and_weld_wait_for_the_seam()
    {
        var plan = Plan.Of(Vessel(Level(4), form: StockForm.Sheet));
        var welds = plan.Assembly.Welds.ToDictionary(weld => weld.Joint.Path, weld => WorkTask.Welding(weld.Joint.Number));
        var order = plan.Steps.Select(step => step.Task.Id).ToList();

        Assert.True(order.IndexOf(welds["bottom"]) < order.IndexOf(welds["ports[0]"]));
        Assert.True(order.IndexOf(welds["ports[0]"]) < order.IndexOf(welds["top"]));
        Assert.Equal(Severity.Note, Found(plan.Assembly)?.Severity);
    }

    [Fact]
    public void Over_the_closing_seam_it_is_warned_of_and_off_the_seam_there_is_nothing_to_say()
    {
        var shell = Designs.Shell();
        var both = Designs.Vessel(shell, Level(4), Level(176) with { Name = "outlet" }) with { Top = Designs.Dome(shell, "top") };
        var plan = Plan.Of(Compiler.Assemble(both));

        Assert.Contains(Assessment.Of(plan.Assembly),
            finding => finding is { Code: FindingCodes.PortOverHeadSeam, Severity: Severity.Warning });
        Assert.Null(Found(Vessel(Level(90))));
    }

    [Theory]
    [InlineData(EndCut.HoleSaw, 36, FaultCodes.KeyDoesNotApply)]
    [InlineData(EndCut.Ground, 36, null)]
    public void A_saw_of_the_shells_diameter_is_refused(EndCut cut, double diameter, string? code)
    {
        var faults = DesignCheck.Find(Designs.Vessel(Designs.Shell(), Level(4) with { Cut = cut, OutsideDiameter = diameter }));

        Assert.Equal(code is null ? [] : [code], faults.Select(fault => fault.Code));
    }

    /// <summary>A shallow dish ends above the lower lines of a wide port, or of a thick one.</summary>
    [Theory]
    [InlineData(56, FaultCodes.HoleNearShellEnd)]
    [InlineData(28, FaultCodes.PortOffShell)]
    public void A_port_that_reaches_past_the_dish_is_refused(double bore, string code)
    {
        var shallow = new TorisphereHead("bottom", Designs.Stainless, 2, 110, 8, null);
        var design = Designs.Vessel(Designs.Shell(), Level(0) with { OutsideDiameter = 60, Bore = bore }) with { Bottom = shallow };

        Assert.Equal([code], DesignCheck.Find(design).Select(fault => fault.Code));
    }

    [Fact]
    public void A_port_of_the_head_in_its_way_is_found()
    {
        var inWay = Designs.OnHead("drain", VesselEnd.Bottom, 20, 2, 50, 0.5) is var drain
            ? drain with { Place = drain.Place with { SquareToSurface = true } } : null!;
        VesselDesign With(PortDesign drain) => Designs.Vessel(Designs.Shell(), Level(0), drain);

        Assert.Equal([FaultCodes.HolesOverlap], DesignCheck.Find(With(inWay)).Select(fault => fault.Code));
        Assert.Empty(DesignCheck.Find(With(inWay with { Place = inWay.Place with { Angle = 0.5 + Math.PI } })));
    }

    private static Measure? Found(Assembly vessel) =>
        Assessment.Of(vessel).SingleOrDefault(finding => finding.Code == FindingCodes.PortOverHeadSeam);
}
