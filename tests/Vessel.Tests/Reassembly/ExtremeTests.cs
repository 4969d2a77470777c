using Vessel.Design;
using Vessel.Geometry;
using Vessel.Reading;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Reassembly;

/// <summary>
/// Branches at the ends of what the language takes: as wide as the shell or a hair less, tangent, tilted until the curve hardly
/// closes, with thin and thick walls. They pass the checks, close as solids and go together as cut.
/// </summary>
public sealed class ExtremeTests
{
    private const double Radius = 50;

    /// <param name="share">Of the branch's radius to the shell's.</param>
    /// <param name="side">Of the offset to the greatest.</param>
    [Theory]
    [InlineData(1, 0, 0)]
    [InlineData(1, 0, 40)]
    [InlineData(1 - 1e-9, 1, 0)]
    [InlineData(1 - 1e-6, -1, 20)]
    [InlineData(0.999, 1, -30)]
    [InlineData(0.3, 1, 0)]
    [InlineData(0.3, -1, 45)]
    [InlineData(0.3, 0.999999, -60)]
    [InlineData(0.4, 0, 75)]
    [InlineData(0.4, 1, 75)]
    [InlineData(0.4, 0.5, -75)]
    [InlineData(0.95, 1, 75)]
    public void A_branch_at_the_limit_is_made_and_fits(double share, double side, double tilt)
    {
        foreach (var (wall, form, cut) in ((double, StockForm, EndCut)[])
            [(0.02, StockForm.Sheet, EndCut.Square), (0.3, StockForm.Sheet, EndCut.Ground), (0.3, StockForm.Tube, EndCut.Square)])
        {
            var radius = share * Radius;
            // A hole that is drilled must leave through the bore, too.
            var shell = Designs.Shell(2 * Radius, form == StockForm.Tube ? Math.Min(2, 0.9 * wall * radius) : 2, 1200, form);
            var place = new PortPlace(600, 0.3, side * (Radius - radius), tilt * Math.PI / 180, 0);
            var port = Designs.Branch("branch", 2 * radius, wall * radius, place) with { Cut = cut, Length = 900 };
            var design = Designs.Vessel(shell, port);

            Assert.Empty(DesignCheck.Find(design));
            var vessel = Compiler.Assemble(design);
            foreach (var part in vessel.Parts)
            {
                var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);
                MeshLaws.Hold(mesh, part.Solid.Genus);
                // Facets lie within the chord of the surface.
                Near.Absolute(part.Volume, mesh.Volume, mesh.Area * Accuracy.Solids.Chord);
            }

            ReassemblyTests.AssertMeets(vessel, 3);
        }
    }
}
