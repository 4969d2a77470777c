using NetTopologySuite.Operation.Union;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

public sealed class PerforatedMesherTests
{
    private const double Thickness = 1.5;

    public static TheoryData<string, double, double, double, double> Plates => new()
    {
        // pattern, outer radius, bore radius, hole diameter, pitch
        { "Staggered60", 36, 0, 3, 5 },
        { "Staggered60", 36.4, 9, 3, 5 },
        { "Staggered60", 36.4, 0.8, 2.5, 5 },
        { "Staggered60", 30, 0, 4.9, 5 },
        { "Staggered60", 5.6, 0, 3, 5 },
        { "Staggered60", 60, 4, 1, 2 },
        { "Staggered45", 41, 0, 3, 5 },
        { "Staggered45", 41, 6, 4.9, 5 },
        { "Staggered45", 41, 1, 2, 5 },
        { "Square", 33, 0, 3, 5 },
        { "Square", 47.9, 12, 4.9, 5 },
        { "Square", 33, 0.9, 1, 5 },
        { "Rings", 36, 0, 3, 5 },
        { "Rings", 36.6, 7, 4.9, 5 },
        { "Rings", 9, 0, 3, 5 },
        { "Rings", 80, 0, 1, 2 },
    };

    [Theory]
    [MemberData(nameof(Plates))]
    public void A_perforated_plate_closes_with_a_handle_for_each_hole(
        string kind, double outer, double bore, double diameter, double pitch)
    {
        var field = Fields.Of(kind, new(outer, bore, 2), diameter / 2, pitch);
        var solid = ThickSolid.Plate(Fields.Plate(field), Thickness);

        var mesh = Mesher.Flatten(solid, Accuracy.Solids);

        Assert.Equal(field.Count + (bore > 0 ? 1 : 0), solid.Genus);
        MeshLaws.Hold(mesh, solid.Genus);
    }

    [Theory]
    [MemberData(nameof(Plates))]
    public void The_mesh_holds_area_times_thickness(string kind, double outer, double bore, double diameter, double pitch)
    {
        var region = Fields.Plate(Fields.Of(kind, new(outer, bore, 2), diameter / 2, pitch));

        var mesh = Mesher.Flatten(ThickSolid.Plate(region, Thickness), Accuracy.Solids);

        // A chord's segment has two thirds of its length times the sagitta: outlines together times the chord bound it.
        var bound = Accuracy.Solids.Chord * CurveMeasures.Length(region) * Thickness;
        Assert.Equal(CurveMeasures.Area(region) * Thickness, mesh.Volume, bound);
    }

    [Theory]
    [MemberData(nameof(Plates))]
    public void The_area_is_that_of_overlaid_discs(string kind, double outer, double bore, double diameter, double pitch)
    {
        var field = Fields.Of(kind, new(outer, bore, 2), diameter / 2, pitch);

        var area = CurveMeasures.Area(Fields.Plate(field));

        // By another library: polygons of 256 corners, short of their circles by the share 1 - sin(x) / x, x = 2 pi / 256.
        const int quarter = 64;
        var x = 2 * Math.PI / (4 * quarter);
        var share = 1 - (Math.Sin(x) / x);
        static NetTopologySuite.Geometries.Geometry Disc(Point2 at, double radius) =>
            new NetTopologySuite.Geometries.Point(at.U, at.V).Buffer(radius, quarter);
        var holes = UnaryUnionOp.Union(field.Centers().Select(center => Disc(center, diameter / 2)).ToList());
        var plate = Disc(default, outer);
        if (bore > 0)
            plate = plate.Difference(Disc(default, bore));
        if (holes is not null)
            plate = plate.Difference(holes);
        var circles = Math.PI * ((outer * outer) + (bore * bore)) + field.Area;
        Assert.Equal(plate.Area, area, circles * share * 1.001);
    }

    [Fact]
    public void Facets_of_the_rim_stay_out_of_a_hole_that_nearly_reaches_it()
    {
        var field = Fields.Of("Rings", new(40, 0, 0.02), 1.5, 5);

        var mesh = Mesher.Flatten(ThickSolid.Plate(Fields.Plate(field), Thickness), new(0.5, 1));

        // An inscribed polygon of the rim lies beyond outer - margin / 2, holes before outer - margin: no facet between is
        // lower than half the margin, and a hole that stuck out would leave the mesh open.
        MeshLaws.Hold(mesh, field.Count);
    }

    [Fact]
    public void Facets_of_like_pieces_are_alike()
    {
        // Whole pieces are copied: the same few shapes make up most of a large plate. Edge lengths to 1e-6 mm tell them apart.
        var field = Fields.Of("Staggered60", new(80, 0, 2), 1.5, 5);
        var mesh = Mesher.Flatten(ThickSolid.Plate(Fields.Plate(field), Thickness), Accuracy.Solids);

        var upper = mesh.Triangles.Where(t => new[] { t.A, t.B, t.C }.All(v => mesh.Vertices[v].Z == Thickness)).ToList();
        var common = upper
            .GroupBy(t => (Key(mesh, t.A, t.B), Key(mesh, t.B, t.C), Key(mesh, t.C, t.A)))
            .Where(group => group.Count() > field.Count / 2)
            .Sum(group => group.Count());

        Assert.True(common > 0.7 * upper.Count, $"{common} of {upper.Count} facets are copies");
    }

    private static (double, double) Key(Mesh mesh, int from, int to)
    {
        var side = mesh.Vertices[to] - mesh.Vertices[from];
        return (Math.Round(side.X, 6) + 0.0, Math.Round(side.Y, 6) + 0.0);
    }
}
