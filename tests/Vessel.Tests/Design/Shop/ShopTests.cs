using Vessel.Design;
using Vessel.Members.Saddles;
using Vessel.Reading;
using Vessel.Stock;
using Vessel.Tests.Support;
using Vessel.Tests.Reading;
using Xunit;

namespace Vessel.Tests.Design;

public sealed class ShopTests
{
    [Fact]
    public void A_shop_without_a_file_is_as_one_with_an_empty_mapping() =>
        Assert.Equal(Shop.Usual.Figures, ShopReader.Read("{}").Value!.Figures);

    [Fact]
    public void Every_figure_of_the_usual_shop_is_a_default_with_its_source() => Assert.All(Shop.Usual.Figures, f =>
    {
        Assert.NotEqual(ShopFigures.Given, f.Source);
        Assert.Contains(ShopFigures.Defaults.Rows, r => (string)r[0]! == f.Path && (string)r[^1]! == f.Source);
    });

    [Fact]
    public void Every_figure_of_a_whole_file_is_the_shops_own()
    {
        var shop = ShopReader.Read(Shops.Whole).Value!;

        Assert.All(shop.Figures, f => Assert.Equal(ShopFigures.Given, f.Source));
        Assert.All(ShopFigures.Defaults.Rows, r => Assert.Contains(shop.Figures, f => f.Path == (string)r[0]!));
        // Else the file would prove nothing of the values.
        Assert.All(shop.Figures.Zip(Shop.Usual.Figures), pair => Assert.NotEqual(pair.Second.Value, pair.First.Value));
    }

    [Fact]
    public void An_own_rate_keeps_the_proportions_of_its_range()
    {
        var share = ShopReader.Read("welding: { arc_share: 0.24 }").Value!.Welding.ArcShare;
        var usual = WeldingRates.ArcShare;

        Assert.Equal(0.24, share.Likely);
        Assert.Equal(0.24 / usual.Likely, share.Low / usual.Low, 1e-12);
        Assert.Equal(0.24 / usual.Likely, share.High / usual.High, 1e-12);
    }

    [Fact]
    public void A_share_never_passes_one() =>
        Assert.Equal(1, ShopReader.Read("welding: { arc_share: 0.9 }").Value!.Welding.ArcShare.High);

    [Theory]
    [InlineData("welding:\n  arc_share: 3\n", FaultCodes.OutOfRange, 2, 14)]
    [InlineData("welding:\n  rod_lenght: 3\n", FaultCodes.UnknownKey, 2, 3)]
    [InlineData("units: ft", FaultCodes.UnknownChoice, 1, 8)]
    [InlineData("welding: 3", FaultCodes.WrongKind, 1, 10)]
    [InlineData("", FaultCodes.FileEmpty, 1, 1)]
    [InlineData("shop: &a b", FaultCodes.AnchorOrTag, 1, 7)]
    public void What_is_wrong_in_a_shop_file_is_told_with_its_place(string text, string code, int line, int column)
    {
        var fault = Assert.Single(ShopReader.Read(text).Faults);

        Assert.Equal((code, line, column, Span.InShop), (fault.Code, fault.At!.Value.Line, fault.At.Value.Column, fault.At.Value.Setting));
    }

    [Fact]
    public void A_bracket_takes_its_bends_from_the_shop_unless_it_says_otherwise()
    {
        const string bracket =
            "\nbracket: { at: { height: 95, angle: 90 }, thickness: 3, width: 60, height: 90, stand_off: 25, bolts: { diameter: 6 } }";
        const string shop = "bends: { stainless: 0.5 }";

        double K(string text) => DesignReader.Read(text, DesignSettings.None with { Shop = shop }).Value!.All<SaddleDesign>().Single().K;

        Assert.Equal(0.5, K(DesignTexts.Breather + bracket));
        Assert.Equal(0.3, K(DesignTexts.Breather + bracket.Replace("thickness", "k: 0.3, thickness", StringComparison.Ordinal)));
    }

    [Fact]
    public void Faults_of_design_and_shop_are_told_together_each_with_its_own_file()
    {
        using var folder = new TemporaryFolder();
        folder.Put("a.yaml", "vessel: A\nmaterial: wood\n");
        folder.Put("shop.yaml", "welding: { arc_share: 7 }\n");

        var run = CommandRun.In(folder.Path, "check", "a.yaml");

        Assert.Equal(1, run.Code);
        Assert.Contains("shop.yaml:1:23: fault out-of-range", run.Error, StringComparison.Ordinal);
        Assert.Contains("welding: { arc_share: 7 }\n" + new string(' ', 4 + 22) + "^", run.Error, StringComparison.Ordinal);
        Assert.Contains("a.yaml:2:11: fault unknown-material", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_named_shop_file_goes_before_the_one_beside_the_design()
    {
        using var folder = new TemporaryFolder();
        folder.Put("designs/a.yaml", DesignTexts.Breather);
        folder.Put("designs/shop.yaml", "shop: Beside");
        folder.Put("other.yaml", "shop: Named");

        CommandRun.In(folder.Path, "build", "designs/a.yaml", "--out", "beside");
        CommandRun.In(folder.Path, "build", "designs/a.yaml", "--out", "named", "--shop", "other.yaml");

        Assert.Contains("\"name\": \"Beside\"", File.ReadAllText(folder["beside/summary.json"]), StringComparison.Ordinal);
        Assert.Contains("\"name\": \"Named\"", File.ReadAllText(folder["named/summary.json"]), StringComparison.Ordinal);
    }

    [Fact]
    public void A_named_shop_file_that_is_not_there_is_an_error()
    {
        using var folder = new TemporaryFolder();
        folder.Put("a.yaml", DesignTexts.Breather);

        var run = CommandRun.In(folder.Path, "check", "a.yaml", "--shop", "none.yaml");

        Assert.Equal(3, run.Code);
        Assert.Contains("there is no file 'none.yaml'", run.Error, StringComparison.Ordinal);
    }
}
