namespace Vessel.Cli;

/// <summary>Emphasis on a terminal; nothing at all in a pipe or where NO_COLOR is set.</summary>
internal sealed record ConsoleStyle(bool Colour)
{
    private const string Reset = "\u001b[0m";

    public static ConsoleStyle Plain { get; } = new(false);

    /// <param name="redirected">Whether results or complaints go anywhere but to a terminal.</param>
    /// <param name="noColour">The environment's NO_COLOR.</param>
    public static ConsoleStyle Of(bool redirected, string? noColour) => new(!redirected && string.IsNullOrEmpty(noColour));

    public string Bold(string text) => Wrap("\u001b[1m", text);

    public string Bad(string text) => Wrap("\u001b[31m", text);

    public string Doubtful(string text) => Wrap("\u001b[33m", text);

    private string Wrap(string code, string text) => Colour ? code + text + Reset : text;
}
