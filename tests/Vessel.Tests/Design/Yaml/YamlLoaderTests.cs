using Vessel.Design;
using Vessel.Reading;
using Vessel.Tests.Reading;
using Xunit;

namespace Vessel.Tests.Design;

public sealed class YamlLoaderTests
{
    [Theory]
    [InlineData("a: ~", "~")]
    [InlineData("a: 010", "010")]
    [InlineData("a: 1:30", "1:30")]
    [InlineData("a: yes", "yes")]
    [InlineData("a: \"x y\"", "x y")]
    public void Text_stays_text(string file, string text) => Assert.Equal(text, Leaf(file).Text);

    [Fact]
    public void A_byte_order_mark_is_passed_over() => Assert.Equal((1, 4), (Leaf("\uFEFFa: b").At.Line, Leaf("\uFEFFa: b").At.Column));

    [Fact]
    public void Lines_may_end_as_on_any_system() => Assert.Equal(new Span(2, 4, 2, 5), Load("a: 1\r\nb: 22\r\n").Find("b")!.Value.At);

    [Fact]
    public void A_quoted_text_begins_after_its_quote() => Assert.Equal(5, Leaf("a: 'b c'").TextColumn);

    [Fact]
    public void A_text_with_escapes_has_no_places_within() => Assert.Null(Leaf("a: \"\\u0062\"").TextColumn);

    [Fact]
    public void A_block_ends_with_its_last_value() =>
        Assert.Equal(new Span(1, 1, 2, 7), Load("a:\n  b: cd\n\n# remark\ne: 1\n").Find("a")!.At);

    [Fact]
    public void Braces_belong_to_their_mapping() => Assert.Equal(new Span(1, 4, 1, 10), Load("a: { b: 1}\n").Find("a")!.Value.At);

    [Theory]
    [InlineData(Limits.Nesting - 1, true)]
    [InlineData(Limits.Nesting, false)]
    public void Depth_counts_from_the_files_own_mapping(int lists, bool taken)
    {
        var text = "a: " + new string('[', lists - 1) + "x" + new string(']', lists - 1);

        Assert.Equal(taken, YamlLoader.Load(text).Faults.IsEmpty);
    }

    [Fact]
    public void A_hundred_thousand_levels_are_refused_like_thirty_three() =>
        Assert.Equal("nesting-too-deep", Assert.Single(YamlLoader.Load("a: " + new string('[', 100_000)).Faults).Code);

    [Fact]
    public void Reading_goes_on_after_a_key_that_stands_twice()
    {
        var faults = DesignReader.Read("vessel: A\nvessel: B\nmateriel: mild steel\n").Faults;

        Assert.Contains(faults, f => f.Code == FaultCodes.DuplicateKey);
        Assert.Contains(faults, f => f.Code == FaultCodes.UnknownKey);
    }

    [Fact]
    public void A_comma_in_a_number_between_braces_is_explained()
    {
        var fault = DesignReader.Read(DesignTexts.Breather.Replace("wall: plate", "wall: 1,5", StringComparison.Ordinal)).Faults;

        Assert.Contains("point", Assert.Single(fault, f => f.Code == FaultCodes.UnknownKey).Remedy, StringComparison.Ordinal);
    }

    private static YamlMapping Load(string text) => YamlLoader.Load(text).Top!;

    private static YamlScalar Leaf(string text) => (YamlScalar)Load(text).Find("a")!.Value;
}
