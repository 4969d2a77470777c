using System.Collections.Concurrent;
using System.Globalization;
using Vessel.Design;
using Vessel.Function;
using Xunit;
using Xunit.Sdk;

namespace Vessel.Tests.Support;

/// <summary>
/// The vessels of <see cref="DesignGenerator"/> that laws are held against, the same for the same seed. The test's name shows the seed;
/// what fails is shrunk and shown. <c>VESSEL_SEEDS</c> asks for fewer in a quick look or for more in a campaign, from seed
/// <c>VESSEL_FIRST</c> on.
/// </summary>
internal static class RandomDesigns
{
    private static readonly ConcurrentDictionary<int, Lazy<VesselDesign>> _designs = new();

    private static readonly ConcurrentDictionary<int, Lazy<Assembly>> _assemblies = new();

    public static TheoryData<int> Seeds { get; } = [.. First(Asked("VESSEL_SEEDS", 100))];

    /// <summary>The first of them, for what takes long.</summary>
    public static IEnumerable<int> First(int count) =>
        Enumerable.Range(Asked("VESSEL_FIRST", 0), Math.Min(count, Asked("VESSEL_SEEDS", count)));

    /// <summary>Holds a law against the vessel of a seed; if it is broken, tells the smallest vessel that breaks it too.</summary>
    public static void Hold(int seed, Action<Assembly> law)
    {
        try
        {
            law(Built(seed));
        }
        catch (Exception broken)
        {
            var smallest = SmallestFailure.Of(At(seed), design => law(Compiler.Assemble(design)));
            throw new XunitException(
                $"Seed {seed}: {broken.Message}\nThe smallest vessel that breaks it too:\n{DesignText.Of(smallest)}", broken);
        }
    }

    /// <summary>Built once for all laws.</summary>
    public static Assembly Built(int seed) => _assemblies.GetOrAdd(seed, one => new(() => Compiler.Assemble(At(one)))).Value;

    /// <summary>Drawn once for all laws.</summary>
    public static VesselDesign At(int seed) => _designs.GetOrAdd(seed, one => new(() => DesignGenerator.Vessels.At(one))).Value;

    private static int Asked(string name, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out var asked)
            ? asked : usual;
}
