using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Vessel.Export;
using Vessel.Export.Pictures;
using Vessel.Export.Report;

namespace Vessel.Tests.Support;

/// <summary>A page read back: every tag must be closed, as in XML, once scripts and styles are set aside.</summary>
internal sealed partial record PageProbe(string Text, XElement Root, IReadOnlyList<string> Scripts, IReadOnlyList<string> Styles)
{
    public static PageProbe Of(Build build)
    {
        using var stream = new MemoryStream();
        ReportPage.Write(build, new StillPictures(build, 160), stream);
        return Of(Encoding.UTF8.GetString(stream.ToArray()));
    }

    public static PageProbe Of(string text)
    {
        const string doctype = "<!doctype html>\n";
        if (!text.StartsWith(doctype, StringComparison.Ordinal))
            throw new FormatException("no doctype");
        var (scripts, styles) = (new List<string>(), new List<string>());
        var rest = Verbatim().Replace(text[doctype.Length..], match =>
        {
            (match.Groups[1].Value == "script" ? scripts : styles).Add(match.Groups[3].Value);
            return $"<{match.Groups[1].Value}{match.Groups[2].Value}/>";
        });
        return new(text, XElement.Parse(rest, LoadOptions.PreserveWhitespace), scripts, styles);
    }

    public IEnumerable<XElement> All(string tag) => Root.DescendantsAndSelf(tag);

    public IEnumerable<string> Values(string attribute) =>
        Root.DescendantsAndSelf().Attributes(attribute).Select(a => a.Value);

    /// <summary>What a reader sees, tags and attributes aside.</summary>
    public string Shown => Root.Value;

    [GeneratedRegex("<(script|style)((?: [^>]*)?)>(.*?)</\\1>", RegexOptions.Singleline)]
    private static partial Regex Verbatim();
}
