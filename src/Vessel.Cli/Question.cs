namespace Vessel.Cli;

/// <summary>Answers from the command line, else from the user or a pipe, else as usual.</summary>
internal sealed class Question(CommandConsole console)
{
    private const int Patience = 3;

    /// <param name="given">The option's text; null when it was not given.</param>
    /// <param name="ask">What to ask.</param>
    /// <param name="usual">Taken for no answer; null where nothing is.</param>
    /// <param name="takes">What a right answer is, with an example.</param>
    /// <param name="read">Null for an answer that cannot be understood.</param>
    /// <exception cref="FormatException">An option or a pipe gives what cannot be understood; the message says what would be.</exception>
    public T? Ask<T>(string? given, string ask, string? usual, string takes, Func<string, T?> read)
    {
        if (given is not null)
            return read(given) ?? throw new FormatException(Wrong(given, ask, takes));
        for (var i = 0; console.Input is { } input && i < Patience; i++)
        {
            if (console.IsAsking)
            {
                console.Output.Write(usual is null ? $"{ask}: " : $"{ask} [{usual}]: ");
                console.Output.Flush();
            }

            var answer = input.ReadLine()?.Trim();
            if (string.IsNullOrEmpty(answer))
                break;
            if (read(answer) is { } value)
                return value;
            if (!console.IsAsking)
                throw new FormatException(Wrong(answer, ask, takes));
            console.Output.WriteLine($"  '{answer}' will not do: give {takes}.");
        }

        return usual is null ? default : read(usual);
    }

    private static string Wrong(string answer, string ask, string takes) => $"'{answer}' does not answer \"{ask}\": give {takes}.";
}
