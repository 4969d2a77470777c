using System.Collections.Immutable;

namespace Vessel.Stock;

/// <summary>A published table over wall thickness, read between its rows.</summary>
internal static class WallTable
{
    /// <summary>Linear between the rows, the end rows beyond them.</summary>
    /// <param name="walls">Ascending, at least two.</param>
    public static double At(ImmutableArray<double> walls, ImmutableArray<double> values, double wall)
    {
        if (!(wall > walls[0]))
            return values[0];
        if (wall >= walls[^1])
            return values[^1];
        var upper = 1;
        while (walls[upper] < wall)
            upper++;
        var share = (wall - walls[upper - 1]) / (walls[upper] - walls[upper - 1]);
        return values[upper - 1] + (share * (values[upper] - values[upper - 1]));
    }

    /// <summary>What a source must say where the wall lies outside the table.</summary>
    public static string Sourced(ImmutableArray<double> walls, double wall, string source) =>
        wall < walls[0] ? $"{source}; the first row, as the wall is thinner than the table"
        : wall > walls[^1] ? $"{source}; the last row, as the wall is thicker than the table"
        : source;
}
