using Vessel.Design;
using Vessel.Findings;
using Vessel.Heads.Cones;
using Vessel.Joints;
using Vessel.Stock;
using Vessel.Tests.Support;
using Vessel.Tests.Reading;
using Xunit;

namespace Vessel.Tests.Findings;

/// <summary>How wide a gap is too wide is for the shop to say.</summary>
public sealed class FitRulesTests
{
    [Fact]
    public void The_shop_sets_what_gap_is_aimed_for_and_what_is_refused()
    {
        // Square through its wall a tube of 32 x 2 on a shell of 110 stands off by sqrt(55^2 - 14^2) - sqrt(55^2 - 16^2)
        // along its axis: 0.566 mm, and by less square to the shell.
        Assert.Null(Of(0.5, 0.5, 1));
        Assert.Equal(Severity.Warning, Of(0.2, 0.5, 1));
        Assert.Equal(Severity.Error, Of(0.1, 0.2, 1));
        Assert.Equal(Severity.Error, Of(0.2, 0.5, 0.3));
    }

    /// <summary>A quarter of the wall is aimed for, half of it or 1 mm is the most (common practice, no source);
    /// of 2 mm 0.5 and 1.</summary>
    [Theory]
    [InlineData(0.5, null)]
    [InlineData(0.6, Severity.Warning)]
    [InlineData(1.1, Severity.Error)]
    public void Root_gaps_and_clearances_are_held_to_the_same_limits(double gap, Severity? expected)
    {
        var shell = Designs.Shell();
        var tube = Designs.Branch("inlet", 32, 2, new(90, 0, 0, 0, 0));
        VesselDesign Plain(double root, double lid, double port)
        {
            var vessel = Designs.Vessel(shell with { RootGap = root },
                tube with { Joint = PortJoint.SetIn, InsideLength = 10, Clearance = port });
            return vessel with { Top = Designs.Inset(shell, "top", wall: 2, clearance: lid) };
        }

        Assert.All([Plain(gap, 0.1, 0.1), Plain(0.1, gap, 0.1), Plain(0.1, 0.1, gap)], design =>
            Assert.Equal(expected,
                Assessment.Of(Compiler.Assemble(design)).SingleOrDefault(finding => finding.Code == FindingCodes.GapTooWide)?.Severity));
    }

    /// <summary>Over a plate 8 thick a bore that widens by 100 on 180 of height stands off its upper edge by 8 / 1.8 more than the
    /// clearance.</summary>
    [Fact]
    public void What_a_cone_leaves_beside_a_plate_is_told_apart_from_the_clearance()
    {
        var design = DesignTexts.Good("""
            vessel: Sawmill hopper
            material: stainless 304
            shell: { outside_diameter: 200, top_diameter: 400, wall: 2, height: 180, made_from: sheet }
            top: { shape: flat, thickness: 8, clearance: 0.3 }
            bottom: { shape: hemisphere }
            ports: [{ name: drain, in: bottom, at: { radius: 0 }, tube: { outside_diameter: 30, wall: 2 }, length: 40, cut: ground }]
            """);
        var finding = Assessment.Of(Compiler.Assemble(design)).Single(finding => finding.Code == FindingCodes.GapTooWide);

        Assert.Contains("open by 4.74 mm", finding.Message, StringComparison.Ordinal);
        Assert.Contains("The cone alone leaves 4.44 mm", finding.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("smaller clearance", finding.Message, StringComparison.Ordinal);
    }

    /// <summary>On thick wall the shop's greatest gap is below the share that is aimed for: that share is then never asked for.</summary>
    [Fact]
    public void No_more_is_aimed_for_than_may_be() =>
        Assert.Equal(RootGap.Most(8, Shop.Usual.Welding), RootGap.Aim(8, Shop.Usual.Welding));

    /// <summary>A cone of half angle a and a tube on its axis open by 180 - a degrees: 135 of them are the limit,
    /// and still a fillet.</summary>
    [Theory]
    [InlineData(46, false)]
    [InlineData(45, false)]
    [InlineData(44, true)]
    public void A_fillet_ends_where_the_surfaces_open_beyond_the_limit(double half, bool isGroove)
    {
        var shell = Designs.Shell();
        var drain = Designs.OnHead("drain", VesselEnd.Bottom, 30, 3, 0);
        var design = Designs.Vessel(shell, drain) with
        {
            Bottom = new ConeHead("bottom", Designs.Stainless, 2, half * Math.PI / 180, 0, 0),
        };

        Assert.Equal(
            isGroove,
            Assessment.Of(Compiler.Assemble(design)).Any(finding => finding.Code == FindingCodes.GrooveAtFlank));
    }

    private static Severity? Of(double aim, double most, double limit)
    {
        var design = Designs.Vessel(Designs.Shell(madeFrom: StockForm.Tube), Designs.Branch("inlet", 32, 2, new(90, 0, 0, 0, 0)));
        var shop = Shop.Usual with { Welding = Shop.Usual.Welding with { GapAim = aim, GapMost = most, GapLimit = limit } };
        return Assessment.Of(Compiler.Assemble(design with { Shop = shop }))
            .SingleOrDefault(finding => finding.Code == FindingCodes.GapTooWide)?.Severity;
    }
}
