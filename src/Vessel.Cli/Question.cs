namespace Vessel.Cli;

/// <summary>Answers from the command line, else from the user at the terminal, else as usual.</summary>
internal sealed class Question(CommandConsole console)
{
    private const int Patience = 3;

    /// <param name="given">The option's text; null when it was not given.</param>
    /// <param name="ask">What to ask.</param>
    /// <param name="usual">Taken for no answer; null where nothing is.</param>
    /// <param name="read">Null for an answer that cannot be understood.</param>
    /// <exception cref="FormatException">It cannot be understood; the message says what.</exception>
    public T? Ask<T>(string? given, string ask, string? usual, Func<string, T?> read)
    {
        if (given is not null)
            return read(given) ?? throw new FormatException($"'{given}' is no answer to: {ask}");
        for (var i = 0; console.Input is { } input && i < Patience; i++)
        {
            console.Output.Write(usual is null ? $"{ask}: " : $"{ask} [{usual}]: ");
            console.Output.Flush();
            var answer = input.ReadLine()?.Trim();
            if (string.IsNullOrEmpty(answer))
                break;
            if (read(answer) is { } value)
                return value;
            console.Output.WriteLine("  That is not understood.");
        }

        return usual is null ? default : read(usual);
    }
}
