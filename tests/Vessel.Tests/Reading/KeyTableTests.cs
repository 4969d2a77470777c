using Vessel.Design;
using Vessel.Reading;
using Vessel.Tests.Design;
using Xunit;

namespace Vessel.Tests.Reading;

public sealed class KeyTableTests
{
    public static TheoryData<string, string> Keys() =>
        [.. All().Distinct().SelectMany(m => m.Keys.Select(k => (m.Name, k.Name)))];

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_key_is_described_in_one_line(string map, string key)
    {
        var description = Find(map, key).Description;

        Assert.Matches("^[A-Z][^\n]{7,99}$", description);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_key_is_required_or_its_default_is_stated(string map, string name)
    {
        var key = Find(map, name);
        // Of a group one is required; a table of sizes is empty unless given.
        var stated = key.Default ?? key.DefaultRule ?? key.DefaultWhen.FirstOrDefault()?.Value;
        var grouped = All().Any(m => m.Name == map && m.OneOf.Any(g => g.Contains(name)));

        Assert.Equal(!key.IsRequired && !grouped && key.Kind != KeyKind.Sizes, stated is not null);
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_default_lies_within_the_choices_or_the_range(string map, string name)
    {
        var key = Find(map, name);
        foreach (var value in key.DefaultWhen.Select(d => d.Value).Append(key.Default).OfType<string>())
        {
            if (key.Kind == KeyKind.Choice)
                Assert.Contains(value, key.Choices);
            else if (key.Range is { } range)
                Assert.InRange(Values.Of(value) / key.Kind.ShownUnit(UserUnits.Millimetres).Factor, range.Low, range.High);
        }
    }

    [Theory]
    [MemberData(nameof(Keys))]
    public void A_number_has_a_range_and_a_mapping_has_keys(string map, string name)
    {
        var key = Find(map, name);

        Assert.Equal(key.Kind.IsNumber(), key.Range is not null);
        Assert.Equal(key.Kind is KeyKind.Mapping or KeyKind.List or KeyKind.OneOrList, key.Map is not null || key.Switch is not null);
        Assert.Equal(key.Kind == KeyKind.Choice, key.Choices.Length > 0);
    }

    [Fact]
    public void Every_default_of_a_shops_figure_has_its_source() =>
        Assert.All(Maps(ShopKeys.File).SelectMany(m => m.Keys).Where(k => k.Kind.IsNumber() && k.Default is not null),
            k => Assert.NotNull(k.Source));

    [Fact]
    public void A_mapping_that_may_be_empty_needs_no_key() =>
        Assert.All(All().Where(m => m.MayBeEmpty), m =>
        {
            Assert.DoesNotContain(m.Keys, k => k.IsRequired);
            Assert.Empty(m.OneOf);
        });

    private static Key Find(string map, string key) => All().First(m => m.Name == map).Find(key)!;

    /// <summary>Of both kinds of file.</summary>
    private static IEnumerable<KeyMap> All() => Maps(KeyTable.File).Concat(Maps(ShopKeys.File));

    private static IEnumerable<KeyMap> Maps(KeyMap map) => map.Keys
        .SelectMany(k => (k.Switch?.Maps.Values ?? []).Concat(k.Map is null ? [] : [k.Map]))
        .SelectMany(Maps)
        .Prepend(map);
}
