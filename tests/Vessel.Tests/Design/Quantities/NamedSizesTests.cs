using Vessel.Design;
using Vessel.Reading;
using Vessel.Tests.Reading;
using Xunit;

namespace Vessel.Tests.Design;

public sealed class NamedSizesTests
{
    [Fact]
    public void A_bare_size_is_in_the_files_unit() =>
        Assert.Equal(8 * 25.4, DesignTexts.Height("tall", "in", "tall: 8"), 1e-10);

    [Fact]
    public void Sizes_may_use_each_other_in_any_order() =>
        Assert.Equal(206, DesignTexts.Height("c", dimensions: "c: b + a, b: 2 * a + 2, a: 68"), 1e-10);

    [Fact]
    public void A_bare_size_adds_to_a_gauge_in_the_files_unit() =>
        Assert.Equal(100 + (2 * 0.0625 * 25.4), DesignTexts.Height("body + 2 * plate", dimensions: "body: 100, plate: 16 ga"), 1e-10);

    [Fact]
    public void An_unused_size_harms_nothing() => Assert.Equal(100, DesignTexts.Height("100", dimensions: "spare: 7 deg"));

    [Fact]
    public void A_wrong_size_is_reported_once_however_often_it_is_used()
    {
        var faults = DesignReader.Read(DesignTexts.WithHeight("a + b", dimensions: "a: 1 / 0, b: 2 * a, c: a")).Faults;

        Assert.Equal(["division-by-zero"], faults.Select(f => f.Code));
    }

    [Fact]
    public void What_leads_into_a_circle_is_not_reported()
    {
        var faults = DesignReader.Read(DesignTexts.WithHeight("100", dimensions: "start: a, a: b, b: a, d: e, e: d + start")).Faults;

        Assert.Equal(["dimensions.a", "dimensions.d"], faults.Select(f => f.Path));
    }

    [Fact]
    public void A_size_defined_by_itself_is_a_circle()
    {
        var fault = Assert.Single(DesignReader.Read(DesignTexts.WithHeight("100", dimensions: "a: a")).Faults);

        Assert.Equal(FaultCodes.DimensionCycle, fault.Code);
        Assert.Contains("a -> a", fault.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chain_of_thousands_is_worked_out()
    {
        var chain = string.Join(", ", Enumerable.Range(1, 5000).Select(i => $"a{i}: a{i - 1} + 0"));

        Assert.Equal(100, DesignTexts.Height("a5000", dimensions: $"{chain}, a0: 100"));
    }

    [Theory]
    [InlineData("in")]
    [InlineData("deg")]
    [InlineData("ga")]
    [InlineData("nan")]
    [InlineData("no")]
    [InlineData("two words")]
    [InlineData("7up")]
    public void A_reserved_word_names_no_size(string name)
    {
        var fault = Assert.Single(DesignReader.Read(DesignTexts.WithHeight("100", dimensions: $"{name}: 5")).Faults);

        Assert.Equal((FaultCodes.DimensionName, name), (fault.Code, fault.Given));
    }
}
