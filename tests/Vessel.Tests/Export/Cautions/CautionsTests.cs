using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Vessel.Export;
using Vessel.Planning;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export;

/// <summary>A caution stands where the design calls for it, and nowhere else; each names its source.</summary>
public sealed partial class CautionsTests
{
    private const string Launch = "harbour-launch-breather.yaml";

    private const string Tank = "canal-boat-day-tank.yaml";

    [Theory]
    [InlineData("passivated", true)]
    [InlineData("painted", false)]
    public void Pickling_warns_of_hydrofluoric_acid_in_the_cautions_and_at_the_step(string finish, bool warned)
    {
        var (cautions, last) = (Of(Launch, $"finish={finish}"), Plans.OfText(Repository.Design(Launch), $"finish={finish}").Steps[^1].What);
        string[] words = ["hydrofluoric acid", "calcium gluconate", "face shield", "rinse water", "HSE"];

        Assert.Equal(warned, cautions.Any(caution => Holds(caution, words)));
        Assert.Equal(warned, Holds(last, words));
    }

    /// <summary>Of the metal that is welded.</summary>
    [Theory]
    [InlineData("stainless 316", "chromium(VI)", "aluminium dust")]
    [InlineData("aluminium 5052", "aluminium dust", "chromium(VI)")]
    [InlineData("aluminium 5052", "ozone", "chromium(VI)")]
    public void The_metal_brings_its_own(string metal, string has, string lacks)
    {
        var cautions = string.Join('\n', Of(Launch, $"material={metal}"));

        Assert.Contains(has, cautions, StringComparison.Ordinal);
        Assert.DoesNotContain(lacks, cautions, StringComparison.Ordinal);
    }

    [Fact]
    public void A_breather_is_warned_of_crankcases_a_tank_of_its_fuel_and_what_may_be_either_of_both()
    {
        var (breather, tank) = (string.Join('\n', Of(Launch)), string.Join('\n', Of(Tank)));
        var either = string.Join('\n', Vessel.Export.Cautions.Of(Compiler.Assemble(Designs.Sound)));
        string[] crankcase = ["IACS UR M10", "2.5 mbar", "frozen vent"];
        string[] fuel = ["33 CFR 183", "46 CFR 58.50", "ISO 21487", "galvanised", "Bond", "flame screen"];

        Assert.All(crankcase, word => Assert.Contains(word, breather, StringComparison.Ordinal));
        Assert.All(crankcase, word => Assert.DoesNotContain(word, tank, StringComparison.Ordinal));
        Assert.All(crankcase.Concat(fuel), word => Assert.Contains(word, either, StringComparison.Ordinal));
        Assert.All(fuel, word => Assert.Contains(word, tank, StringComparison.Ordinal));
        Assert.All(fuel, word => Assert.DoesNotContain(word, breather, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("petrol", "runs along the floor", "galvanised")]
    [InlineData("diesel", "galvanised", "runs along the floor")]
    [InlineData("coolant", "scalds", "33 CFR 183")]
    public void What_it_holds_brings_its_own(string liquid, string has, string lacks)
    {
        var cautions = string.Join('\n', Of(Tank, $"flow.liquid={liquid}", "flow.temperature=90 degC"));

        Assert.Contains(has, cautions, StringComparison.Ordinal);
        Assert.DoesNotContain(lacks, cautions, StringComparison.Ordinal);
    }

    [Fact]
    public void Wool_is_kept_from_the_turbocharger_only_where_there_is_wool()
    {
        Assert.Contains(Of(Launch), caution => caution.Contains("turbocharger", StringComparison.Ordinal));
        Assert.DoesNotContain(Of("baler-gearbox-breather.yaml"), caution => caution.Contains("turbocharger", StringComparison.Ordinal));
    }

    [Fact]
    public void Plating_tungsten_and_argon_are_in_every_shop()
    {
        var cautions = string.Join('\n', Of(Launch));

        Assert.All(["thoriated", "cadmium", "in a pit"], word => Assert.Contains(word, cautions, StringComparison.Ordinal));
    }

    /// <summary>
    /// P V ln(P / Pa), the most that air can give as it expands to the pressure outside: 0.2 bar above an atmosphere in 1 m3 are
    /// 121,325 ln(121,325 / 101,325) = 21,856 J.
    /// </summary>
    [Fact]
    public void The_leak_test_says_how_much_energy_this_vessel_stores()
    {
        var assembly = Compiler.Assemble(Compiler.Read(Repository.Design(Launch), new(null, ["leak_test.pressure=200 mbar"])).Value!);
        var joules = 21_856 * assembly.Capacity.Brim * 1e-9;

        var caution = Assert.Single(Cautions.Of(assembly), caution => caution.StartsWith("Leak test", StringComparison.Ordinal));

        var shown = double.Parse(Energy().Match(caution).Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
        // Three digits that count: half of the last, and the check value's own rounding.
        Assert.Equal(joules, shown, 0.006 * joules);
        Assert.Contains("200 mbar", caution, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Repository.DesignFiles), MemberType = typeof(Repository))]
    public void Each_has_its_source_or_says_that_none_is_known(string file) =>
        Assert.All(Of(file).Skip(1).Where(caution => !caution.StartsWith("An open crankcase", StringComparison.Ordinal)),
            caution => Assert.Matches(Source(), caution));

    private static ImmutableArray<string> Of(string file, params string[] with) =>
        Cautions.Of(Compiler.Assemble(Compiler.Read(Repository.Design(file), new(null, [.. with])).Value!));

    private static bool Holds(string text, string[] words) =>
        Array.TrueForAll(words, word => text.Contains(word, StringComparison.OrdinalIgnoreCase));

    [GeneratedRegex(@"\[practice\]|\([^()]*(\d|HSE|NIOSH|TWI|IARC|law|WorkSafe|Scheme)[^()]*(\([a-z]+\)[^()]*)?\)")]
    private static partial Regex Source();

    [GeneratedRegex(@"sets free up to ([0-9.]+) J")]
    private static partial Regex Energy();
}
