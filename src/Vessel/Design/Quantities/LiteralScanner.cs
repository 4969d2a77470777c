using System.Collections.Immutable;
using System.Globalization;
using Superpower.Model;

namespace Vessel.Design;

/// <summary>
/// Numbers as they are written, with the unit after them: the leaves of the grammar. Each character is looked at a few times at
/// most, where parsers tried one after the other would read every number seven times over.
/// </summary>
internal static class LiteralScanner
{
    private static readonly ImmutableArray<(string Word, Unit Unit)> _unitWords =
        [.. Unit.All.SelectMany(u => u.Words.Select(w => (w, u))).OrderByDescending(w => w.w.Length)];

    /// <summary>A measure, feet with inches, a mixed number or a number; a fraction without a unit is left to the division.</summary>
    public static Result<Expression> Read(TextSpan input)
    {
        var (text, start) = (input.Source!, input.Position.Absolute);
        var end = start;
        var found = FeetAndInches(text, ref end) ?? (Expression?)Mixed(text, ref end) ?? Number(text, ref end);
        return found is null ? Result.Empty<Expression>(input, ["number"]) : Result.Value(found, input, input.Skip(end - start));
    }

    /// <summary>Or any other measure alone.</summary>
    private static Expression? FeetAndInches(string text, ref int at)
    {
        if (Measure(text, ref at) is not { } first)
            return null;
        var end = Past(text, at);
        if (first.Unit != Unit.Foot || Measure(text, ref end) is not { } inches || inches.Unit != Unit.Inch)
            return first;
        at = end;
        return new BinaryExpression('+', first, inches, first.Offset);
    }

    private static MeasureExpression? Measure(string text, ref int at)
    {
        var (start, end) = (at, at);
        if ((Mixed(text, ref end) ?? (Expression?)Fraction(text, ref end) ?? Number(text, ref end)) is not { } count)
            return null;
        end = Past(text, end);
        if (UnitWord(text, ref end) is not { } unit)
            return null;
        at = end;
        return new(count, unit, start);
    }

    private static BinaryExpression? Mixed(string text, ref int at)
    {
        var (start, end) = (at, at);
        if (Whole(text, ref end) is not { } whole || Past(text, end) is var part && part == end
            || Fraction(text, ref part) is not { } fraction)
            return null;
        at = part;
        return new BinaryExpression('+', whole, fraction, start);
    }

    private static BinaryExpression? Fraction(string text, ref int at)
    {
        var (start, end) = (at, at);
        if (Whole(text, ref end) is not { } over)
            return null;
        end = Past(text, end);
        if (end == text.Length || text[end] != '/')
            return null;
        end = Past(text, end + 1);
        if (Whole(text, ref end) is not { } under)
            return null;
        at = end;
        return new BinaryExpression('/', over, under, start);
    }

    private static NumberExpression? Whole(string text, ref int at)
    {
        var start = at;
        return Digits(text, ref at) == 0
            ? null : new(double.Parse(text.AsSpan(start, at - start), NumberStyles.None, CultureInfo.InvariantCulture), start);
    }

    /// <summary>Digits with a point; an exponent is taken only where digits follow it.</summary>
    private static NumberExpression? Number(string text, ref int at)
    {
        var (start, end) = (at, at);
        var digits = Digits(text, ref end);
        if (end < text.Length && text[end] == '.')
        {
            end++;
            digits += Digits(text, ref end);
        }

        if (digits == 0)
            return null;
        if (end < text.Length && text[end] is 'e' or 'E')
        {
            var power = end + 1;
            if (power < text.Length && text[power] is '+' or '-')
                power++;
            if (Digits(text, ref power) > 0)
                end = power;
        }

        at = end;
        return new NumberExpression(double.Parse(text.AsSpan(start, end - start), NumberStyles.Float, CultureInfo.InvariantCulture), start);
    }

    private static int Digits(string text, ref int at)
    {
        var from = at;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        return at - from;
    }

    /// <summary>The first place from there on that is not blank.</summary>
    private static int Past(string text, int at)
    {
        while (at < text.Length && char.IsWhiteSpace(text[at]))
            at++;
        return at;
    }

    /// <summary>The longest unit that stands here and is not the beginning of a longer word.</summary>
    private static Unit? UnitWord(string text, ref int at)
    {
        var rest = text.AsSpan(at);
        foreach (var (word, unit) in _unitWords)
        {
            if (rest.StartsWith(word, StringComparison.Ordinal) && !GoesOn(rest[word.Length..]))
            {
                at += word.Length;
                return unit;
            }
        }

        return null;
    }

    private static bool GoesOn(ReadOnlySpan<char> word) => word.Length > 0 && (char.IsLetterOrDigit(word[0]) || word[0] == '_');
}
