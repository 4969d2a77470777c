using Vessel.Design;
using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Mockups;

public sealed class MockupPiecesTests
{
    private static readonly Assembly _sound = Assembly.Of(Designs.Sound);

    [Theory]
    [InlineData(250, 120, true)]
    [InlineData(250, 120, false)]
    [InlineData(100, 90, true)]
    public void Pieces_fit_the_bed_and_are_the_whole_but_for_the_play_of_their_pegs(double bed, double height, bool solid)
    {
        var printed = Mockup.Printed(Plan(MockupDesign.Usual with { Bed = new(bed, bed, height), IsSolid = solid, Wall = 5 }));

        Assert.True(printed.Pieces.Length >= 2);
        Assert.All(printed.Pieces, piece => MeshLaws.IsClosed(piece.Mesh));
        // A thinner triangle has no direction in single precision.
        Assert.All(printed.Pieces, piece => Assert.True(LeastAltitude(piece.Mesh) >= 0.001));
        Assert.All(printed.Pieces, piece => Assert.Single(MeshBodies.Of(piece.Mesh)));
        Assert.All(printed.Pieces, piece => Assert.NotNull(BedFit.Of(piece.Mesh, new(bed, bed, height))));
        var pegs = printed.Pieces.Sum(piece => piece.Pegs);
        Assert.True(pegs > 0, "a wall of 5 mm takes pegs");
        // What sockets take more than pegs give: at most 4 pegs a cut, each with 0.15 mm of play round 5 mm and 0.4 mm of depth.
        var play = pegs * Math.PI * ((5.15 * 5.15 * 6.4) - (0.8 * 0.8 * 0.6));
        Assert.InRange(printed.Mesh.Volume - printed.Pieces.Sum(piece => piece.Mesh.Volume), 0, play);
    }

    [Fact]
    public void Thin_walls_are_cut_without_pegs()
    {
        var printed = Mockup.Printed(Plan(MockupDesign.Usual with { Bed = new(250, 250, 120) }));

        Assert.True(printed.Pieces.Length >= 2);
        Assert.Equal(0, printed.Pieces.Sum(piece => piece.Pegs));
        // Points of the cut are moved on a grid of a 2^-18 mm; nothing else is lost.
        Near.Absolute(printed.Mesh.Volume, printed.Pieces.Sum(piece => piece.Mesh.Volume), printed.Mesh.Area * 1e-3);
    }

    [Fact]
    public void What_fits_or_shall_not_be_split_stays_whole()
    {
        Assert.Empty(Mockup.Printed(Plan(MockupDesign.Usual with { Bed = new(250, 250, 350) })).Pieces);
        Assert.Empty(Mockup.Printed(Plan(MockupDesign.Usual with { Bed = new(250, 250, 120), Splits = false })).Pieces);
        // A hundred pieces and more are no print.
        Assert.Empty(Mockup.Printed(Plan(MockupDesign.Usual with { Bed = new(30, 30, 30) })).Pieces);
    }

    [Fact]
    public void A_stand_clears_what_hangs_below_and_is_a_ring()
    {
        var printed = Mockup.Printed(Plan(MockupDesign.Usual with { Stand = 10, Scale = 0.5 }));

        MeshLaws.Hold(printed.Stand!.Mesh, 1);
        // From the drain's end, 8 mm below the pole, 10 mm of the print; the ring's inner edge lies on the sphere of 55 mm
        // 0.65 x 55 from the axis.
        var inner = 0.65 * 55;
        var play = 0.3 / 0.5 * 55 / Math.Sqrt((55 * 55) - (inner * inner));
        var rise = 63 - Math.Sqrt((55 * 55) - ((inner + 10) * (inner + 10)));
        Near.Absolute(10 + (0.5 * (rise - play)), BedFit.Extent(printed.Stand.Mesh, Vector3.UnitZ), 0.2);
        Assert.Null(Mockup.Printed(Plan(MockupDesign.Usual)).Stand);
    }

    private static double LeastAltitude(Mesh mesh) => mesh.Triangles.Min(t =>
    {
        var (a, b, c) = (mesh.Vertices[t.A], mesh.Vertices[t.B], mesh.Vertices[t.C]);
        return (b - a).Cross(c - a).Length / Math.Max((b - a).Length, Math.Max((c - b).Length, (a - c).Length));
    });

    private static MockupPlan Plan(MockupDesign options) => MockupPlan.Of(_sound.Design with { Mockup = options }, _sound.Sites);
}
