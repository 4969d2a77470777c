using System.Globalization;
using System.Text.Json;
using Vessel.Cli;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Cli.Commands;

public sealed class BuildCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public BuildCommandTests() => Directory.CreateDirectory(_folder.Path);

    public static TheoryData<string> Designs => [.. Repository.Designs.Select(path => Path.GetFileName(path))];

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Designs))]
    public void Every_design_builds_without_a_grave_finding(string design)
    {
        var (code, output, error) = Run("build", PathOf(design), "--out", _folder["out"]);

        Assert.Equal((ExitCodes.Good, string.Empty), (code, error));
        Assert.Contains("files in", output, StringComparison.Ordinal);
    }

    /// <summary>Between them they have every section and kind of part.</summary>
    [Theory]
    [InlineData("harbour-launch-breather.yaml")]
    [InlineData("trawler-winch-breather.yaml")]
    public void The_same_design_gives_the_same_bytes_in_another_culture_and_folder(string design)
    {
        Run("build", PathOf(design), "--out", _folder["one"]);
        var culture = CultureInfo.CurrentCulture;
        try
        {
            var commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            commas.NumberFormat.NumberDecimalSeparator = ",";
            commas.NumberFormat.NegativeSign = "~";
            CultureInfo.CurrentCulture = commas;
            Run("build", PathOf(design), "--out", _folder["two/deeper"]);
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }

        var first = Bytes(_folder["one"]);
        var second = Bytes(_folder["two/deeper"]);
        Assert.Equal(first.Keys, second.Keys);
        Assert.All(first, file => Assert.Equal(file.Value, second[file.Key]));
    }

    [Theory]
    [MemberData(nameof(Designs))]
    public void The_summary_holds_the_names_that_programs_read(string design)
    {
        Run("build", PathOf(design), "--out", _folder["out"]);

        using var json = JsonDocument.Parse(File.ReadAllText(_folder["out/summary.json"]));

        string[] names = ["schema", "tool_version", "inputs", "options", "parts", "welds", "totals", "capacity", "findings",
            "assumptions", "cautions"];
        Assert.All(names, name => Assert.True(json.RootElement.TryGetProperty(name, out _), name));
        var totals = json.RootElement.GetProperty("totals");
        var sum = json.RootElement.GetProperty("welds").EnumerateArray().Sum(weld => weld.GetProperty("length_mm").GetDouble());
        // Each length is rounded to 1e-6, and so is the total.
        var rounding = 0.5e-6 * (json.RootElement.GetProperty("welds").GetArrayLength() + 1);
        Assert.InRange(totals.GetProperty("weld_length_mm").GetDouble(), sum - rounding, sum + rounding);
    }

    [Fact]
    public void A_failed_build_leaves_the_last_good_output()
    {
        var design = _folder["vessel.yaml"];
        File.Copy(PathOf(Path.GetFileName(Repository.Designs.First())), design);
        Run("build", design, "--out", _folder["out"]);
        var before = Bytes(_folder["out"]);
        File.AppendAllText(design, "\nnonsense: 1\n");

        var (code, output, error) = Run("build", design, "--out", _folder["out"]);

        Assert.Equal((ExitCodes.Faults, string.Empty), (code, output));
        Assert.Contains("nonsense", error, StringComparison.Ordinal);
        Assert.Equal(before.Keys, Bytes(_folder["out"]).Keys);
        Assert.All(Bytes(_folder["out"]), file => Assert.Equal(before[file.Key], file.Value));
    }

    [Theory]
    [InlineData(ExitCodes.Usage, "build")]
    [InlineData(ExitCodes.Usage, "build", "x.yaml", "--chord", "0,05")]
    [InlineData(ExitCodes.Usage, "build", "x.yaml", "--dxf", "r9")]
    [InlineData(ExitCodes.CouldNotWrite, "build", "no such file.yaml")]
    [InlineData(ExitCodes.Good, "--help")]
    public void Exit_codes_are_as_documented(int expected, params string[] args) => Assert.Equal(expected, Run(args).Code);

    [Fact]
    public void Json_reports_parse_and_name_each_fault()
    {
        var design = _folder["vessel.yaml"];
        File.WriteAllText(design, "vessel: x\nshel: {}\n");

        var (code, output, error) = Run("check", design, "--json");

        using var json = JsonDocument.Parse(output);
        Assert.Equal((ExitCodes.Faults, string.Empty), (code, error));
        Assert.Contains(json.RootElement.GetProperty("faults").EnumerateArray(), fault => fault.GetProperty("line").GetInt32() == 2);
    }

    private static string PathOf(string design) => Path.Combine(Repository.Root, "designs", design);

    private static (int Code, string Output, string Error) Run(params string[] args)
    {
        using StringWriter output = new(), error = new();
        var code = CommandLine.Run(args, output, error, ConsoleStyle.Plain);
        return (code, output.ToString(), error.ToString());
    }

    private static SortedDictionary<string, byte[]> Bytes(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .ToDictionary(file => Path.GetRelativePath(folder, file), File.ReadAllBytes),
        StringComparer.Ordinal);
}
