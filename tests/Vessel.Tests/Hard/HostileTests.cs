using System.Diagnostics;
using System.Text;
using System.Text.Json;
using Vessel.Cli;
using Vessel.Design;
using Vessel.Reading;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Hard;

/// <summary>Names, files and surroundings that no honest user has, and a tired or hostile one may.</summary>
public sealed class HostileTests
{
    private const string Body = """
        material: stainless 304
        shell: { outside_diameter: 110, wall: 2, height: 180, made_from: sheet }
        top: { shape: flat, thickness: 3 }
        bottom: { shape: hemisphere }
        """;

    [Theory]
    [InlineData("\\e]0;mine\\a")]
    [InlineData("\\x9b31m")]
    [InlineData("\\0")]
    [InlineData("one\\ntwo")]
    [InlineData("\\uFFFE")]
    [InlineData("\\U0001FFFF")]
    public void A_text_may_not_hold_what_no_format_can(string name)
    {
        foreach (var text in new[] { $"vessel: \"{name}\"\n{Body}", $"vessel: Can\nrevision: \"{name}\"\n{Body}" })
        {
            Assert.Equal(FaultCodes.UnfitCharacter, Assert.Single(DesignReader.Read(text).Faults).Code);
        }
    }

    [Fact]
    public void A_value_set_from_outside_may_not_either() => Assert.Equal(
        FaultCodes.UnfitCharacter, Assert.Single(DesignReader.Read($"vessel: Can\n{Body}", new(null, ["vessel=a\u001bb"])).Faults).Code);

    [Fact]
    public void A_block_of_several_lines_is_one_line_of_text()
    {
        var outcome = DesignReader.Read($"vessel: >\n  Bilge\n  breather\n{Body}");

        Assert.Equal("Bilge breather", outcome.Value!.Name);
    }

    [Fact]
    public void A_fault_shows_the_line_without_what_a_terminal_would_obey()
    {
        using var folder = new TemporaryFolder();
        folder.Put("x.yaml", $"vessel: Can \u009b2J\u202e\n{Body}\nbogus\u001b]0;mine\u0007: 3\n");

        var run = CommandRun.In(folder.Path, "check", "x.yaml", "--all-faults");

        Assert.Equal(1, run.Code);
        Assert.DoesNotContain(run.Error, letter => letter != '\n' && PlainText.IsObeyed(letter));
    }

    [Fact]
    public void A_terminal_gets_our_emphasis_and_no_other_control()
    {
        var to = new StringWriter { NewLine = "\n" };
        var style = new ConsoleStyle(true);

        new TerminalWriter(to, style).WriteLine(style.Bad("fault") + "\u001b]0;mine\u0007\u001b[2J\t");

        Assert.Equal("\u001b[31mfault\u001b[0m\uFFFD]0;mine\uFFFD\uFFFD[2J\t\n", to.ToString());
    }

    [Theory]
    [InlineData("vessel: NAME", FaultCodes.TextTooLong)]
    [InlineData("vessel: Can\nNAME: 1", FaultCodes.YamlSyntax)]
    [InlineData("vessel: Can\nmaterial: NAME", FaultCodes.TextTooLong)]
    public void A_text_without_end_is_refused_at_once(string pattern, string code)
    {
        var body = pattern.Contains("material", StringComparison.Ordinal)
            ? Body[(Body.IndexOf('\n', StringComparison.Ordinal) + 1)..] : Body;
        var text = $"{pattern.Replace("NAME", new string('n', 900_000), StringComparison.Ordinal)}\n{body}";
        var clock = Stopwatch.StartNew();

        var faults = DesignReader.Read(text).Faults;

        Assert.Contains(faults, fault => fault.Code == code);
        Assert.All(faults, fault => Assert.InRange(fault.What.Length, 1, 3000));
        // Two minutes before; a loaded machine takes a second or two.
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(20), clock.Elapsed.ToString());
    }

    [Fact]
    public void Thousands_of_faults_are_told_as_fast_as_they_are_found()
    {
        using var folder = new TemporaryFolder();
        folder.Put("x.yaml",
            $"vessel: Can\n{Body}\n{string.Concat(Enumerable.Range(0, 9500).Select(i => $"bogus{i}: {new string('x', 80)}\n"))}");
        var clock = Stopwatch.StartNew();

        var run = CommandRun.In(folder.Path, "check", "x.yaml", "--all-faults");

        Assert.Contains("9500 faults", run.Error, StringComparison.Ordinal);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(10), clock.Elapsed.ToString());
    }

    [Fact]
    public void Holes_are_counted_over_the_whole_design()
    {
        static string Disc(string name, int height) =>
            $"    - {{ name: {name}, fits: sleeve, at: {{ height: {height} }}, thickness: 1.5, hole_diameter: 0.6, pitch: 1, pattern: "
                + $"staggered_60 }}\n";
        static string With(int discs) => $$"""
            vessel: Sieve
            material: stainless 304
            shell: { outside_diameter: 310, wall: 2, height: 300, made_from: sheet }
            top: { shape: flat, thickness: 3 }
            bottom: { shape: hemisphere }
            inside:
              sleeve: { tube: { outside_diameter: 200, wall: 2 }, length: 200 }
              discs:
            {{string.Concat(Enumerable.Range(0, discs).Select(i => Disc($"screen {i}", 120 + (20 * i))))}}
            """;

        Assert.DoesNotContain(DesignReader.Read(With(1)).Faults, fault => fault.Code == FaultCodes.TooManyHoles);
        var fault = Assert.Single(DesignReader.Read(With(2)).Faults, fault => fault.Code == FaultCodes.TooManyHoles);
        Assert.Contains("together", fault.What, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("背高", "低い", "x-背高", "x-低い")]
    [InlineData("tall one", "wide", "x-tall-one", "x-wide")]
    public void Each_variant_has_a_folder_of_its_own(string one, string other, string oneFolder, string otherFolder)
    {
        using var folder = new TemporaryFolder();
        folder.Put("x.yaml", $"vessel: Can\n{Body}\nvariants:\n  {one}: {{ revision: B }}\n  {other}: {{ revision: C }}\n");

        Assert.Equal(4, CommandRun.In(folder.Path, "build", "x.yaml", "--variant", one, "--quiet").Code);
        Assert.Equal(4, CommandRun.In(folder.Path, "build", "x.yaml", "--variant", other, "--quiet").Code);

        Assert.Equal(
            new[] { oneFolder, otherFolder }.Order(StringComparer.Ordinal),
            Directory.EnumerateDirectories(folder["out"]).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_first_design_may_be_named_in_any_script()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.Path);

        var run = CommandRun.In(folder.Path, "new", "--for", "油分離器");

        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Contains("油分離器", File.ReadAllText(folder["vessel.yaml"]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, "check", "--json", "--jsno")]
    [InlineData(2, "build", "x.yaml", "--json", "--out", " ")]
    [InlineData(3, "build", "none.yaml", "--json")]
    [InlineData(3, "build", "x.yaml", "--json", "--out", "x.yaml")]
    public void A_program_that_asks_for_json_gets_it_whatever_goes_wrong(int code, params string[] line)
    {
        using var folder = new TemporaryFolder();
        folder.Put("x.yaml", $"vessel: Can\n{Body}\n");

        var run = CommandRun.In(folder.Path, line);

        Assert.Equal(code, run.Code);
        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal(code, json.RootElement.GetProperty("exit").GetInt32());
        Assert.NotEmpty(json.RootElement.GetProperty("errors").EnumerateArray());
        Assert.Equal(["x.yaml"], Directory.EnumerateFileSystemEntries(folder.Path).Select(Path.GetFileName));
    }

    [Fact]
    public void A_device_without_end_is_not_read_to_its_end()
    {
        if (!File.Exists("/dev/zero"))
            Assert.Skip("no such device here");

        var run = CommandRun.Of("check", "/dev/zero");

        Assert.Equal(3, run.Code);
        Assert.Contains("more than 1000000 bytes", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_design_whose_name_is_not_text_is_read_where_the_machine_can()
    {
        if (!OperatingSystem.IsLinux())
            Assert.Skip("names are text here");
        using var folder = new TemporaryFolder();
        folder.Put("x.yaml", $"vessel: Can\n{Body}\n");

        // The test's own folder could not delete such names.
        var run = Shell(folder.Path, """
            odd=$(printf 'a\377b.yaml') && mv x.yaml "$odd" && "$@" build "$odd" --quiet; code=$?; rm "$odd"; exit $code
            """);

        Assert.Equal((4, ""), run);
        Assert.True(File.Exists(folder["out/a\uFFFDb/manifest.json"]));
    }

    [Theory]
    [InlineData("""odd=$(printf 'a\377.yaml'); "$@" check "$odd" """, "the name of the file, or of a folder above it, is not UTF-8 text")]
    [InlineData("""
        odd=$(printf 'd\377') && mkdir "$odd" && cp x.yaml "$odd"; "$@" check "$odd/x.yaml"; code=$?; rm -r "$odd"; exit $code
        """, "the name of the file, or of a folder above it, is not UTF-8 text")]
    [InlineData("""
        odd=$(printf 'd\377') && mkdir "$odd" && cd "$odd" && "$@" build ../x.yaml; code=$?; cd ..; rm -r "$odd"; exit $code
        """, "has a name that is not UTF-8 text: change to another")]
    public void What_cannot_be_found_by_its_name_is_refused_in_words(string script, string words)
    {
        if (!OperatingSystem.IsLinux())
            Assert.Skip("names are text here");
        using var folder = new TemporaryFolder();
        folder.Put("x.yaml", $"vessel: Can\n{Body}\n");

        var run = Shell(folder.Path, script);

        Assert.Equal(3, run.Code);
        Assert.Contains(words, run.Error, StringComparison.Ordinal);
        Assert.Equal(["x.yaml"], Directory.EnumerateFileSystemEntries(folder.Path).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("1", "/")]
    [InlineData("1", "+")]
    [InlineData("1 1/4 in", "+")]
    [InlineData("(1)", "*")]
    public void A_long_expression_is_read_in_a_few_steps_a_character(string term, string sign)
    {
        var text = string.Join(sign, Enumerable.Repeat(term, Limits.TextLength / (term.Length + 1)));
        Assert.NotNull(ExpressionGrammar.Read(text).Expression);
        var before = GC.GetAllocatedBytesForCurrentThread();

        ExpressionGrammar.Read(text);

        // Memory tells steps whatever else the machine does: 850 to 2,200 bytes for each term with its sign,
        // where one way tried after the other took 6,200 to 8,000.
        Assert.InRange((GC.GetAllocatedBytesForCurrentThread() - before) / (text.Length / (term.Length + 1)), 1, 3000);
    }

    [Fact]
    public void A_cut_that_is_too_wide_is_refused_with_each_part_its_place_and_its_limit()
    {
        using var folder = new TemporaryFolder();

        var run = CommandRun.In(Repository.Root, "build", "designs/harbour-launch-breather.yaml", "--kerf", "4", "--out", folder["out"]);

        Assert.Equal(2, run.Code);
        var line = Repository.Design("harbour-launch-breather.yaml").Split('\n').ToList().FindIndex(at => at.Contains("lower screen", StringComparison.Ordinal));
        Assert.Contains($"harbour-launch-breather.yaml:{line + 1}:", run.Error, StringComparison.Ordinal);
        Assert.Contains("'lower screen', which needs one narrower than 3 mm", run.Error, StringComparison.Ordinal);
        Assert.Contains("'upper screen', which needs one narrower than 3 mm", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder["out"]));
    }

    [Fact]
    public void A_build_that_ends_in_faults_finishes_one_that_was_cut_short()
    {
        using var folder = new TemporaryFolder();
        folder.Put("x.yaml", $"vessel: Can\n{Body}\nbogus: 1\n");
        Vessel.Export.OutputFile[] files = [new("a", to => to.Write(Encoding.UTF8.GetBytes("new")))];
        Assert.Throws<KilledException>(() =>
            Vessel.Export.OutputFolder.Commit(folder["out/x"], files, _ => throw new KilledException(), mayExchange: false));
        Assert.False(File.Exists(folder["out/x/a"]));

        var run = CommandRun.In(folder.Path, "build", "x.yaml");

        Assert.Equal(1, run.Code);
        Assert.Contains("had been cut short", run.Error, StringComparison.Ordinal);
        Assert.Equal("new", File.ReadAllText(folder["out/x/a"]));
    }

    /// <param name="folder">Where it runs.</param>
    /// <param name="script">Where <c>"$@"</c> is the tool.</param>
    private static (int Code, string Error) Shell(string folder, string script)
    {
        var host = Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") is { Length: > 0 } known ? known : "dotnet";
        string[] line = ["-c", script, "sh", host, Path.Combine(AppContext.BaseDirectory, "Vessel.Cli.dll")];
        using var process = Process.Start(new ProcessStartInfo("/bin/sh", line)
        {
            WorkingDirectory = folder,
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        })!;
        process.OutputDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        var error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, error);
    }

    private sealed class KilledException : Exception;
}
