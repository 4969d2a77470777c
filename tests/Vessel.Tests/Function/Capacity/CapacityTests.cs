using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Function;

/// <summary>Capacity against closed forms: elementary solids, recomputed to 20 digits.</summary>
public sealed class CapacityTests
{
    public static TheoryData<int> Seeds => RandomDesigns.Seeds;

    private static readonly ShellDesign _shell = Designs.Shell(104, 2, 300);

    [Theory]
    [InlineData(10, "14660.766")]
    [InlineData(25, "81812.309")]
    [InlineData(50, "261799.388")]
    [InlineData(80, "497418.84")]
    [InlineData(150, "1047197.55")]
    public void Half_sphere_and_cylinder_of_radius_50(double height, string volume)
    {
        var standing = Compiler.Assemble(Designs.Vessel(_shell)).Attitude;

        Near.Printed(volume, standing.VolumeBelow(standing.Depth.Start + height));
    }

    [Fact]
    public void Two_half_spheres_hold_a_ball_more_than_the_cylinder()
    {
        var standing = Compiler.Assemble(Designs.Vessel(_shell) with { Top = Designs.Dome(_shell, "top") }).Attitude;

        Near.Relative((4.0 / 3 * Math.PI * 125000) + (Math.PI * 2500 * 300), standing.VolumeBelow(standing.Depth.End), 1e-14);
        Near.Relative((2.0 / 3 * Math.PI * 125000) + (Math.PI * 2500 * 150), standing.VolumeBelow(150), 1e-14);
    }

    [Fact]
    public void Lids_take_their_depth()
    {
        var standing = Compiler.Assemble(Designs.Vessel(_shell) with
        {
            Top = Designs.Inset(_shell, "top", 4, recess: 6),
            Bottom = Designs.Overlay("bottom", 104),
        }).Attitude;

        Near.Relative(Math.PI * 2500 * 290, standing.VolumeBelow(standing.Depth.End), 1e-14);
    }

    [Fact]
    public void A_tube_through_the_lid_takes_the_room_of_its_metal()
    {
        var port = Designs.OnHead("outlet", VesselEnd.Top, 32, 2, 0) with { Joint = PortJoint.SetIn, InsideLength = 10 };
        var (with, without) = (Compiler.Assemble(Designs.Vessel(_shell, port)), Compiler.Assemble(Designs.Vessel(_shell)));

        Near.Relative(Math.PI * (256 - 196) * 10, without.Capacity.Brim - with.Capacity.Brim, 1e-9);
        Near.Relative(
            Math.PI * (256 - 196) * 4,
            without.Attitude.VolumeBelow(with.Attitude.Depth.End - 6) - with.Attitude.VolumeBelow(with.Attitude.Depth.End - 6), 1e-9);
        // The tube's end seals first: what is above it stays air.
        Near.Relative(Math.PI * 2500 * (300 - 3 - 10) + (2.0 / 3 * Math.PI * 125000), with.Capacity.Fillable, 1e-12);
    }

    [Fact]
    public void The_lowest_open_mouth_limits_use()
    {
        var port = Designs.Branch("spill", 32, 2, new(100, 1, 0, 0, 0));
        var capacity = Compiler.Assemble(Designs.Vessel(_shell, port)).Capacity;

        Near.Relative((2.0 / 3 * Math.PI * 125000) + (Math.PI * 2500 * (100 - 14)), capacity.Usable, 1e-12);
        Near.Relative((2.0 / 3 * Math.PI * 125000) + (Math.PI * 2500 * (100 + 14)), capacity.Fillable, 1e-12);
        Assert.Contains("spill", capacity.LimitedBy, StringComparison.Ordinal);
    }

    [Fact]
    public void Plugged_bungs_let_nothing_out()
    {
        var drain = Designs.OnHead("drain", VesselEnd.Bottom, 22, 4, 0) with { Thread = Designs.Thread };

        Assert.Equal(0, Compiler.Assemble(Designs.Vessel(_shell, drain)).Capacity.Fillable);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Volume_rises_with_the_level_from_nothing_to_the_brim(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        var volumes = vessel.Capacity.Levels.Select(level => level.Volume).ToList();

        Near.Absolute(0, vessel.Attitude.VolumeBelow(vessel.Attitude.Depth.Start), 1e-6);
        Assert.Equal(vessel.Capacity.Brim, volumes[^1]);
        Assert.All(volumes.Zip(volumes.Skip(1)), pair => Assert.True(pair.First < pair.Second));
        Assert.True(vessel.Capacity.Usable <= vessel.Capacity.Fillable && vessel.Capacity.Fillable <= vessel.Capacity.Brim);
    });

    /// <summary>
    /// A pipe out of the side whose elbow turns up ends above the vessel's vent: nothing runs out of it, so that the lower of the two other
    /// ports limits use. Turned down, liquid runs out as soon as it reaches the mouth.
    /// </summary>
    [Theory]
    [InlineData(Math.PI, 230)]
    [InlineData(0, 24)]
    public void Liquid_runs_out_of_a_pipe_over_the_highest_place_that_it_must_pass(double direction, double height)
    {
        var gauge = Designs.Branch("gauge", 32, 2, new(38, 2, 0, 0, 0)) with
        {
            Length = 30,
            Elbow = new("ports[2].elbow", Math.PI / 2, 40, 3, direction, 260, MitreCut.Sawn),
        };
        var design = Designs.Vessel(
            _shell,
            Designs.Branch("inlet", 32, 2, new(244, 0, 0, 0, 0)),
            Designs.OnHead("vent", VesselEnd.Top, 32, 2, 0),
            gauge);

        var capacity = Compiler.Assemble(design).Capacity;

        Near.Absolute(height, capacity.Events[0].Height, 1e-6);
    }

    /// <summary>A tube tilted up by 30 degrees spills at its free end's lowest point, not at its mouth.</summary>
    [Fact]
    public void A_tilted_pipe_spills_at_its_end()
    {
        var spill = Designs.Branch("spill", 32, 2, new(100, 1, 0, Math.PI / 6, 0)) with { Length = 80 };
        var built = Compiler.Assemble(Designs.Vessel(_shell, Designs.Branch("inlet", 32, 2, new(280, 0, 0, 0, 0)),
            Designs.OnHead("vent", VesselEnd.Top, 32, 2, 0), spill));

        Assert.Equal("oil runs out through 'spill', over the highest place of its pipe", built.Capacity.LimitedBy);
        Near.Absolute(100 + (80 * Math.Sin(Math.PI / 6)) - (14 * Math.Cos(Math.PI / 6)), built.Capacity.Events[0].Height, 1e-9);
    }

    /// <summary>Sections of an elbow's bore: what stands highest among their lowest points,
    /// found by walking along many lines of the bore.</summary>
    [Theory]
    [InlineData(0.4, 1.1, 3)]
    [InlineData(-0.5, 3.5, 4)]
    [InlineData(0.1, 2.6, 2)]
    public void The_sill_of_a_bent_pipe_is_the_highest_of_its_lowest_points(double tilt, double direction, int pieces)
    {
        var port = Designs.Branch("pipe", 32, 2, new(150, 0, 0, tilt, 0)) with
        {
            Length = 60,
            Elbow = new("ports[0].elbow", 1.4, 50, pieces, direction, 70, MitreCut.Sawn),
        };
        var built = Compiler.Assemble(Designs.Vessel(_shell, port));
        var way = built.Cavity.Openings.Single(w => w.Name == "pipe");
        var highest = way.Axial.Start;
        foreach (var leg in built.Sites[0].Legs)
        {
            // Plain sections square to a leg lie between its mitres as far as the bore is whole there; they never stand above the sill.
            var slack = 14 * Math.Tan(port.Elbow.Slant);
            for (var along = leg == built.Sites[0].Legs[0] ? 20 : slack; along <= leg.Length - slack; along += 1)
                highest = Math.Max(highest, Enumerable.Range(0, 720)
                    .Min(i => leg.Frame.ToOuter(new(14 * Math.Cos(i * Math.PI / 360), 14 * Math.Sin(i * Math.PI / 360), along)).Z));
        }

        var sill = built.Attitude.Sill(way);
        Assert.InRange(highest, sill - 14, sill + 1e-9);
        Near.Absolute(sill, Math.Max(way.Axial.Start, way.Beyond.Max(edge => edge.Along(Vessel.Geometry.Vector3.UnitZ).Start)), 1e-12);
    }
}
