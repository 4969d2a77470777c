using System.Text;
using System.Text.RegularExpressions;

namespace Vessel.Cli;

/// <summary>Breaks lines that are wider than a terminal between words, where the terminal itself would break them anywhere.</summary>
/// <param name="to">Where the lines go.</param>
/// <param name="width">Width of the terminal, characters.</param>
internal sealed partial class WrappingWriter(TextWriter to, int width) : TextWriter
{
    /// <summary>A label wider than this leaves too little room beside it for its text.</summary>
    private const int WidestLabel = 34;

    private const int Indent = 4;

    public override Encoding Encoding => to.Encoding;

    public override void Write(char value) => to.Write(value);

    public override void Write(string? value) => to.Write(value);

    public override void Flush() => to.Flush();

    public override void WriteLine() => to.WriteLine();

    public override void WriteLine(string? value)
    {
        foreach (var line in Lines(value ?? "", width))
            to.WriteLine(line);
    }

    /// <summary>What follows the first line stands below its text, or is indented where it has no label.</summary>
    public static IEnumerable<string> Lines(string text, int width)
    {
        var indent = Label().Match(Emphasis().Replace(text, "")) is { Success: true, Length: <= WidestLabel } label
            && label.Length < width / 2
            ? label.Length
            : text.Length - text.TrimStart().Length + Indent;
        var line = new StringBuilder();
        var (used, words) = (0, 0);
        foreach (var word in Words().Matches(text).Select(match => match.Value))
        {
            var size = Emphasis().Replace(word, "").Length;
            if (words > 0 && used + size > width)
            {
                yield return line.ToString();
                line.Clear().Append(' ', indent);
                (used, words) = (indent, 0);
            }

            line.Append(words == 0 && used > 0 ? word.TrimStart() : word);
            (used, words) = (used + size, words + 1);
        }

        yield return line.ToString();
    }

    /// <summary>One or more words that at least two blanks part from what is said of them.</summary>
    [GeneratedRegex(@"^\s*\S+( \S+)*\s{2,}(?=\S)")]
    private static partial Regex Label();

    /// <summary>A word with the blanks before it.</summary>
    [GeneratedRegex(@"\s*\S+")]
    private static partial Regex Words();

    [GeneratedRegex("\u001b\\[[0-9;]*m")]
    private static partial Regex Emphasis();
}
