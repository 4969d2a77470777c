using Vessel.Design;
using Vessel.Function;
using Vessel.Planning;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

public sealed class QuoteTests
{
    private const string Launch = "harbour-launch-breather.yaml";

    private static readonly Plan _priced = With(Shops.Whole);

    private static readonly Plan _cut = With(Shops.Whole
        .Replace("sheet_by: used, length_by: whole", "sheet_by: blank", StringComparison.Ordinal)
        .Replace("cut_step: 50 mm, least_cut: 100 mm", "cut_step: 0 mm, least_cut: 0 mm", StringComparison.Ordinal));

    [Fact]
    public void Without_a_price_there_is_no_quote()
    {
        Assert.Null(Quote.Of(Plans.Of(Launch)));
        using var folder = new TemporaryFolder();
        folder.Put("a.yaml", Repository.Design(Launch));
        folder.Put("priced.yaml", "prices: { labour_per_hour: 40 }");

        CommandRun.In(folder.Path, "build", "a.yaml", "--quiet", "--out", "bare");
        CommandRun.In(folder.Path, "build", "a.yaml", "--quiet", "--out", "priced", "--shop", "priced.yaml");

        Assert.False(File.Exists(folder["bare/quote.csv"]));
        Assert.True(File.Exists(folder["priced/quote.csv"]));
    }

    [Fact]
    public void What_has_no_price_is_in_no_total_and_is_named()
    {
        var quote = Quote.Of(With("prices: { labour_per_hour: 40 }"))!;

        var labour = Assert.Single(quote.Lines);
        Assert.Equal(40 * Plans.Of(Launch).Timing.Hand.Likely / 60, labour.Hand!.Value.Likely, 1e-9);
        Assert.Equal(labour.Hand.Value.Likely, quote.Hand.Likely, 1e-9);
        Assert.Contains("argon", quote.NotPriced);
        Assert.Contains("laser cutting", quote.NotPriced);
    }

    [Fact]
    public void Totals_are_the_sums_of_the_lines_and_every_line_is_quantity_times_price()
    {
        var quote = Quote.Of(_priced)!;

        Assert.Empty(quote.NotPriced);
        Assert.Equal(quote.Lines.Sum(l => l.Hand?.Likely ?? 0), quote.Hand.Likely, 1e-9);
        Assert.Equal(quote.Lines.Sum(l => l.Laser?.High ?? 0), quote.Laser.High, 1e-9);
        Assert.All(quote.Lines, l => Assert.Equal(l.Price * l.Quantity, (l.Hand ?? l.Laser)!.Value.Likely, 1e-9));
    }

    /// <summary>All stock is bought once: sheets by their blanks, tubes and bars with their kerfs.</summary>
    [Fact]
    public void Stock_weighs_what_the_cut_list_says_and_the_kerfs()
    {
        var kilograms = Quote.Of(_cut)!.Lines.Where(l => l.What.Contains(" sheet ", StringComparison.Ordinal)
            || l.What.Contains(" tube ", StringComparison.Ordinal) || l.What.Contains(" bar ", StringComparison.Ordinal))
                .Sum(l => l.Quantity);
        var cutList = _cut.Assembly.Parts.Sum(p => p.Quantity * p.Stock.Mass) / 1000;
        var kerfs = _cut.Bars.Sum(b => b.Mass * b.Pieces.Length * _cut.Assembly.Design.Shop.Stock.SawKerf / b.Used) / 1000;

        Assert.Equal(cutList + kerfs, kilograms, 1e-9);
    }

    /// <summary>A blank is never more than the rectangle that holds all of them with margins; that no more than the sheet so far; that no
    /// more than the sheet.</summary>
    [Fact]
    public void Each_way_to_charge_a_sheet_takes_more_than_the_one_before()
    {
        double[] masses = [Sheets("blank"), Sheets("rectangle"), Sheets("used"), Sheets("whole")];

        Assert.Equal(masses.Order(), masses);
        Assert.Equal(4, masses.Distinct().Count());
        // Three thicknesses, a sheet of 2.5 x 1.25 m each, of 1.5, 2 and 3 mm at 7.98.
        Assert.Equal(2.5 * 1.25 * (1.5 + 2 + 3) * 7.98, masses[^1], 1e-9);
    }

    private static double Sheets(string by) =>
        Quote.Of(With($"prices: {{ stainless_per_kg: 5, sheet_by: {by} }}"))!.Lines.Where(l =>
            l.What.Contains(" sheet ", StringComparison.Ordinal)).Sum(l => l.Quantity);

    /// <summary>Six sections: tubes of 34, 84 and 62, bar of 26 mm; whole lengths of 6 and 3 m.</summary>
    [Fact]
    public void Whole_lengths_are_charged_where_the_shop_says_so()
    {
        var plan = With("prices: { stainless_per_kg: 5, length_by: whole }");
        var charged = Quote.Of(plan)!.Lines.Where(l => l.What.EndsWith("whole lengths", StringComparison.Ordinal)).Sum(l => l.Quantity);
        double Ring(double d, double t) => Math.PI * (d - t) * t * 6000;

        Assert.Equal((Ring(34, 2) + Ring(84, 2) + Ring(62, 2) + (Math.PI * 13 * 13 * 3000)) * 7.98e-6, charged, 1e-9);
    }

    [Theory]
    [InlineData("none", null)]
    [InlineData("painted", null)]
    [InlineData("anodised", "anodising")]
    [InlineData("powder_coated", "powder coating")]
    public void A_spun_head_and_a_finish_that_is_sent_out_are_lines_of_their_own(string finish, string? line)
    {
        var design = Compiler.Read(
            Repository.Design(Launch),
            new DesignSettings(null, [$"finish={finish}"]) with { Shop = "prices: { spinning: 45, finish: 35 }" }).Value!;
        var quote = Quote.Of(Plan.Of(Compiler.Assemble(design)))!;

        Assert.Equal(45, quote.Lines.Single(l => l.What.StartsWith("spinning of bottom", StringComparison.Ordinal)).Hand!.Value.Likely);
        Assert.Equal(line is null ? 0 : 35, quote.Lines.Where(l => l.What == line).Sum(l => l.Hand!.Value.Likely));
        Assert.Equal(45 + (line is null ? 0 : 35), quote.Hand.Likely, 1e-9);
    }

    /// <summary>A blank of half a sphere is sqrt 2 times its mean diameter of 118 mm and its flange: more than 150,
    /// less than 200.</summary>
    [Theory]
    [InlineData("spinnings: [{ up_to: 150 mm, price: 20 }, { up_to: 200 mm, price: 35 }], spinning: 90", 35)]
    [InlineData("spinnings: [{ up_to: 200 mm, price: 35 }, { up_to: 150 mm, price: 20 }]", 35)]
    [InlineData("spinnings: [{ up_to: 150 mm, price: 20 }], spinning: 90", 90)]
    [InlineData("fittings: [{ size: dash 20, price: 18 }], fitting: 7", 18)]
    [InlineData("fittings: [{ size: dash 16, price: 18 }], fitting: 7", 7)]
    public void Spinning_and_fittings_are_priced_by_size(string prices, double amount) =>
        Assert.Equal(amount, Quote.Of(With($"prices: {{ {prices} }}"))!.Hand.Likely, 1e-9);

    [Fact]
    public void A_least_charge_holds_for_each_section_and_the_laser()
    {
        var quote = Quote.Of(With("prices: { stainless_per_kg: 5, laser_per_minute: 1, metal_least: 1000, laser_least: 2000 }"))!;

        Assert.All(quote.Lines.Where(l => l.Unit == "kg"), l => Assert.Equal(1000, l.Hand!.Value.Likely));
        Assert.Equal(2000, quote.Lines.Single(l => l.What == "laser cutting").Laser!.Value.High);
    }

    /// <summary>Margin on the cost, tax on both.</summary>
    [Fact]
    public void Margin_and_tax_follow_the_total()
    {
        var quote = Quote.Of(With("prices: { labour_per_hour: 40, margin: 0.25, tax: 0.2 }"))!;
        var after = quote.AfterTotal.ToDictionary(sum => sum.What, sum => sum.Hand.Likely);

        Near.Relative(0.25 * quote.Hand.Likely, after["margin, 25 %"], 1e-12);
        Near.Relative(1.25 * 0.2 * quote.Hand.Likely, after["tax, 20 %"], 1e-12);
        Near.Relative(quote.Hand.Likely + after["margin, 25 %"] + after["tax, 20 %"], after["to be paid"], 1e-12);
        Assert.Empty(Quote.Of(With("prices: { labour_per_hour: 40 }"))!.AfterTotal);
    }

    /// <summary>Four times the metal, the filler and the work, but one setting up; tubes and sheets are packed together.</summary>
    [Fact]
    public void Several_vessels_are_bought_sawn_and_priced_together()
    {
        const string shop = "prices: { stainless_per_kg: 5, labour_per_hour: 60, fitting: 10 }";
        Plan Of(int count) => Plan.Of(Compiler.Assemble(Compiler.Read(
            Repository.Design(Launch),
            new DesignSettings(null, [FormattableString.Invariant($"quantity={count}")]) with { Shop = shop }).Value!));
        var (one, four) = (Of(1), Of(4));
        var (single, batch) = (Quote.Of(one)!, Quote.Of(four)!);
        double Labour(Quote quote) => quote.Lines.Single(l => l.What == "labour").Hand!.Value.Likely;

        Assert.Equal(4 * one.Bars.Sum(bar => bar.Pieces.Length), four.Bars.Sum(bar => bar.Pieces.Length));
        // All pieces of the section go into one length.
        Assert.All(four.Bars, bar => Assert.Single(bar.Packing.Bars));
        Assert.Equal(4 * one.Sheets.Sum(sheet => sheet.Nest.Pieces.Length), four.Sheets.Sum(sheet => sheet.Nest.Pieces.Length));
        Near.Relative((4 * Labour(single)) - (3 * one.Timing.SetUp.Likely), Labour(batch), 1e-9);
        Near.Relative(4 * single.Lines.Where(l => l.Unit is "kg" or "each").Sum(l => l.Hand!.Value.Likely),
            batch.Lines.Where(l => l.Unit is "kg" or "each").Sum(l => l.Hand!.Value.Likely), 1e-9);
        Near.Relative(batch.Hand.Likely / 4, batch.AfterTotal.Single(sum => sum.What == "each of 4").Hand.Likely, 1e-12);
    }

    /// <summary>To 100 mm steps, never less than 250 mm, of each section; a bung of 26.5 mm is turned from bar of 1 1/16 in,
    /// one of 27.1 from 28.</summary>
    [Fact]
    public void Sizes_are_rounded_up_to_what_is_sold()
    {
        var plan = With("stock: { cut_step: 100 mm, least_cut: 250 mm }");

        Assert.All(plan.Bars, bar =>
        {
            Assert.Equal(Math.Max(250, 100 * Math.Ceiling(bar.Used / 100)), bar.Bought);
            Near.Relative(Plans.Of(Launch)
                .Bars.Single(other => other.Diameter == bar.Diameter).Mass * bar.Bought / bar.Used, bar.Mass, 1e-9);
        });
        Assert.Contains(plan.Bars, bar => bar.Bought > bar.Used);
        Assert.Equal((26, 17 * 25.4 / 16, 28), (BarSizes.Bought(26), BarSizes.Bought(26.5), BarSizes.Bought(27.1)));
        Assert.Equal(250, BarSizes.Bought(250));
    }

    [Fact]
    public void Amounts_do_not_depend_on_the_order_of_the_parts()
    {
        var assembly = _priced.Assembly;
        var turned = Plan.Of(Plans.Reversed(assembly));

        Assert.Equal(Quote.Of(_priced)!.Hand.Likely, Quote.Of(turned)!.Hand.Likely, 1e-6);
    }

    private static Plan With(string shop) =>
        Plan.Of(Compiler.Assemble(Compiler.Read(Repository.Design(Launch), DesignSettings.None with { Shop = shop }).Value!));
}
