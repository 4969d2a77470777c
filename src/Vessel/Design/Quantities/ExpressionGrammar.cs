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
    private static readonly TextParser<char> _blanks = Character.WhiteSpace.IgnoreMany().Value(' ');

    private static readonly TextParser<Expression> _name =
        from word in Placed(Character.Letter.Or(Character.EqualTo('_'))
            .IgnoreThen(Character.LetterOrDigit.Or(Character.EqualTo('_')).IgnoreMany()))
        select (Expression)new NameExpression(word.Text, word.Offset);

    private static readonly TextParser<Expression> _primary = Lexeme(
        (from open in Lexeme(Character.EqualTo('('))
         from inner in Parse.Ref(() => _sum!)
         from close in Character.EqualTo(')')
         select inner)
        .Or(LiteralScanner.Read)
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

    /// <summary>Parser that takes the blanks after it too: one that begins with blanks would count as begun before it fails.</summary>
    private static TextParser<T> Lexeme<T>(TextParser<T> parser) =>
        from value in parser
        from gap in _blanks
        select value;

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
}
