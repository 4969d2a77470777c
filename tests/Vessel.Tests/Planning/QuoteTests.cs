using Vessel.Design;
using Vessel.Planning;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

public sealed class QuoteTests
{
    private const string Launch = "harbour-launch-breather.yaml";

    private static readonly Plan _priced = With(Shops.Whole);

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
        var kilograms = Quote.Of(_priced)!.Lines.Where(l => l.What.Contains(" sheet ", StringComparison.Ordinal)
            || l.What.Contains(" tube ", StringComparison.Ordinal) || l.What.Contains(" bar ", StringComparison.Ordinal)).Sum(l => l.Quantity);
        var cutList = _priced.Assembly.Parts.Sum(p => p.Quantity * p.Stock.Mass) / 1000;
        var kerfs = _priced.Bars.Sum(b => b.Mass * b.Pieces.Length * _priced.Assembly.Design.Shop.Stock.SawKerf / b.Used) / 1000;

        Assert.Equal(cutList + kerfs, kilograms, 1e-9);
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
