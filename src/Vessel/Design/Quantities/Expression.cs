namespace Vessel.Design;

/// <summary>
/// A value as written. A closed set. <paramref name="Offset"/> is its first character's place in the text, from 0.
/// </summary>
internal abstract record Expression(int Offset);

internal sealed record NumberExpression(double Value, int Offset) : Expression(Offset);

/// <summary>A number followed by a unit.</summary>
internal sealed record MeasureExpression(Expression Count, Unit Unit, int Offset) : Expression(Offset);

internal sealed record NameExpression(string Name, int Offset) : Expression(Offset);

internal sealed record NegatedExpression(Expression Operand, int Offset) : Expression(Offset);

/// <param name="Operator">One of + - * /.</param>
internal sealed record BinaryExpression(char Operator, Expression Left, Expression Right, int Offset)
    : Expression(Offset);
