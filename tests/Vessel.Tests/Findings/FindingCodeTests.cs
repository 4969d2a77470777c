using System.Reflection;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Reading;
using Xunit;

namespace Vessel.Tests.Findings;

/// <summary>A case for each code: it is raised, goes back to a key that the file may have, and says what to change.</summary>
public sealed class FindingCodeTests
{
    public static TheoryData<string> Codes => [.. RaisedFindings.All.Select(raised => raised.Code)];

    [Fact]
    public void Every_code_has_a_case() => Assert.Equal(
        FindingCodes.All.Select(known => known.Code).Order(StringComparer.Ordinal),
        RaisedFindings.All.Select(raised => raised.Code).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_constant_stands_in_the_table()
    {
        var constants = typeof(FindingCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
            .Select(field => (string)field.GetRawConstantValue()!);

        Assert.Equal(constants.Order(StringComparer.Ordinal), FindingCodes.All.Select(known => known.Code).Order(StringComparer.Ordinal));
        Assert.All(FindingCodes.All, known => Assert.EndsWith(".", known.Cause, StringComparison.Ordinal));
        Assert.All(FindingCodes.All, known => Assert.EndsWith(".", known.Remedy, StringComparison.Ordinal));
    }

    /// <summary>The key exactly, not one near it: where the file has it, the place is that key's own.</summary>
    [Theory]
    [MemberData(nameof(Codes))]
    public void A_code_is_raised_at_a_key_that_the_file_may_have(string code)
    {
        var plan = RaisedFindings.All.Single(raised => raised.Code == code).Plan();

        var found = Assessment.Of(plan).Where(finding => finding.Code == code).ToList();

        Assert.NotEmpty(found);
        Assert.All(found, finding => Assert.True(KeyPaths.Exist(finding.Place!.Path), finding.Place.Path));
        Assert.All(found, finding => Assert.True(
            !plan.Assembly.Design.Places.TryGetValue(finding.Place!.Path, out var written) || finding.At == written, finding.Place.Path));
        Assert.All(found, finding => Assert.DoesNotContain("NaN", finding.Message, StringComparison.Ordinal));
    }
}
