namespace Vessel.Cli;

/// <summary>Emphasis on a terminal; nothing at all in a pipe or where NO_COLOR is set.</summary>
internal sealed record ConsoleStyle(bool Colour)
{
    private const string Reset = "\u001b[0m";

    private const string Strong = "\u001b[1m";

    private const string Red = "\u001b[31m";

    private const string Yellow = "\u001b[33m";

    public static ConsoleStyle Plain { get; } = new(false);

    /// <param name="redirected">Whether results or complaints go anywhere but to a terminal.</param>
    /// <param name="noColour">The environment's NO_COLOR.</param>
    public static ConsoleStyle Of(bool redirected, string? noColour) => new(!redirected && string.IsNullOrEmpty(noColour));

    public string Bold(string text) => Wrap(Strong, text);

    public string Bad(string text) => Wrap(Red, text);

    public string Doubtful(string text) => Wrap(Yellow, text);

    /// <summary>The length of the emphasis that the text begins with; zero for none.</summary>
    public int CodeAt(ReadOnlySpan<char> text)
    {
        foreach (var code in (ReadOnlySpan<string>)(Colour ? [Reset, Strong, Red, Yellow] : []))
        {
            if (text.StartsWith(code, StringComparison.Ordinal))
                return code.Length;
        }

        return 0;
    }

    private string Wrap(string code, string text) => Colour ? code + text + Reset : text;
}
