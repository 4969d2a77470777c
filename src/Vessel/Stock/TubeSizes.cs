using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>A round tube as dealers keep it; mm.</summary>
public sealed record TubeSize(string Metal, double OutsideDiameter, double Wall);

/// <summary>Round tube that is commonly kept, a help in choosing: any size may stand in a design.</summary>
public static class TubeSizes
{
    public const string Source = "commonly kept sizes, not checked against a source; ask your dealer";

    private const double Inch = 25.4;

    public static ImmutableArray<TubeSize> All { get; } =
    [
        .. Of("aluminium 6061", [0.065, 0.125], 1, 1.25, 1.5, 2, 2.5, 3, 3.5, 4),
        .. Of("aluminium 6061", [0.250], 3, 4, 5, 6),
        .. Of("stainless 304", [0.065], 1, 1.5, 2, 2.5, 3),
        .. Of("stainless 304", [0.083], 4),
        .. Of("stainless 304", [0.109], 6),
        .. Of("stainless 304", [0.049], 1.75, 2, 2.25, 2.5, 3, 3.5, 4),
        .. Of("mild steel", [0.065, 0.083, 0.120], 1, 1.5, 2, 2.5, 3, 4),
    ];

    private static IEnumerable<TubeSize> Of(string metal, double[] walls, params double[] diameters) =>
        from diameter in diameters
        from wall in walls
        select new TubeSize(metal, diameter * Inch, wall * Inch);
}
