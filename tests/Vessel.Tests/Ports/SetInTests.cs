using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Tests.Reading;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Ports;

/// <summary>Tubes that pass through a hole: where their inner ends lie, and what room the hole leaves them.</summary>
public sealed class SetInTests
{
    private const int Lines = 3600;

    /// <summary>Of a file without an inside length, on each kind of host, upright, aside and leaning.</summary>
    [Theory]
    [InlineData("in: shell, at: { height: 100, tilt: 45 }", "")]
    [InlineData("in: shell, at: { height: 100, offset: -40, tilt: -20 }", "")]
    [InlineData("in: shell, at: { height: 100, tilt: 30, offset: 20 }", "top_diameter: 110,")]
    [InlineData("in: bottom, at: { radius: 30 }", "")]
    [InlineData("in: bottom, at: { radius: 30, square_to_surface: true }", "")]
    [InlineData("in: top, at: { radius: 20 }", "")]
    public void A_tube_without_an_inside_length_comes_through_all_round_and_no_further(string where, string shell)
    {
        var design = DesignTexts.Good($$"""
            vessel: Grain drier's trap
            material: stainless 304
            shell: { outside_diameter: 150, {{shell}} wall: 2, height: 200, made_from: sheet, seam_angle: 180 }
            top: { shape: flat, thickness: 3 }
            bottom: { shape: hemisphere }
            ports:
              - { name: feed, {{where}}, tube: { outside_diameter: 30, wall: 2 }, length: 80, joint: set_in }
            """);
        var site = PortSites.Of(design).Of(design.Ports[0]);

        // Least at the deepest place: none is missed by more than the square of half a step of the 720 lines that are looked at.
        var (deepest, step) = (Enumerable.Range(0, Lines).Min(i => site.Inside.Reach(15, Turns.Full * i / Lines)), Math.PI / 720);
        Assert.InRange(deepest - site.InnerEnd, -15 * step * step, 15 * step * step);
        Assert.True(site.LeftOutside < 0);
    }

    /// <summary>An explicit length is a fault from just where the end would leave the outer face, at the tube's deepest line.</summary>
    [Theory]
    [MemberData(nameof(RandomDesigns.Seeds), MemberType = typeof(RandomDesigns))]
    public void An_end_that_stays_outside_its_host_is_a_fault(int seed) => RandomDesigns.Hold(seed, built =>
    {
        var vessel = built.Design;
        foreach (var (port, i) in vessel.Ports.Select((port, i) => (port, i))
            .Where(port => port.port is { Joint: PortJoint.SetIn, IsFlush: false, Windows.IsEmpty: true }))
        {
            var site = PortSites.Of(vessel).Of(port);
            var deepest = Enumerable.Range(0, Lines).Min(line => site.Outside.Reach(port.OuterRadius, Turns.Full * line / Lines));
            // The inside length with which the square end would just touch the outer face where that lies deepest.
            var just = site.InsideAxis - deepest;
            bool IsFault(double length) =>
                BranchReachCheck.Find(PortSites.Of(vessel with { Ports = vessel.Ports.SetItem(i, port with { InsideLength = length }) }))
                    .Any(fault => fault.Code == FaultCodes.EndOutsideHost && fault.Path.StartsWith(port.Path, StringComparison.Ordinal));
            var hair = 1e-4 * port.OuterRadius;
            Assert.False(IsFault(just + hair));
            if (just - hair > 0)
                Assert.True(IsFault(just - hair));
        }
    });

    /// <summary>
    /// In a rolled shell the hole's walls are radial: the nearest place of any of them to the tube is as far from it as the clearance says,
    /// square to the tube; at the port near the tangent that the flat would have told 0.3 of, too.
    /// </summary>
    [Theory]
    [MemberData(nameof(RandomDesigns.Seeds), MemberType = typeof(RandomDesigns))]
    public void A_rolled_shells_hole_keeps_the_clearance_square_to_the_tube(int seed) => RandomDesigns.Hold(seed, built =>
    {
        var vessel = built.Design;
        Assert.All(
            vessel.Ports.Where(port => port is { Host: PortHost.Shell, Joint: PortJoint.SetIn }
                && vessel.Shell.MadeFrom == StockForm.Sheet && PortSites.Of(vessel).Of(port).Over is null),
            port => Holds(vessel.Shell, PortSites.Of(vessel).Of(port)));
    });

    [Fact]
    public void So_it_does_at_a_port_near_the_tangent()
    {
        var shell = Designs.Shell(150, 2, 200);
        var (_, site) = Designs.Alone(shell,
            Designs.Branch("inlet", 30, 2, new(100, 0, 57.5, 0, 0)) with { Joint = PortJoint.SetIn, Clearance = 0.3, InsideLength = 60 });
        Holds(shell, site);
    }

    private static void Holds(ShellDesign shell, PortSite site)
    {
        const int outlines = 1440, layers = 40;
        var opening = ShellOpening.Of(site);
        var least = double.PositiveInfinity;
        for (var i = 0; i < outlines; i++)
        {
            var (angle, height) = opening.Outer.At(opening.Outer.Domain.At((i + 0.5) / outlines));
            for (var layer = 0; layer <= layers; layer++)
            {
                var radius = shell.InnerRadius + (shell.Wall * layer / layers);
                var local = site.Frame.ToLocal(new Vector3(radius * Math.Cos(angle), radius * Math.Sin(angle), height));
                least = Math.Min(least, double.Hypot(local.X, local.Y) - site.Port.OuterRadius);
            }
        }

        // Never nearer; and as near, to the square of half a step of the layers and lines looked at.
        Assert.InRange(least - site.Port.Clearance, -1e-9, 2e-3 * shell.Wall);
    }
}
