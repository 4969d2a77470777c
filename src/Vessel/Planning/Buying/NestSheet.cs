using Vessel.Design;

namespace Vessel.Planning;

/// <summary>How a sheet is cut up; mm.</summary>
/// <param name="Length">Along the grain.</param>
/// <param name="Margin">Kept from the edges.</param>
/// <param name="Spacing">Kept between pieces.</param>
public sealed record NestSheet(double Length, double Width, double Margin, double Spacing)
{
    /// <param name="kerf">Width of the cut, mm: half of it goes off either side of a cut line.</param>
    public static NestSheet Of(StockShop shop, double kerf = 0) =>
        new(shop.SheetLength, shop.SheetWidth, shop.SheetMargin + (kerf / 2), shop.Spacing + kerf);

    public double FreeLength => Length - (2 * Margin);

    public double FreeWidth => Width - (2 * Margin);
}
