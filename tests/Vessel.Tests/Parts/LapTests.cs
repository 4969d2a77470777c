using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Export.Dxf;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Tests.Members.Inside;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Parts;

/// <summary>Wraps of tubes on which no line from end to end is free of holes.</summary>
public sealed class LapTests
{
    /// <summary>Four ports one above the other, a quarter of a turn apart, each over more than a quarter of the girth.</summary>
    private static Part Shell() => Compiler.Assemble(Designs.Vessel(
        Designs.Shell(100, 2, 500, StockForm.Tube),
        [.. Enumerable.Range(0, 4).Select(i => Designs.Branch($"port {i}", 84, 2, new(70 + (110 * i), i * Math.PI / 2, 0, 0, 0)))]))
            .Parts.Single(part => part.Id == "shell");

    [Fact]
    public void A_lapping_wrap_says_so_and_counts_its_metal_once()
    {
        var flat = Shell().Flat!;
        var girth = Math.PI * 100;
        var wrapped = (WrappedDevelopment)flat.From;
        var figures = FlatFigures.Of(FittedFlat.Of(flat, 0.01));

        Assert.True(wrapped.Lap > 1);
        Near.Absolute(girth + wrapped.Lap, figures.WidthMm, 1e-9);
        Near.Absolute((girth * 500) + flat.Cut.Holes.Sum(CurveMeasures.Area), figures.AreaMm2, 1e-6);
        Assert.Contains(flat.Notes,
            note => note.Contains("LONGER THAN ONCE ROUND: once round is 314.2 mm", StringComparison.Ordinal));
        Assert.Contains(flat.Marks.OfType<LineMark>(), line => Math.Abs(line.A.U - girth) < 1e-9 && Math.Abs(line.B.U - girth) < 1e-9);
        Assert.All(flat.Cut.Holes,
            hole => Assert.True(CurveMeasures.Bounds(hole) is var box && box.Min.U > 0 && box.Max.U < figures.WidthMm));
    }

    public static TheoryData<string> Tubes => new("sleeve", "port");

    /// <summary>Two rows of four windows 40 wide on a girth of 251: the one row stands over the gaps of the other.</summary>
    [Theory]
    [MemberData(nameof(Tubes))]
    public void Staggered_windows_that_cover_every_line_are_built(string kind)
    {
        ImmutableArray<WindowsDesign> rows = [new("w", 4, 40, 10, 2, 10, 0.1), new("w", 4, 40, 10, 2, 30, 0.1 + (Math.PI / 4))];
        var vessel = kind == "sleeve"
            ? InsideTests.Vessel().With(new InsideDesign([], [InsideTests.Sleeve with { OutsideDiameter = 80, Windows = rows }], [], []))
            : Designs.Vessel(Designs.Shell(200, 2, 300), Designs.OnHead("vent", VesselEnd.Top, 80, 2, 0) with
            {
                Joint = PortJoint.SetIn,
                InsideLength = 60,
                Length = 40,
                Windows = rows,
            });
        Assert.Empty(PortWindowCheck.Find(PortSites.Of(vessel)));
        var part = Compiler.Assemble(vessel).Parts.Single(part => part.Word == (kind == "sleeve" ? "sleeve" : "branch"));
        var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);
        var (flat, figures) = (part.Flat!, FlatFigures.Of(FittedFlat.Of(part.Flat!, 0.01)));

        MeshLaws.Hold(mesh, 1 + 8);
        Near.Absolute(part.Volume, mesh.Volume, mesh.Area * Accuracy.Solids.Chord);
        Assert.Equal(8, flat.Cut.Holes.Length);
        Assert.All(flat.Cut.Holes,
            hole => Assert.True(CurveMeasures.Bounds(hole) is var box && box.Min.U > -1e-9 && box.Max.U < figures.WidthMm));
        // Of the mean cylinder, as the walls of windows are radial; both ends are square.
        Near.Relative(part.Volume * 80 / 78 / 2, figures.AreaMm2, 1e-9);
        Assert.Contains(flat.Notes, note => note.StartsWith("LONGER THAN ONCE ROUND", StringComparison.Ordinal));
    }
}
