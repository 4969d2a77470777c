namespace Vessel.Cli;

/// <summary>Where a command writes: results to one side, complaints to the other; and whom it may ask.</summary>
internal sealed record CommandConsole(TextWriter Output, TextWriter Error, ConsoleStyle Style)
{
    private readonly List<string> _complaints = [];

    /// <summary>What stands in a file never reaches the terminal as a command to it.</summary>
    public TextWriter Output { get; } = new TerminalWriter(Output, Style);

    /// <inheritdoc cref="Output"/>
    public TextWriter Error { get; } = new TerminalWriter(Error, Style);

    /// <summary>Where answers come from: the user at a terminal, or a pipe; null where there is none to ask.</summary>
    public TextReader? Input { get; init; }

    /// <summary>Answers come from a user, who sees each question and may try again; else from a pipe, in the questions' order.</summary>
    public bool IsAsking { get; init; } = true;

    /// <summary>Characters in a line of the terminal; without end in a pipe.</summary>
    public int Width { get; init; } = int.MaxValue;

    /// <summary>Where relative paths begin.</summary>
    /// <exception cref="DirectoryNotFoundException">The folder that the process stands in is gone, or has a name that is not
    /// text.</exception>
    public string Folder { get => field ?? Here(); init; }

    /// <summary>What went wrong so far, apart from the design itself.</summary>
    public IReadOnlyList<string> Complaints => _complaints;

    public string FullPath(string path) => Path.GetFullPath(path, Folder);

    private static string Here()
    {
        string here;
        try
        {
            here = Environment.CurrentDirectory;
        }
        catch (IOException gone)
        {
            throw new DirectoryNotFoundException("the folder that you stand in is gone: change to another and run again", gone);
        }

        // Else another folder would be made beside it, with what could not be read replaced.
        return Directory.Exists(here) ? here : throw new DirectoryNotFoundException(
            $"the folder that you stand in, '{here}', is gone or has a name that is not UTF-8 text: change to another and run again");
    }

    /// <summary>Tells what went wrong, apart from the design itself.</summary>
    public void Complain(string what)
    {
        _complaints.Add(what);
        Error.WriteLine($"error: {what}");
    }
}
