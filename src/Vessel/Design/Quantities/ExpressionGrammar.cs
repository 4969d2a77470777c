using System.Collections.Immutable;
using System.Globalization;
using Superpower;
using Superpower.Model;
using Superpower.Parsers;

namespace Vessel.Design;

/// <summary>
/// The grammar of values: numbers, fractions (<c>1/4 in</c>), mixed numbers (<c>1 1/4 in</c>), feet with inches, names,
/// + - * /, parentheses. A unit binds to the number before it, so that <c>1/4 in</c> is a quarter of an inch.
/// </summary>
internal static class ExpressionGrammar
{
    private static readonly ImmutableArray<(string Word, Unit Unit)> _unitWords =
        [.. Unit.All.SelectMany(u => u.Words.Select(w => (w, u))).OrderByDescending(w => w.w.Length)];

    private static readonly TextParser<char> _blanks = Character.WhiteSpace.IgnoreMany().Value(' ');

    private static readonly TextParser<Expression> _whole =
        from digits in Placed(Character.Matching(char.IsAsciiDigit, "digit").AtLeastOnce())
        select (Expression)new NumberExpression(
            double.Parse(digits.Text, NumberStyles.None, CultureInfo.InvariantCulture), digits.Offset);

    private static readonly TextParser<Expression> _fraction =
        from over in _whole
        from stroke in Between(Character.EqualTo('/'))
        from under in _whole
        select (Expression)new BinaryExpression('/', over, under, over.Offset);

    private static readonly TextParser<Expression> _mixed =
        from whole in _whole
        from gap in Character.WhiteSpace.AtLeastOnce()
        from part in _fraction
        select (Expression)new BinaryExpression('+', whole, part, whole.Offset);

    private static readonly TextParser<Expression> _number = Number;

    private static readonly TextParser<Expression> _measure =
        from count in _mixed.Try().Or(_fraction.Try()).Or(_number)
        from gap in _blanks
        from unit in (TextParser<Unit>)UnitWord
        select (Expression)new MeasureExpression(count, unit, count.Offset);

    private static readonly TextParser<Expression> _feetAndInches =
        from feet in _measure.Where(m => ((MeasureExpression)m).Unit == Unit.Foot)
        from gap in _blanks
        from inches in _measure.Where(m => ((MeasureExpression)m).Unit == Unit.Inch)
        select (Expression)new BinaryExpression('+', feet, inches, feet.Offset);

    private static readonly TextParser<Expression> _literal =
        _feetAndInches.Try().Or(_measure.Try()).Or(_mixed.Try()).Or(_number);

    private static readonly TextParser<Expression> _name =
        from word in Placed(Character.Letter.Or(Character.EqualTo('_'))
            .IgnoreThen(Character.LetterOrDigit.Or(Character.EqualTo('_')).IgnoreMany()))
        select (Expression)new NameExpression(word.Text, word.Offset);

    private static readonly TextParser<Expression> _primary = Lexeme(
        (from open in Lexeme(Character.EqualTo('('))
         from inner in Parse.Ref(() => _sum!)
         from close in Character.EqualTo(')')
         select inner)
        .Or(_literal)
        .Or(_name));

    private static readonly TextParser<Expression> _signed =
        from signs in Lexeme(Placed(Character.In('-', '+'))).Many()
        from operand in _primary
        select signs.Reverse().Aggregate(
            operand, (e, sign) => sign.Text == "-" ? new NegatedExpression(e, sign.Offset) : e);

    private static readonly TextParser<Expression> _product = Chain('*', '/', _signed);

    private static readonly TextParser<Expression> _sum = Chain('+', '-', _product);

    /// <summary>
    /// The expression, or the place where reading stopped (from 0). The text must be no longer and no deeper nested
    /// than <see cref="Limits.TextLength"/> and <see cref="Limits.ExpressionNesting"/>.
    /// </summary>
    public static (Expression? Expression, int StoppedAt) Read(string text)
    {
        var result = _blanks.IgnoreThen(_sum)(new TextSpan(text));
        if (!result.HasValue)
        {
            var stop = result.ErrorPosition.HasValue ? result.ErrorPosition : result.Remainder.Position;
            return (null, stop.Absolute);
        }

        return result.Remainder.IsAtEnd ? (result.Value, text.Length) : (null, result.Remainder.Position.Absolute);
    }

    /// <summary>How deep parentheses nest.</summary>
    public static int Nesting(string text)
    {
        var (depth, deepest) = (0, 0);
        foreach (var c in text)
        {
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            deepest = Math.Max(deepest, depth);
        }

        return deepest;
    }

    /// <summary>With the blanks after it: a parser that begins with blanks would count as begun before it fails.</summary>
    private static TextParser<T> Lexeme<T>(TextParser<T> parser) =>
        from value in parser
        from gap in _blanks
        select value;

    private static TextParser<T> Between<T>(TextParser<T> parser) => _blanks.IgnoreThen(Lexeme(parser));

    private static TextParser<(string Text, int Offset)> Placed<T>(TextParser<T> parser) => input =>
    {
        var result = parser(input);
        return result.HasValue
            ? Result.Value(
                (input.Until(result.Remainder).ToStringValue(), input.Position.Absolute), input, result.Remainder)
            : Result.CastEmpty<T, (string Text, int Offset)>(result);
    };

    private static TextParser<Expression> Chain(char one, char other, TextParser<Expression> operand) =>
        Parse.Chain(
            Lexeme(Placed(Character.In(one, other))),
            operand,
            (sign, left, right) => new BinaryExpression(sign.Text[0], left, right, sign.Offset));

    /// <summary>Digits with a point; an exponent is taken only where digits follow it.</summary>
    private static Result<Expression> Number(TextSpan input)
    {
        var text = input.Source!;
        var start = input.Position.Absolute;
        var end = start;
        var digits = Digits(text, ref end);
        if (end < text.Length && text[end] == '.')
        {
            end++;
            digits += Digits(text, ref end);
        }

        if (digits == 0)
            return Result.Empty<Expression>(input, ["number"]);
        if (end < text.Length && text[end] is 'e' or 'E')
        {
            var power = end + 1;
            if (power < text.Length && text[power] is '+' or '-')
                power++;
            if (Digits(text, ref power) > 0)
                end = power;
        }

        var value = double.Parse(text.AsSpan(start, end - start), NumberStyles.Float, CultureInfo.InvariantCulture);
        return Result.Value<Expression>(new NumberExpression(value, start), input, input.Skip(end - start));
    }

    private static bool GoesOn(ReadOnlySpan<char> word) =>
        word.Length > 0 && (char.IsLetterOrDigit(word[0]) || word[0] == '_');

    private static int Digits(string text, ref int at)
    {
        var from = at;
        while (at < text.Length && char.IsAsciiDigit(text[at]))
            at++;
        return at - from;
    }

    /// <summary>The longest unit that stands here and is not the beginning of a longer word.</summary>
    private static Result<Unit> UnitWord(TextSpan input)
    {
        var rest = input.Source.AsSpan(input.Position.Absolute);
        foreach (var (word, unit) in _unitWords)
        {
            if (rest.StartsWith(word, StringComparison.Ordinal) && !GoesOn(rest[word.Length..]))
                return Result.Value(unit, input, input.Skip(word.Length));
        }

        return Result.Empty<Unit>(input, ["unit"]);
    }
}
