using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Planning;

namespace Vessel.Export.Report.Sections;

/// <summary>How long it takes and, where the shop gives prices, what it costs: parts cut by hand and by laser side by side.</summary>
internal static class TimeSection
{
    private const double MinutesPerHour = 60;

    public static ReportSection Section { get; } = new("time", "Time and cost", Write)
    {
        AppliesTo = report => !report.Build.Plan.Timing.Items.IsEmpty,
    };

    private static void Write(ReportContext report, Html html)
    {
        var timing = report.Build.Plan.Timing;
        html.Tag(
            "p",
            $"By hand {Hours(timing.Hand)}; with parts cut by laser {Hours(timing.Laser)}: "
            + $"that saves about {Sizes.Text((timing.Hand.Likely - timing.Laser.Likely) / MinutesPerHour, 1)} h. "
            + "Estimates from the shop's rates; low and high are one shop quick, or slow, at everything.");
        html.Table(
            "time-table",
            "Minutes by operation, low to high, likely; each step has its own in steps.csv and times.csv",
            ["Operation", "By hand", "Likely", "By laser", "Likely", "Basis"],
            [
                .. timing.Items.GroupBy(item => item.Operation).Select(group => Row(
                    group.Key.Replace('_', ' '), Sum(group.Select(item => item.Hand)), Sum(group.Select(item => item.Laser)),
                    Basis(group))),
                Row("all", timing.Hand, timing.Laser, timing.Hand.Basis),
            ],
            hasTotal: true);
        if (Quote.Of(report.Build.Plan) is { } quote)
            WriteQuote(quote, html);
    }

    private static void WriteQuote(Quote quote, Html html) => html.Table(
        "quote-table",
        $"At the shop's prices{(quote.Vessels > 1 ? $", for {Sizes.Count(quote.Vessels)} vessels" : string.Empty)}{(quote.Currency.Length > 0 ? $", {quote.Currency}" : string.Empty)}"
        + (quote.NotPriced.IsEmpty ? string.Empty : $"; without a price and in no total: {string.Join(", ", quote.NotPriced)}"),
        ["What", Column.Figure("Quantity"), "Unit", Column.Figure("Price"), "By hand", "Likely", "By laser", "Likely"],
        [
            .. quote.Lines.Select(line => (Cell[])
            [
                line.What, Sizes.Text(line.Quantity, 2), line.Unit, Sizes.Text(line.Price, 2),
                Span(line.Hand), Likely(line.Hand), Span(line.Laser), Likely(line.Laser),
            ]),
            ["total", null, null, null, Span(quote.Hand), Likely(quote.Hand), Span(quote.Laser), Likely(quote.Laser)],
            .. quote.AfterTotal.Select(
                sum => (Cell[])[sum.What, null, null, null, Span(sum.Hand), Likely(sum.Hand), Span(sum.Laser), Likely(sum.Laser)]),
        ],
        hasTotal: true);

    private static Cell[] Row(string what, Estimate? hand, Estimate? laser, string? basis) =>
        [what, Span(hand), Likely(hand), Span(laser), Likely(laser), basis];

    private static Estimate? Sum(IEnumerable<Estimate?> estimates)
    {
        ImmutableArray<Estimate?> all = [.. estimates];
        return all.Any(estimate => estimate is not null) ? Timing.Sum(all) : null;
    }

    /// <summary>Where it is one for all of them.</summary>
    private static string? Basis(IEnumerable<TimeItem> items) =>
        items.Select(item => item.Basis).Distinct().ToList() is [var one] ? one : "differs by part or weld: times.csv";

    private static string Hours(Estimate time) =>
        $"{Sizes.Text(time.Low / MinutesPerHour, 1)} to {Sizes.Text(time.High / MinutesPerHour, 1)} h, likely "
            + $"{Sizes.Text(time.Likely / MinutesPerHour, 1)} h";

    private static string? Span(Estimate? e) => e is not { } range ? null
        : (Low: Sizes.Text(range.Low, 1), High: Sizes.Text(range.High, 1)) is var ends && ends.Low == ends.High ? ends.Low
        : $"{ends.Low} to {ends.High}";

    private static string? Likely(Estimate? e) => e is { } range ? Sizes.Text(range.Likely, 1) : null;
}
