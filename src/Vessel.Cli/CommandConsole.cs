namespace Vessel.Cli;

/// <summary>Where a command writes: results to one side, complaints to the other; and whom it may ask.</summary>
internal sealed record CommandConsole(TextWriter Output, TextWriter Error, ConsoleStyle Style)
{
    /// <summary>The user at a terminal; null where there is none to ask.</summary>
    public TextReader? Input { get; init; }

    /// <summary>Where relative paths begin.</summary>
    public string Folder { get; init; } = Environment.CurrentDirectory;

    public string FullPath(string path) => Path.GetFullPath(path, Folder);
}
