using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>How fast a 2 kW fibre laser cuts sheet, mm/min.</summary>
public static class LaserSpeeds
{
    private const string Chart = Sources.LaserChart + " 2 kW, middle of the range";

    private const string Memory = "2 kW fibre laser with nitrogen, not checked against the source";

    private static readonly ImmutableArray<double> _walls = [1, 2, 3, 4, 5, 6];

    private static readonly ImmutableArray<double> _mildSteel = [27_000, 5_350, 3_900, 3_150, 2_600, 2_200];

    private static readonly ImmutableArray<double> _stainless = [15_000, 6_000, 3_000, 1_800, 1_200, 800];

    private static readonly ImmutableArray<double> _aluminium = [12_000, 5_500, 2_800, 1_500, 1_000, 700];

    /// <summary>Linear between the rows, its end rows beyond them.</summary>
    public static Datum Of(MaterialFamily family, double wall) => family switch
    {
        MaterialFamily.MildSteel => new(WallTable.At(_walls, _mildSteel, wall), WallTable.Sourced(_walls, wall, Chart)),
        MaterialFamily.Stainless => new(WallTable.At(_walls, _stainless, wall), WallTable.Sourced(_walls, wall, Memory)),
        _ => new(WallTable.At(_walls, _aluminium, wall), WallTable.Sourced(_walls, wall, Memory)),
    };

    /// <summary>Minutes for one pierce and the way to it. Common practice, no source.</summary>
    public const double Pierce = 1.0 / 60;
}
