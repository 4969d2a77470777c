using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Hard;

/// <summary>
/// Whole builds of random designs with random options. In the suite there are few, since each takes as long as a user's build;
/// a campaign asks for more by the environment: <c>VESSEL_BUILDS=3000</c>, from seed <c>VESSEL_FIRST</c> on, left for the readers in
/// the folder <c>VESSEL_BUILDS_TO</c>.
/// </summary>
public sealed partial class WholeBuildTests
{
    private const int InTheSuite = 12;

    // Of the processor: on a machine of its own a build takes no longer than that. A campaign has the process for itself; in the suite
    // it holds what other tests do at the time, so that only hanging is found.
    private static readonly TimeSpan _most = TimeSpan.FromSeconds(10);

    private static readonly TimeSpan _hangs = TimeSpan.FromSeconds(120);

    private const long MostMemory = 600_000_000;

    private static readonly ImmutableArray<string> _designs =
        [.. Repository.Designs.Order(StringComparer.Ordinal).Select(File.ReadAllText)];

    [Fact]
    public void A_random_design_is_built_whole_or_refused()
    {
        var (first, count) = (Asked("VESSEL_FIRST", 0), Asked("VESSEL_BUILDS", InTheSuite));
        var (bad, built, slowest) = (new List<string>(), 0, TimeSpan.Zero);
        var most = count > InTheSuite ? _most : _hangs;
        for (var seed = first; seed < first + count; seed++)
        {
            using var folder = new TemporaryFolder();
            var (clock, before) = (Stopwatch.StartNew(), Environment.CpuUsage.TotalTime);
            var (code, problem) = Try(seed, folder);
            var took = count > InTheSuite ? Environment.CpuUsage.TotalTime - before : clock.Elapsed;
            slowest = took > slowest ? took : slowest;
            built += code is 0 or 4 ? 1 : 0;
            if (problem is not null || took > most)
                bad.Add($"seed {seed}, {took.TotalSeconds:0.0} s, exit {code}: {problem}");
        }

        Assert.True(bad.Count == 0, $"{bad.Count} of {count}, {built} built, slowest {slowest}\n{string.Join('\n', bad)}");
        // Else nothing would have been tried.
        Assert.InRange(built, count / 6, count);
        using var process = Process.GetCurrentProcess();
        if (count <= InTheSuite)
            return;
        TestContext.Current.TestOutputHelper?.WriteLine(
            $"{built} of {count} built, slowest {slowest}, {process.PeakWorkingSet64 / 1e6:F0} MB");
        Assert.True(process.PeakWorkingSet64 <= MostMemory, $"{process.PeakWorkingSet64 / 1e6:F0} MB");
    }

    private static (int Code, string? Problem) Try(int seed, TemporaryFolder folder)
    {
        var random = new Random(seed);
        folder.Put("x.yaml", StructureMutation.Of(_designs[seed % _designs.Length], random));
        var to = Environment.GetEnvironmentVariable("VESSEL_BUILDS_TO") is { Length: > 0 } kept
            ? Path.Combine(kept, seed.ToString(CultureInfo.InvariantCulture)) : folder["out"];
        var run = CommandRun.In(folder.Path, ["build", "x.yaml", "--quiet", "--out", to, .. Options(random)]);
        if (run.Code is not (0 or 1 or 2 or 4) || (run.Code == 2 && !run.Error.Contains("a cut ", StringComparison.Ordinal)))
            return (run.Code, $"{run.Error}\n{File.ReadAllText(folder["x.yaml"])}");
        if (run.Code is 1 or 2)
            return (run.Code, Directory.Exists(to) ? "refused, and a folder was made" : null);
        var odd = Directory.EnumerateFiles(to, "*", SearchOption.AllDirectories)
            .Where(file => Path.GetExtension(file) is ".csv" or ".json" or ".dxf" or ".svg")
            .FirstOrDefault(file => NoNumber().IsMatch(File.ReadAllText(file)));
        return (run.Code, odd is null ? null : $"a number in {odd} is not finite");
    }

    private static IEnumerable<string> Options(Random random)
    {
        string Number(double low, double high) =>
            (low + ((high - low) * random.NextDouble())).ToString("0.###", CultureInfo.InvariantCulture);
        string[][] all =
        [
            ["--kerf", Number(0.05, 0.5)], ["--frame-below", Number(20, 120)], ["--cut-only"], ["--dxf", "r12"], ["--paper", "letter"],
            ["--weld-symbols", "aws"], ["--section", Number(0, 360)], ["--tolerance", Number(0.005, 0.1)], ["--chord", Number(0.05, 0.3)],
            ["--angle", Number(10, 40)],
        ];
        return all.Where(_ => random.Next(4) == 0).SelectMany(option => option);
    }

    private static int Asked(string name, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out var asked)
            ? asked : usual;

    [GeneratedRegex(@"(?<![A-Za-z])(NaN|-?Infinity|∞)(?![A-Za-z])")]
    private static partial Regex NoNumber();
}
