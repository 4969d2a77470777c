namespace Vessel.Function;

/// <summary>A value as well as it is known: one number, or a range with what is likely in it.</summary>
public readonly record struct Amount(double Low, double Likely, double High)
{
    public static Amount Exactly(double value) => new(value, value, value);

    /// <summary>A likely value among two others; also where they differ by their rounding only, in whatever order that leaves them.</summary>
    public static Amount Around(double likely, double one, double other) =>
        new(Math.Min(likely, Math.Min(one, other)), likely, Math.Max(likely, Math.Max(one, other)));

    /// <summary>All three are one number.</summary>
    public bool IsSingle => Low == Likely && Likely == High;

    public bool IsFinite => double.IsFinite(Low) && double.IsFinite(Likely) && double.IsFinite(High);

    public static implicit operator Amount(double value) => Exactly(value);

    public static Amount operator +(Amount a, Amount b) => new(a.Low + b.Low, a.Likely + b.Likely, a.High + b.High);

    public static Amount operator *(double factor, Amount a) =>
        factor >= 0 ? new(factor * a.Low, factor * a.Likely, factor * a.High) : new(factor * a.High, factor * a.Likely, factor * a.Low);

    /// <summary>Through a function that only rises or only falls.</summary>
    public Amount Through(Func<double, double> f)
    {
        if (IsSingle)
            return f(Low);
        var (a, b) = (f(Low), f(High));
        return new(Math.Min(a, b), f(Likely), Math.Max(a, b));
    }
}
