using Vessel.Design;
using Vessel.Stock;
using Vessel.Tests.Reading;
using Xunit;

namespace Vessel.Tests.Design;

/// <summary>
/// Expected values are the definitions of the units: inch 25.4 mm, US gallon 231 cubic inches, cubic foot 1728 cubic
/// inches (NIST SP 811). Comparisons allow a few roundings of a double, 1e-14 of the value.
/// </summary>
public sealed class QuantityTests
{
    private const double CubicInch = 25.4 * 25.4 * 25.4;

    [Theory]
    [InlineData("4 in", 101.6)]
    [InlineData("4in", 101.6)]
    [InlineData("4 inches", 101.6)]
    [InlineData("1/4 in", 6.35)]
    [InlineData("1 1/4 in", 31.75)]
    [InlineData("2 ft 3 in", 27 * 25.4)]
    [InlineData("2 ft 3 1/2 in", 27.5 * 25.4)]
    [InlineData("3.2 mm", 3.2)]
    [InlineData("1.5 cm", 15)]
    [InlineData("0.2 m", 200)]
    [InlineData(".5 mm", 0.5)]
    [InlineData("1e2 mm", 100)]
    [InlineData("0.9 L", 0.9e6)]
    [InlineData("500 mL", 0.5e6)]
    [InlineData("1 gal", 231 * CubicInch)]
    [InlineData("30 deg", Math.PI / 6)]
    [InlineData("30 °", Math.PI / 6)]
    [InlineData("0.5 rad", 0.5)]
    [InlineData("870 kg/m3", 870)]
    [InlineData("0.87 g/cm3", 870)]
    [InlineData("45 L/min", 45e6)]
    [InlineData("2 cfm", 2 * 1728 * CubicInch)]
    [InlineData("0.6 m3/h", 10e6)]
    [InlineData("80 degC", 80)]
    [InlineData("176 degF", 80)]
    [InlineData("-40 degF", -40)]
    [InlineData("-10 °C", -10)]
    public void A_number_with_a_unit_has_the_value_that_the_unit_defines(string text, double expected) =>
        Assert.Equal(expected, Values.Of(text), Math.Abs(expected) * 1e-14);

    [Theory]
    [InlineData("2 + 3 * 4", 14)]
    [InlineData("(2 + 3) * 4", 20)]
    [InlineData("10 - 4 - 3", 3)]
    [InlineData("64 / 4 / 2", 8)]
    [InlineData("-2 * -3", 6)]
    [InlineData("2 - -3", 5)]
    [InlineData("1 1/4", 1.25)]
    [InlineData("  7  ", 7)]
    public void Bare_numbers_reckon_as_in_school(string text, double expected) => Assert.Equal(expected, Values.Of(text));

    [Theory]
    [InlineData("4 in + 1", 5 * 25.4)]
    [InlineData("1 + 4 in", 5 * 25.4)]
    [InlineData("4 in - 1", 3 * 25.4)]
    [InlineData("2 * 4 in - 1", 7 * 25.4)]
    [InlineData("4 in / 2 + 1", 3 * 25.4)]
    [InlineData("30 mm - 2 * 3", 24)]
    public void A_bare_number_takes_the_other_sides_unit_in_sums_and_scales_in_products(string text, double expected) =>
        Assert.Equal(expected, Values.Of(text), expected * 1e-14);

    [Theory]
    [InlineData("1 in * 2 mm / 1 in", 2)]
    [InlineData("6 in / 3 in * 5 mm", 10)]
    [InlineData("1 in + 1 mm", 26.4)]
    public void Units_go_through_products_and_quotients(string text, double expected) =>
        Assert.Equal(expected, Values.Of(text), expected * 1e-14);

    [Theory]
    [InlineData(MaterialFamily.Aluminium, 0.0508)]
    [InlineData(MaterialFamily.MildSteel, 0.0598)]
    [InlineData(MaterialFamily.Stainless, 0.0625)]
    public void Sixteen_gauge_depends_on_the_metal(MaterialFamily family, double inches) =>
        Assert.Equal(inches * 25.4, Values.Of("16 ga", family), 1e-12);

    /// <summary>
    /// Tube is sold by the Birmingham gauge whatever its metal: 14 ga 2.108 mm, 16 ga 1.651 mm.
    /// A shell of sheet of the same number is not as thick.
    /// </summary>
    [Theory]
    [InlineData("stainless 304", "14 ga", 2.108)]
    [InlineData("stainless 304", "16 ga", 1.651)]
    [InlineData("aluminium 6061", "16 ga", 1.651)]
    [InlineData("mild steel", "11 ga", 3.048)]
    public void A_gauge_of_a_tube_is_a_tubes_gauge(string metal, string gauge, double millimetres)
    {
        string Vessel(string from) => $$"""
            vessel: Gauge glass
            material: {{metal}}
            shell: { outside_diameter: 110, wall: {{gauge}}, height: 120, made_from: {{from}} }
            top: { shape: flat, thickness: 3 }
            bottom: { shape: flat, thickness: 3 }
            ports:
              - { name: vent, in: top, at: { radius: 0 }, tube: { outside_diameter: 32, wall: {{gauge}} }, length: 40 }
            """;
        var (tube, sheet) = (DesignTexts.Good(Vessel("tube")), DesignTexts.Good(Vessel("sheet")));

        Assert.Equal(millimetres, tube.Shell.Wall, 0.0005);
        Assert.Equal(millimetres, tube.Ports[0].Wall, 0.0005);
        Assert.Equal(tube.Ports[0].Wall, sheet.Ports[0].Wall);
        Assert.NotEqual(tube.Shell.Wall, sheet.Shell.Wall);
    }

    [Theory]
    [InlineData("1 mm + 1 deg", "wrong-dimension")]
    [InlineData("1 mm * 1 mm + 1 mm", "wrong-dimension")]
    [InlineData("80 degC + 5", "wrong-dimension")]
    [InlineData("2 * 80 degC", "wrong-dimension")]
    [InlineData("1 / 0", "division-by-zero")]
    [InlineData("1/0 in", "division-by-zero")]
    [InlineData("1e300 * 1e300", "number-not-finite")]
    [InlineData("nan", "unknown-name")]
    [InlineData("inf mm", "expression-syntax")]
    [InlineData("1,25", "decimal-comma")]
    [InlineData("1:30", "expression-syntax")]
    [InlineData("0x10", "unknown-unit")]
    [InlineData("1_000", "unknown-unit")]
    [InlineData("~", "expression-syntax")]
    [InlineData("  ~", "expression-syntax")]
    [InlineData("  mm", "unknown-name")]
    [InlineData("(2 + 3) mm", "expression-syntax")]
    [InlineData("4 * in", "unknown-name")]
    [InlineData("(4 in", "expression-syntax")]
    [InlineData("4 in)", "expression-syntax")]
    [InlineData("16 ga", "gauge-unknown")]
    [InlineData("1 ft 2 mm + 1", "expression-syntax")]
    [InlineData("1 in + 1 mm + 1", "ambiguous-unit")]
    [InlineData("٣ mm", "expression-syntax")]
    public void What_is_no_value_is_refused_by_its_name(string text, string code) => Assert.Equal(code, Values.Fault(text));

    [Theory]
    [InlineData("4 in + bodi", 7)]
    [InlineData("4 in + 2 inhc", 9)]
    [InlineData("4 mm + 1 deg", 5)]
    [InlineData("100 + * 2", 6)]
    [InlineData("1,25", 0)]
    public void A_fault_stands_at_its_place_in_the_text(string text, int place) => Assert.Equal(place, Values.Place(text));

    [Fact]
    public void A_length_over_a_length_is_a_ratio_and_no_bare_number()
    {
        var ratio = Values.Quantity("4 in / 2 in");

        Assert.Equal((2, Dimension.None, false), (ratio.Value, ratio.Dimension, ratio.IsBare));
    }

    [Fact]
    public void Fahrenheit_meets_celsius_at_forty_below() => Assert.Equal(Values.Of("-40 degC"), Values.Of("-40 degF"), 1e-12);

    [Fact]
    public void Sixty_four_levels_of_parentheses_are_read() =>
        Assert.Equal(7, Values.Of(new string('(', 64) + "7" + new string(')', 64)));

    [Fact]
    public void No_two_units_share_a_word()
    {
        var words = Unit.All.SelectMany(u => u.Words).ToList();

        Assert.Equal(words.Count, words.Distinct().Count());
    }
}
