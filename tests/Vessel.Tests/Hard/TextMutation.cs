using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Vessel.Tests.Hard;

/// <summary>A file with one to four things done to it that a tired hand, a bad editor or a bad disk may do.</summary>
internal static partial class TextMutation
{
    private static readonly string[] _numbers =
    [
        "0", "-0", "-1", "1e-300", "1e300", "1e999", "-1e9", "0.000001", "99999999999999999999", "nan", "NaN", ".inf", "1/0", "1,5", "0x1F",
        "5e-324", "1_000", "12 ga", "4 in", "30 deg", "0.1 mm", "1e6 m", "2 ft 3 in", "1 1/4", "(1", "1+", "90", "360",
        "-360", "0.5", "2", "200",
    ];

    private static readonly string[] _words =
    [
        "set_on", "set_in", "sheet", "tube", "gores", "spinning", "flat", "hemisphere", "overlay", "inset", "up", "down",
        "shell", "top", "bottom",
        "weld", "tabs", "loose", "rings", "square", "sides", "ends", "ground", "hole_saw", "~", "null", "true", "[]", "{}", "''",
        "*a", "&a b", "!!int 3",
        "<<", "- -", "?", "|", ">", "body", "aluminium 6061-T6", "mild steel", "dash 4", "M14x1.5", "\u0000", "\u2028", "Ω", "𝔸", "\ud800",
    ];

    public static string Of(string text, Random random)
    {
        for (var i = random.Next(1, 5); i > 0; i--)
            text = Change(text, random);
        return text;
    }

    private static string Change(string text, Random random)
    {
        switch (random.Next(12))
        {
            case 0:
                return Lines(text, lines => lines.RemoveAt(random.Next(lines.Count)));
            case 1:
                return Lines(text, lines => lines.Insert(random.Next(lines.Count), lines[random.Next(lines.Count)]));
            case 2:
                return Lines(text, lines =>
                {
                    var (a, b) = (random.Next(lines.Count), random.Next(lines.Count));
                    (lines[a], lines[b]) = (lines[b], lines[a]);
                });
            case 3 or 4 or 5:
                return Replaced(text, Number(), _numbers[random.Next(_numbers.Length)], random);
            case 6:
                return Replaced(text, Number(),
                    (random.NextDouble() * Math.Pow(10, random.Next(-2, 5))).ToString("0.###", CultureInfo.InvariantCulture), random);
            case 7:
                return Replaced(text, Value(), _words[random.Next(_words.Length)], random);
            case 8:
                var words = Value().Matches(text);
                return words.Count == 0 ? text : Replaced(text, Value(), words[random.Next(words.Count)].Value, random);
            case 9:
                var start = random.Next(text.Length + 1);
                return text.Remove(start, Math.Min(random.Next(1, 40), text.Length - start));
            case 10:
                var deep = random.Next(1, 3000);
                return text.Insert(random.Next(text.Length + 1), random.Next(3) switch
                {
                    0 => new string('[', deep),
                    1 => new string('(', deep),
                    _ => string.Concat(Enumerable.Repeat("{ a: ", deep)),
                });
            default:
                var bytes = Encoding.UTF8.GetBytes(text);
                if (bytes.Length > 0)
                    bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
                return Encoding.UTF8.GetString(bytes);
        }
    }

    private static string Lines(string text, Action<List<string>> change)
    {
        var lines = text.Split('\n').ToList();
        change(lines);
        return string.Join('\n', lines);
    }

    private static string Replaced(string text, Regex what, string by, Random random)
    {
        var found = what.Matches(text);
        if (found.Count == 0)
            return text;
        var match = found[random.Next(found.Count)];
        return text[..match.Index] + by + text[(match.Index + match.Length)..];
    }

    [GeneratedRegex(@"(?<![A-Za-z0-9_.])[0-9]+(\.[0-9]+)?")]
    private static partial Regex Number();

    [GeneratedRegex(@"(?<=: )[^,\n{}\[\]#]+|[a-z_]+(?=:)")]
    private static partial Regex Value();
}
