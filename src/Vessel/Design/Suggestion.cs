namespace Vessel.Design;

/// <summary>Guesses what a mistyped word was meant to be.</summary>
public static class Suggestion
{
    /// <summary>"Did you mean 'x'?" where a word is near enough, else null.</summary>
    public static string? Hint(string given, IEnumerable<string> known) =>
        To(given, known) is { } near ? $"Did you mean '{near}'?" : null;

    /// <summary>
    /// The word that takes the fewest single-letter changes, at most a third of the letters (two at least are
    /// allowed); null where none is that near. Equals are told apart by spelling, so that the guess never varies.
    /// </summary>
    public static string? To(string given, IEnumerable<string> known) => known
        .Select(word => (Word: word, Changes: Changes(given.ToLowerInvariant(), word.ToLowerInvariant())))
        .Where(w => w.Changes <= Math.Max(2, w.Word.Length / 3) && w.Changes < w.Word.Length)
        .OrderBy(w => w.Changes)
        .ThenBy(w => w.Word, StringComparer.Ordinal)
        .Select(w => w.Word)
        .FirstOrDefault();

    /// <summary>Levenshtein distance; long words count as far apart without being compared.</summary>
    private static int Changes(string a, string b)
    {
        if (Math.Abs(a.Length - b.Length) > b.Length)
            return int.MaxValue;
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var above = row[j];
                row[j] = Math.Min(Math.Min(above, row[j - 1]) + 1, diagonal + (a[i - 1] == b[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }

        return row[b.Length];
    }
}
