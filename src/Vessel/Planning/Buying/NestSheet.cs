using Vessel.Design;

namespace Vessel.Planning;

/// <summary>How a sheet is cut up; mm.</summary>
/// <param name="Length">Along the grain.</param>
/// <param name="Margin">Kept from the edges.</param>
/// <param name="Spacing">Kept between pieces.</param>
public sealed record NestSheet(double Length, double Width, double Margin, double Spacing)
{
    public static NestSheet Of(StockShop shop) => new(shop.SheetLength, shop.SheetWidth, shop.SheetMargin, shop.Spacing);

    public double FreeLength => Length - (2 * Margin);

    public double FreeWidth => Width - (2 * Margin);
}
