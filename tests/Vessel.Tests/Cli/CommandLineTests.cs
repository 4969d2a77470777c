using System.Text;
using System.Text.Json;
using Vessel.Cli;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Cli;

public sealed class CommandLineTests
{
    public static TheoryData<string> Codes() =>
        [.. FaultCodes.All.Select(f => f.Code), .. FindingCodes.All.Select(f => f.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Explain_tells_cause_and_remedy_of_every_code(string code)
    {
        var run = CommandRun.Of("explain", code);

        Assert.Equal(0, run.Code);
        Assert.Matches($"^{code}: .+\n  cause   .{{10,}}\n  remedy  .{{10,}}\n$", run.Output);
    }

    [Fact]
    public void Explain_alone_lists_every_code()
    {
        var lines = CommandRun.Of("explain").Output.Split('\n');

        Assert.All(Codes(), code => Assert.Contains(lines, line => line.StartsWith($"  {code.Data} ", StringComparison.Ordinal)));
    }

    [Fact]
    public void Explain_prints_a_page_with_a_row_for_every_code()
    {
        var lines = CommandRun.Of("explain", "--page").Output.Split('\n');

        Assert.All(FaultCodes.All, fault => Assert.Contains($"| `{fault.Code}` | {fault.Cause} | {fault.Remedy} |", lines));
        Assert.All(FindingCodes.All, finding => Assert.Contains($"| `{finding.Code}` | {finding.Cause} | {finding.Remedy} |", lines));
    }

    [Fact]
    public void Explain_limits_lists_every_limit_with_its_fault()
    {
        var run = CommandRun.Of("explain", "limits");

        Assert.All(Limits.All, limit => Assert.Contains($"past it: {limit.Code}", run.Output, StringComparison.Ordinal));
        Assert.All(Limits.All, limit => Assert.Contains(FaultCodes.All, f => f.Code == limit.Code));
    }

    [Theory]
    [InlineData("biuld", "'build'")]
    [InlineData("explain gap-to-wide", "'gap-too-wide'")]
    [InlineData("check x.yaml --jsno", "'--json'")]
    [InlineData("check --jsno x.yaml", "'--json'")]
    [InlineData("check --jsno", "'--json'")]
    public void A_mistyped_word_is_a_usage_error_that_names_the_nearest(string line, string nearest)
    {
        var run = CommandRun.Of(line.Split(' '));

        Assert.Equal((2, ""), (run.Code, run.Output));
        Assert.Contains($"Did you mean {nearest}?", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("build", "x.yaml", "--tolerance", "0,5")]
    [InlineData("build", "x.yaml", "--dxf", "r14")]
    [InlineData("check", "x.yaml", "--with", "shell.height")]
    [InlineData("check")]
    [InlineData("stock", "--format", "csv")]
    [InlineData("stock", "bananas")]
    public void A_wrong_value_is_a_usage_error(params string[] args)
    {
        var run = CommandRun.Of(args);

        Assert.Equal((2, ""), (run.Code, run.Output));
        Assert.StartsWith("error: ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Version_is_one_line_of_numbers() => Assert.Matches(@"^\d+\.\d+\.\d+\n$", CommandRun.Of("--version").Output);

    [Fact]
    public void Twenty_faults_are_shown_and_the_rest_counted()
    {
        using var folder = new TemporaryFolder();
        folder.Put("wrong.yaml", string.Concat(Enumerable.Range(0, 30).Select(i => $"key{i}: 1\n")));

        var some = CommandRun.In(folder.Path, "check", "wrong.yaml").Error;
        var all = CommandRun.In(folder.Path, "check", "wrong.yaml", "--all-faults").Error;

        Assert.Equal(20, some.Split(" fault ").Length - 1);
        Assert.Contains("--all-faults shows them", some, StringComparison.Ordinal);
        // Thirty unknown keys, and what a file must have.
        Assert.InRange(all.Split(" fault ").Length - 1, 31, 60);
    }

    [Theory]
    [InlineData("Ölabscheider für 油 Ω.yaml")]
    [InlineData("two words.yaml")]
    [InlineData("@at.yaml")]
    [InlineData("a=b.yaml")]
    public void A_design_may_have_any_file_name(string name)
    {
        using var folder = new TemporaryFolder();
        folder.Put(name, Repository.Design("baler-gearbox-breather.yaml"));

        var run = CommandRun.In(folder.Path, "build", name, "--quiet");

        Assert.Equal(0, run.Code);
        Assert.True(File.Exists(folder[$"out/{Path.GetFileNameWithoutExtension(name)}/summary.json"]));
    }

    [Fact]
    public void A_name_that_begins_with_a_hyphen_follows_two_hyphens()
    {
        using var folder = new TemporaryFolder();
        folder.Put("-x.yaml", Repository.Design("baler-gearbox-breather.yaml"));

        Assert.Equal(0, CommandRun.In(folder.Path, "check", "--", "-x.yaml").Code);
    }

    [Fact]
    public void Line_ends_of_windows_give_the_same_answer()
    {
        using var folder = new TemporaryFolder();
        var text = Repository.Design("baler-gearbox-breather.yaml").ReplaceLineEndings("\n");
        folder.Put("a.yaml", text);
        folder.Put("b.yaml", text.ReplaceLineEndings("\r\n"));

        var (a, b) = (CommandRun.In(folder.Path, "check", "a.yaml"), CommandRun.In(folder.Path, "check", "b.yaml"));

        Assert.Equal(a.Output.Replace("a.yaml", "b.yaml", StringComparison.Ordinal), b.Output);
    }

    [Fact]
    public void A_file_that_is_not_utf_8_is_refused()
    {
        using var folder = new TemporaryFolder();
        folder.Put("x.yaml", "");
        File.WriteAllBytes(folder["x.yaml"], [.. "vessel: K"u8, 0xF6, .. "hler"u8]);

        Assert.Equal(3, CommandRun.In(folder.Path, "check", "x.yaml").Code);
    }

    [Fact]
    public void A_closed_pipe_ends_the_run_without_a_crash()
    {
        using var closed = new ClosedPipe();
        var error = new StringWriter();

        var code = CommandLine.Run(["explain"], closed, error, ConsoleStyle.Plain);

        Assert.Equal(3, code);
        Assert.DoesNotContain("bug", error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_closed_pipes_end_the_run_without_a_crash()
    {
        using var closed = new ClosedPipe();

        Assert.Equal(3, CommandLine.Run(["explain"], closed, closed, ConsoleStyle.Plain));
    }

    [Theory]
    [InlineData(false, null, true)]
    [InlineData(false, "", true)]
    [InlineData(false, "1", false)]
    [InlineData(true, null, false)]
    public void Colour_is_for_terminals_where_it_is_wanted(bool redirected, string? noColour, bool colour) =>
        Assert.Equal(colour, ConsoleStyle.Of(redirected, noColour).Colour);

    [Fact]
    public void Every_table_of_stock_names_a_source_in_every_row() => Assert.All(
        StockTable.All,
        table => Assert.All(table.Rows, row =>
        {
            Assert.Equal(table.Columns.Length, row.Length);
            Assert.NotEqual("", Assert.IsType<string>(row[^1]));
        }));

    [Fact]
    public void Stock_as_json_holds_the_table_itself()
    {
        using var json = JsonDocument.Parse(CommandRun.Of("stock", "threads", "--format", "json").Output);

        var rows = json.RootElement.GetProperty("threads").EnumerateArray().ToList();

        Assert.Equal(Threads.All.Select(t => t.Name), rows.Select(r => r.GetProperty("name").GetString()));
        Assert.All(rows.Zip(Threads.All), r => Assert.Equal(r.Second.TapDrill, r.First.GetProperty("tap_drill_mm").GetDouble(), 1e-6));
    }

    [Fact]
    public void Stock_as_csv_has_a_line_for_each_row_and_a_header()
    {
        var lines = CommandRun.Of("stock", "rods", "--format", "csv").Output.Split("\r\n", StringSplitOptions.RemoveEmptyEntries);

        Assert.Equal(Rods.All.Length + 1, lines.Length);
    }

    [Fact]
    public void A_filter_keeps_only_rows_that_hold_it()
    {
        var run = CommandRun.Of("stock", "threads", "--filter", "npt", "--format", "csv");

        var names = run.Output.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Skip(1).ToList();

        Assert.NotEmpty(names);
        Assert.All(names, line => Assert.Contains("NPT", line, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("bui", "build")]
    [InlineData("build x.yaml --to", "--tolerance")]
    [InlineData("explain gap-", "gap-too-wide")]
    [InlineData("schema s", "summary")]
    public void A_shell_is_told_the_words_that_fit(string line, string word) =>
        Assert.Contains(word, CommandRun.Of($"[suggest:{line.Length}]", line).Output.Split('\n'));

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    [InlineData("pwsh")]
    public void A_completion_script_asks_the_tool_itself(string shell)
    {
        var run = CommandRun.Of("completion", shell);

        Assert.Equal(0, run.Code);
        Assert.Contains("\"[suggest:", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_manual_names_every_command_and_option()
    {
        var manual = CommandRun.Of("manual").Output;
        var root = CommandLine.Root(new CommandConsole(TextWriter.Null, TextWriter.Null, ConsoleStyle.Plain));

        Assert.All(root.Subcommands, command => Assert.Contains($".SS \"{command.Name}", manual, StringComparison.Ordinal));
        Assert.All(
            root.Subcommands.SelectMany(c => c.Options),
            option => Assert.Contains(option.Name.Replace("-", "\\-", StringComparison.Ordinal), manual, StringComparison.Ordinal));
        Assert.DoesNotMatch(@"(?m)^\.(?!TH|SH|SS|TP|B |I )", manual);
    }

    private sealed class ClosedPipe : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw new IOException("Broken pipe");
    }
}
