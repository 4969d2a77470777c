using Vessel.Design;
using Vessel.Findings;
using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Sites;
using Vessel.Tests.Members.Brackets;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Findings;

/// <summary>What stands on the outside against its neighbours, by hand and by points on their surfaces.</summary>
public sealed class OutsideRulesTests
{
    /// <summary>Asked of every distance.</summary>
    private const double Bracket = 0.05;

    [Theory]
    [InlineData(0.9, 1)]
    [InlineData(1.1, 0)]
    [InlineData(-2, 1)]
    public void A_climbing_tube_past_a_level_one(double between, int count)
    {
        // The lower tube's axis climbs by 45 degrees from (55, 60); at the end of the level one, 55 + 40 out, its upper side, 10 square
        // to it, lies 40 + 10 sqrt 2 above its foot: the level one's lower corner stands off it by what is left, square to it.
        var height = 60 + 40 + (10 * Math.Sqrt(2)) + (between * Math.Sqrt(2)) + 10;
        var found = Found(Designs.Vessel(
            Designs.Shell(),
            Designs.Branch("lower", 20, 2, new(60, 0, 0, Math.PI / 4, 0)) with { Length = 120 },
            Designs.Branch("level", 20, 2, new(height, 0, 0, 0, 0)) with { Length = 40 }));

        Assert.Equal(count, found.Count);
        if (count > 0)
        {
            Near.Absolute(Math.Max(0, between), found[0].Figures[0].Value, Bracket);
            Assert.Equal(between < 0 ? Severity.Error : Severity.Warning, found[0].Severity);
        }
    }

    [Theory]
    [InlineData(0.9, 1)]
    [InlineData(1.1, 0)]
    public void A_tube_under_the_rim_of_a_head(double between, int count) => Assert.Equal(count, Found(
        Designs.Vessel(Designs.Shell(), Designs.Branch("high", 20, 2, new(180 - 10 - between, 0, 0, 0, 0))) with
        {
            Top = Designs.Overlay("top", 140),
        })
        .Count(finding => finding.Parts.Contains("top")));

    [Theory]
    [InlineData(0.9, 1)]
    [InlineData(1.1, 0)]
    public void A_tube_over_a_level_plate(double between, int count)
    {
        // The plate is 5 thick round its middle at 60; it reaches as far out as the tube does.
        var plate = BracketDesigns.Plate with { Name = "lug", Angle = 0, Offset = 0, Height = 60, Material = Designs.Stainless };
        var found = Found(Designs.Vessel(Designs.Shell(), Designs.Branch("near", 20, 2, new(60 + 2.5 + between + 10, 0, 0, 0, 0))) with
        {
            Members = [plate],
        });

        Assert.Equal(count, found.Count);
        if (count > 0)
            Near.Absolute(between, found[0].Figures[0].Value, Bracket);
    }

    /// <summary>Two tubes of any place and tilt: the least of many distances of points lies in the bracket, which is narrow.</summary>
    [Theory]
    [InlineData(0, 0.5, 0.3, 24)]
    [InlineData(12, -0.4, 0.6, 26)]
    [InlineData(-20, 0, 0.2, 23)]
    [InlineData(25, 0.7, 0.75, 30)]
    public void The_bracket_holds_what_points_on_both_surfaces_tell(double offset, double tilt, double turn, double up)
    {
        var vessel = Compiler.Assemble(Designs.Vessel(
            Designs.Shell(),
            Designs.Branch("one", 20, 2, new(80, 0, offset, tilt, 0)) with { Length = 60 },
            Designs.Branch("two", 16, 2, new(80 + up, turn, 0, 0, 0)) with { Length = 50 }));
        var standing = vessel.Sites.Select(site => OutsideClashes.OfPort(site, vessel.Mockup.Outside)!).ToList();

        var distance = OutsideClashes.Between(standing[0], standing[1])!.Value;

        var points = vessel.Sites.Select(site => Surface(site, vessel.Mockup.Outside)).ToList();
        var least = points[0].Min(a => points[1].Min(b => (a - b).Length));
        Assert.InRange(distance.End - distance.Start, 0, Bracket);
        // Points stand a step apart, so that theirs is no less than the true one and more by less than a step.
        Assert.InRange(least, distance.Start - 1e-9, distance.End + 1.2);
    }

    [Fact]
    public void A_sound_vessel_has_none() => Assert.Empty(Found(Designs.Sound));

    /// <summary>Every millimetre or so of a tube's outside beyond the shell, and its end.</summary>
    private static List<Vector3> Surface(PortSite site, Profile outside)
    {
        var (radius, points) = (site.Port.OuterRadius, new List<Vector3>());
        for (var i = 0; i < 90; i++)
        {
            var (x, y) = Point2.Polar(radius, Turns.Full * i / 90);
            var foot = outside.FirstHit(site.Frame.ToOuter(new(x, y, 500)), -site.Frame.Z)!.Value.At;
            var from = site.Frame.ToLocal(foot).Z;
            for (var k = 0; k <= 60; k++)
                points.Add(site.Frame.ToOuter(new(x, y, from + ((site.Port.Length - from) * k / 60))));
            for (var k = 0; k < 10; k++)
                points.Add(site.Frame.ToOuter(new(x * k / 10, y * k / 10, site.Port.Length)));
        }

        return points;
    }

    private static List<Measure> Found(VesselDesign design) =>
        [.. Assessment.Of(Compiler.Assemble(design)).Where(finding => finding.Code == FindingCodes.OutsideClash)];
}
