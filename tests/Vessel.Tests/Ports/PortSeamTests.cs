using Vessel.Design;
using Vessel.Geometry;
using Vessel.Heads.FlatHeads;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Ports;

public sealed class PortSeamTests
{
    public static TheoryData<int> Seeds => RandomDesigns.Seeds;

    private static Joint Seam((VesselDesign Vessel, PortSite Site) tee) =>
        PortSeam.Of(tee.Site, tee.Vessel);

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.95)]
    public void The_angle_opens_from_a_right_one_at_the_crown_to_asin_k_more_at_the_flank(double k)
    {
        var seam = Seam(Designs.Tee(55, 55 * k));

        Near.Absolute(Math.PI / 2, seam.Along(0).Dihedral, 1e-12);
        Near.Absolute(Math.PI / 2, seam.Along(Math.PI).Dihedral, 1e-12);
        // Arc cosines lose half their digits near a straight angle.
        Near.Absolute((Math.PI / 2) + Math.Asin(k), seam.Along(Math.PI / 2).Dihedral, 1e-9);
        Near.Absolute((Math.PI / 2) + Math.Asin(k), seam.Along(-Math.PI / 2).Dihedral, 1e-9);
    }

    [Theory]
    [InlineData(0.4)]
    [InlineData(-0.9)]
    public void A_tilted_branch_leans_away_from_one_side_by_its_tilt(double tilt)
    {
        var seam = Seam(Designs.Tee(55, 20, tilt: tilt));

        // Phi = 0 is the down side: a branch that rises leans away from the shell below it.
        Near.Absolute((Math.PI / 2) + tilt, seam.Along(0).Dihedral, 1e-12);
        Near.Absolute((Math.PI / 2) - tilt, seam.Along(Math.PI).Dihedral, 1e-12);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Roots_lie_on_both_surfaces_and_legs_along_them_square_to_the_path(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var site in vessel.Sites)
        {
            var seam = PortSeam.Of(site, vessel.Design);
            foreach (var phi in Enumerable.Range(0, 72).Select(i => Turns.Full * (i + 0.5) / 72))
            {
                var at = seam.Along(phi);
                var (local, host) = (site.Frame.ToLocal(at.Root), HostAt(site, vessel.Design, at.Root.Z));
                Near.Absolute(site.Port.OuterRadius, new Point2(local.X, local.Y).Length, 1e-9);
                Near.Absolute(0, FromHost(vessel.Design, host, at.Root), 1e-7);
                var tangent = at.Tangent.Unit();
                Near.Absolute(0, tangent.Dot(at.AlongHost), 1e-7);
                Near.Absolute(0, tangent.Dot(at.AlongPart), 1e-7);
                // A hair along the tube leads away from the host; a hair along the host leads off the tube.
                Assert.True(FromHost(vessel.Design, host, at.Root + (1e-3 * at.AlongPart)) > 0);
                var aside = site.Frame.ToLocal(at.Root + (1e-3 * at.AlongHost));
                Assert.True(new Point2(aside.X, aside.Y).Length > site.Port.OuterRadius);
                Near.Absolute(Math.Cos(at.Dihedral), at.AlongHost.Dot(at.AlongPart), 1e-9);
            }
        }
    });

    /// <summary>Over a head's seam the head is host beyond it.</summary>
    private static VesselEnd? HostAt(PortSite site, VesselDesign vessel, double height) =>
        site.Over is { } end && (end == VesselEnd.Top ? height > vessel.Shell.Height : height < 0) ? end : site.Port.End;

    /// <summary>Distance outside the host, in the vessel's frame.</summary>
    private static double FromHost(VesselDesign vessel, VesselEnd? host, Vector3 at)
    {
        var (shell, up) = (vessel.Shell, host == VesselEnd.Top ? 1 : -1);
        var level = host == VesselEnd.Top ? shell.Height : 0;
        return (host, host is { } end ? vessel.Head(end) : null) switch
        {
            (null, _) => Math.Sqrt((at.X * at.X) + (at.Y * at.Y)) - shell.OuterRadius,
            (_, FlatHead { Seat: Seat.Inset } lid) => up * (at.Z - (level - (up * lid.Recess))),
            (_, FlatHead lid) => up * (at.Z - (level + (up * lid.Wall))),
            // From the head's profile: for a half sphere the distance from its centre.
            _ => FromFormed(HeadShape.Of(host.Value, vessel)!, at),
        };
    }

    private static double FromFormed(HeadShape shape, Vector3 at)
    {
        var local = shape.Frame.ToLocal(at);
        return HeadShape.Pointed(shape.Outer).Distance(local);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Gaps_are_nowhere_negative_and_only_square_cuts_have_any(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var site in vessel.Sites)
        {
            var weld = vessel.Welds.Single(weld => weld.Joint.Path == site.Port.Path);
            Assert.All(weld.Stations, s => Assert.True(s.At.GapNormal >= -1e-9 && s.At.GapAxial >= s.At.GapNormal - 1e-9));
            if (site.Port is { Joint: PortJoint.SetOn, Cut: not EndCut.Square })
                Near.Absolute(0, weld.GapAxial, 1e-9);
        }
    });

    [Theory]
    [InlineData(20, 0.5)]
    [InlineData(38, 0)]
    public void Mirrored_offset_changes_no_figure(double offset, double tilt)
    {
        var (a, b) = (WeldFigures.Of(Seam(Designs.Tee(55, 16, 2, offset, tilt))),
            WeldFigures.Of(Seam(Designs.Tee(55, 16, 2, -offset, tilt))));

        Near.Relative(a.Length, b.Length, 1e-10);
        Near.Relative(a.Deposit, b.Deposit, 1e-6);
        Near.Absolute(a.GapAxial, b.GapAxial, 1e-9);
    }

    [Fact]
    public void Turning_the_whole_vessel_changes_no_figure()
    {
        var design = Designs.Sound;
        var turned = Compiler.Assemble(design with
        {
            Shell = design.Shell with { SeamAngle = Turns.From(design.Shell.SeamAngle + 1, 0) },
            Ports = [.. design.Ports.Select(port => port with { Place = port.Place with { Angle = port.Place.Angle + 1 } })],
        });
        var vessel = Compiler.Assemble(design);

        Assert.All(vessel.Welds.Zip(turned.Welds), w => Near.Relative(w.First.Length, w.Second.Length, 1e-10));
        Assert.All(vessel.Welds.Zip(turned.Welds), w => Near.Relative(w.First.Deposit, w.Second.Deposit, 1e-6));
        Assert.All(vessel.Parts.Zip(turned.Parts), p => Near.Relative(p.First.Volume, p.Second.Volume, 1e-10));
        var (before, after) = (vessel.Parts[0].Flat!.Cut.Holes[0], turned.Parts[0].Flat!.Cut.Holes[0]);
        Assert.True((before.Edges[0].Start - after.Edges[0].Start).Length < 1e-9);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Metal_is_about_section_times_length(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var weld in vessel.Welds)
        {
            Assert.True(weld.Length > 0);
            var areas = weld.Stations.Select(s => Bead.Of(weld.Joint, s.At).Area).ToList();
            // The centroid's path is longer or shorter than the root by no more than its own distance over the least bend.
            Assert.InRange(weld.Deposit / weld.Length, 0.5 * areas.Min(), 2 * areas.Max());
        }
    });
}
