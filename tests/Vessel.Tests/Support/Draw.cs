using FsCheck;
using FsCheck.Fluent;

namespace Vessel.Tests.Support;

/// <summary>What generators of designs are built from.</summary>
internal static class Draw
{
    private const int Grains = 1 << 30;

    public static Gen<double> Between(double low, double high) => Gen.Choose(0, Grains).Select(i => low + ((high - low) * i / Grains));

    public static Gen<bool> Chance(double share) => Between(0, 1).Select(at => at < share);

    /// <summary>A whole number from zero to one less than the count.</summary>
    public static Gen<int> Pick(int count) => Gen.Choose(0, count - 1);

    /// <summary>Drawn in that share of the cases, and else what stands for none.</summary>
    public static Gen<T> Sometimes<T>(double share, Gen<T> drawn, T none) =>
        Chance(share).SelectMany(isDrawn => isDrawn ? drawn : Gen.Constant(none));

    /// <summary>What comes of some steps, each drawn with what those before it made.</summary>
    public static Gen<T> Steps<T>(T from, int count, Func<T, int, Gen<T>> step) =>
        Enumerable.Range(0, count).Aggregate(Gen.Constant(from), (made, i) => made.SelectMany(value => step(value, i)));

    /// <summary>The same value for the same seed.</summary>
    public static T At<T>(this Gen<T> drawn, int seed) => drawn.Sample(1, new Rnd((ulong)seed), 0).Single();
}
