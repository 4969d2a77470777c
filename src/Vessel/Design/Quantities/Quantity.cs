namespace Vessel.Design;

/// <summary>What an expression is worth.</summary>
/// <param name="Value">A bare number as written; else in the units of <see cref="Unit"/>.</param>
/// <param name="IsBare">Made of numbers without units: the key decides what it means.</param>
/// <param name="Written">The one unit that all its lengths (or angles ...) were written in; null where there were
/// several, or none.</param>
/// <param name="Named">A bare number that came through a name under <c>dimensions</c>.</param>
internal readonly record struct Quantity(
    double Value, Dimension Dimension, bool IsBare, Unit? Written = null, bool Named = false)
{
    public static Quantity Bare(double value) => new(value, Dimension.None, true);
}
