using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

public sealed class MesherTests
{
    private static readonly CylinderSurface _outer = new(55);
    private static readonly CylinderSurface _inner = new(52);

    /// <summary>
    /// Facets lie within the chord of the surface, so no volume between facets and surface exceeds area x chord.
    /// </summary>
    private static double Bound(Mesh mesh, Accuracy accuracy) => mesh.Area * accuracy.Chord;

    private static Rim Drilled(double radius, double offset, double height, double angle) => new(
        Interval.Turn,
        [],
        t => _outer.ChartOf(new(angle + Math.Asin((offset + (radius * Math.Sin(t))) / _outer.Radius), height - (radius * Math.Cos(t)))),
        t => _inner.ChartOf(new(angle + Math.Asin((offset + (radius * Math.Sin(t))) / _inner.Radius), height - (radius * Math.Cos(t)))));

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.01)]
    [InlineData(0.5)]
    public void A_plain_tube_is_a_ring_of_the_right_volume(double chord)
    {
        var accuracy = new Accuracy(chord, Math.PI / 6);
        var solid = ThickSolid.Of(_outer, _inner, true, [Rim.SquareEnd(_outer, _inner, 0), Rim.SquareEnd(_outer, _inner, 180)]);

        var mesh = Mesher.Flatten(solid, accuracy);

        MeshLaws.Hold(mesh, solid.Genus);
        Assert.Equal(1, solid.Genus);
        Assert.InRange(mesh.Volume - (Math.PI * ((55 * 55) - (52 * 52)) * 180), -Bound(mesh, accuracy), Bound(mesh, accuracy));
    }

    [Theory]
    [InlineData(16, 0)]
    [InlineData(16, 30)]
    [InlineData(16, 35.9)]
    [InlineData(51.9, 0)]
    [InlineData(2, -49)]
    public void A_drilled_tube_has_a_handle_more(double radius, double offset)
    {
        var solid = ThickSolid.Of(_outer, _inner, true,
            [Rim.SquareEnd(_outer, _inner, 0), Rim.SquareEnd(_outer, _inner, 180), Drilled(radius, offset, 90, 1)]);

        var mesh = Mesher.Flatten(solid, Accuracy.Solids);

        Assert.Equal(2, solid.Genus);
        MeshLaws.Hold(mesh, solid.Genus);
    }

    [Fact]
    public void A_tube_that_leaves_no_free_line_for_the_cut_still_closes()
    {
        var rims = ImmutableArray.CreateBuilder<Rim>();
        rims.Add(Rim.SquareEnd(_outer, _inner, 0));
        rims.Add(Rim.SquareEnd(_outer, _inner, 460));
        for (var i = 0; i < 4; i++)
            rims.Add(Drilled(50, 0, 60 + (110 * i), i * Math.PI / 2));

        var solid = ThickSolid.Of(_outer, _inner, true, rims.ToImmutable());

        MeshLaws.Hold(Mesher.Flatten(solid, Accuracy.Solids), 5);
    }

    [Fact]
    public void A_half_sphere_with_a_hole_closes()
    {
        var outer = new SphereSurface(55);
        var inner = new SphereSurface(52);
        var equator = new Rim(Interval.Turn, [], t => outer.ChartOf(Math.PI / 2, t), t => inner.ChartOf(Math.PI / 2, t));
        var hole = new Rim(
            Interval.Turn, [], t => outer.ChartOf(Math.Asin(11.0 / 55), t), t => inner.ChartOf(Math.Asin(11.0 / 52), t));

        var solid = ThickSolid.Of(outer, inner, false, [equator, hole]);
        var mesh = Mesher.Flatten(solid, Accuracy.Solids);

        MeshLaws.Hold(mesh, 1);
        // Half balls less the bore's cylinder and caps, by slices square to the axis.
        static double Bored(double r, double hole) => 2 * Math.PI / 3 * Math.Pow((r * r) - (hole * hole), 1.5);
        Assert.InRange(mesh.Volume - (Bored(55, 11) - Bored(52, 11)), -Bound(mesh, Accuracy.Solids), Bound(mesh, Accuracy.Solids));
    }

    /// <summary>Facets that the chord alone asks for: no limit to the angle.</summary>
    private static Accuracy Chord(double chord) => new(chord, Math.PI);

    [Theory]
    [InlineData(20, 0.05)]
    [InlineData(55, 0.05)]
    [InlineData(55, 0.01)]
    [InlineData(300, 0.05)]
    public void A_half_sphere_has_no_more_than_twice_the_facets_that_its_chord_needs(double radius, double chord)
    {
        var (outer, inner) = (new SphereSurface(radius), new SphereSurface(0.9 * radius));
        var equator = new Rim(Interval.Turn, [], t => outer.ChartOf(Math.PI / 2, t), t => inner.ChartOf(Math.PI / 2, t));

        var mesh = Mesher.Flatten(ThickSolid.Of(outer, inner, false, [equator]), Chord(chord));

        // Each facet fits a circle of radius sqrt(2 R c), so it covers 3 sqrt(3) / 4 of 2 R c at most.
        double Least(double r) => 2 * Math.PI * r * r / (1.5 * Math.Sqrt(3) * r * chord);
        var wall = 2 * Math.PI / Math.Acos(1 - (chord / radius));
        Assert.InRange(mesh.Triangles.Length, Least(outer.Radius) + Least(inner.Radius),
            2 * (Least(outer.Radius) + Least(inner.Radius) + wall));
    }

    [Theory]
    [InlineData(55, 180, 0.05)]
    [InlineData(55, 1800, 0.05)]
    [InlineData(300, 20, 0.01)]
    public void A_tube_has_no_more_than_twice_the_facets_that_its_chord_needs(double radius, double length, double chord)
    {
        var (outer, inner) = (new CylinderSurface(radius), new CylinderSurface(radius - 2));
        var rims = new[] { Rim.SquareEnd(outer, inner, 0), Rim.SquareEnd(outer, inner, length) };

        var mesh = Mesher.Flatten(ThickSolid.Of(outer, inner, true, [.. rims]), Chord(chord));

        // A strip of chord c in radius R covers 2 acos(1 - c / R); each of the four bands has two facets a strip.
        var least = 4 * 2 * Math.PI / Math.Acos(1 - (chord / radius));
        Assert.InRange(mesh.Triangles.Length, least, 2 * least);
    }

    [Fact]
    public void A_plate_with_holes_has_area_times_thickness()
    {
        var top = new PlaneSurface(Frame3.At(new(0, 0, 3)));
        var bottom = new PlaneSurface(Frame3.Identity);
        var solid = ThickSolid.Of(top, bottom, true,
        [
            Rim.Square(Loop2.Polygon(new(0, 0), new(90, 0), new(90, 60), new(0, 60))),
            Rim.Square(Loop2.Circle(new(30, 30), 12, clockwise: true)),
            Rim.Square(Loop2.Circle(new(65, 30), 5, clockwise: true)),
        ]);

        var mesh = Mesher.Flatten(solid, Accuracy.Solids);

        MeshLaws.Hold(mesh, 2);
        Assert.InRange(mesh.Volume, 3 * ((90 * 60) - (Math.PI * (144 + 25))),
            (3 * ((90 * 60) - (Math.PI * (144 + 25)))) + Bound(mesh, Accuracy.Solids));
    }
}
