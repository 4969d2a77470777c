using System.Globalization;
using System.Text;

namespace Vessel.Export.Pdf;

/// <summary>
/// The font of the unseen text: its letters are as wide as those that are drawn, and empty. A letter gets a code when it first
/// comes; the 256th and later ones share the last code, which reads as a question mark.
/// </summary>
internal sealed class PdfLetters
{
    private const int LastCode = 255;

    private readonly Dictionary<Rune, int> _codes = new() { [new(' ')] = 1 };

    // A font without any letter would not be one.
    private readonly List<Rune> _letters = [new(' ')];

    /// <summary>Code 1 onwards.</summary>
    public IReadOnlyList<Rune> Letters => _letters;

    public string Coded(string words)
    {
        var code = new StringBuilder();
        foreach (var letter in words.EnumerateRunes())
            code.Append(CodeOf(letter).ToString("X2", CultureInfo.InvariantCulture));
        return code.ToString();
    }

    private int CodeOf(Rune letter)
    {
        if (_codes.TryGetValue(letter, out var known))
            return known;
        if (_letters.Count == LastCode)
            return LastCode;
        _letters.Add(_letters.Count == LastCode - 1 ? new Rune('?') : letter);
        _codes[letter] = _letters.Count;
        return _letters.Count;
    }
}
