namespace Vessel.Design;

/// <summary>
/// What no text of a design may be, key or value: longer than anyone would write, or unfit for the formats that we write.
/// </summary>
internal static class TextCheck
{
    public static Fault? Of(YamlScalar scalar)
    {
        var text = scalar.Text;
        if (text.Length > Limits.TextLength)
            return TooLong(text, Limits.TextLength, "", scalar.At);
        if (PlainText.FirstUnfit(text) is not (>= 0 and var at))
            return null;
        var (code, place) = (PlainText.CodePoint(text, at), scalar.At);
        if (scalar.TextColumn is { } column)
            place = place with { Column = column + at, EndColumn = column + at };
        return new(FaultCodes.UnfitCharacter, "", $"The text holds the character {code}, which cannot be drawn or written.", code, null,
            "Delete the character: letters, digits, signs and blanks only.", place);
    }

    public static Fault TooLong(string text, int most, string path, Span? at = null) => new(FaultCodes.TextTooLong, path,
        $"'{text[..40]}...' is too long.", $"{text.Length} characters", $"at most {most} characters", "Use a shorter text.", at);
}
