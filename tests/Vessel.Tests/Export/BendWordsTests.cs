using Vessel.Export.Drawing;
using Vessel.Export;
using Vessel.Export.Dxf;
using Vessel.Export.Paper;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export;

/// <summary>The launch breather's bracket: two ears turned away from the viewer by a right angle, 5 mm inside.</summary>
public sealed class BendWordsTests
{
    private static readonly Build _build = Compiler.Compile(
        Compiler.Read(Repository.Design("harbour-launch-breather.yaml")).Value!,
        new(new(Tolerance: 0.2), false, new(1, Math.PI / 6), "test", "00"));

    private static readonly BuiltPart _bracket = _build.Parts.Single(built => built.Part.Word == "bracket");

    [Theory]
    [InlineData("bend 1: 90\u00B0 down, inside R 5")]
    [InlineData("bend 2: 90\u00B0 down, inside R 5")]
    public void A_bend_is_named_alike_on_flat_template_and_page(string words)
    {
        Assert.Contains(_bracket.Part.Flat!.Notes, note => note.StartsWith(words, StringComparison.Ordinal));
        Assert.Contains(PlateTemplate.Of(_bracket.Part, _bracket.Fitted!).SelectMany(template => template.Drawn).OfType<Text>(),
            text => text.Words == words);
        // In the picture and in the table below it.
        Assert.Equal(2, PageProbe.Of(_build).Shown.Split(words).Length - 1);
    }

    /// <summary>Neither the colour of its cuts nor that of its marks.</summary>
    [Fact]
    public void The_layer_of_bends_has_a_colour_of_its_own() =>
        Assert.Single(DxfLayer.All.Where(layer => layer.Colour == DxfLayer.All.Single(bend => bend.Name == "BEND").Colour));
}
