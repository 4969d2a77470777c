using Vessel.Cli;

namespace Vessel.Tests.Support;

/// <summary>What one command line answered.</summary>
internal sealed record CommandRun(int Code, string Output, string Error)
{
    public static CommandRun In(string folder, params string[] args) => Asked(folder, null, args);

    /// <param name="folder">Where relative paths begin.</param>
    /// <param name="answers">What the user at the terminal types; null where there is none.</param>
    public static CommandRun Asked(string folder, string? answers, params string[] args) => Run(folder, answers, true, args);

    /// <param name="folder">Where relative paths begin.</param>
    /// <param name="answers">What comes from the pipe.</param>
    public static CommandRun Piped(string folder, string answers, params string[] args) => Run(folder, answers, false, args);

    public static CommandRun Of(params string[] args) => In(Repository.Root, args);

    private static CommandRun Run(string folder, string? answers, bool isAsking, string[] args)
    {
        var (output, error) = (new StringWriter { NewLine = "\n" }, new StringWriter { NewLine = "\n" });
        var code = CommandLine.Run(args, new CommandConsole(output, error, ConsoleStyle.Plain)
        {
            Folder = folder,
            Input = answers is null ? null : new StringReader(answers),
            IsAsking = isAsking,
        });
        return new(code, output.ToString(), error.ToString());
    }
}
