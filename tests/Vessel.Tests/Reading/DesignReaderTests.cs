using Vessel.Design;
using Vessel.Heads.Dishes;
using Vessel.Heads.FlatHeads;
using Vessel.Reading;
using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Reading;

public sealed class DesignReaderTests
{
    private readonly VesselDesign _design = DesignTexts.Good(DesignTexts.Breather);

    [Fact]
    public void Named_sizes_reach_the_shell() =>
        Assert.Equal((110, 2, 180), (_design.Shell.OutsideDiameter, _design.Shell.Wall, _design.Shell.Height));

    [Fact]
    public void Angles_are_radians_within_one_turn()
    {
        // A degree is pi/180; the file's 200 and -30 degrees, the latter brought into [0, 360).
        Assert.Equal(200 * Math.PI / 180, _design.Shell.SeamAngle, 1e-12);
        Assert.Equal(330 * Math.PI / 180, _design.Ports[0].Place.Angle, 1e-12);
    }

    [Fact]
    public void A_hemisphere_takes_the_shells_wall() =>
        Assert.Equal(2, Assert.IsType<HemisphereHead>(_design.Bottom).Wall);

    [Fact]
    public void An_inset_plate_fills_the_bore_less_twice_the_clearance() =>
        Assert.Equal(106 - 0.4, Assert.IsType<FlatHead>(_design.Top).OutsideDiameter, 1e-12);

    [Fact]
    public void A_tube_stands_on_unless_told_otherwise() =>
        Assert.Equal((PortJoint.SetOn, PortJoint.SetIn), (_design.Ports[0].Joint, _design.Ports[1].Joint));

    [Fact]
    public void A_bung_passes_in_unless_told_otherwise() => Assert.Equal(PortJoint.SetIn, _design.Ports[2].Joint);

    /// <summary>Its end of radius 11 comes through a half sphere of 53 all round: that falls by 53 - sqrt(53^2 - 11^2) there.</summary>
    [Fact]
    public void A_bung_in_a_head_is_free_for_its_length_less_the_wall_and_what_brings_it_through() =>
        Assert.Equal(15 - 2 - (53 - Math.Sqrt((53 * 53) - (11 * 11))), _design.Ports[2].Length, 1e-12);

    [Fact]
    public void A_bungs_bore_is_its_tap_drill() => Assert.Equal(14 - 1.5, _design.Ports[2].Bore, 1e-12);

    [Fact]
    public void A_bung_across_a_shell_is_free_for_its_length_less_the_way_of_its_axis_through_the_wall()
    {
        var design = DesignTexts.Good("""
            vessel: Sump
            material: mild steel
            shell: { outside_diameter: 110, wall: 5, height: 180, made_from: tube }
            top: { shape: flat, thickness: 3 }
            bottom: { shape: flat, thickness: 3 }
            ports:
              - { name: level, in: shell, at: { height: 90, offset: 30, tilt: 60 }, bung: { thread: M10x1, outside_diameter: 16, length: 60 }, inside_length: 25 }
            """);

        // Across the axis the wall is sqrt(55^2 - 30^2) - sqrt(50^2 - 30^2) = sqrt(2125) - 40 thick; cos 60 = 1/2.
        Assert.Equal(60 - 25 - (2 * (Math.Sqrt(2125) - 40)), design.Ports[0].Length, 1e-9);
    }

    [Fact]
    public void Flow_has_its_defaults() =>
        Assert.Equal((45, Vessel.Stock.Liquids.Find("engine oil")!.Density(80), 80),
            (_design.Flow.BlowBy, _design.Flow.OilDensity, _design.Flow.Temperature));

    [Fact]
    public void A_fitting_is_found_in_the_table() => Assert.Equal("1 5/8-12 UN", _design.Ports[0].Fitting?.Thread);

    [Fact]
    public void A_part_may_name_its_own_metal()
    {
        var design = DesignTexts.Good(DesignTexts.Breather.Replace(
            "top: { shape: flat,", "top: { material: mild steel, shape: flat,", StringComparison.Ordinal));

        Assert.Equal((MaterialFamily.Stainless, MaterialFamily.MildSteel), (design.Shell.Material.Family, design.Top.Material.Family));
    }

    [Fact]
    public void Bare_lengths_are_in_the_files_unit()
    {
        var design = DesignTexts.Good("""
            vessel: Cider tank
            units: in
            material: aluminum 6061-T6
            shell: { inside_diameter: 4, wall: 1/8, height: 8, made_from: tube }
            top: { shape: flat, thickness: 0.125, seat: overlay }
            bottom: { shape: flat, thickness: 3.2 mm }
            """);

        Assert.Equal(4.25 * 25.4, design.Shell.OutsideDiameter, 1e-10);
        Assert.Equal(3.2, design.Bottom.Wall, 1e-12);
    }

    [Fact]
    public void An_overlay_is_as_wide_as_the_shell_unless_told_otherwise()
    {
        var design =
            DesignTexts.Good(DesignTexts.Breather.Replace("thickness: 3 }", "thickness: 3, seat: overlay }", StringComparison.Ordinal));

        Assert.Equal(110, Assert.IsType<FlatHead>(design.Top).OutsideDiameter);
    }

    [Fact]
    public void All_faults_are_reported_in_the_order_of_the_file()
    {
        var faults = DesignReader.Read("""
            vessel: Many sins
            material: stainless 304
            shell: { outside_diameter: 4 inhc, wall: 0, height: 180, made_from: paper }
            top: { shape: ellipsoid, made_from: gores, gores: { count: 3 } }
            bottom: { shape: flat, thickness: 3, recess: 200 mm, colour: red }
            ports:
              - { name: vent, in: bottom, at: { radius: 0, offset: 3 }, bung: { thread: M14x1.5, outside_diameter: 15, length: 20 } }
            """).Faults;

        Assert.Equal(
            ["unknown-unit", "out-of-range", "unknown-choice", "out-of-range", "lid-too-deep", "unknown-key",
                "unknown-key", "bung-too-thin"],
            faults.Select(f => f.Code));
    }

    [Fact]
    public void Places_name_the_line_of_every_path()
    {
        // Lines and columns counted in the text above.
        Assert.Equal(new Span(5, 28, 5, 31), _design.Places["shell.outside_diameter"]);
        Assert.Equal(new Span(12, 31, 12, 32), _design.Places["ports[0].tube.outside_diameter"]);
        Assert.Equal((5, 1), (_design.Places["shell"].Line, _design.Places["shell"].Column));
        Assert.Equal((9, 5, 15, 20), (_design.Places["ports[0]"].Line, _design.Places["ports[0]"].Column,
            _design.Places["ports[0]"].EndLine, _design.Places["ports[0]"].EndColumn));
        Assert.Equal((1, 1), (_design.Places[""].Line, _design.Places[""].Column));
    }

    [Fact]
    public void A_key_that_was_left_out_is_placed_at_its_mapping() =>
        Assert.Equal(_design.Places["ports[1].at"], _design.PlaceOf("ports[1].at.angle").Span);
}
