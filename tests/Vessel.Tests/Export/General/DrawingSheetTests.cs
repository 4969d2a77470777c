using System.Xml.Linq;
using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Export.Dxf;
using Vessel.Export.General;
using Vessel.Export.Svg;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export.General;

public sealed class DrawingSheetTests
{
    private static readonly Vessel.Export.Build _build = Of(WeldSymbols.Iso);

    private static readonly Page _page = DrawingSheet.Of(_build);

    [Fact]
    public void Nothing_lies_off_the_sheet() => Assert.All(_page.Items, item =>
    {
        var box = Placing.Bounds(item);
        Assert.True(box.Min.U >= 0 && box.Min.V >= 0 && box.Max.U <= _page.Width && box.Max.V <= _page.Height, $"{item}");
    });

    [Fact]
    public void Every_part_has_its_balloon_once_and_every_weld_its_number()
    {
        var words = _page.Items.OfType<Text>().Select(text => text.Words).ToList();

        var balloons = _page.Items.OfType<Text>().Where(text => text.Height == 2.5).Select(text => text.Words).ToList();
        Assert.All(Enumerable.Range(1, _build.Parts.Length), number => Assert.Single(balloons, $"{number}"));
        Assert.All(_build.Welds, weld => Assert.Contains(weld.Figures.Joint.Number, words));
    }

    [Fact]
    public void Views_stand_in_first_angle_with_iso_symbols_and_in_third_with_those_of_aws()
    {
        var third = DrawingSheet.Of(Of(WeldSymbols.Aws));

        Assert.True(Height(_page, "from above") < Height(_page, "front"));
        Assert.True(Height(third, "from above") > Height(third, "front"));
        Assert.Contains(_page.Items.OfType<Text>(), text => text.Words == "from the left (270 deg)");
        Assert.Contains(third.Items.OfType<Text>(), text => text.Words == "from the right (90 deg)");
    }

    [Fact]
    public void The_throat_stands_on_an_iso_symbol_and_the_leg_on_one_of_aws()
    {
        var weld = _build.Welds.Select(w => w.Figures).First(w => w.Joint.Kind == JointKind.Fillet);

        // Two square plates: the leg is sqrt(2) throats, and never less anywhere. It is told to a tenth.
        Assert.StartsWith("a", new WeldSymbol(weld, "W1", WeldSymbols.Iso, new(UserUnits.Millimetres)).Size, StringComparison.Ordinal);
        Assert.True(
            Math.Abs(Number(new WeldSymbol(weld, "W1", WeldSymbols.Aws, new(UserUnits.Millimetres)).Size) - weld.Leg.Start) <= 0.05 + 1e-9);
    }

    [Fact]
    public void The_svg_has_a_path_for_every_item_and_says_every_text()
    {
        using var file = new MemoryStream();
        SvgFile.Write("a \"sheet\" & more", _page, file);
        file.Position = 0;
        XNamespace svg = "http://www.w3.org/2000/svg";
        var root = XDocument.Load(file).Root!;

        Assert.Equal(_page.Items.Length, root.Elements(svg + "path").Count());
        Assert.Equal(
            _page.Items.OfType<Text>().Select(text => text.Words),
            root.Elements(svg + "path").Select(path => path.Attribute("aria-label")?.Value).OfType<string>());
        Assert.Equal("a \"sheet\" & more", root.Element(svg + "title")!.Value);
    }

    private static double Height(Page page, string words) => page.Items.OfType<Text>().Single(text => text.Words == words).Start.V;

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static Vessel.Export.Build Of(WeldSymbols symbols) => Compiler.Compile(
        Designs.Sound,
        new(new DrawingOptions(), false, new Accuracy(0.4, 0.5), "test", Compiler.HashOf("")) { WeldSymbols = symbols });
}
