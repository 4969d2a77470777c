using Vessel.Design;
using Vessel.Findings;
using Vessel.Members.Straps;
using Vessel.Parts;
using Vessel.Stock;
using Vessel.Tests.Members.Brackets;
using Vessel.Tests.Members.Straps;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Findings;

public sealed class FlangeRulesTests
{
    private static Measure? Found(VesselDesign design) =>
        Assessment.Of(Compiler.Assemble(design)).FirstOrDefault(f => f.Code == FindingCodes.FlangeTooShort);

    /// <summary>A die's least opening is 6 thicknesses and a flange spans half of it (a sheet-metal shop's bending guidelines):
    /// 18 mm in 6 mm plate.</summary>
    [Fact]
    public void Half_of_the_narrowest_die_is_the_least_flange() => Assert.Equal(18, BrakeDies.LeastFlange(6).Value);

    /// <summary>Level ears are shortest in their middle: stand-off less radius, and half of the bend's allowance to its line.</summary>
    [Theory]
    [InlineData(0.01, false)]
    [InlineData(-0.01, true)]
    public void An_ear_too_short_for_a_brake_is_told_with_the_key_that_lengthens_it(double over, bool told)
    {
        var bracket = BracketDesigns.Level with { Thickness = 6, InsideRadius = 9 };
        var allowance = Math.PI / 2 * (9 + (bracket.K * 6));
        var found = Found(BracketDesigns.On(bracket with { StandOff = 18 + 9 - (allowance / 2) + over }));

        Assert.Equal(told, found is not null);
        Assert.Equal(told ? "bracket.stand_off" : null, found?.Place!.Path);
    }

    /// <summary>A strap of 6 mm whose ears end 8 mm beyond their bends.</summary>
    [Fact]
    public void A_straps_ear_is_held_to_it_too()
    {
        Assert.Null(Found(Straps.On(Straps.Usual)));
        var short8 = Straps.Usual with { Thickness = 6, InsideRadius = 6, Ear = 8, Feet = Straps.Usual.Feet with { StandOff = null } };

        Assert.Contains(Compiler.Assemble(Straps.On(short8)).Members.SelectMany(member => member.Flanges),
            flange => flange.Key == "strap.ear" && flange.Leg < 18);
        // Between its bend line and the end the strip is as long as its own flat says.
        Assert.All(Straps.Halves(Straps.On(short8)), half =>
            Assert.Equal(half.Part.Flat!.Bends[0].A.U, half.Site.Flanges[0].Leg, 1e-9));
    }
}
