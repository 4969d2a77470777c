using Vessel.Export.Drawing;
using Vessel.Export.General;
using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Export.General;

public sealed class HiddenLinesTests
{
    /// <summary>A plate 20 wide and high, two thick, standing square before the viewer of the front view.</summary>
    private static readonly HiddenLines _plate = Before(Plate(20));

    [Fact]
    public void A_line_behind_a_plate_is_hidden_for_just_its_width()
    {
        var seen = _plate.Visible(new(-5, -30, 10), new(-5, 45, 10));

        Assert.Equal(2, seen.Count);
        Assert.Equal((-30.0, 0.0), (seen[0].A.U, Math.Round(seen[0].B.U, 9)));
        Assert.Equal((20.0, 45.0), (Math.Round(seen[1].A.U, 9), seen[1].B.U));
    }

    [Fact]
    public void A_line_before_it_is_seen_whole() =>
        Assert.Equal(75, _plate.Visible(new(5, -30, 10), new(5, 45, 10)).Sum(part => (part.B - part.A).Length), 1e-9);

    [Fact]
    public void A_line_that_runs_through_it_is_seen_up_to_its_face()
    {
        // The viewed face is x = 2: from x = 12 at y = 0 to x = -8 at y = 20 it is met half-way.
        var seen = _plate.Visible(new(12, 0, 10), new(-8, 20, 10)).Single();

        // What hides stands 1e-6 before; the line sinks by as much as it goes aside.
        Assert.Equal(0, seen.A.U);
        Assert.Equal(10, seen.B.U, 1.1e-6);
    }

    [Fact]
    public void Its_own_edges_are_seen()
    {
        var plate = Plate(20);
        var edges = SharpEdges.Of(plate.Mesh, 0.6).Select(edge => (A: plate.Frame.ToOuter(edge.A), B: plate.Frame.ToOuter(edge.B)));

        var near = edges.Where(edge => edge.A.X > 1.9 && edge.B.X > 1.9).SelectMany(edge => _plate.Visible(edge.A, edge.B));

        Assert.Equal(80, near.Sum(part => (part.B - part.A).Length), 1e-9);
    }

    [Fact]
    public void What_hides_less_shows_more()
    {
        var random = new Random(5);
        var small = Before(Plate(12));
        for (var i = 0; i < 200; i++)
        {
            double At() => (random.NextDouble() * 60) - 20;
            var (a, b) = (new Vector3(-5, At(), At()), new Vector3(-5, At(), At()));

            Assert.True(Length(small, a, b) >= Length(_plate, a, b) - 1e-9);
        }
    }

    [Fact]
    public void Chains_keep_every_segment()
    {
        var random = new Random(8);
        var points = Enumerable.Range(0, 40).Select(_ => new Point2(random.Next(6), random.Next(6))).ToList();
        var segments = points.Zip(points.Skip(1)).Where(pair => pair.First != pair.Second).ToList();

        var chains = Chains.Of(segments, 1e-6).ToList();

        // Points left out lie on their line, so the length stays.
        Assert.Equal(segments.Sum(s => (s.Second - s.First).Length), chains.Sum(Length), 1e-9);
        Assert.True(chains.Count < segments.Count);
    }

    private static double Length(HiddenLines lines, Vector3 a, Vector3 b) => lines.Visible(a, b).Sum(part => (part.B - part.A).Length);

    private static double Length(System.Collections.Immutable.ImmutableArray<Point2> line) =>
        line.Zip(line.Skip(1)).Sum(pair => (pair.Second - pair.First).Length);

    private static HiddenLines Before((Mesh Mesh, Frame3 Frame) body) => new(View.Front, [body], 1e-6);

    /// <summary>Chart x and y become Y and Z, thickness X.</summary>
    private static (Mesh Mesh, Frame3 Frame) Plate(double side) => (
        Mesher.Flatten(
            ThickSolid.Plate(new(Loop2.Polygon(new(0, 0), new(side, 0), new(side, side), new(0, side)), []), 2), Accuracy.Solids),
        new(Vector3.Zero, Vector3.UnitY, Vector3.UnitZ, Vector3.UnitX));
}
