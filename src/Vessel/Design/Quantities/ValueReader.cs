using System.Text.RegularExpressions;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Turns the text of a value into a quantity, and reports what is wrong at its place.</summary>
internal sealed partial class ValueReader(
    UserUnits units, IReadOnlyDictionary<string, Quantity?> names, List<Fault> faults)
{
    private const string Example = "Write a number, a number with a unit ('4 in', '1 1/4 in', '30 deg'), "
        + "or an expression of such and of named sizes ('body - 2 * plate').";

    public UserUnits Units => units;

    /// <summary>Null after a fault.</summary>
    public Quantity? Read(YamlScalar scalar, string path, GaugedStock gauged) =>
        Parse(scalar, path) is { } expression ? Evaluate(expression, scalar, path, gauged) : null;

    public Expression? Parse(YamlScalar scalar, string path)
    {
        var text = scalar.Text;
        if (ExpressionGrammar.Nesting(text) is > Limits.ExpressionNesting and var levels)
        {
            Report(new(FaultCodes.ExpressionTooDeep, 0, "The expression is too deeply nested.",
                $"{levels} levels of parentheses", $"{Limits.ExpressionNesting} levels", "Split it with names under 'dimensions'."));
            return null;
        }

        if (Comma().Match(text) is { Success: true } comma)
        {
            Report(new(FaultCodes.DecimalComma, comma.Index, "A comma stands in a number.", text, null,
                $"Write a point: '{Comma().Replace(text, "$1.$2")}'."));
            return null;
        }

        var (expression, stop) = ExpressionGrammar.Read(text);
        if (expression is null)
            Report(Stopped(text, Math.Min(stop, text.Length)));
        return expression;

        void Report(ExpressionProblem problem) => faults.Add(Placed(problem, scalar, path));
    }

    public Quantity? Evaluate(Expression expression, YamlScalar scalar, string path, GaugedStock gauged) =>
        new Evaluator(units, gauged, names, problem => faults.Add(Placed(problem, scalar, path))).Evaluate(expression);

    private static ExpressionProblem Stopped(string text, int stop)
    {
        var rest = text[stop..].Trim();
        var word = Word().Match(rest).Value;
        var afterNumber = text[..stop].TrimEnd() is { Length: > 0 } before && !Word().IsMatch(before[^1..]);
        if (word.Length > 0 && afterNumber && Unit.Find(word) is null)
        {
            return new(FaultCodes.UnknownUnit, stop, $"'{word}' is not a unit.", word, null,
                Suggestion.Hint(word, Unit.All.SelectMany(u => u.Words))
                ?? $"Units are {string.Join(", ", Unit.All.Select(u => u.Name))}.");
        }

        var where = rest.Length == 0 ? "it ends too early" : $"reading stops at '{Shortened(rest)}'";
        return new(FaultCodes.ExpressionSyntax, stop, $"'{Shortened(text)}' cannot be read as a value: {where}.",
            null, null, Example);
    }

    private static string Shortened(string text) => text.Length <= 40 ? text : text[..40] + "...";

    private static Fault Placed(ExpressionProblem problem, YamlScalar scalar, string path)
    {
        var at = scalar.At;
        if (scalar.TextColumn is { } column)
        {
            var there = Math.Min(column + problem.Offset, at.EndColumn);
            at = at with { Column = there, EndColumn = there };
        }

        return new Fault(problem.Code, path, problem.What, problem.Given, problem.Limit, problem.Remedy, at);
    }

    [GeneratedRegex(@"([0-9]),([0-9])")]
    private static partial Regex Comma();

    [GeneratedRegex(@"^[\p{L}°_][\p{L}\p{Nd}°_/]*")]
    private static partial Regex Word();
}
