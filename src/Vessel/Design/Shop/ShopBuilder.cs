using System.Collections.Immutable;
using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Fills the shop's records from the sections of its file; nothing in them is at fault.</summary>
internal static class ShopBuilder
{
    public static Shop Build(Section file, UserUnits units) => new(
        file.Text("shop") ?? "",
        Welding(file.Child("welding")!),
        new(file.Child("torch")!.Number("cup_diameter"), file.Child("torch")!.Number("stick_out")),
        Stock(file.Child("stock")!),
        PricesShop.Of(file.Child("prices")!),
        HandRates.All.ToImmutableDictionary(rate => rate.Name, rate => Rate(file.Child("rates")!, rate)),
        Enum.GetValues<MaterialFamily>().ToImmutableDictionary(
            family => family, family => file.Child("bends")!.Number(ShopKeys.Of(family))),
        [.. ShopFigures.Of(file, ShopKeys.File, units)])
    {
        Rolls = RollsShop.Of(file.Child("rolls")!),
    };

    private static StockShop Stock(Section section) => new(
        section.Number("tube_length"),
        section.Number("bar_length"),
        section.Number("saw_kerf"),
        section.Number("grip_loss"),
        section.Number("sheet_length"),
        section.Number("sheet_width"),
        section.Number("sheet_margin"),
        section.Number("spacing"))
    {
        CutStep = section.Number("cut_step"),
        LeastCut = section.Number("least_cut"),
    };

    private static WeldingShop Welding(Section section) => new(
        section.Number("rod_length"),
        section.Number("rod_stub"),
        section.Number("gap_aim"),
        section.Number("gap_most"),
        section.Number("gap_limit"),
        section.Number("face_allowance"),
        section.Number("purge_flow"),
        section.Number("purge_oxygen"),
        Rate(section, WeldingRates.ArcShare));

    /// <summary>The shop's figure takes the place of the likely one; low and high keep their proportion to it.</summary>
    private static Estimate Rate(Section section, WorkRate rate)
    {
        var factor = section.Number(rate.Name) / rate.Likely;
        var most = rate.Unit == "share" ? 1 : double.PositiveInfinity;
        return section.Given.Contains(rate.Name)
            ? new(factor * rate.Low, section.Number(rate.Name), Math.Min(most, factor * rate.High), ShopFigures.Given)
            : new(rate.Low, rate.Likely, rate.High, rate.Source);
    }
}
