namespace Vessel.Model;

/// <summary>The least or the most that a figure may be.</summary>
/// <param name="IsMost">The limit is the most that may be; else the least.</param>
/// <param name="Aim">What is aimed for, in the figure's unit.</param>
/// <param name="Last">What is taken, if not gladly: beyond it matters are one step graver. Infinite where there is no such step.</param>
public readonly record struct Allowed(bool IsMost, double Aim, double Last)
{
    /// <summary>Share of a limit by which rounding may take a figure past it that stands at the limit itself.</summary>
    private const double Rounding = 1e-9;

    public static Allowed AtMost(double aim) => new(true, aim, double.PositiveInfinity);

    public static Allowed AtMost(double aim, double last) => new(true, aim, last);

    public static Allowed AtLeast(double aim) => new(false, aim, double.NegativeInfinity);

    public static Allowed AtLeast(double aim, double last) => new(false, aim, last);

    /// <summary>Whether what is aimed for is met.</summary>
    public bool Holds(double value) => Meets(value, Aim);

    /// <summary>Whether a figure is worse than what is taken, if not gladly.</summary>
    public bool IsGrave(double value) => !Meets(value, Last);

    /// <summary>The limit that a figure has passed, or would pass first.</summary>
    public double For(double value) => IsGrave(value) ? Last : Aim;

    private bool Meets(double value, double limit) =>
        IsMost ? value <= limit + (Rounding * Math.Abs(limit)) : value >= limit - (Rounding * Math.Abs(limit));
}
