using System.Text;

namespace Vessel.Export.Report;

/// <summary>Writes HTML and SVG: whatever is not a tag of ours is escaped, and each tag is closed where it was opened.</summary>
internal sealed class Html(TextWriter to)
{
    /// <summary>An element with text alone.</summary>
    public void Tag(string name, string text, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Open(name, attributes);
        Text(text);
        Close(name);
    }

    public void Tag(string name, Action content, params ReadOnlySpan<(string Name, string? Value)> attributes)
    {
        Open(name, attributes);
        content();
        Close(name);
    }

    /// <summary>An element without content; one of SVG is closed, one of HTML needs no end.</summary>
    public void Mark(string name, params ReadOnlySpan<(string Name, string? Value)> attributes) => Start(name, attributes, "/>");

    public void Text(string text) => to.Write(XmlEscape.Of(text));

    /// <summary>Text of ours that is no markup to be escaped: a script, a style, or data that holds no <c>&lt;</c>.</summary>
    public void Raw(string text) => to.Write(text);

    public void Link(string path, string text) => Tag("a", text, ("href", Address(path)));

    /// <summary>A relative path with what an address may not hold written as octets; never taken for a scheme.</summary>
    public static string Address(string path)
    {
        var address = new StringBuilder(path.Length);
        foreach (var octet in Encoding.UTF8.GetBytes(path))
        {
            if (char.IsAsciiLetterOrDigit((char)octet) || octet is (byte)'/' or (byte)'-' or (byte)'_' or (byte)'.' or (byte)'#')
                address.Append((char)octet);
            else
                address.Append('%').Append(octet.ToString("X2", System.Globalization.CultureInfo.InvariantCulture));
        }

        return address.ToString();
    }

    private void Open(string name, ReadOnlySpan<(string Name, string? Value)> attributes) => Start(name, attributes, ">");

    private void Start(string name, ReadOnlySpan<(string Name, string? Value)> attributes, string end)
    {
        to.Write('<');
        to.Write(name);
        foreach (var (attribute, value) in attributes)
        {
            if (value is null)
                continue;
            to.Write(' ');
            to.Write(attribute);
            to.Write("=\"");
            Text(value);
            to.Write('"');
        }

        to.Write(end);
    }

    private void Close(string name)
    {
        to.Write("</");
        to.Write(name);
        to.Write('>');
        if (name is "p" or "li" or "tr" or "section" or "figure" or "h2" or "h3" or "div" or "details" or "ul" or "svg")
            to.Write('\n');
    }
}
