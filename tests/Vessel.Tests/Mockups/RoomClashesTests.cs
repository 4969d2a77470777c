using Vessel.Design;
using Vessel.Findings;
using Vessel.Geometry;
using Vessel.Members.Saddles;
using Vessel.Tests.Members.Brackets;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Mockups;

public sealed class RoomClashesTests
{
    [Theory]
    [InlineData(46.9, 0.9)]
    [InlineData(47.1, null)]
    [InlineData(45.0, 0.0)]
    public void Hoses_side_by_side_are_as_far_apart_as_their_axes_less_their_radii(double apart, double? left)
    {
        // Tubes of 36 mm with 5 mm of hose: 23 mm of radius each; so 46 mm between the axes touch.
        var design = Designs.Vessel(
            Designs.Shell(), Designs.Branch("lower", 36, 2, new(60, 0, 0, 0, 0)),
            Designs.Branch("upper", 36, 2, new(60 + apart, 0, 0, 0, 0)));

        var hoses = Found(design).Where(f => f.Message.StartsWith("the hose on 'upper'", StringComparison.Ordinal)
            && f.Message.Contains("the hose on 'lower'", StringComparison.Ordinal)).ToList();

        Assert.Equal(left is null ? 0 : 1, hoses.Count);
        if (left is { } distance)
            Near.Absolute(distance, hoses[0].Figures.Single().Value, ConvexDistance.Usual);
    }

    [Theory]
    [InlineData(5, true)]
    [InlineData(1, false)]
    public void A_hose_past_the_bracket_wants_its_walls_room(double wall, bool found)
    {
        // The ear's side stands 35 mm off the middle plane; a tube of 32 mm, 52.5 mm over from it on a parallel axis, leaves 1.5.
        var bracket = BracketDesigns.Narrow with { Angle = 0, Height = 90, Ears = SaddleEars.Sides, Material = Designs.Stainless };
        var design = Designs.Vessel(Designs.Shell(140), Designs.Branch("beside", 32, 2, new(90, 0, 53, 0, 0)) with { Length = 80 }) with
        {
            Members = [bracket],
            Mockup = MockupDesign.Usual with { HoseWall = wall },
        };

        Assert.Equal(found, Found(design).Any(f => f.Parts.Contains("bracket") && !f.Message.Contains("bolted", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(40, true)]
    [InlineData(10, false)]
    public void A_hose_does_not_reach_through_what_the_bracket_is_bolted_to(double length, bool found)
    {
        // The wall stands at 55 + 25 + 3 = 83 mm; a tube at 55 and one diameter of hose, 12 mm, beyond.
        var design = Designs.Vessel(Designs.Shell(), Designs.Branch("behind", 12, 1, new(20, 0, 0, 0, 0)) with { Length = length }) with
        {
            Members = [BracketDesigns.Narrow with { Angle = 0, Height = 110, Material = Designs.Stainless }],
        };

        Assert.Equal(found, Found(design).Any(f => f.Message.Contains("bolted", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(0, 7, null)]
    [InlineData(0, 14.8, 0.2)]
    [InlineData(0, 16, 0.0)]
    public void A_hose_beside_the_rim_of_a_lid_wants_its_walls_room(double angle, double wall, double? left)
    {
        // A lid of 160 mm on a shell of 110: its lower face 180 mm up reaches 25 mm out. A level tube of 30 mm, 150 up, covered from
        // 20 mm out: 15 mm of tube and the hose's wall from 30 below.
        var design = Designs.Vessel(Designs.Shell(), Designs.Branch("level", 30, 2, new(150, angle, 0, 0, 0)) with { Length = 50 }) with
        {
            Top = Designs.Overlay("top", 160),
            Mockup = MockupDesign.Usual with { HoseWall = wall },
        };

        var found = Found(design).Where(f => f.Parts.Contains("top")).ToList();

        Assert.Equal(left is null ? 0 : 1, found.Count);
        if (left is { } distance)
            Near.Absolute(distance, found[0].Figures.Single().Value, 1e-6);
    }

    [Theory]
    [InlineData(0.5, true)]
    [InlineData(1.5, false)]
    public void A_hose_over_a_port_on_a_plate_starts_above_it(double clear, bool found)
    {
        // The hose covers half of a short tube.
        var design = Designs.Vessel(Designs.Shell(), Designs.OnHead("vent", VesselEnd.Top, 20, 2, 0) with { Length = 2 * clear });

        Assert.Equal(found, Found(design).Any(f => f.Parts.Contains("top")));
    }

    [Fact]
    public void The_sound_vessel_has_room() => Assert.Empty(Found(Designs.Sound));

    private static List<Measure> Found(VesselDesign design) =>
        [.. Compiler.Assess(Compiler.Assemble(design)).Where(f => f.Code == FindingCodes.NoRoomAtPort)];
}
