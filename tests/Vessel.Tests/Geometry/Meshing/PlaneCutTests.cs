using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

public sealed class PlaneCutTests
{
    private static readonly CylinderSurface _outer = new(50);
    private static readonly CylinderSurface _inner = new(46);

    private static Mesh Tube(double height = 120) => Mesher.Flatten(
        ThickSolid.Of(_outer, _inner, true, [Rim.SquareEnd(_outer, _inner, 0), Rim.SquareEnd(_outer, _inner, height)]), Accuracy.Solids);

    private static Frame3 Plane(double angle, Vector3 through = default)
    {
        var (sin, cos) = Math.SinCos(angle);
        return new(through, new(cos, sin, 0), Vector3.UnitZ, new(sin, -cos, 0));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.3)]
    [InlineData(Math.PI / 12)]
    public void A_tube_cut_through_its_axis_shows_its_wall_twice(double angle)
    {
        var cut = PlaneCut.Of(Tube(), Plane(angle));

        MeshLaws.IsClosed(cut.Mesh);
        Assert.Equal(2, cut.Outlines.Length);
        // Each of the four long sides lies within the chord of its place.
        Near.Absolute(2 * 4 * 120, cut.Area, 4 * 120 * Accuracy.Solids.Chord);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1.1, 20)]
    [InlineData(2, -47)]
    public void Both_halves_together_are_the_whole(double angle, double aside)
    {
        var mesh = Tube();
        var plane = Plane(angle, new(aside, 0, 0));

        var (one, other) = (PlaneCut.Of(mesh, plane), PlaneCut.Of(mesh, plane with { X = -plane.X, Z = -plane.Z }));

        MeshLaws.IsClosed(one.Mesh);
        MeshLaws.IsClosed(other.Mesh);
        // Vertices within 1e-4 mm of the plane count as in it, on either side.
        Near.Absolute(mesh.Volume, one.Mesh.Volume + other.Mesh.Volume, 2e-4 * one.Area + 1e-6);
        Near.Absolute(one.Area, other.Area, 1e-3);
    }

    [Fact]
    public void A_plane_square_to_the_axis_shows_a_ring_with_the_hole_the_other_way_round()
    {
        var cut = PlaneCut.Of(Tube(), Frame3.At(new(0, 0, 33)));

        static double Area(IReadOnlyList<Point2> p) => Enumerable.Range(0, p.Count).Sum(i => p[i].Cross(p[(i + 1) % p.Count])) / 2;
        Assert.Equal(2, cut.Outlines.Length);
        Assert.Equal(cut.Area, cut.Outlines.Sum(outline => Area(outline)), 1e-6);
        Assert.Contains(cut.Outlines, outline => Area(outline) < 0);
    }

    [Fact]
    public void A_plane_along_a_face_leaves_all_or_nothing_and_no_cap_too_many()
    {
        var mesh = Tube();

        // Points in the plane are moved on a grid of 2^-18 mm, and the walls above them with them.
        Near.Absolute(mesh.Volume, PlaneCut.Of(mesh, Frame3.Identity).Mesh.Volume, mesh.Area / (1 << 18));
        Assert.Empty(PlaneCut.Of(mesh, Frame3.At(new(0, 0, 120))).Mesh.Triangles);
    }

    /// <summary>As an earlier cut's socket lies beside a cut square to it: a hollow between the plane and the depth of pegs.</summary>
    [Theory]
    [InlineData(2.2)]
    [InlineData(-2.2)]
    public void Pegs_keep_clear_of_a_hollow_beside_their_plane(double aside)
    {
        // Blocks of 40 x 12 mm, 30 mm deep, with a bore of 2.4 mm through its depth, 2.2 mm beside the plane x = 20.
        var block = Loop2.Polygon(new(0, 0), new(40, 0), new(40, 12), new(0, 12));
        var mesh = Mesher.Flatten(ThickSolid.Plate(new(block, [Loop2.Circle(new(20 + aside, 6), 1.2)]), 30), Accuracy.Solids);
        var plane = new Frame3(new(20, 0, 0), Vector3.UnitY, Vector3.UnitZ, Vector3.UnitX);

        var (centres, radius) = PegPlaces.Of(mesh, plane, PlaneCut.Of(mesh, plane).Outlines, 4, 0.8, 5);

        Assert.NotEmpty(centres);
        // 0.8 mm is left round a peg, as far as it reaches to either side.
        Assert.All(centres, centre => Assert.All(Enumerable.Range(-3, 7), depth =>
            Assert.True(MeshProbe.Distance(mesh, plane.ToOuter(new(centre.U, centre.V, depth)), 0) >= radius + 0.8 - 1e-9)));
    }
}
