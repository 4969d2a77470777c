using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Planning;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Members.DividerPlates;

public sealed class DividerPlateTests
{
    private const string File = "orchard-sprayer-settling-pot.yaml";

    [Theory]
    [InlineData(0, 0)]
    [InlineData(9, 0)]
    [InlineData(0, 12)]
    [InlineData(20, 12)]
    public void Its_metal_is_a_disc_less_the_lens_of_the_notch_and_the_vent_hole(double notch, double vent)
    {
        var (part, joint) = Divider(Plan(notch, vent).Assembly);
        var radius = part.Stock.Width / 2 is var half && part.Stock.Length == part.Stock.Width ? half : 0;

        // Two circles whose middles are the larger one's radius apart share a lens:
        // r^2 acos(r / 2R) + R^2 acos(1 - r^2 / 2R^2) - r sqrt(4R^2 - r^2) / 2.
        var lens = (notch * notch * Math.Acos(notch / (2 * radius)))
            + (radius * radius * Math.Acos(1 - (notch * notch / (2 * radius * radius))))
            - (notch / 2 * Math.Sqrt((4 * radius * radius) - (notch * notch)));
        var area = (Math.PI * ((radius * radius) - (vent * vent / 4))) - lens;
        Near.Relative(area * part.Thickness, part.Volume, 1e-9);
        var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);
        MeshLaws.Hold(mesh, vent > 0 ? 1 : 0);
        Assert.Equal(part.Volume, mesh.Volume, Accuracy.Solids.Chord * CurveMeasures.Length(part.Flat!.Cut) * part.Thickness);

        // The bead runs in the shell's bore but for the notch, whose ends lie on the plate's rim.
        var bore = joint.Along(0).Root is var at ? double.Hypot(at.X, at.Y) : 0;
        Near.Relative(bore * (Turns.Full - (4 * Math.Asin(notch / (2 * radius)))), joint.Length, 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(100)]
    [InlineData(355)]
    public void No_tack_stands_in_its_notch(double angle)
    {
        var plan = Plans.OfText(Repository.Design(File), "inside.divider.drain_notch=30 mm", $"inside.divider.notch_angle={angle} deg");
        var (_, joint) = Divider(plan.Assembly);

        var tacks = Tacks.Of(plan.Assembly.Welds.Single(weld => weld.Joint.Number == joint.Number));

        Assert.NotEmpty(tacks.Places);
        Assert.False(joint.IsTacked);
        Assert.All(tacks.Places, place => Assert.True(
            Math.Abs(Turns.Signed((place - angle) * Math.PI / 180)) > 2 * Math.Asin(30 / 163.9) - 1e-9, $"{place} deg"));
    }

    [Fact]
    public void The_vessel_holds_less_by_its_metal()
    {
        var assembly = Plan(9, 12).Assembly;
        var bare = Compiler.Assemble(assembly.Design with { Members = [] });

        var taken = bare.Attitude.VolumeBelow(bare.Attitude.Depth.End) - assembly.Attitude.VolumeBelow(assembly.Attitude.Depth.End);

        Near.Relative(Divider(assembly).Part.Volume, taken, 1e-9);
    }

    /// <summary>Liquid and air pass through the notch and the hole alone.</summary>
    [Theory]
    [InlineData(9, 12)]
    [InlineData(9, 0)]
    [InlineData(0, 12)]
    [InlineData(0, 0)]
    public void It_parts_the_vessel_in_two_rooms_with_what_is_open_in_it_between_them(double notch, double vent)
    {
        var assembly = Plan(notch, vent).Assembly;
        var part = Divider(assembly).Part;
        var bore = assembly.Design.Shell.InnerRadius;

        Assert.Equal(2, assembly.Cavity.Rooms.Length);
        var ways = assembly.Cavity.Openings.Where(way => way.Path == part.Path).ToList();
        Assert.Equal(notch + vent > 0 ? 1 : 0, ways.Count);
        // All round the plate a bead fills its clearance.
        Assert.All(ways, way =>
            Near.Relative((Math.PI * part.Stock.Width * part.Stock.Width / 4) - (part.Volume / part.Thickness), way.Area, 1e-6));
        Assert.All(ways, way => Assert.Equal(80, way.Axial.Start, 1e-9));
        Assert.True(bore > 0);
    }

    [Fact]
    public void A_shut_one_leaves_a_room_without_a_way_out()
    {
        var text = Repository.Design(File);
        bool Sealed(params string[] with) =>
            Compiler.Assess(Plans.OfText(text, with)).Any(finding => finding.Code == FindingCodes.SealedRoom);

        Assert.False(Sealed());
        // Below it there is then neither the drain nor the suction.
        Assert.True(Sealed("inside.divider.drain_notch=0 mm", "inside.divider.vent_hole=0 mm", "inside.divider.at.height=8 mm",
            "ports[4].in=top", "ports[4].at.radius=45 mm"));
    }

    [Theory]
    [InlineData("drain_notch=45 mm", "inside.divider.drain_notch")]
    [InlineData("vent_hole=80 mm", "inside.divider.vent_hole")]
    public void Openings_that_reach_past_the_middle_are_faults(string with, string path)
    {
        var faults = Compiler.Read(Repository.Design(File), new(null, [$"inside.divider.{with}"])).Faults;

        var fault = Assert.Single(faults);
        Assert.Equal((FaultCodes.BoreTooWide, path), (fault.Code, fault.Path));
    }

    private static Plan Plan(double notch, double vent) =>
        Plans.OfText(Repository.Design(File), $"inside.divider.drain_notch={notch} mm", $"inside.divider.vent_hole={vent} mm");

    private static (Part Part, Joint Joint) Divider(Assembly assembly) => (
        assembly.Parts.Single(part => part.Name == "divider"), assembly.Joints.All.Single(joint => joint.Owner == "inside.divider"));
}
