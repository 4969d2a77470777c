using System.Globalization;
using System.Text;

namespace Vessel.Design;

/// <summary>The one rule by which a name becomes part of a file name.</summary>
public static class Slug
{
    public const int MaxLength = 60;

    /// <summary>
    /// Lower-case ASCII letters and digits, every run of other characters one hyphen, none at the ends; at most
    /// <see cref="MaxLength"/> characters. Names that Windows keeps for devices get the suffix <c>-part</c>. Empty
    /// when the name has no ASCII letter or digit.
    /// </summary>
    public static string Of(string name)
    {
        var slug = new StringBuilder(name.Length);
        foreach (var c in name)
        {
            if (char.IsAsciiLetterOrDigit(c))
                slug.Append(char.ToLowerInvariant(c));
            else if (slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
        }

        var text = slug.ToString(0, Math.Min(slug.Length, MaxLength)).TrimEnd('-');
        return IsDevice(text) ? text + "-part" : text;
    }

    /// <summary>
    /// A slug with the letters and digits of every script, for the name of a folder: two variants may not share one. It needs
    /// no device's suffix, since it never stands alone.
    /// </summary>
    public static string OfFolder(string name)
    {
        var slug = new StringBuilder(name.Length);
        foreach (var letter in name.EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(letter)
                || Rune.GetUnicodeCategory(letter) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark)
                slug.Append(Rune.ToLowerInvariant(letter));
            else if (slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
        }

        var length = Math.Min(slug.Length, MaxLength);
        return slug.ToString(0, length > 0 && char.IsHighSurrogate(slug[length - 1]) ? length - 1 : length).TrimEnd('-');
    }

    private static bool IsDevice(string slug) =>
        slug is "con" or "prn" or "aux" or "nul"
        || (slug.Length == 4 && (slug.StartsWith("com", StringComparison.Ordinal)
            || slug.StartsWith("lpt", StringComparison.Ordinal)) && char.IsAsciiDigit(slug[3]));
}
