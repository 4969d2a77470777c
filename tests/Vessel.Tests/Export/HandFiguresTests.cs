using Vessel.Export;
using Vessel.Function;
using Vessel.Parts;
using Xunit;

namespace Vessel.Tests.Export;

/// <summary>Tables and notes are for hands: a tenth of a millimetre, half a gram, a whole minute; three digits of all else.</summary>
public sealed class HandFiguresTests
{
    [Theory]
    [InlineData("length_mm", 370.207933, "370.2")]
    [InlineData("gap_normal_mm", 0.1234567, "0.12")]
    [InlineData("width_or_diameter_mm", 19.05, "19.05")]
    [InlineData("wall_mm", 1.5875, "1.59")]
    [InlineData("x_mm", -0.0000435, "0")]
    [InlineData("polar_angle_deg", 45.0123, "45")]
    [InlineData("stock_mass_g", 1234.5678, "1234.5")]
    [InlineData("filler_g", 0.74, "0.5")]
    [InlineData("arc_min", 0.107, "0.5")]
    [InlineData("arc_min", 2.6, "2.5")]
    [InlineData("time_low_min", 12.4, "12")]
    [InlineData("time_low_min", 0, "0")]
    [InlineData("deposit_mm3", 1234.5678, "1235")]
    [InlineData("heat_kj_per_mm", 0.123456, "0.123")]
    [InlineData("gas_l_per_min", 7.0792, "7.08")]
    [InlineData("travel_mm_per_min", 304.8123, "305")]
    [InlineData("price", 12.345, "12.35")]
    [InlineData("rods", 0.4444, "0.444")]
    public void A_figure_is_rounded_by_the_unit_of_its_column(string column, double value, string written) =>
        Assert.Equal(written, HandFigures.Text(value, column));

    /// <summary>A size is kept as it was given; what was worked out has no more digits than can be measured.</summary>
    [Theory]
    [InlineData(139.7, "139.7")]
    [InlineData(26.99, "26.99")]
    [InlineData(118.5403, "118.5")]
    [InlineData(9.8765, "9.88")]
    [InlineData(-0.001, "0")]
    public void A_length_in_a_note(double mm, string written) => Assert.Equal(written, NoteText.Length(mm));

    [Theory]
    [InlineData(0.0000435, "mm", "under 0.01 mm")]
    [InlineData(0.00021, "J", "under 0.01 J")]
    [InlineData(0.0123, "mm", "0.0123 mm")]
    [InlineData(0.0000435, "m/s", "0.0000435 m/s")]
    [InlineData(0.107, "min", "6 s")]
    [InlineData(0.001, "min", "1 s")]
    [InlineData(12.34, "min", "12.3 min")]
    public void A_figure_that_nobody_feels_is_not_spelled_out(double value, string unit, string written) =>
        Assert.Equal(written, FigureText.Of(value, unit));
}
