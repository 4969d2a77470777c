using System.CommandLine;
using System.CommandLine.Invocation;
using Vessel.Cli.Commands;

namespace Vessel.Cli;

/// <summary>The commands, and what becomes of whatever goes wrong in them.</summary>
internal static class CommandLine
{
    /// <summary>Runs one command line and returns the exit code; see <see cref="ExitCodes"/>.</summary>
    public static int Run(string[] args, TextWriter output, TextWriter error, ConsoleStyle style)
    {
        var console = new CommandConsole(output, error, style);
        var root = new RootCommand("Settles a one-off welded vessel before the first cut: one design file in, flats, solids, hole and weld tables out.")
        {
            BuildCommand.Create(console),
            CheckCommand.Create(console),
        };
        try
        {
            var parsed = root.Parse(args);
            if (parsed.Action is ParseErrorAction)
            {
                foreach (var problem in parsed.Errors)
                    error.WriteLine($"error: {problem.Message}");
                error.WriteLine("Run with --help to see what is understood.");
                return ExitCodes.Usage;
            }

            return parsed.Invoke(new() { Output = output, Error = error, EnableDefaultExceptionHandler = false });
        }
        catch (Exception bug) when (bug is not OutOfMemoryException)
        {
            error.WriteLine($"error: this is a bug in the tool, not in your design: {bug.GetType().Name}: {bug.Message}");
            error.WriteLine("Nothing was written. Please report it with the design file.");
            return ExitCodes.OurBug;
        }
    }
}
