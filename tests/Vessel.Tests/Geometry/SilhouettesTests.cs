using System.Collections.Immutable;
using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Geometry;

public sealed class SilhouettesTests
{
    private static readonly CylinderSurface _outer = new(40);

    private static readonly CylinderSurface _inner = new(38);

    private static readonly Solid _tube = ThickSolid.Of(
        _outer, _inner, true, [Rim.SquareEnd(_outer, _inner, 5), Rim.SquareEnd(_outer, _inner, 95), Drilled(0.4, 50, 12)]);

    public static TheoryData<double, double> Directions => new() { { 0, 0 }, { 1.1, 0.3 }, { -2.2, -0.7 } };

    [Theory]
    [MemberData(nameof(Directions))]
    public void On_a_silhouette_the_surface_is_seen_from_its_edge(double around, double rise)
    {
        var toward = Toward(around, rise);
        var found = Silhouettes.Of(_tube, toward).SelectMany(curve => curve).ToList();

        Assert.NotEmpty(found);
        Assert.All(found, point => Assert.Equal(0, point.Normal.Dot(toward), 1e-12));
    }

    [Fact]
    public void A_tube_has_two_lines_outside_and_two_inside_from_end_to_end()
    {
        // Square to the hole, which then lies between them.
        var lines = Silhouettes.Of(_tube, Toward(0.4, 0)).Select(curve => (curve[1].At - curve[0].At).Length).ToList();

        Assert.Equal(4, lines.Count);
        Assert.All(lines, length => Assert.Equal(90, length, 1e-9));
    }

    [Fact]
    public void A_hole_in_the_silhouette_takes_its_width_out_of_it()
    {
        // A quarter turn from the hole: its middle lies on one line of either face.
        var lines = Silhouettes.Of(_tube, Toward(0.4 - (Math.PI / 2), 0))
            .Select(curve => (curve[1].At - curve[0].At).Length).Order().ToList();

        // Halving 1/128 of a turn of the hole 44 times leaves less than rounding.
        Assert.Equal([33, 33, 33, 33, 90, 90], lines.Select(length => Math.Round(length, 9)));
    }

    [Fact]
    public void A_half_sphere_has_its_meridian()
    {
        var (outer, inner) = (new SphereSurface(30), new SphereSurface(28));
        var dome = ThickSolid.Of(outer, inner, false,
            [new(Interval.Turn, [], t => outer.ChartOf(Math.PI / 2, t), t => inner.ChartOf(Math.PI / 2, t))]);
        var toward = Toward(0.7, 0);
        var found = Silhouettes.Of(dome, toward).ToList();

        Assert.True(Silhouettes.AreExact(dome, toward));
        Assert.Equal(4, found.Count);
        Assert.All(found, curve =>
        {
            var radius = curve[0].At.Length;
            Assert.All(curve, point => Assert.Equal(0, point.At.Dot(toward), 1e-9));
            Assert.All(curve, point => Assert.Equal(radius, point.At.Length, 1e-9));
            // From the pole to the equator.
            Assert.Equal(-radius, curve[0].At.Z, 1e-9);
            Assert.Equal(0, curve[^1].At.Z, 1e-9);
        });
    }

    [Fact]
    public void Seen_along_its_axis_a_half_sphere_ends_at_its_equator()
    {
        var (outer, inner) = (new SphereSurface(30), new SphereSurface(28));
        Rim Edge(double fromPole) => new(Interval.Turn, [], t => outer.ChartOf(fromPole, t), t => inner.ChartOf(fromPole, t));

        var rims = Silhouettes.Of(ThickSolid.Of(outer, inner, false, [Edge(Math.PI / 2)]), Vector3.UnitZ).ToList();

        Assert.Equal([30, 28], rims.Select(rim => Math.Round(new Point2(rim[0].At.X, rim[0].At.Y).Length, 9)));
        // A cap of 60 degrees ends on its edge, which is seen as such.
        Assert.Empty(Silhouettes.Of(ThickSolid.Of(outer, inner, false, [Edge(Math.PI / 3)]), Vector3.UnitZ));
    }

    [Fact]
    public void Of_a_cube_all_edges_are_sharp_and_the_diagonals_are_not()
    {
        var cube = Mesher.Flatten(ThickSolid.Plate(new(Loop2.Polygon(new(0, 0), new(2, 0), new(2, 2), new(0, 2)), []), 2), Accuracy.Solids);

        // Twelve edges of two each, however many pieces the mesher makes of them.
        Assert.Equal(24, SharpEdges.Of(cube, 0.6).Sum(edge => (edge.B - edge.A).Length), 1e-9);
        Assert.Empty(SharpEdges.Turning(cube, 0.6, Toward(0.3, 0.2)));
    }

    private static Vector3 Toward(double around, double rise) =>
        new(Math.Cos(around) * Math.Cos(rise), Math.Sin(around) * Math.Cos(rise), Math.Sin(rise));

    /// <summary>A hole as high as wide in the chart of either face.</summary>
    private static Rim Drilled(double angle, double height, double radius)
    {
        Func<double, Point2> On(CylinderSurface face) => t => face.ChartOf(new(angle, height)) + Point2.Polar(radius, -t);
        return new(Interval.Turn, ImmutableArray<double>.Empty, On(_outer), On(_inner));
    }
}
