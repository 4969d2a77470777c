using System.Globalization;
using Xunit;

namespace Vessel.Tests.Support;

/// <summary>Comparisons whose tolerance says where it comes from.</summary>
internal static class Near
{
    public static void Relative(double expected, double actual, double relative) =>
        Assert.InRange(actual, expected - (relative * Math.Abs(expected)), expected + (relative * Math.Abs(expected)));

    public static void Absolute(double expected, double actual, double tolerance) =>
        Assert.InRange(actual, expected - tolerance, expected + tolerance);

    /// <summary>Equal to a printed number: within half of its last digit, and a hair for a tie.</summary>
    public static void Printed(string printed, double actual)
    {
        var point = printed.IndexOf('.', StringComparison.Ordinal);
        var half = 0.5 * Math.Pow(10, point < 0 ? 0 : point + 1 - printed.Length);
        Absolute(double.Parse(printed, CultureInfo.InvariantCulture), actual, half * 1.000001);
    }
}
