using System.CommandLine;
using Vessel.Cli;
using Vessel.Cli.Commands;
using Vessel.Findings;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Cli;

/// <summary>What is read at a terminal of 80 columns.</summary>
public sealed class TerminalTests
{
    private const int Columns = 80;

    [Theory]
    [InlineData("build", "designs/harbour-launch-breather.yaml")]
    [InlineData("check", "designs/harbour-launch-breather.yaml")]
    [InlineData("stock")]
    [InlineData("explain")]
    public void Lines_end_between_words(params string[] args)
    {
        using var folder = new TemporaryFolder();
        folder.Put("x", "");
        var output = new StringWriter { NewLine = "\n" };
        var wide = new StringWriter { NewLine = "\n" };
        string[] line = args is ["build", ..] ? [.. args, "--out", folder["out"], "--chord", "1"] : args;
        Run(new WrappingWriter(output, Columns), Columns, line);
        Run(wide, int.MaxValue, line);

        var words = wide.ToString().Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).ToHashSet();
        foreach (var shown in output.ToString().Split('\n'))
        {
            // A word that is longer than a line has no place to break: a path, or a source's address.
            Assert.True(shown.Length <= Columns || shown.Trim().Split(' ').Length == 1, shown);
            Assert.All(shown.Split(' ', StringSplitOptions.RemoveEmptyEntries), word => Assert.Contains(word, words));
        }
    }

    [Fact]
    public void A_label_stands_alone_before_what_follows()
    {
        var lines = WrappingWriter.Lines("capacity  brim 3.10 L, fillable 2.90 L, usable 1.41 L: the rim of the sleeve", 40).ToList();

        Assert.Equal("capacity  brim 3.10 L, fillable 2.90 L,", lines[0]);
        Assert.All(lines.Skip(1), line => Assert.StartsWith("          ", line, StringComparison.Ordinal));
        Assert.Equal("usable 1.41 L: the rim of the", lines[1].Trim());
    }

    [Fact]
    public void Bold_letters_take_no_room() =>
        Assert.Single(WrappingWriter.Lines("\u001b[1m0123456789\u001b[0m", 10));

    [Fact]
    public void Help_with_a_code_to_explain_lists_no_codes()
    {
        var help = CommandRun.Of("explain", "--help").Output;

        Assert.DoesNotContain("gap-too-wide", help, StringComparison.Ordinal);
        Assert.Contains("<CODE>", help, StringComparison.Ordinal);
        Assert.InRange(help.Split('\n').Length, 5, 25);
    }

    /// <summary>A length is asked for as MM, not by the option's own name.</summary>
    [Fact]
    public void Every_option_that_takes_a_value_says_of_what_kind_it_is()
    {
        var root = CommandLine.Root(new CommandConsole(TextWriter.Null, TextWriter.Null, ConsoleStyle.Plain));

        Assert.All(
            root.Subcommands.SelectMany(command => command.Options)
                .Where(option => option is not Option<bool> and not System.CommandLine.Help.HelpOption),
            option => Assert.True(option.HelpName is not null || option.CompletionSources.Count > 0, option.Name));
    }

    [Fact]
    public void The_bare_word_shows_the_help()
    {
        var run = CommandRun.Of();

        Assert.Equal((ExitCodes.Usage, ""), (run.Code, run.Error));
        Assert.All(["build", "check", "new"], word => Assert.Contains(word, run.Output, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Severity.Error, "do not cut yet: 1 error")]
    [InlineData(Severity.Note, "no faults; 1 note")]
    public void The_last_line_says_whether_to_cut(Severity severity, string verdict) =>
        Assert.Equal(verdict, FindingText.Verdict([new Measure("gap-too-wide", severity, ["shell"], () => "A gap.", [], null)]));

    private static void Run(TextWriter output, int width, string[] args) => CommandLine.Run(
        args, new CommandConsole(output, TextWriter.Null, ConsoleStyle.Plain) { Folder = Repository.Root, Width = width });
}
