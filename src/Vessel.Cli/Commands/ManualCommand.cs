using System.CommandLine;

namespace Vessel.Cli.Commands;

/// <summary><c>manual</c>: prints the manual page, written from the commands themselves.</summary>
internal static class ManualCommand
{
    public static Command Create(CommandConsole console)
    {
        var command = new Command("manual", "Print the manual page (roff), as for 'vessel manual | man -l -'.");
        command.SetAction(parsed =>
        {
            ManualText.Write((RootCommand)parsed.RootCommandResult.Command, console.Output);
            return ExitCodes.Good;
        });
        return command;
    }
}
