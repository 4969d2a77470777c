using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Vessel.Design;
using Xunit;

namespace Vessel.Tests.Reading;

/// <summary>One bad file per fault; its first line says which fault belongs where.</summary>
public sealed partial class FaultFileTests
{
    private static readonly string _folder = Path.Combine(AppContext.BaseDirectory, "Faults");

    public static TheoryData<string> Files() =>
        [.. Directory.GetFiles(_folder, "*.yaml").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_bad_file_gives_its_fault_and_no_other_at_the_place_it_states(string file)
    {
        var (code, line, column, text) = Expected(file);

        var faults = Faults(file, text);

        var fault = Assert.Single(faults);
        Assert.Equal((code, line, column), (fault.Code, fault.At!.Value.Line, fault.At.Value.Column));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_fault_says_what_is_wrong_and_what_to_change(string file)
    {
        var fault = Faults(file, Expected(file).Text)[0];

        Assert.EndsWith(".", fault.What, StringComparison.Ordinal);
        Assert.NotEqual("", fault.Remedy);
        Assert.DoesNotContain("NaN", fault.What + fault.Given + fault.Limit + fault.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_code_has_a_file()
    {
        var codes = FaultCodes.All.Select(c => c.Code).Order(StringComparer.Ordinal);

        var covered = Files().Select(f => Expected(f.Data).Code).Distinct().Order(StringComparer.Ordinal);

        Assert.Equal(codes, covered);
    }

    [Fact]
    public void Every_constant_stands_in_the_table_under_its_own_name()
    {
        var constants = typeof(FaultCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
            .Select(f => (f.Name, (string)f.GetRawConstantValue()!));

        Assert.Equal(constants, FaultCodes.All.Select(c => (c.Constant, c.Code)));
    }

    /// <summary>Of the file, read as the variant of the file's own name where it says so; or of what it accepts.</summary>
    private static ImmutableArray<Fault> Faults(string file, string text)
    {
        var variant = file.StartsWith("variant-", StringComparison.Ordinal) ? Path.GetFileNameWithoutExtension(file) : null;
        var outcome = Compiler.Read(text, new(variant, []));
        return outcome.Value is { } design
            ? Compiler.Misaccepted(design, Compiler.Assess(Compiler.Assemble(design)))
            : outcome.Faults;
    }

    private static (string Code, int Line, int Column, string Text) Expected(string file)
    {
        var text = File.ReadAllText(Path.Combine(_folder, file));
        var match = Statement().Match(text);
        Assert.True(match.Success, $"{file} does not begin with what is expected of it");
        if (match.Groups["times"] is { Success: true } times)
        {
            var end = text.IndexOf('\n', StringComparison.Ordinal) + 1;
            text = text[..end] + string.Concat(Enumerable.Repeat(text[end..], Number(times)));
        }

        return (match.Groups["code"].Value, Number(match.Groups["line"]), Number(match.Groups["column"]), text);
    }

    private static int Number(Group group) => int.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^# expect: (?<code>[a-z-]+) at (?<line>\d+):(?<column>\d+)(, with the rest of the file (?<times>\d+) times)?\n")]
    private static partial Regex Statement();
}
