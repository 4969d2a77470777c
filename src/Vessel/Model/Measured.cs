namespace Vessel.Model;

/// <summary>A figure of a measure.</summary>
/// <param name="Name">Two or three words: <c>gap normal</c>.</param>
/// <param name="Limit">Null for a figure that is only told beside.</param>
/// <param name="Unit">Unit of figure and limit; empty for a plain number.</param>
public sealed record Measured(string Name, double Value, Allowed? Limit, string Unit)
{
    /// <summary>Whether the figure keeps its limit; one without a limit always does.</summary>
    public bool Holds => Limit?.Holds(Value) ?? true;

    /// <summary>
    /// What is left to the limit, as a share of it; negative beyond; null where the limit is zero, or where there is none.
    /// </summary>
    public double? Free =>
        Limit is not { } limit || limit.Aim == 0 ? null : (limit.IsMost ? limit.Aim - Value : Value - limit.Aim) / limit.Aim;
}
