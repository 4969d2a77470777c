using System.Text;
using Vessel.Design;

namespace Vessel.Cli;

/// <summary>
/// Passes text on to a terminal or pipe. Characters that a terminal obeys (ISO/IEC 6429 controls, bidirectional overrides)
/// become U+FFFD, but for line ends, tabs and our own emphasis.
/// </summary>
internal sealed class TerminalWriter : TextWriter
{
    private readonly TextWriter _to;

    private readonly ConsoleStyle _style;

    public TerminalWriter(TextWriter to, ConsoleStyle style)
        : base(to.FormatProvider)
    {
        (_to, _style) = (to, style);
        CoreNewLine = to.NewLine.ToCharArray();
    }

    public override Encoding Encoding => _to.Encoding;

    public override void Write(char value) => Write(value.ToString());

    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    public override void Write(ReadOnlySpan<char> buffer) => Write(buffer.ToString());

    public override void Write(string? value) => _to.Write(Shown(value));

    public override void WriteLine() => _to.WriteLine();

    public override void WriteLine(string? value) => _to.WriteLine(Shown(value));

    public override void Flush() => _to.Flush();

    private string Shown(string? text)
    {
        var rest = text.AsSpan();
        if (FirstObeyed(rest) == rest.Length)
            return text ?? "";
        var shown = new StringBuilder(rest.Length);
        while (!rest.IsEmpty)
        {
            var plain = FirstObeyed(rest);
            shown.Append(rest[..plain]);
            rest = rest[plain..];
            if (rest.IsEmpty)
                break;
            var own = _style.CodeAt(rest);
            shown.Append(own > 0 ? rest[..own].ToString() : "\uFFFD");
            rest = rest[Math.Max(1, own)..];
        }

        return shown.ToString();
    }

    private static int FirstObeyed(ReadOnlySpan<char> text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] is not ('\n' or '\r' or '\t') && PlainText.IsObeyed(text[i]))
                return i;
        }

        return text.Length;
    }
}
