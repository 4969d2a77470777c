using System.Text.RegularExpressions;
using FsCheck.Xunit;
using Vessel.Design;
using Vessel.Reading;
using Xunit;

namespace Vessel.Tests.Reading;

/// <summary>Whatever stands in the file, the reader answers with a design or with faults that have places.</summary>
public sealed partial class RobustnessTests
{
    private static readonly string[] _junk =
    [
        "0", "-1", "1e9", "nan", "~", "''", "[1, 2]", "{ a: 1 }", "in", "4 in", "30 deg", "16 ga", "1/0", "set_in", "tube", "top",
        "shell", "hemisphere", "overlay", "aluminium 6061", "dash 20", "body", "(", "*x", "&x y", "\t", "- a", "?", "|", "\"", "1,5",
    ];

    [Property(MaxTest = 500)]
    public void A_file_with_words_replaced_is_read_or_refused(int seed)
    {
        var random = new Random(seed);
        var words = Word().Matches(DesignTexts.WithInside);
        var text = DesignTexts.WithInside;
        foreach (var word in words.OrderBy(_ => random.Next()).Take(random.Next(1, 4)).OrderByDescending(w => w.Index))
            text = text[..word.Index] + _junk[random.Next(_junk.Length)] + text[(word.Index + word.Length)..];

        AssertAnswered(text);
    }

    [Property(MaxTest = 300)]
    public void A_file_with_a_piece_torn_out_is_read_or_refused(int seed)
    {
        var random = new Random(seed);
        var start = random.Next(DesignTexts.WithInside.Length);
        var length = random.Next(1, 80);

        AssertAnswered(DesignTexts.WithInside.Remove(start, Math.Min(length, DesignTexts.WithInside.Length - start)));
    }

    [Property(MaxTest = 300)]
    public void Any_text_is_read_or_refused(string? text) => AssertAnswered(text ?? "");

    private static void AssertAnswered(string text)
    {
        var outcome = DesignReader.Read(text);

        Assert.Equal(outcome.Value is null, outcome.Faults.Length > 0);
        // What YAML takes for the end of a line.
        var lines = text.Split('\n', '\r', '\u0085', '\u2028', '\u2029').Length;
        Assert.All(outcome.Faults, f => Assert.InRange(f.At!.Value.Line, 1, lines + 1));
        Assert.All(outcome.Faults, f => Assert.DoesNotContain("NaN", f.What + f.Given + f.Limit + f.Remedy, StringComparison.Ordinal));
    }

    [GeneratedRegex(@"[A-Za-z0-9_.]+")]
    private static partial Regex Word();
}
