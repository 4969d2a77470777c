using Vessel.Geometry;
using Vessel.Planning;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

public sealed class SetUpTests
{
    public static TheoryData<string> DesignFiles() => Repository.DesignFiles();

    /// <summary>Arc and height lead to the foot of the port's axis, but for the offset, which is square to the clock angle.</summary>
    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void The_measures_of_a_port_in_the_shell_lead_to_its_axis(string file)
    {
        var assembly = Plans.Of(file).Assembly;
        var radius = assembly.Design.Shell.OuterRadius;
        var rows = SetUp.Of(assembly).ToDictionary(row => row.What);

        Assert.All(assembly.Sites.Where(site => site.Port.Host == Vessel.Design.PortHost.Shell), site =>
        {
            var row = rows[site.Port.Name];
            var angle = row.Arc!.Value / radius;
            var (sin, cos) = Math.SinCos(angle);
            var along = Math.Sqrt((radius * radius) - (row.FromAxis!.Value * row.FromAxis.Value));
            var foot = new Vector3((along * cos) - (row.FromAxis.Value * sin), (along * sin) + (row.FromAxis.Value * cos), row.Height);
            // Half a micrometre: sines and a root of figures of a few hundred millimetres.
            Assert.InRange((foot - site.Frame.Origin).Length, 0, 5e-7);
            Assert.Equal(row.Clock!.Value, Turns.ToDegrees(angle), 1e-9);
        });
    }

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Everything_that_is_placed_has_a_row_of_its_own(string file)
    {
        var design = Plans.Of(file).Assembly.Design;
        var inside = design.Inside;
        var rows = SetUp.Of(Plans.Of(file).Assembly).Select(row => row.What).ToList();

        Assert.Equal(rows.Count, rows.Distinct().Count());
        Assert.All(
            design.Ports.Select(p => p.Name).Concat(inside.Sleeves.Select(s => s.Name)).Concat(inside.Caps.Select(c => c.Name)).Concat(inside.Discs.Select(d => d.Name)),
            name => Assert.Contains(name, rows));
    }
}
