using System.Globalization;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>What is wrong at one place of an expression; the offset counts from its first character.</summary>
internal sealed record ExpressionProblem(
    string Code, int Offset, string What, string? Given, string? Limit, string Remedy);

/// <summary>
/// Works an expression out. Bare numbers scale in * and / and take the other side's unit in + and -; kinds that do not
/// go together are refused. After a problem the result is null; a name that failed where it is defined is null
/// without a second report.
/// </summary>
internal sealed class Evaluator(
    UserUnits units,
    GaugedStock gauged,
    IReadOnlyDictionary<string, Quantity?> names,
    Action<ExpressionProblem> report)
{
    public Quantity? Evaluate(Expression expression)
    {
        var result = expression switch
        {
            NumberExpression number => Quantity.Bare(number.Value),
            MeasureExpression measure => Measure(measure),
            NameExpression name => Named(name),
            NegatedExpression negated => Negated(negated),
            BinaryExpression binary => Binary(binary),
            _ => throw new InvalidOperationException("a kind of expression that is not known"),
        };
        if (result is { } quantity && !double.IsFinite(quantity.Value))
        {
            return Fail(FaultCodes.NumberNotFinite, expression, "The number is too large.",
                "Use a number of a size that can be built.");
        }

        return result;
    }

    private Quantity? Measure(MeasureExpression measure)
    {
        if (Evaluate(measure.Count) is not { } count)
            return null;
        if (measure.Unit != Unit.Gauge)
        {
            var value = (count.Value * measure.Unit.Factor) + measure.Unit.Shift;
            return new Quantity(value, measure.Unit.Dimension, false, measure.Unit);
        }

        if (gauged is { IsTube: false, Family: null })
        {
            return Fail(FaultCodes.GaugeUnknown, measure, "A gauge is a thickness only when the metal is known.",
                "Name the material, or give the thickness in mm or in.");
        }

        if ((gauged.IsTube ? Gauges.TubeWall(count.Value) : Gauges.Thickness(gauged.Family!.Value, count.Value)) is { } thickness)
            return new Quantity(thickness.Value, Dimension.OfLength, false, Unit.Gauge);
        report(new ExpressionProblem(FaultCodes.GaugeUnknown, measure.Offset, "The gauge is not in the table.",
            string.Create(CultureInfo.InvariantCulture, $"{count.Value} ga"),
            string.Join(", ", Gauges.Numbers.Select(n => n.ToString(CultureInfo.InvariantCulture))),
            "Use a gauge of the table, or give the thickness in mm or in."));
        return null;
    }

    private Quantity? Named(NameExpression name)
    {
        if (names.TryGetValue(name.Name, out var value))
            return value is { IsBare: true } bare ? bare with { Named = true } : value;
        var known = Unit.Find(name.Name) is not null
            ? $"'{name.Name}' is a unit, and no number stands before it."
            : $"There is no size named '{name.Name}' under 'dimensions'.";
        return Fail(FaultCodes.UnknownName, name, known,
            Suggestion.Hint(name.Name, names.Keys) ?? "Name it under 'dimensions', or write a number.");
    }

    private Quantity? Negated(NegatedExpression negated)
    {
        // Minus ten degrees is minus ten of them, not the opposite of ten degrees on the absolute scale.
        if (negated.Operand is MeasureExpression { Unit.Dimension.Temperature: 1 } degrees)
            return Evaluate(degrees with { Count = new NegatedExpression(degrees.Count, negated.Offset) });
        if (Evaluate(negated.Operand) is not { } value)
            return null;
        return value.Dimension.Temperature != 0 ? Temperatures(negated) : value with { Value = -value.Value };
    }

    private Quantity? Binary(BinaryExpression binary)
    {
        // Both sides first, so that what is wrong on the right is reported along with the left.
        var (leftOrNone, rightOrNone) = (Evaluate(binary.Left), Evaluate(binary.Right));
        if (leftOrNone is not { } left || rightOrNone is not { } right)
            return null;
        if (left.Dimension.Temperature != 0 || right.Dimension.Temperature != 0)
            return Temperatures(binary);
        if (binary.Operator == '/' && right.Value == 0)
            return Fail(FaultCodes.DivisionByZero, binary, "The value is divided by zero.", "Change the divisor.");
        return binary.Operator switch
        {
            '*' => Scaled(left, right, left.Value * right.Value, left.Dimension * right.Dimension),
            '/' => Scaled(left, right, left.Value / right.Value, left.Dimension / right.Dimension),
            _ => Sum(binary, left, right),
        };
    }

    /// <summary>A bare number only scales, so that the other side keeps the unit it was written in.</summary>
    private static Quantity Scaled(Quantity left, Quantity right, double value, Dimension dimension) => new(
        value,
        dimension,
        left.IsBare && right.IsBare,
        right.IsBare ? left.Written : left.IsBare && dimension == right.Dimension ? right.Written : null,
        left.IsBare && right.IsBare && (left.Named || right.Named));

    private Quantity? Sum(BinaryExpression binary, Quantity left, Quantity right)
    {
        if (left.IsBare != right.IsBare)
        {
            var (bare, other) = left.IsBare ? (left, right) : (right, left);
            if (Taken(bare, other) is not { } value)
            {
                return Fail(FaultCodes.AmbiguousUnit, binary,
                    "It is not clear in which unit the bare number is meant.", "Write a unit after it.");
            }

            bare = other with { Value = value };
            (left, right) = left.IsBare ? (bare, right) : (left, bare);
        }

        if (left.Dimension != right.Dimension)
        {
            return Fail(FaultCodes.WrongDimension, binary,
                $"Here {left.Dimension} meets {right.Dimension}, which neither adds nor subtracts.",
                "Give both sides the same kind of unit.");
        }

        var sum = binary.Operator == '+' ? left.Value + right.Value : left.Value - right.Value;
        return new Quantity(sum, left.Dimension, left.IsBare, left.Written == right.Written ? left.Written : null,
            left.Named || right.Named);
    }

    /// <summary>
    /// A bare number in the unit of the other side. A named size that has no unit is meant in the unit of the file, so
    /// that another unit on the other side leaves it unclear.
    /// </summary>
    private double? Taken(Quantity bare, Quantity other)
    {
        if (other.Dimension == Dimension.None)
            return bare.Value;
        var file = other.Dimension == Dimension.OfAngle ? Unit.Degree
            : units == UserUnits.Inches ? Unit.Inch : Unit.Millimetre;
        var unit = other.Written == Unit.Gauge ? file : other.Written;
        return unit is null || (bare.Named && unit != file) ? null : bare.Value * unit.Factor;
    }

    private Quantity? Temperatures(Expression at) => Fail(FaultCodes.WrongDimension, at,
        "Temperatures neither add nor scale.", "Write the temperature as one number, as '80 degC'.");

    private Quantity? Fail(string code, Expression at, string what, string remedy)
    {
        report(new ExpressionProblem(code, at.Offset, what, null, null, remedy));
        return null;
    }
}
