using Vessel.Design;
using Vessel.Reading;
using Vessel.Tests.Reading;
using Xunit;

namespace Vessel.Tests.Design;

public sealed class SettingsTests
{
    private const string Family = DesignTexts.Breather + """

        variants:
          long: { shell.height: 240, ports.inlet.length: 80 }
          wide: { dimensions.body: 130 }
        """;

    [Fact]
    public void A_setting_takes_the_place_of_a_value() =>
        Assert.Equal(220, Good(With("shell.height=220")).Shell.Height);

    [Fact]
    public void A_setting_may_carry_a_unit_or_be_an_expression() =>
        Assert.Equal(2 * 110 + 25.4, Good(With("shell.height=2 * body + 1 in", "dimensions.body=110 mm")).Shell.Height, 1e-9);

    [Theory]
    [InlineData("ports[0].tube.wall=3")]
    [InlineData("ports.inlet.tube.wall=3")]
    public void An_item_of_a_list_is_found_by_number_and_by_name(string setting) =>
        Assert.Equal(3, Good(With(setting)).Ports[0].Wall, 1e-9);

    [Fact]
    public void A_setting_may_add_a_key_and_the_mapping_round_it()
    {
        var text = DesignTexts.Breather.Replace("flow: { blow_by: 45 L/min }", "", StringComparison.Ordinal);

        Assert.Equal(60, Good(With("flow.blow_by=60 L/min"), text).Flow.BlowBy!.Value, 1e-9);
    }

    [Fact]
    public void The_last_of_two_settings_of_one_value_holds() =>
        Assert.Equal(210, Good(With("shell.height=220", "shell.height=210")).Shell.Height);

    [Fact]
    public void The_unit_of_the_file_can_be_set() =>
        Assert.Equal(180 * 25.4, Good(With("units=in", "dimensions.body=110 mm", "dimensions.plate=2 mm", "ports[0].at.offset=0",
            "ports[0].tube.outside_diameter=32 mm", "ports[0].tube.wall=2 mm", "ports[1].tube.outside_diameter=32 mm",
            "ports[1].tube.wall=2 mm", "ports[2].bung.outside_diameter=22 mm", "ports[2].bung.length=15 mm", "top.thickness=3 mm",
            "ports[0].length=50 mm", "ports[1].length=40 mm", "ports[1].inside_length=10 mm")).Shell.Height, 1e-6);

    [Theory]
    [InlineData("shell.hieght=20", FaultCodes.UnknownKey, 1)]
    [InlineData("shell.height=tall", FaultCodes.UnknownName, 14)]
    [InlineData("shell.height=  9 q", FaultCodes.UnknownUnit, 18)]
    [InlineData("shell.height=0.1", FaultCodes.OutOfRange, 14)]
    [InlineData("shell.height=", FaultCodes.MissingValue, 1)]
    [InlineData("shell=3", FaultCodes.WrongKind, 7)]
    [InlineData("shell.height.x=3", FaultCodes.UnknownPlace, 1)]
    [InlineData("ports[7].length=3", FaultCodes.UnknownPlace, 1)]
    [InlineData("ports.inlt.length=3", FaultCodes.UnknownPlace, 1)]
    [InlineData("shell..height=3", FaultCodes.UnknownPlace, 1)]
    [InlineData("shell[0]=3", FaultCodes.UnknownPlace, 1)]
    [InlineData("[0]=3", FaultCodes.UnknownPlace, 1)]
    public void A_setting_at_fault_is_told_at_its_own_text(string setting, string code, int column)
    {
        var fault = Assert.Single(DesignReader.Read(DesignTexts.Breather, With("revision=D", setting)).Faults);

        Assert.Equal((code, 2, column), (fault.Code, fault.At!.Value.Setting, fault.At.Value.Column));
    }

    [Fact]
    public void A_fault_that_a_setting_brings_about_elsewhere_is_told_in_the_file()
    {
        var fault = Assert.Single(DesignReader.Read(DesignTexts.Breather, With("dimensions.body=30")).Faults.Take(1));

        Assert.Equal(0, fault.At!.Value.Setting);
    }

    [Fact]
    public void A_variant_is_its_values_set()
    {
        var variant = Good(new DesignSettings("long", []), Family);

        Assert.Equal((240, 80), (variant.Shell.Height, variant.Ports[0].Length));
        Assert.Equal(180, Good(DesignSettings.None, Family).Shell.Height);
    }

    [Fact]
    public void A_setting_goes_before_a_variant() =>
        Assert.Equal(200, Good(new DesignSettings("long", ["shell.height=200"]), Family).Shell.Height);

    [Fact]
    public void A_variant_that_is_not_there_is_named_with_the_nearest()
    {
        var fault = Assert.Single(DesignReader.Read(Family, new DesignSettings("lnog", [])).Faults);

        Assert.Equal((FaultCodes.UnknownVariant, "Did you mean 'long'?"), (fault.Code, fault.Remedy));
    }

    [Theory]
    [InlineData("shell.hieght: 3", FaultCodes.UnknownKey)]
    [InlineData("shell.height: 0.01", FaultCodes.OutOfRange)]
    [InlineData("shell.height: [1]", FaultCodes.WrongKind)]
    [InlineData("ports.nowhere.length: 3", FaultCodes.UnknownPlace)]
    public void A_variant_is_read_though_it_is_not_asked_for(string value, string code)
    {
        var text = $"{DesignTexts.Breather}\nvariants:\n  other: {{ {value} }}\n";

        var fault = Assert.Single(DesignReader.Read(text).Faults);

        Assert.Equal((code, text.TrimEnd().Split('\n').Length), (fault.Code, fault.At!.Value.Line));
    }

    [Fact]
    public void A_file_may_have_hundreds_of_variants()
    {
        var many = string.Join(", ", Enumerable.Range(0, 500).Select(i => $"v{i}: {{ revision: B{i} }}"));

        Assert.Equal("B499", Good(new("v499", []), $"{DesignTexts.Breather}\nvariants: {{ {many} }}").Revision);
    }

    [Fact]
    public void Past_the_limit_of_variants_there_is_one_fault()
    {
        var many = string.Join(", ", Enumerable.Range(0, Limits.Variants + 1).Select(i => $"v{i}: {{ revision: B }}"));

        Assert.Equal(FaultCodes.TooManyItems,
            Assert.Single(DesignReader.Read($"{DesignTexts.Breather}\nvariants: {{ {many} }}").Faults).Code);
    }

    private static DesignSettings With(params string[] settings) => new(null, [.. settings]);

    private static VesselDesign Good(DesignSettings settings, string text = DesignTexts.Breather)
    {
        var outcome = DesignReader.Read(text, settings);
        Assert.Empty(outcome.Faults.Select(f => $"{f.Code} {f.Path}: {f.What}"));
        return outcome.Value!;
    }
}
