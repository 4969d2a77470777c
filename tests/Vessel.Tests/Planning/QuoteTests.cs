using Vessel.Design;
using Vessel.Planning;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

public sealed class QuoteTests
{
    private const string Launch = "harbour-launch-breather.yaml";

    private static readonly Plan _priced = With(Shops.Whole);

    private static readonly Plan _cut = With(Shops.Whole.Replace("sheet_by: used, length_by: whole", "sheet_by: blank", StringComparison.Ordinal));

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
            || l.What.Contains(" tube ", StringComparison.Ordinal) || l.What.Contains(" bar ", StringComparison.Ordinal)).Sum(l => l.Quantity);
        var cutList = _cut.Assembly.Parts.Sum(p => p.Quantity * p.Stock.Mass) / 1000;
        var kerfs = _cut.Bars.Sum(b => b.Mass * b.Pieces.Length * _cut.Assembly.Design.Shop.Stock.SawKerf / b.Used) / 1000;

        Assert.Equal(cutList + kerfs, kilograms, 1e-9);
    }

    /// <summary>A blank is never more than the rectangle that holds all of them with margins; that no more than the sheet so far; that no more than the sheet.</summary>
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
        Quote.Of(With($"prices: {{ stainless_per_kg: 5, sheet_by: {by} }}"))!.Lines.Where(l => l.What.Contains(" sheet ", StringComparison.Ordinal)).Sum(l => l.Quantity);

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
            Repository.Design(Launch), new DesignSettings(null, [$"finish={finish}"]) with { Shop = "prices: { spinning: 45, finish: 35 }" }).Value!;
        var quote = Quote.Of(Plan.Of(Compiler.Assemble(design)))!;

        Assert.Equal(45, quote.Lines.Single(l => l.What == "spinning").Hand!.Value.Likely);
        Assert.Equal(line is null ? 0 : 35, quote.Lines.Where(l => l.What == line).Sum(l => l.Hand!.Value.Likely));
        Assert.Equal(45 + (line is null ? 0 : 35), quote.Hand.Likely, 1e-9);
    }

    [Fact]
    public void Amounts_do_not_depend_on_the_order_of_the_parts()
    {
        var assembly = _priced.Assembly;
        var turned = Plan.Of(assembly with { Parts = [.. assembly.Parts.Reverse()], Welds = [.. assembly.Welds.Reverse()] });

        Assert.Equal(Quote.Of(_priced)!.Hand.Likely, Quote.Of(turned)!.Hand.Likely, 1e-6);
    }

    private static Plan With(string shop) =>
        Plan.Of(Compiler.Assemble(Compiler.Read(Repository.Design(Launch), DesignSettings.None with { Shop = shop }).Value!));
}
