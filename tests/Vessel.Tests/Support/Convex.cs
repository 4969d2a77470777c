namespace Vessel.Tests.Support;

/// <summary>Least values by search, for checks that must not lean on the code under test.</summary>
internal static class Convex
{
    /// <summary>The least value of a convex function; off by the square of 1e-8 of the range.</summary>
    public static double Least(Func<double, double> f, double low, double high)
    {
        const double share = 0.6180339887498949;
        var (left, right) = (f(low), f(high));
        for (var i = 0; i < 42; i++)
        {
            var (a, b) = (high - (share * (high - low)), low + (share * (high - low)));
            if (f(a) < f(b))
                high = b;
            else
                low = a;
        }

        // The least may stand at an end, which the search only comes near to.
        return Math.Min(f((low + high) / 2), Math.Min(left, right));
    }
}
