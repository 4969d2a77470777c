using System.Text.Json;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Reading;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Cli;

public sealed class AcceptingTests
{
    // Its offset, tilted inlet has a warning of this code and no other finding.
    private const string Pot = "baler-gearbox-breather.yaml";

    private const string Known = FindingCodes.GrooveAtFlank;

    [Fact]
    public void An_accepted_warning_stays_in_the_summary_with_its_reason()
    {
        using var folder = new TemporaryFolder();
        Put(folder, $"{{ code: {Known}, reason: bevelled by hand }}");

        var run = CommandRun.In(folder.Path, "build", "a.yaml");

        Assert.Equal(0, run.Code);
        Assert.Contains($"accepted warning {Known}: bevelled by hand", run.Output, StringComparison.Ordinal);
        using var summary = JsonDocument.Parse(File.ReadAllText(folder["out/a/summary.json"]));
        var finding = summary.RootElement.GetProperty("findings").EnumerateArray()
            .Single(found => found.GetProperty("code").GetString() == Known);
        Assert.Equal(
            (true, "bevelled by hand", "warning"),
            (finding.GetProperty("accepted").GetBoolean(), finding.GetProperty("reason").GetString(),
                finding.GetProperty("severity").GetString()));
    }

    [Theory]
    [InlineData("{ code: groove-at-flunk, reason: known }", FaultCodes.UnknownFinding)]
    [InlineData("{ code: tight-roll, reason: known }", FaultCodes.NothingToAccept)]
    [InlineData("{ code: groove-at-flank, reason: known }, { code: groove-at-flank, reason: again }", FaultCodes.NothingToAccept)]
    [InlineData("{ code: groove-at-flank }", FaultCodes.MissingKey)]
    [InlineData("{ code: groove-at-flank, reason: '- -' }", FaultCodes.MissingValue)]
    public void What_is_wrongly_accepted_is_a_fault_and_nothing_is_written(string accept, string code)
    {
        using var folder = new TemporaryFolder();
        Put(folder, accept);

        var build = CommandRun.In(folder.Path, "build", "a.yaml");
        var check = CommandRun.In(folder.Path, "check", "a.yaml");

        Assert.Equal((1, 1), (build.Code, check.Code));
        Assert.Contains($"fault {code}", build.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder["out"]));
    }

    [Fact]
    public void An_error_is_never_accepted()
    {
        var design = DesignReader.Read(Repository.Design(Pot)).Value! with { Accepted = [new("accept[0]", Known, "no matter")] };
        Measure error = new(Known, Severity.Error, [], () => "it does not hold", [], null);

        Assert.Null(Acceptance.Mark([error], design)[0].AcceptedBecause);
        Assert.Equal(FaultCodes.ErrorAccepted, Assert.Single(Acceptance.Faults([error], design)).Code);
    }

    private static void Put(TemporaryFolder folder, string accept) =>
        folder.Put("a.yaml", $"{Repository.Design(Pot)}\naccept: [ {accept} ]\n");
}
