using System.CommandLine;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using Vessel.Cli.Commands;
using Vessel.Design;

namespace Vessel.Cli;

/// <summary>The commands, and what becomes of whatever goes wrong in them.</summary>
internal static class CommandLine
{
    public static int Run(string[] args, TextWriter output, TextWriter error, ConsoleStyle style) =>
        Run(args, new CommandConsole(output, error, style));

    /// <summary>Runs one command line and returns the exit code; see <see cref="ExitCodes"/>.</summary>
    public static int Run(string[] args, CommandConsole console)
    {
        var code = Guarded(args, console);
        // A program that asked for JSON gets it whatever happens; the design's own faults are in its report.
        if (code is (ExitCodes.Usage or ExitCodes.CouldNotWrite or ExitCodes.OurBug)
            && args.TakeWhile(word => word != "--").Contains("--json"))
            TryTo(() => ReportJson.WriteErrors(code, console.Complaints, console.Output));
        return code;
    }

    private static int Guarded(string[] args, CommandConsole console)
    {
        try
        {
            var code = Answer(args, console);
            console.Output.Flush();
            return code;
        }
        catch (DirectoryNotFoundException gone)
        {
            TryTo(() => console.Complain(gone.Message));
            return ExitCodes.CouldNotWrite;
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException)
        {
            // Whoever read the output has closed it, or its disk is full: there is no one left to tell it to.
            TryTo(() => console.Complain($"could not write the report: {gone.Message}"));
            return ExitCodes.CouldNotWrite;
        }
        catch (Exception bug) when (bug is not OutOfMemoryException)
        {
            TryTo(() => console.Complain($"this is a bug in the tool, not in your design: {bug.GetType().Name}: {bug.Message}"));
            TryTo(() => console.Error.WriteLine("Please report it with the design file."));
            return ExitCodes.OurBug;
        }
    }

    /// <summary>The whole tree of commands, which the manual is also written from.</summary>
    public static RootCommand Root(CommandConsole console)
    {
        var root = new RootCommand("Works out a one-off welded vessel before the first cut: one design file in, flats, solids, hole and "
            + "weld tables out.")
        {
            BuildCommand.Create(console),
            CheckCommand.Create(console),
            NewCommand.Create(console),
            ExplainCommand.Create(console),
            StockCommand.Create(console),
            SchemaCommand.Create(console),
            CompletionCommand.Create(console),
            ManualCommand.Create(console),
        };
        root.Options.OfType<VersionOption>().Single().Action = new VersionAction(console);
        return root;
    }

    private static int Answer(string[] args, CommandConsole console)
    {
        var root = Root(console);
        var invocation =
            new InvocationConfiguration { Output = console.Output, Error = console.Error, EnableDefaultExceptionHandler = false };
        if (args.Length == 0)
        {
            root.Parse("--help").Invoke(invocation);
            return ExitCodes.Usage;
        }

        // A file's name may begin with '@': no reading of arguments from files.
        var parsed = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Action is ParseErrorAction || MisreadOptions(parsed).Any())
        {
            foreach (var problem in Problems(parsed))
                console.Complain(problem);
            console.Error.WriteLine("Run with --help for the commands and options.");
            return ExitCodes.Usage;
        }

        return parsed.Invoke(invocation);
    }

    /// <summary>A word that is not understood is told with its nearest; what else is wrong may only follow from it.</summary>
    private static IEnumerable<string> Problems(ParseResult parsed)
    {
        var command = parsed.CommandResult.Command;
        var known = command.Subcommands.Select(c => c.Name)
            .Concat(command.Options.Select(o => o.Name)).Append("--help").ToList();
        var strange = MisreadOptions(parsed).Concat(parsed.UnmatchedTokens).ToList();
        return strange.Count == 0
            ? parsed.Errors.Select(e => e.Message).Distinct()
            : strange.Select(word => $"'{word}' is not understood. {Suggestion.Hint(word, known)}".TrimEnd());
    }

    /// <summary>Options that are not known would pass for a file; after '--' anything is one.</summary>
    private static IEnumerable<string> MisreadOptions(ParseResult parsed) =>
        parsed.Tokens.Any(t => t.Type == TokenType.DoubleDash)
            ? []
            : parsed.CommandResult.Children.OfType<ArgumentResult>()
                .SelectMany(a => a.Tokens.Select(t => t.Value))
                .Where(word => word is ['-', _, ..]);

    private static void TryTo(Action say)
    {
        try
        {
            say();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Closed as well.
        }
    }

    private sealed class VersionAction(CommandConsole console) : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult)
        {
            console.Output.WriteLine(ToolVersion.Text);
            return ExitCodes.Good;
        }
    }
}
