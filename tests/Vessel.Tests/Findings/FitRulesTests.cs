using Vessel.Design;
using Vessel.Findings;
using Vessel.Tests.Support;
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

    private static Severity? Of(double aim, double most, double limit)
    {
        var design = Designs.Vessel(Designs.Shell(), Designs.Branch("inlet", 32, 2, new(90, 0, 0, 0, 0)));
        var shop = Shop.Usual with { Welding = Shop.Usual.Welding with { GapAim = aim, GapMost = most, GapLimit = limit } };
        return Assessment.Of(Assembly.Of(design with { Shop = shop })).SingleOrDefault(finding => finding.Code == FindingCodes.GapTooWide)?.Severity;
    }
}
