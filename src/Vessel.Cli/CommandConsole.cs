namespace Vessel.Cli;

/// <summary>Where a command writes: results to one side, complaints to the other; and whom it may ask.</summary>
internal sealed record CommandConsole(TextWriter Output, TextWriter Error, ConsoleStyle Style)
{
    /// <summary>Where answers come from: the user at a terminal, or a pipe; null where there is none to ask.</summary>
    public TextReader? Input { get; init; }

    /// <summary>Answers come from a user, who sees each question and may try again; else from a pipe, in the questions' order.</summary>
    public bool IsAsking { get; init; } = true;

    /// <summary>Characters in a line of the terminal; without end in a pipe.</summary>
    public int Width { get; init; } = int.MaxValue;

    /// <summary>Where relative paths begin.</summary>
    public string Folder { get; init; } = Environment.CurrentDirectory;

    public string FullPath(string path) => Path.GetFullPath(path, Folder);
}
