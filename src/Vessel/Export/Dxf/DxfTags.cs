using System.Globalization;
using System.Text;
using Vessel.Geometry;

namespace Vessel.Export.Dxf;

/// <summary>
/// The bottom of the writer: pairs of a group code and a value, each on a line of its own. ASCII. Lines end with
/// CR LF, as the programs that DXF comes from write them: old controllers want it, and every other reader takes it.
/// </summary>
internal sealed class DxfTags(Stream to) : IDisposable
{
    // A bulge is multiplied by half its chord: with 1e-6 a chord of 1 m would move by half a micron, so it gets more.
    private const int BulgeDigits = 9;

    private readonly StreamWriter _writer = new(to, Encoding.ASCII, leaveOpen: true) { NewLine = "\r\n" };

    public void Write(int code, string value)
    {
        _writer.WriteLine(code.ToString(CultureInfo.InvariantCulture));
        _writer.WriteLine(value);
    }

    public void Write(int code, int value) => Write(code, value.ToString(CultureInfo.InvariantCulture));

    public void Write(int code, double value) => Write(code, Numbers.Text(value));

    public void Handle(int code, int handle) => Write(code, handle.ToString("X", CultureInfo.InvariantCulture));

    /// <summary>x, and y ten codes on.</summary>
    public void Write(int code, Point2 at)
    {
        Write(code, at.U);
        Write(code + 10, at.V);
    }

    /// <summary>x, y and z = 0.</summary>
    public void WriteSpatial(int code, Point2 at)
    {
        Write(code, at);
        Write(code + 20, 0);
    }

    public void Bulge(double bulge)
    {
        if (Numbers.Text(bulge, BulgeDigits) is var text and not "0")
            Write(42, text);
    }

    /// <summary>Words, with what has a meaning of its own in a DXF string made harmless.</summary>
    public void Words(int code, string words)
    {
        var text = new StringBuilder();
        foreach (var letter in words)
        {
            var written = Written(letter);

            // Two per cent signs begin a code: a space parts those that are meant as such.
            if (written[0] == '%' && text.Length > 0 && text[^1] == '%')
                text.Append(' ');
            text.Append(written);
        }

        Write(code, text.ToString());
    }

    // The three signs of drawings have codes that all editions know; \U+ is known from R2000 on, and better than
    // nothing before.
    private static string Written(char letter) => letter switch
    {
        '\u00B0' => "%%d",
        '\u00B1' => "%%p",
        '\u00D8' => "%%c",
        '^' => "^ ",
        < ' ' => " ",
        > '~' => $"\\U+{(int)letter:X4}",
        _ => letter.ToString(),
    };

    public void Dispose() => _writer.Dispose();
}
