using Vessel.Stock;

namespace Vessel.Parts;

/// <summary>Pieces as they come off the rack, before anything is cut out of them.</summary>
internal static class StockPieces
{
    public static StockPiece Tube(double outsideDiameter, double wall, double length, Material material) =>
        new("tube", length, outsideDiameter, wall, Math.PI * (outsideDiameter - wall) * wall * length * material.Density / 1000);

    public static StockPiece Bar(double diameter, double length, Material material) =>
        new("bar", length, diameter, 0, Math.PI / 4 * diameter * diameter * length * material.Density / 1000);

    /// <summary>Sides in either order.</summary>
    public static StockPiece Rectangle(double a, double b, double thickness, Material material) =>
        new("sheet", Math.Max(a, b), Math.Min(a, b), thickness, a * b * thickness * material.Density / 1000);

    /// <summary>A square of sheet that a disc is cut from.</summary>
    public static StockPiece Disc(double diameter, double thickness, Material material) =>
        new("sheet", diameter, diameter, thickness, diameter * diameter * thickness * material.Density / 1000);
}
