using Vessel.Design;
using Vessel.Reading;
using Xunit;

namespace Vessel.Tests.Reading;

/// <summary>
/// Each limit from both sides. The shell is 110 by 2 and 180 high, its top an inset plate with its lower face at 177, its
/// bottom a hemisphere of 53 inside; the outlet of 32 reaches 10 in.
/// </summary>
public sealed class InsideLimitTests
{
    private const string Sleeve = "sleeve: { tube: { outside_diameter: 76, wall: 2 }, length: 120 }";

    private const string Holes = "thickness: 2, hole_diameter: 3, pitch: 5";

    [Theory]
    // Down to the sphere of 53 at a radius of 38: 177 + sqrt(53^2 - 38^2) = 213.946.
    [InlineData("sleeve: { tube: { outside_diameter: 76, wall: 2 }, length: 213.94 }", null)]
    [InlineData("sleeve: { tube: { outside_diameter: 76, wall: 2 }, length: 213.95 }", "outside-the-inside")]
    // The outlet's end flush with the plate's upper face.
    [InlineData("cap: { outside_diameter: 58, wall: 2, skirt: 10, opens: up }", null)]
    [InlineData("cap: { outside_diameter: 58, wall: 2, skirt: 9.99, opens: up }", "parts-collide")]
    // The outlet is 32 wide, and the cap's inside 4 narrower than its outside.
    [InlineData("cap: { outside_diameter: 36.01, wall: 2, skirt: 10, opens: up }", null)]
    [InlineData("cap: { outside_diameter: 35.99, wall: 2, skirt: 10, opens: up }", "parts-collide")]
    [InlineData("cap: { outside_diameter: 58, wall: 2, skirt: 10, opens: down, drop: 9.99 }", null)]
    [InlineData("cap: { outside_diameter: 58, wall: 2, skirt: 10, opens: down, drop: 10 }", "cap-not-carried")]
    // Room in the plate for the tube and 0.2 on either side: 32.4.
    [InlineData("cap: { outside_diameter: 36.41, wall: 2, skirt: 10, opens: down }", null)]
    [InlineData("cap: { outside_diameter: 36.39, wall: 2, skirt: 10, opens: down }", "bore-too-wide")]
    // A plate as thick as the tube reaches in lies against the top.
    [InlineData("cap: { outside_diameter: 58, wall: 10, skirt: 10, opens: down }", null)]
    [InlineData("cap: { outside_diameter: 58, wall: 10.01, skirt: 10, opens: down }", "cap-not-carried")]
    public void What_hangs(string inside, string? code) => AssertOnly(code, inside);

    [Theory]
    // The sleeve's bore is 72 wide, and it ends at 57. The cap's plate is at 135 to 137.
    [InlineData("cap: { outside_diameter: 72, wall: 2, skirt: 40, opens: up }", null)]
    [InlineData("cap: { outside_diameter: 72.01, wall: 2, skirt: 40, opens: up }", "too-wide-inside")]
    // Round the sleeve, with the plate below its end.
    [InlineData("cap: { outside_diameter: 80.01, wall: 2, skirt: 120.01, opens: up }", null)]
    [InlineData("cap: { outside_diameter: 80.01, wall: 2, skirt: 119.99, opens: up }", "parts-collide")]
    [InlineData("discs: [ { name: a, at: { height: 57 }, " + Holes + " } ]", null)]
    [InlineData("discs: [ { name: a, at: { height: 56.99 }, " + Holes + " } ]", "outside-the-inside")]
    [InlineData("discs: [ { name: a, fits: shell, at: { height: 55 }, " + Holes + " } ]", null)]
    [InlineData("discs: [ { name: a, fits: shell, at: { height: 55.01 }, " + Holes + " } ]", "parts-collide")]
    [InlineData("discs: [ { name: a, fits: shell, at: { height: 70 }, " + Holes + ", bore: 76 } ]", null)]
    [InlineData("discs: [ { name: a, fits: shell, at: { height: 70 }, " + Holes + ", bore: 75.99 } ]", "parts-collide")]
    [InlineData("discs: [ { name: a, at: { height: 90 }, " + Holes + ", clearance: -0.1, fixed: press } ]", null)]
    [InlineData("discs: [ { name: a, at: { height: 90 }, " + Holes + ", clearance: -0.1 } ]", "disc-does-not-fit")]
    // A disc of 71.6 with a margin of 1.5 and one hole of 68.6 in its middle.
    [InlineData("discs: [ { name: a, at: { height: 90 }, thickness: 2, hole_diameter: 68.6, pitch: 70, margin: 1.5 } ]", null)]
    [InlineData("discs: [ { name: a, at: { height: 90 }, thickness: 2, hole_diameter: 68.61, pitch: 70, margin: 1.5 } ]", "no-hole-fits")]
    // From 10 to 35.8 with 2 on either side: 21.8.
    [InlineData("discs: [ { name: a, at: { height: 90 }, thickness: 2, hole_diameter: 21.8, pitch: 70, margin: 2, bore: 20 } ]", null)]
    [InlineData(
        "discs: [ { name: a, at: { height: 90 }, thickness: 2, hole_diameter: 21.81, pitch: 70, margin: 2, bore: 20 } ]", "no-hole-fits")]
    public void What_stands_in_a_sleeve(string inside, string? code) => AssertOnly(code, $"{Sleeve}\n  {inside}");

    [Theory]
    // Four windows and as many walls of 2 round pi x 58: 43.553 each.
    [InlineData("count: 4, width: 43.55, height: 18, up: 15", null)]
    [InlineData("count: 4, width: 43.56, height: 18, up: 15", "windows-overlap")]
    [InlineData("count: 4, width: 12, height: 36, up: 2", null)]
    [InlineData("count: 4, width: 12, height: 36.01, up: 2", "window-near-end")]
    [InlineData("count: 4, width: 12, height: 18, up: 1.99", "window-near-end")]
    [InlineData("count: 4, width: 12, height: 18, up: 15, corner: 6", null)]
    [InlineData("count: 4, width: 12, height: 18, up: 15, corner: 6.01", "window-corner-too-large")]
    public void Windows_in_a_skirt_of_forty(string windows, string? code) => AssertOnly(code,
        $"cap: {{ outside_diameter: 58, wall: 2, skirt: 40, opens: up, windows: {{ {windows} }} }}");

    [Theory]
    // 12 on a radius of 29 are 23.71 degrees, and one window's middle is at 90.
    [InlineData("89", "window-over-seam")]
    [InlineData("101.8", "window-over-seam")]
    [InlineData("101.9", null)]
    [InlineData("78.2", "window-over-seam")]
    [InlineData("78.1", null)]
    public void A_seam_beside_a_window(string seam, string? code) => AssertOnly(code,
        $"cap: {{ outside_diameter: 58, wall: 2, skirt: 40, opens: up, made_from: sheet, seam_angle: {seam}, windows: {{ count: 4, width: "
            + $"12, height: 18, up: 15 }} }}");

    [Theory]
    // Inward from 53 to the sleeve at 38; the tube's middle is where it meets it first.
    [InlineData("at: { height: 120, angle: 90 }, inside_length: 14.99", null)]
    [InlineData("at: { height: 120, angle: 90 }, inside_length: 15.01", "parts-collide")]
    // Under the sleeve's end at 57.
    [InlineData("at: { height: 46.99, angle: 90 }, inside_length: 50", null)]
    [InlineData("at: { height: 47.01, angle: 90 }, inside_length: 50", "parts-collide")]
    // Tilted by 60 degrees its upper line is 10 / cos 60 = 20 above its axis, which falls by tan 60 on its way in. From
    // 55 to the sleeve's outside at 38: 57 - 20 + 17 x 1.732 = 66.445.
    [InlineData("at: { height: 66.44, angle: 90, tilt: 60 }, inside_length: 50", null)]
    [InlineData("at: { height: 66.45, angle: 90, tilt: 60 }, inside_length: 50", "parts-collide")]
    // Its near side 30 - 10 aside: the sleeve's outside lies sqrt(38^2 - 20^2) = 32.311 forward there, and the shell's
    // inside on the axis sqrt(53^2 - 30^2) = 43.692. The lines looked at come within 0.01 of that.
    [InlineData("at: { height: 120, angle: 90, offset: 30 }, inside_length: 11.37", null)]
    [InlineData("at: { height: 120, angle: 90, offset: 30 }, inside_length: 11.39", "parts-collide")]
    public void A_tube_through_the_shell(string port, string? code) => Assert.Equal(
        code is null ? [] : [code],
        DesignReader.Read(DesignTexts.With(Sleeve).Replace("  - name: outlet",
            $"  - {{ name: level, in: shell, {port}, tube: {{ outside_diameter: 20, wall: 2 }}, length: 60, joint: set_in, clearance: 0 "
                + $"}}\n  - name: outlet",
            StringComparison.Ordinal)).Faults.Select(f => f.Code));

    [Theory]
    // The plate is 84 wide less two bends of 3 + 3, and 90 high: the flat is 72 by 90, of which 16 are the washers'.
    [InlineData("", "across: 56", null)]
    [InlineData("", "across: 56.01", "bolt-off-plate")]
    [InlineData("", "up: 74", null)]
    [InlineData("", "up: 74.01", "bolt-off-plate")]
    [InlineData("", "up: 70.01, slot: 4", "bolt-off-plate")]
    [InlineData("ears: ends,", "across: 68, up: 62", null)]
    [InlineData("ears: ends,", "across: 68.01", "bolt-off-plate")]
    [InlineData("ears: ends,", "up: 62.01", "bolt-off-plate")]
    [InlineData("", "across: 9.01", null)]
    [InlineData("", "across: 9", "bolt-holes-overlap")]
    [InlineData("", "up: 13, slot: 4", "bolt-holes-overlap")]
    public void Bolts_of_eight(string ears, string bolts, string? code) => AssertOnlyBracket(code,
        $"at: {{ height: 95, angle: 90 }}, stand_off: 25, width: 84, {ears} bolts: {{ diameter: 8, {bolts} }}");

    [Theory]
    [InlineData("at: { height: 45, angle: 90 }, stand_off: 25, width: 84", null)]
    [InlineData("at: { height: 44.99, angle: 90 }, stand_off: 25, width: 84", "bracket-off-shell")]
    [InlineData("at: { height: 135, angle: 90 }, stand_off: 25, width: 84", null)]
    [InlineData("at: { height: 135.01, angle: 90 }, stand_off: 25, width: 84", "bracket-off-shell")]
    [InlineData("at: { height: 95, angle: 100 }, stand_off: 25, width: 109.99", null)]
    [InlineData("at: { height: 95, angle: 100 }, stand_off: 25, width: 110", "bracket-too-wide")]
    // The inner face of an ear 39 aside lies 55 - sqrt(55^2 - 39^2) = 16.219 behind the shell's nearest line.
    [InlineData("at: { height: 95, angle: 90 }, stand_off: 3.79, width: 84, inside_radius: 20", null)]
    [InlineData("at: { height: 95, angle: 90 }, stand_off: 3.78, width: 84, inside_radius: 20", "ear-too-short")]
    [InlineData("at: { height: 95, angle: 90 }, stand_off: 3.01, width: 84, ears: ends", null)]
    [InlineData("at: { height: 95, angle: 90 }, stand_off: 3, width: 84, ears: ends", "ear-too-short")]
    // It takes asin(42/55) = 49.787 degrees on either side; the inlet, -6 to 26 aside of -30 degrees, reaches to
    // -30 + asin(26/55) = -1.787, and down to 120 - 16.
    [InlineData("at: { height: 95, angle: 48.01 }, stand_off: 25, width: 84", null)]
    [InlineData("at: { height: 95, angle: 47.99 }, stand_off: 25, width: 84", "bracket-over-port")]
    [InlineData("at: { height: 58.99, angle: 0 }, stand_off: 25, width: 84", null)]
    [InlineData("at: { height: 59.01, angle: 0 }, stand_off: 25, width: 84", "bracket-over-port")]
    public void A_bracket_ninety_high(string bracket, string? code) =>
        AssertOnlyBracket(code, $"{bracket}, bolts: {{ diameter: 8 }}");

    [Theory]
    // The drain is 22 wide and its hole 0.2 wider all round. The cap is cut square to the sphere, 53/54 as wide inside as on the
    // middle of the wall, and the hole has parallel sides: 22.4 x 54 / 53 = 22.8226. The tips of 24 gores share pi times the cap's
    // diameter, 2 each from 15.279 up.
    [InlineData("cap_diameter: 22.83", null)]
    [InlineData("cap_diameter: 22.82", "port-over-seam")]
    [InlineData("count: 24, cap_diameter: 15.28", "port-over-seam")]
    [InlineData("count: 24, cap_diameter: 15.27", "gores-do-not-fit")]
    // On the mean sphere of 108 one wall of 2 along the meridian: 108 cos(2/54) = 107.926.
    [InlineData("cap_diameter: 107.92", null)]
    [InlineData("cap_diameter: 107.93", "gores-do-not-fit")]
    public void A_polar_cap(string gores, string? code) => Assert.Equal(
        code is null ? [] : [code],
        DesignReader.Read(DesignTexts.Breather.Replace("{ shape: hemisphere }",
            $"{{ shape: hemisphere, made_from: gores, gores: {{ {gores} }} }}", StringComparison.Ordinal)).Faults.Select(f => f.Code));

    [Theory]
    [InlineData("cap: { outside_diameter: 58, wall: 2, skirt: 20, opens: down, drain_hole: 4 }")]
    [InlineData("cap: { outside_diameter: 58, wall: 2, skirt: 20, opens: up, drop: 4 }")]
    [InlineData("cap: { outside_diameter: 58, wall: 2, skirt: 20, opens: up, seam_angle: 4 }")]
    public void A_key_that_means_nothing_is_refused(string inside) => AssertOnly("key-does-not-apply", inside);

    [Theory]
    [InlineData(
        "sleeve: { tube: { outside_diameter: 76, wall: x }, length: 120 }\n  discs: [ { name: a, at: { height: 70 }, " + Holes + " } ]")]
    [InlineData(
        "sleeve: { tube: { outside_diameter: 76, wall: 2 }, length: 1 x 2 }\n  discs: [ { name: a, at: { height: 70 }, " + Holes + " } ]")]
    [InlineData("sleeve: 5\n  discs: [ { name: a, fits: sleeve, at: { height: 70 }, " + Holes + " } ]")]
    [InlineData("discs: [ { name: a, fits: sleeve, at: { height: 70 }, " + Holes + " } ]")]
    [InlineData("discs: 5\n  packing: { material: steel wool, between: [a, b], density: 60 }")]
    [InlineData("packing: { material: steel wool, between: [], density: 60 }")]
    [InlineData("packing: { material: steel wool, between: a, density: 60 }")]
    [InlineData("packing: { material: steel wool, between: [[a]], density: 60 }")]
    [InlineData("cap: { outside_diameter: 58, wall: 2, skirt: 20, opens: sideways, drain_hole: 70 }")]
    [InlineData("cap: { outside_diameter: 58, wall: 2, skirt: 20, opens: down, outlet: [] }")]
    [InlineData("cap: { outside_diameter: 58, wall: 2, skirt: 40, opens: up, windows: { count: x, width: 90, height: 18, up: 15 } }")]
    public void What_rests_on_a_value_at_fault_is_not_reported_too(string inside) =>
        Assert.Single(DesignReader.Read(DesignTexts.With(inside)).Faults);

    private static void AssertOnly(string? code, string inside) =>
        Assert.Equal(code is null ? [] : [code], DesignReader.Read(DesignTexts.With(inside)).Faults.Select(f => f.Code));

    private static void AssertOnlyBracket(string? code, string bracket) => Assert.Equal(
        code is null ? [] : [code],
        DesignReader.Read($"{DesignTexts.Breather}\nbracket: {{ thickness: 3, height: 90, {bracket} }}\n").Faults.Select(f => f.Code));
}
