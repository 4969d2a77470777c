using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using Vessel.Design;
using Vessel.Export;
using Vessel.Export.Dxf;
using Vessel.Function;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Hard;

/// <summary>Whatever happens to a design file, the answer is a vessel or faults with their places, and no hanging.</summary>
public sealed class MutationTests
{
    private const int InTheSuite = 1000;

    // Of the failures, in the test's message.
    private const int Shown = 40;

    // Every so many of the sound ones are meshed too, which takes far longer than all the rest.
    private const int MeshedShare = 40;

    // The aim is 2 s on a machine of its own, and is told in the failure's first line; a loaded one takes many times that.
    private static readonly TimeSpan _most = TimeSpan.FromSeconds(60);

    // The aim is 1 GB.
    private const long MostMemory = 1_000_000_000;

    private static readonly string[] _designs = [.. Repository.Designs.Select(File.ReadAllText)];

    /// <summary>More by the environment: <c>VESSEL_MUTANTS=100000</c>, in pieces with <c>VESSEL_FIRST=20000</c>.</summary>
    private static int Count => Asked("VESSEL_MUTANTS", InTheSuite);

    private static int First => Asked("VESSEL_FIRST", 0);

    [Fact]
    public void A_mutated_design_is_built_or_refused_with_places()
    {
        var bad = new ConcurrentBag<string>();
        var (next, sound, slowest) = (First - 1, 0, TimeSpan.Zero);
        var gate = new Lock();
        // Threads of its own: in those of the pool the builds' own parallel work would wait behind the other mutants.
        var workers = Enumerable.Range(0, Environment.ProcessorCount).Select(_ => new Thread(Work)).ToList();
        workers.ForEach(worker => worker.Start());
        workers.ForEach(worker => worker.Join());

        Assert.True(bad.IsEmpty,
            $"{bad.Count} of {Count}, slowest {slowest}\n{string.Join('\n', bad.Order(StringComparer.Ordinal).Take(Shown))}");
        // Else only the reader would have been tried.
        Assert.InRange(sound, Count / 50, Count);
        // In the suite the process holds what the other tests built as well; a campaign has one of its own.
        using var process = Process.GetCurrentProcess();
        if (Count <= InTheSuite)
            return;
        TestContext.Current.TestOutputHelper?.WriteLine(
            $"{sound} of {Count} sound, slowest {slowest}, {process.PeakWorkingSet64 / 1e6:F0} MB");
        Assert.True(process.PeakWorkingSet64 <= MostMemory, $"{process.PeakWorkingSet64 / 1e6:F0} MB");

        void Work()
        {
            while (Interlocked.Increment(ref next) is var seed && seed < First + Count)
            {
                try
                {
                    var (wasSound, took) = Try(seed);
                    lock (gate)
                        (sound, slowest) = (sound + (wasSound ? 1 : 0), took > slowest ? took : slowest);
                }
                catch (Exception e)
                {
                    bad.Add($"seed {seed}: {e.GetType().Name}: "
                        + $"{e.Message}\n{Differences(seed)}\n{string.Join('\n', (e.StackTrace ?? "").Split('\n').Take(6))}");
                }
            }
        }
    }

    /// <summary>Whether it was sound. One that hangs is found; how fast a busy machine is, is not asked.</summary>
    private static (bool Sound, TimeSpan Took) Try(int seed)
    {
        var clock = Stopwatch.StartNew();
        var sound = Answer(Mutant(seed), seed);
        Assert.True(clock.Elapsed <= _most, $"took {clock.Elapsed}");
        return (sound, clock.Elapsed);
    }

    /// <summary>Every other one is well formed: another choice, size or key; the rest have slips of the hand and of the disk.</summary>
    private static string Mutant(int seed) => seed % 2 == 0
        ? TextMutation.Of(_designs[seed % _designs.Length], new Random(seed))
        : StructureMutation.Of(_designs[seed % _designs.Length], new Random(seed));

    private static int Asked(string name, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out var asked)
            ? asked : usual;

    private static string Differences(int seed) =>
        string.Join('\n', Mutant(seed).Split('\n').Except(_designs[seed % _designs.Length].Split('\n'))
            .Select(line => line.Length > 200 ? line[..200] : line));

    private static bool Answer(string text, int seed)
    {
        var outcome = Compiler.Read(text);
        if (outcome.Value is not { } design)
        {
            AssertPlaced(text, outcome.Faults);
            return false;
        }

        var assembly = Compiler.Assemble(design);
        var findings = Compiler.Assess(assembly);
        AssertPlaced(text, Compiler.Misaccepted(design, findings), mayBeNone: true);
        Assert.All(findings.SelectMany(f => f.Figures), f => Assert.True(double.IsFinite(f.Value), f.Name));
        Assert.All(FunctionFigures.Of(assembly).SelectMany(group => group.Figures), figure => Assert.True(
            figure.Value.Low <= figure.Value.Likely && figure.Value.Likely <= figure.Value.High, figure.Name));
        if (seed % MeshedShare == 0)
            Build.Of(assembly, findings, new(new(DxfRelease.R2000, 0.01), false, new(0.2, 0.5), "0", ""));
        return true;
    }

    private static void AssertPlaced(string text, IReadOnlyCollection<Fault> faults, bool mayBeNone = false)
    {
        Assert.True(mayBeNone || faults.Count > 0, "neither a design nor a fault");
        // What YAML takes for the end of a line.
        var lines = text.Split('\n', '\r', '\u0085', '\u2028', '\u2029').Length;
        foreach (var fault in faults)
        {
            Assert.True(fault.At is { } at && at.Line >= 1 && at.Line <= lines + 1 && at.Column >= 1, $"{fault.Code} has no place");
            Assert.True(fault.Remedy.Length > 0, $"{fault.Code} has no remedy");
            // A text that holds the word may be quoted; no figure of ours is one.
            if (!text.Contains("NaN", StringComparison.Ordinal))
                Assert.DoesNotContain("NaN", fault.What + fault.Given + fault.Limit + fault.Remedy, StringComparison.Ordinal);
        }
    }
}
