using Vessel.Design;
using Vessel.Heads.Dishes;
using Vessel.Members.Cups;
using Vessel.Members.Saddles;
using Vessel.Stock;
using Vessel.Tests.Members.Brackets;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Reading;

public sealed class InsideReaderTests
{
    private readonly VesselDesign _design = DesignTexts.Good(DesignTexts.WithInside);

    private InsideDesign Inside => _design.Inside;

    [Fact]
    public void A_vessel_without_an_inside_has_nothing_inside()
    {
        var inside = DesignTexts.Good(DesignTexts.Breather).Inside;

        Assert.Equal((0, 0, 0, 0), (inside.Caps.Length, inside.Sleeves.Length, inside.Discs.Length, inside.Packings.Length));
    }

    [Fact]
    public void Parts_that_stand_alone_need_no_name() =>
        Assert.Equal(["cap", "sleeve", "packing"], [Inside.Caps[0].Name, Inside.Sleeves[0].Name, Inside.Packings[0].Name]);

    [Fact]
    public void One_part_stands_at_its_key_and_several_at_their_place_in_the_list()
    {
        var two = DesignTexts.Good(DesignTexts.WithInside
            .Replace("upper screen, at", "upper screen, fits: sleeve, at", StringComparison.Ordinal)
            .Replace("  sleeve: {",
                "  sleeve:\n    - { name: short, tube: { outside_diameter: 100, wall: 2 }, length: 10 }\n    - { name: sleeve,",
                StringComparison.Ordinal));

        Assert.Equal("inside.sleeve", Inside.Sleeves[0].Path);
        Assert.Equal(["inside.sleeve[0]", "inside.sleeve[1]"], two.Inside.Sleeves.Select(s => s.Path));
    }

    [Fact]
    public void A_cap_that_opens_up_has_neither_drop_nor_outlet()
    {
        var cap = Inside.Caps[0];

        Assert.Equal((CupOpening.Up, 0, null, 0, 4), (cap.Opens, cap.Drop, cap.Outlet, cap.Clearance, cap.DrainHole));
    }

    [Fact]
    public void A_cap_that_opens_down_ends_flush_with_the_outlets_tube()
    {
        var cap = DesignTexts.Good(DesignTexts.With("cap: { outside_diameter: 58, wall: 2, skirt: 20, opens: down }")).Inside.Caps[0];

        // The tube reaches 10 into the vessel, and the plate is 2 thick.
        Assert.Equal((8, "outlet", 0.2, 0), (cap.Drop, cap.Outlet, cap.Clearance, cap.DrainHole));
    }

    [Fact]
    public void The_seam_of_a_rolled_skirt_lies_half_way_between_two_windows()
    {
        var cap = DesignTexts.Good(DesignTexts.With(
            "cap: { outside_diameter: 58, wall: 2, skirt: 40, opens: up, made_from: sheet, windows: { count: 3, width: 12, height: 18, up: "
                + "15, angle: 10 } }")).Inside.Caps[0];

        // Windows are 120 degrees apart.
        Assert.Equal((StockForm.Sheet, 70 * Math.PI / 180), (cap.MadeFrom, cap.SeamAngle));
    }

    [Fact]
    public void The_corners_of_a_window_are_three_millimetres_or_a_quarter_of_its_smaller_side()
    {
        // 12 by 18: a quarter of 12 is 3; 8 by 18: 2.
        Assert.Equal(3, Inside.Caps[0].Windows[0].Corner);
        Assert.Equal(2, DesignTexts.Good(
            DesignTexts.WithInside.Replace("width: 12", "width: 8", StringComparison.Ordinal)).Inside.Caps[0].Windows[0].Corner);
    }

    [Fact]
    public void A_disc_fits_the_only_sleeve_unless_told_otherwise()
    {
        // Bores of 72 and 106, less 0.2 on either side.
        Assert.Equal(["sleeve", "sleeve", null], Inside.Discs.Select(d => d.Fits));
        Assert.Equal([71.6, 71.6, 105.6], Inside.Discs.Select(d => Math.Round(d.OutsideDiameter, 9)));
    }

    [Fact]
    public void A_disc_fits_the_shell_where_there_is_no_sleeve() =>
        Assert.Null(
            Assert.Single(DesignTexts.Good(DesignTexts.With(
                "discs: [ { name: screen, at: { height: 90 }, thickness: 1.5, hole_diameter: 3, pitch: 5 } ]")).Inside.Discs).Fits);

    [Fact]
    public void The_only_sleeve_is_meant_by_sleeve_whatever_its_name()
    {
        var text = DesignTexts.WithInside.Replace("sleeve: { tube", "sleeve: { name: Skirt Tube, tube", StringComparison.Ordinal);

        Assert.Equal("Skirt Tube", DesignTexts.Good(text).Inside.Discs[0].Fits);
        Assert.Equal("Skirt Tube",
            DesignTexts.Good(text.Replace("fits: sleeve", "fits: skirt tube", StringComparison.Ordinal)).Inside.Discs[0].Fits);
    }

    [Fact]
    public void The_margin_is_the_thickness_or_half_a_hole()
    {
        Assert.Equal([1.5, 4, 3], Inside.Discs.Select(d => d.Holes.Margin));
        Assert.Equal([HolePattern.Staggered60, HolePattern.Rings, HolePattern.Square], Inside.Discs.Select(d => d.Holes.Pattern));
    }

    [Fact]
    public void A_packing_names_its_discs()
    {
        var packing = Inside.Packings[0];

        Assert.Equal(("lower screen", "upper screen", 60, 0.05), (packing.Lower, packing.Upper, packing.Density, packing.FibreDiameter));
    }

    [Theory]
    [InlineData("stainless steel wool", MaterialFamily.Stainless)]
    [InlineData("Aluminum mesh", MaterialFamily.Aluminium)]
    [InlineData("steel wool", MaterialFamily.MildSteel)]
    [InlineData("copper gauze", null)]
    public void A_packings_metal_is_guessed_from_its_name(string material, MaterialFamily? family)
    {
        var packing = DesignTexts.Good(DesignTexts.WithInside.Replace("material: stainless wool", $"material: {material}",
            StringComparison.Ordinal)).Inside.Packings[0];

        Assert.Equal((material, family), (packing.Material, packing.Family));
    }

    [Fact]
    public void A_bracket_is_bent_over_its_own_thickness()
    {
        var bracket = (SaddleDesign)_design.Bracket();

        Assert.Equal((3, 3, 0.45), (bracket.Thickness, bracket.InsideRadius, bracket.K));
        Assert.Equal((9, 16, 4), (bracket.Bolts.HoleDiameter, bracket.Bolts.WasherDiameter, bracket.Bolts.Slot));
        Assert.Equal(Math.PI / 2, bracket.Angle, 1e-12);
    }

    [Fact]
    public void A_hemisphere_of_gores_has_its_defaults()
    {
        var gores = Assert.IsType<HemisphereHead>(DesignTexts.Good(DesignTexts.Breather.Replace(
            "{ shape: hemisphere }", "{ shape: hemisphere, made_from: gores }", StringComparison.Ordinal)).Bottom).Gores!;

        // Eight gores of 45 degrees; the shell's seam at 200 degrees is the middle of one.
        Assert.Equal((8, 0.35 * 110), (gores.Count, gores.CapDiameter));
        Assert.Equal(222.5 * Math.PI / 180, gores.SeamAngle, 1e-12);
    }

    [Fact]
    public void A_spun_hemisphere_has_no_gores() => Assert.Null(Assert.IsType<HemisphereHead>(_design.Bottom).Gores);

    [Fact]
    public void What_flows_has_its_defaults_where_nothing_is_said() =>
        Assert.Equal(
            (Vessel.Stock.Liquids.Find("engine oil")!.Density(80), 80),
            (DesignTexts.Good(DesignTexts.WithHeight("100")).Flow.OilDensity,
                DesignTexts.Good(DesignTexts.WithHeight("100")).Flow.Temperature));

    [Fact]
    public void A_slot_is_written_as_round_ends_and_a_round_window_as_a_diameter()
    {
        WindowsDesign Row(string keys) =>
            DesignTexts.Good(
                DesignTexts.WithInside.Replace("width: 12, height: 18", keys, StringComparison.Ordinal)).Inside.Caps[0].Windows[0];

        Assert.Equal((6, 18, 3, false),
            (Row("width: 6, height: 18, ends: round") is var slot ? slot.Width : 0, slot.Height, slot.Corner, slot.IsRound));
        Assert.Equal((7, 7, 3.5, true), (Row("diameter: 7") is var round ? round.Width : 0, round.Height, round.Corner, round.IsRound));
    }
}
