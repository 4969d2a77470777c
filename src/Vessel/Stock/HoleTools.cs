using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>Round tools that a small shop has, by the diameter of the hole that they make, mm.</summary>
public static class HoleTools
{
    /// <summary>A hole is a tool's size within this, mm: no drill by hand makes it closer.</summary>
    public const double SameSize = 0.1;

    /// <summary>Step drills in steps of 2 mm. Common practice, no source.</summary>
    private static readonly ImmutableArray<double> _stepDrills = [.. Enumerable.Range(2, 16).Select(i => 2.0 * i)];

    /// <summary>Bimetal hole saws as they are sold, from 9/16 to 6 in; from memory.</summary>
    private static readonly ImmutableArray<double> _holeSaws =
    [
        14, 16, 17, 19, 20, 21, 22, 24, 25, 27, 29, 30, 32, 33, 35, 37, 38, 40, 41, 43, 44, 46, 48, 51, 52, 54, 57, 59, 60, 64, 65, 67, 68,
        70, 73,
        76, 79, 83, 86, 89, 92, 95, 98, 102, 105, 108, 111, 114, 121, 127, 133, 140, 146, 152,
    ];

    /// <summary>The largest that makes a hole of that size or less; null for none.</summary>
    public static (string Tool, double Size)? NotAbove(double diameter) => Both
        .Where(tool => tool.Size <= diameter + SameSize).Select(tool => ((string Tool, double Size)?)tool).MaxBy(tool => tool!.Value.Size);

    /// <summary>The smallest that makes a hole of that size or more; null for none.</summary>
    public static (string Tool, double Size)? NotBelow(double diameter) => Both
        .Where(tool => tool.Size >= diameter - SameSize).Select(tool => ((string Tool, double Size)?)tool).MinBy(tool => tool!.Value.Size);

    /// <summary>Step drills first: of two tools of one size they make the cleaner hole in sheet.</summary>
    private static IEnumerable<(string Tool, double Size)> Both =>
        _stepDrills.Select(size => ("step drill", size)).Concat(_holeSaws.Select(size => ("hole saw", size)));
}
