using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

/// <summary>
/// A hat of 2 mm sheet: two bends away from the viewer, then outward again. Tolerances of 1e-12 are a hundred roundings
/// of lengths about 100 mm.
/// </summary>
public sealed class FoldedSheetTests
{
    private const double Thickness = 2;
    private const double Rounding = 1e-12;

    private static readonly ImmutableArray<Bend> _bends =
    [
        new(20, Math.PI / 2, 3, 0.42),
        new(45, -1.9, 5, 0.4),
        new(95, -1.2, 4, 0.33),
        new(120, Math.PI / 3, 0.5, 0.5),
    ];

    private static readonly FoldedSheet _hat = new(Thickness, new(1, 0), _bends, 2);

    private static readonly FoldedSheet _upright = new(Thickness, new(0, 1), _bends, 2);

    public static TheoryData<double> Places => [-7, 0, 12.5, 19, 20, 21, 33, 45, 48, 60, 70, 95, 110, 120, 121, 140];

    [Theory]
    [MemberData(nameof(Places))]
    public void Depth_is_measured_square_to_the_viewed_face(double x)
    {
        foreach (var sheet in (FoldedSheet[])[_hat, _upright])
        {
            var flat = (x * sheet.Across) + (11 * sheet.Across.Turned);

            var through = sheet.At(flat, 1.7) - sheet.At(flat, 0);

            Assert.Equal(0, (through + (1.7 * sheet.Normal(flat))).Length, Rounding);
        }
    }

    [Theory]
    [MemberData(nameof(Places))]
    public void A_point_of_any_depth_is_found_again_on_the_flat(double x)
    {
        foreach (var (sheet, depth) in (from sheet in new[] { _hat, _upright }
                                        from depth in new[] { 0, 0.8, Thickness }
                                        select (sheet, depth)))
        {
            var flat = (x * sheet.Across) + (11 * sheet.Across.Turned);

            var found = sheet.Locate(sheet.At(flat, depth), depth);

            // The inverse of a bend of radius 0.5 on its inside stretches rounding by about ten.
            Assert.Equal(0, (found - flat).Length, 10 * Rounding);
        }
    }

    [Fact]
    public void The_strip_that_is_held_still_keeps_its_place()
    {
        Assert.Equal(0, (_hat.At(new(70, 3), 0) - new Vector3(70, 3, 0)).Length, Rounding);
        Assert.Equal(0, (_upright.At(new(3, 70), 0) - new Vector3(3, 70, 0)).Length, Rounding);
    }

    [Fact]
    public void Along_the_neutral_line_of_a_bend_lengths_stay_what_they_were()
    {
        foreach (var bend in _bends)
        {
            var zone = bend.Zone(Thickness);
            // From the viewed face: K of the thickness from the inside, which is the far side of a bend away from the viewer.
            var depth = bend.Angle > 0 ? bend.K * Thickness : (1 - bend.K) * Thickness;
            const int pieces = 1000;
            var length = Enumerable.Range(0, pieces).Sum(i =>
                (_hat.At(new(zone.At((i + 1.0) / pieces), 0), depth) - _hat.At(new(zone.At((double)i / pieces), 0), depth)).Length);

            // Chords of an arc of angle a in n pieces fall short by its length times a^2 / (24 n^2).
            var shortfall = zone.Length * bend.Angle * bend.Angle / (24.0 * pieces * pieces);
            Assert.Equal(zone.Length, length + shortfall, 1e-3 * shortfall + Rounding * pieces);
        }
    }

    [Fact]
    public void Each_bend_turns_the_sheet_by_its_angle()
    {
        foreach (var bend in _bends)
        {
            var (before, after) = (_hat.Normal(new(bend.Line - 7, 0)), _hat.Normal(new(bend.Line + 7, 0)));

            // Turning towards the viewer (up) swings the normal towards -x, which is left-handed about +y.
            var turned = Math.Atan2(after.Cross(before).Y, after.Dot(before));

            Assert.Equal(bend.Angle, turned, Rounding);
        }
    }

    [Theory]
    [InlineData(70, 8)]
    [InlineData(40, 7)]
    [InlineData(20, 6)]
    public void A_folded_sheet_with_a_hole_meshes_closed_wherever_the_hole_lies(double x, double radius)
    {
        foreach (var sheet in (FoldedSheet[])[_hat, _upright])
        {
            var (a, b) = (-10 * sheet.Across, (140 * sheet.Across) + (60 * sheet.Across.Turned));
            var outline = sheet.Across.U == 1
                ? Loop2.Polygon(a, new(b.U, a.V), b, new(a.U, b.V))
                : Loop2.Polygon(a, b with { V = a.V }, b, a with { V = b.V });
            var hole = Loop2.Circle((x * sheet.Across) + (30 * sheet.Across.Turned), radius, clockwise: true);
            var solid = Folded(sheet, sheet.Across.U == 1 ? outline : Curves.Reversed(outline), hole);

            var mesh = Mesher.Flatten(solid, Accuracy.Solids);

            MeshLaws.Hold(mesh, 1);
        }
    }

    [Fact]
    public void A_hole_that_touches_a_crease_meshes_closed()
    {
        var crease = _hat.Creases.ElementAt(3);
        foreach (var nudge in (double[])[0, 1e-15, -1e-15, 1e-9, -1e-9, 1e-6, -1e-6, 1e-4, -1e-4, 1e-3, -1e-3, 1e-2, -1e-2])
        {
            var outline = Loop2.Polygon(new(-10, 0), new(140, 0), new(140, 60), new(-10, 60));
            var solid = Folded(_hat, outline, Loop2.Circle(new(crease + 8 + nudge, 30), 8, clockwise: true));

            var mesh = Mesher.Flatten(solid, Accuracy.Solids);

            MeshLaws.Hold(mesh, 1);
        }
    }

    [Fact]
    public void No_facet_of_a_flat_strip_leaves_its_plane()
    {
        var solid = Folded(_hat, Loop2.Polygon(new(-10, 0), new(140, 0), new(140, 60), new(-10, 60)),
            Loop2.Circle(new(70, 30), 9, clockwise: true));

        var mesh = Mesher.Flatten(solid, Accuracy.Solids);

        // Facets within the chord of the bends could stray from the strips by as much; those here lie in them or in the
        // bends, so the share of area in the held strip's plane is the strip's own, less the hole of chords.
        var zone = new Interval(_hat.Creases.ElementAt(3), _hat.Creases.ElementAt(4));
        var inPlane = mesh.Triangles.Where(t => new[] { t.A, t.B, t.C }.All(i => Math.Abs(mesh.Vertices[i].Z) < Rounding)).ToList();
        var area = inPlane.Sum(t => (mesh.Vertices[t.B] - mesh.Vertices[t.A]).Cross(mesh.Vertices[t.C] - mesh.Vertices[t.A]).Length / 2);
        var strip = (zone.Length * 60) - (Math.PI * 81);
        Assert.InRange(area - strip, 0, 2 * Math.PI * 9 * Accuracy.Solids.Chord);
    }

    private static Solid Folded(FoldedSheet sheet, Loop2 outline, Loop2 hole) => ThickSolid.Of(
        new FoldedSurface(sheet, 0), new FoldedSurface(sheet, sheet.Thickness), true, [Rim.Square(outline), Rim.Square(hole)]);
}
