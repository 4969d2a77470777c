using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Mockups;

public sealed class MockupPiecesTests
{
    private static readonly Assembly _sound = Compiler.Assemble(Designs.Sound);

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
        // Hundreds of pieces are no print, and that is said.
        Assert.Empty(Mockup.Printed(Plan(MockupDesign.Usual with { Bed = new(30, 30, 30) })).Pieces);
    }

    [Theory]
    [InlineData("harbour-launch-breather.yaml", 75, 60, false)]
    [InlineData("shop-compressor-catch-can.yaml", 150, 80, true)]
    public void No_bed_is_given_up_but_for_too_many_pieces(string file, double bed, double height, bool solid)
    {
        var design = Compiler.Read(File.ReadAllText(Repository.Designs.Single(path => Path.GetFileName(path) == file))).Value! with
        {
            Mockup = MockupDesign.Usual with { Bed = new(bed, bed, height), IsSolid = solid, Wall = 4 },
        };

        var printed = Mockup.Printed(Compiler.Assemble(design).Mockup);

        Assert.NotEmpty(printed.Pieces);
        Assert.All(printed.Pieces, piece => MeshLaws.IsClosed(piece.Mesh));
        Assert.All(printed.Pieces, piece => Assert.NotNull(BedFit.Of(piece.Mesh, new(bed, bed, height))));
        Assert.All(printed.Pieces, piece => Assert.True(LeastAltitude(piece.Mesh) >= 0.001));
        Assert.All(printed.Pieces, piece => Assert.False(piece.IsRough));
    }

    [Theory]
    [InlineData(0.0008, true)]
    [InlineData(2, false)]
    public void A_cut_that_leaves_a_needle_wherever_it_goes_is_told(double thickness, bool told)
    {
        // A blade: its cap is as thin as it is itself.
        var blade = Mesher.Flatten(
            ThickSolid.Plate(new(Loop2.Polygon(new(0, 0), new(10, 0), new(10, thickness), new(0, thickness)), []), 300), Accuracy.Solids);
        var plan = Plan(MockupDesign.Usual with { Bed = new(200, 200, 200) });

        var pieces = MockupPieces.Of(new(plan, blade, 0.1));

        Assert.Equal(2, pieces.Length);
        Assert.All(pieces, piece => Assert.Equal(told, piece.IsRough));
    }

    /// <summary>
    /// Long sideways arms end below the middle of a slice: the second of three levels then finds nothing beside the gap between them.
    /// </summary>
    [Fact]
    public void What_hangs_together_nowhere_in_a_slice_is_cut_by_itself()
    {
        // A bridge of 400 mm on two feet of 60 and 130 mm: in the lower slice the feet stand 210 mm apart.
        var outline = Loop2.Polygon(new(0, 0), new(60, 0), new(60, 120), new(270, 120), new(270, 0), new(400, 0),
            new(400, 160), new(0, 160));
        var lying = Mesher.Flatten(ThickSolid.Plate(new(outline, []), 30), Accuracy.Solids);
        var bridge = lying with { Vertices = [.. lying.Vertices.Select(v => new Vector3(v.X, 30 - v.Z, v.Y))] };
        var plan = Plan(MockupDesign.Usual with { Bed = new(150, 150, 100) });

        var pieces = MockupPieces.Of(new(plan, bridge, 0.1));

        Assert.All(pieces, piece => MeshLaws.IsClosed(piece.Mesh));
        Assert.All(pieces, piece => Assert.Equal(0, BedFit.Of(piece.Mesh, plan.Options.Bed)));
        Near.Relative(bridge.Volume, pieces.Sum(piece => piece.Mesh.Volume), 0.01);
    }

    [Fact]
    public void A_piece_that_fits_only_cornerwise_stands_so_in_its_file()
    {
        // A bar of 223 x 20 mm, and the same in one piece, on a bed of 220: cornerwise it takes (223 + 20) / sqrt(2) = 171.8 mm.
        var bed = new BedDesign(220, 220, 100);
        var bar = Mesher.Flatten(
            ThickSolid.Plate(new(Loop2.Polygon(new(0, 0), new(223, 0), new(223, 20), new(0, 20)), []), 160), Accuracy.Solids);
        var plan = Plan(MockupDesign.Usual with { Bed = bed });

        var pieces = MockupPieces.Of(new(plan, bar, 0.1));

        Assert.Equal(2, pieces.Length);
        Assert.All(pieces, piece => Assert.Equal(0, BedFit.Of(piece.Mesh, bed)));
        Assert.All(pieces, piece => Assert.InRange(BedFit.Extent(piece.Mesh, Vector3.UnitX), 0, 220));
    }

    /// <summary>A cut along a bore that runs level finds another place, so that no piece touches itself.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(0.001)]
    [InlineData(-0.001)]
    [InlineData(-0.01)]
    public void A_cut_that_grazes_a_bore_moves_aside(double by)
    {
        // Half way up the block of 200 mm lies the lowest line of a bore of 20 mm.
        var block = Loop2.Polygon(new(0, 0), new(40, 0), new(40, 200), new(0, 200));
        var lying = Mesher.Flatten(ThickSolid.Plate(new(block, [Loop2.Circle(new(20, 110 + by), 10)]), 50), Accuracy.Solids);
        // Its facets have a vertex at the lowest place.
        var lowest = lying.Vertices.Where(v => Math.Abs(v.X - 20) < 1).Min(v => Math.Abs(v.Y - 100 - by));
        Assert.True(lowest < 1e-9);
        var upright = lying with { Vertices = [.. lying.Vertices.Select(v => new Vector3(v.X, 50 - v.Z, v.Y))] };
        var plan = Plan(MockupDesign.Usual with { Bed = new(220, 220, 120) });

        var pieces = MockupPieces.Of(new(plan, upright, 0.1));

        Assert.Equal(2, pieces.Length);
        Assert.All(pieces, piece => MeshLaws.IsClosed(piece.Mesh));
        Assert.All(pieces, piece => Assert.False(piece.IsRough));
        // The bore lies whole in one of them, or is cut through: where a cap covers it a place of the bore lies in the cap's plane.
        foreach (var piece in pieces)
        {
            var bottom = piece.Mesh.Vertices.Count(v => v.Z < 1e-6);
            Assert.Equal(bottom, piece.Mesh.Triangles.Where(t => piece.Mesh.Vertices[t.A].Z < 1e-6 && piece.Mesh.Vertices[t.B].Z < 1e-6
                && piece.Mesh.Vertices[t.C].Z < 1e-6).SelectMany(t => new[] { t.A, t.B, t.C }).Distinct().Count());
        }
    }

    /// <summary>Narrow pegs are so finely rounded that their circles count as gently bent outlines.</summary>
    [Theory]
    [InlineData(3.3)]
    [InlineData(3.4)]
    [InlineData(4)]
    public void Narrow_pegs_are_joined_to_their_faces(double wall)
    {
        var printed = Mockup.Printed(Plan(MockupDesign.Usual with { Bed = new(250, 250, 120), Wall = wall }));

        Assert.True(printed.Pieces.Sum(piece => piece.Pegs) > 0);
        Assert.All(printed.Pieces, piece => MeshLaws.IsClosed(piece.Mesh));
    }

    [Theory]
    [InlineData(30, true)]
    [InlineData(100, false)]
    public void Too_many_pieces_are_told(double bed, bool told)
    {
        var vessel = Compiler.Assemble(_sound.Design with { Mockup = MockupDesign.Usual with { Bed = new(bed, bed, bed) } });
        var size = Mockup.Of(vessel.Mockup).Size;

        // What is reckoned without a mesh; facets lie within a chord on either side.
        Near.Absolute(size.X, vessel.Mockup.Size.X, 2 * Mockup.UsualChord);
        Near.Absolute(size.Y, vessel.Mockup.Size.Y, 2 * Mockup.UsualChord);
        Near.Absolute(size.Z, vessel.Mockup.Size.Z, 2 * Mockup.UsualChord);
        Assert.Equal(told, Compiler.Assess(vessel).Any(finding => finding.Code == FindingCodes.PrintNotSplit));
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

    private static MockupPlan Plan(MockupDesign options) =>
        MockupPlan.Of(_sound.Design with { Mockup = options }, _sound.Chamber, _sound.Sites, _sound.Members);
}
