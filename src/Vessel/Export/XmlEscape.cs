using System.Security;
using Vessel.Design;

namespace Vessel.Export;

/// <summary>Text for XML (W3C, "Extensible Markup Language 1.0", section 2.2): what XML has no place for becomes U+FFFD.</summary>
internal static class XmlEscape
{
    public static string Of(string text) => SecurityElement.Escape(PlainText.Clean(text));
}
