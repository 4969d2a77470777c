using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Planning;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

public sealed class SetUpTableTests
{
    public static TheoryData<string> DesignFiles() => Repository.DesignFiles();

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void The_measures_of_a_port_in_the_shell_lead_to_its_axis(string file) => Lead(Plans.Of(file).Assembly);

    /// <summary>Offsets up to near the tangent.</summary>
    [Theory]
    [MemberData(nameof(RandomDesigns.Seeds), MemberType = typeof(RandomDesigns))]
    public void So_they_do_in_random_designs(int seed) => RandomDesigns.Hold(seed, Lead);

    /// <summary>The arc along the outside and the height lead to the place where the port's axis meets it,
    /// with no more to be known.</summary>
    private static void Lead(Assembly assembly)
    {
        var rows = SetUpTable.Of(assembly).ToDictionary(row => row.What);

        Assert.All(assembly.Sites.Where(site => site.Port.Host == Vessel.Design.PortHost.Shell), site =>
        {
            var (row, radius) = (rows[site.Port.Name], assembly.Design.Shell.OuterAt(site.Port.Place.Height));
            var angle = row.Arc!.Value / radius;
            var (sin, cos) = Math.SinCos(angle);
            var foot = new Vector3(radius * cos, radius * sin, row.Height);
            // Half a micrometre: sines and a root of figures of a few hundred millimetres.
            Assert.InRange((foot - site.Frame.Origin).Length, 0, 5e-7);
            Assert.Equal(row.Clock!.Value, Turns.ToDegrees(angle), 1e-9);
        });
    }

    /// <summary>Recomputed apart: 60 asin(18 / 60), 75 asin(61 / 75), and a quarter of the girth less that.</summary>
    [Theory]
    [InlineData(120, 0, 18, 18.2815)]
    [InlineData(150, 0, 61, 71.2394)]
    [InlineData(150, 90, -61, 46.5703)]
    public void The_arc_of_an_offset_port_is_that_of_its_axis(double diameter, double angle, double offset, double arc)
    {
        var shell = Designs.Shell(diameter, 2, 200, Vessel.Design.StockForm.Tube);
        var port = Designs.Branch("inlet", 20, 2, new(100, angle * Math.PI / 180, offset, 0, 0));

        var row = SetUpTable.Of(Compiler.Assemble(Designs.Vessel(shell, port))).Single(row => row.What == "inlet");

        Near.Absolute(arc, row.Arc!.Value, 1e-3);
    }

    /// <summary>Every weld but those of heads, of the shell's courses,
    /// of gores and their own seams holds something that is placed.</summary>
    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Each_row_names_the_welds_that_hold_it(string file)
    {
        var plan = Plans.Of(file);
        var placed = SetUpTable.Of(plan.Assembly).SelectMany(row => row.Welds).ToList();
        var heads =
            plan.Procedures.Where(weld =>
                weld.Role is WeldRole.HeadSeam or WeldRole.GirthSeam or WeldRole.ConeSeam or WeldRole.GoreSeam or WeldRole.CrownSeam)
                .Select(weld => weld.Joint.Number);

        Assert.Equal(placed.Count, placed.Distinct().Count());
        Assert.Equal(plan.Procedures.Select(weld => weld.Joint.Number).Except(heads).Order(), placed.Order());
        Assert.All(
            plan.Assembly.Sites,
            site => Assert.Equal(plan.Procedures.Where(weld => weld.Joint.Owner == site.Port.Path).Select(weld => weld.Joint.Number),
                SetUpTable.Of(plan.Assembly).Single(row => row.What == site.Port.Name).Welds));
    }

    /// <summary>Every port is shut; every weld of the wall and every thread is looked at, and no weld inside.</summary>
    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void The_leak_test_shuts_every_port_and_looks_at_every_weld_of_the_wall(string file)
    {
        var (plan, kit) = (Plans.Of(file), Plans.Of(file).LeakKit);
        var wall = plan.Procedures.Where(weld => weld.Role.IsWall()).Select(weld => weld.Joint.Number);

        Assert.Equal(plan.Assembly.Design.Ports.Select(port => port.Name), kit.Blanks.Select(blank => blank.Port));
        Assert.Empty(wall.Except(kit.Points.Select(point => point.Where)));
        Assert.DoesNotContain(plan.Procedures.Where(weld => weld.Role is WeldRole.Hold or WeldRole.Within), weld =>
            kit.Points.Any(point => point.Where == weld.Joint.Number));
        Assert.All(plan.Assembly.Design.Ports.Where(port => port.Thread is not null),
            port => Assert.Contains(kit.Points, point => point.Where == port.Name));
    }

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Everything_that_is_placed_has_a_row_of_its_own(string file)
    {
        var design = Plans.Of(file).Assembly.Design;
        var inside = design.Inside;
        var rows = SetUpTable.Of(Plans.Of(file).Assembly).Select(row => row.What).ToList();

        Assert.Equal(rows.Count, rows.Distinct().Count());
        Assert.All(
            design.Ports.Select(p => p.Name).Concat(inside.Sleeves.Select(s => s.Name)).Concat(inside.Caps.Select(c => c.Name))
                .Concat(inside.Discs.Select(d => d.Name)),
            name => Assert.Contains(name, rows));
    }
}
