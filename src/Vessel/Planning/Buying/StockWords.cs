using System.Globalization;
using Vessel.Parts;

namespace Vessel.Planning;

/// <summary>What is said of stock, in the cut list, the report and on the console alike.</summary>
public static class StockWords
{
    public static string Name(Nest nest) => Text($"{nest.Material.Name} sheet {nest.Thickness:0.##} mm");

    public static string Name(BarStock bar) => bar.Wall > 0
        ? Text($"{bar.Material.Name} tube {bar.Diameter:0.##} x {bar.Wall:0.##} mm")
        : Text($"{bar.Material.Name} bar {bar.Diameter:0.##} mm");

    /// <summary>What it is cut from, by what such stock is ordered by: <c>sheet 2</c>, <c>tube 51 x 1.5</c>, <c>bar 26</c>.</summary>
    /// <param name="told">A length in the reader's unit.</param>
    public static string Section(Part part, Func<double, string> told) => part.Stock.Form switch
    {
        "sheet" => $"sheet {told(part.Thickness)}",
        "tube" => $"tube {told(part.Stock.Width)} x {told(part.Stock.Wall)}",
        _ => $"{part.Stock.Form} {told(part.Stock.Width)}",
    };

    /// <summary>
    /// A size of a piece as it is bought, mm: of sheet rounded up to a whole one, which is what a guillotine is set to; the flat is exact.
    /// </summary>
    public static double ToBuy(Part part, double size) => part.Stock.Form == "sheet" ? Math.Ceiling(size - 1e-6) : size;

    public static string Used(Nest nest)
    {
        var lengths = string.Join(" and ", nest.UsedLength.Select(length => Text($"{length:0} mm")));
        var tooLarge = nest.TooLarge.IsEmpty ? "" : $"; NO SHEET HOLDS {string.Join(", ", nest.TooLarge.Distinct())}";
        return nest.UsedLength.IsEmpty ? tooLarge.TrimStart(';', ' ') : $"{lengths} of the length used, over the whole width{tooLarge}";
    }

    public static string Used(BarStock bar)
    {
        var packing = bar.Packing;
        var proven = packing.IsProven ? "no fewer will do" : Text($"at least {packing.Bound} needed");
        var tooLong = packing.TooLong.IsEmpty ? ""
            : $"; NO LENGTH HOLDS {string.Join(", ", packing.TooLong.Select(i => bar.Pieces[i].Name).Distinct())}";
        var bought = bar.Bought > bar.Used + 0.05 ? Text($", {bar.Bought:0} mm to be bought") : "";
        return Text($"{bar.Used:0.0} mm used with kerfs{bought}; {proven}{tooLong}");
    }

    /// <summary>
    /// Which sheets or lengths the pieces of a part come from: <c>sheet 1</c>, <c>length 1 and 2</c>; null where none holds it.
    /// </summary>
    public static string? From(Part part, Plan plan)
    {
        var (what, numbers) = part.Stock.Form == "sheet"
            ? ("sheet", plan.Sheets.SelectMany(
                sheet => sheet.Nest.Places.Where(place => sheet.Nest.Pieces[place.Piece].Part == part).Select(place => place.Sheet)))
            : ("length", plan.Bars.SelectMany(bar => bar.Packing.Bars.SelectMany((pieces, number) =>
                pieces.Where(i => bar.Material == part.Material && bar.Pieces[i].Name == part.Name).Select(_ => number))));
        var all = numbers.Distinct().Order().Select(number => (number + 1).ToString(CultureInfo.InvariantCulture)).ToList();
        return all.Count == 0 ? null : $"{what} {string.Join(" and ", all)}";
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
