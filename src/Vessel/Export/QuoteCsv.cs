using System.Collections.Immutable;
using Vessel.Planning;

namespace Vessel.Export;

/// <summary>
/// quote.csv: what the vessel costs at the shop's own prices; the total names what has none; margin, tax and what each of several comes to
/// follow it.
/// </summary>
internal static class QuoteCsv
{
    private static readonly ImmutableArray<string> _columns =
    [
        "item", "quantity", "unit", "price", "currency", "hand_low", "hand_likely", "hand_high", "laser_low", "laser_likely", "laser_high",
    ];

    public static void Write(Quote quote, Stream to) => Csv.Write(
        to,
        _columns,
        [
            .. quote.Lines.Select(line => (CsvCell[])
            [
                line.What, line.Quantity, line.Unit, line.Price, quote.Currency,
                .. TimesCsv.Rounded(line.Hand), .. TimesCsv.Rounded(line.Laser),
            ]),
            [
                quote.NotPriced.IsEmpty ? "total" : $"total without {string.Join(", ", quote.NotPriced)}", default, default, default,
                quote.Currency, .. TimesCsv.Rounded(quote.Hand), .. TimesCsv.Rounded(quote.Laser),
            ],
            .. quote.AfterTotal.Select(sum => (CsvCell[])
                [sum.What, default, default, default, quote.Currency, .. TimesCsv.Rounded(sum.Hand), .. TimesCsv.Rounded(sum.Laser)]),
        ]);
}
