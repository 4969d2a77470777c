using System.Globalization;

namespace Vessel.Design;

/// <summary>The one rule for which characters a text of a design may hold, so that every format that we write can hold it.</summary>
public static class PlainText
{
    /// <summary>
    /// The place of the first character that no text may hold: a control (C0, DEL, C1), a noncharacter, or half of a surrogate
    /// pair (Unicode Standard, chapter 23); XML 1.0 has no way to write most of them. -1 where there is none.
    /// </summary>
    public static int FirstUnfit(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                if ((char.ConvertToUtf32(text[i], text[i + 1]) & 0xFFFE) == 0xFFFE)
                    return i;
                i++;
            }
            else if (IsUnfit(text[i]))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Whether a terminal might obey the character rather than show it.</summary>
    public static bool IsObeyed(char letter) =>
        char.IsControl(letter) || letter is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    /// <summary>The character's name as the Unicode Standard writes it: <c>U+001B</c>.</summary>
    public static string CodePoint(string text, int at) => string.Create(
        CultureInfo.InvariantCulture,
        $"U+{(at + 1 < text.Length && char.IsSurrogatePair(text, at) ? char.ConvertToUtf32(text, at) : text[at]):X4}");

    /// <summary>The text with U+FFFD for what <see cref="FirstUnfit"/> finds: for a format that cannot hold it.</summary>
    public static string Clean(string text)
    {
        for (var at = FirstUnfit(text); at >= 0; at = FirstUnfit(text))
            text = $"{text[..at]}\uFFFD{text[(at + (char.IsHighSurrogate(text[at]) && char.IsSurrogatePair(text, at) ? 2 : 1))..]}";
        return text;
    }

    private static bool IsUnfit(char letter) => char.IsControl(letter) || char.IsSurrogate(letter)
        || letter is (>= '\uFDD0' and <= '\uFDEF') or '\uFFFE' or '\uFFFF';
}
