using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using Vessel.Geometry;
using Vessel.Planning;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

/// <summary>Nests, checked by a polygon library.</summary>
public sealed class NestTests
{
    private static readonly NestSheet _sheet = new(1000, 600, 10, 5);

    public static TheoryData<int> Sets() => new(Enumerable.Range(0, 10));

    public static TheoryData<string> DesignFiles() => Repository.DesignFiles();

    [Theory]
    [MemberData(nameof(Sets))]
    public void Pieces_never_overlap_keep_their_spacing_and_the_margin(int seed) => AssertLaid(Mixed(seed));

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void The_nests_of_every_design_do_the_same(string file)
    {
        Assert.All(Plans.Of(file).Nests, nest =>
        {
            AssertLaid(nest);
            Assert.Empty(nest.TooLarge);
        });
        Assert.Equal(
            Plans.Of(file).Assembly.Parts.Where(p => p.Flat is { Kind: not Vessel.Parts.FlatKind.Wrap } && p.Stock.Form == "sheet").Sum(p => p.Quantity),
            Plans.Of(file).Nests.Sum(n => n.Places.Length));
    }

    [Theory]
    [MemberData(nameof(Sets))]
    public void No_set_uses_less_of_its_sheets_than_boxes_on_shelves(int seed)
    {
        var nest = Mixed(seed);
        var shelves = Nest.Laid(nest.Material, 2, _sheet, nest.Pieces, ShelfNest.Of(nest.Pieces, _sheet));

        Assert.True(nest.Utilisation >= shelves.Utilisation - 1e-12, $"{nest.Utilisation} against {shelves.Utilisation}");
    }

    /// <summary>Else the raster would be for nothing.</summary>
    [Fact]
    public void Most_mixed_sets_are_nested_closer_by_their_true_outlines()
    {
        var closer = Enumerable.Range(0, 10).Count(seed => Mixed(seed) is var nest
            && nest.Utilisation > 1.02 * Nest.Laid(nest.Material, 2, _sheet, nest.Pieces, ShelfNest.Of(nest.Pieces, _sheet)).Utilisation);

        Assert.InRange(closer, 6, 10);
    }

    [Fact]
    public void What_is_larger_than_a_sheet_is_told()
    {
        var nest = Nest.Of(Designs.Stainless, 2, _sheet, [Piece(Box(1200, 100)), Piece(Box(100, 100))]);

        Assert.Equal(["piece"], nest.TooLarge);
        Assert.Single(nest.Places);
    }

    [Fact]
    public void More_than_a_sheet_holds_goes_on_the_next()
    {
        var nest = Nest.Of(Designs.Stainless, 2, _sheet, [.. Enumerable.Repeat(Piece(Box(450, 280)), 5)]);

        Assert.Equal(2, nest.UsedLength.Length);
        AssertLaid(nest);
    }

    [Fact]
    public void Bend_lines_lie_across_the_grain()
    {
        var nests = Plans.Of("harbour-launch-breather.yaml").Nests;
        foreach (var (nest, place) in nests.SelectMany(n => n.Places.Select(p => (n, p))))
        {
            if (nest.Pieces[place.Piece].Part!.Flat!.Bends is [var bend, ..])
                Assert.Equal(place.Of(bend.A).U, place.Of(bend.B).U, 1e-9);
        }
    }

    private static void AssertLaid(Nest nest)
    {
        var laid = nest.Places.Select(place => (place.Sheet, Shape: Shape(nest.Pieces[place.Piece].Outline.Select(place.Of)))).ToList();
        Assert.All(laid, one =>
        {
            var box = one.Shape.EnvelopeInternal;
            // The outlines' own flatness.
            const double slack = NestPiece.Flatness;
            Assert.True(box.MinX >= nest.Sheet.Margin - slack && box.MaxX <= nest.Sheet.Length - nest.Sheet.Margin + slack);
            Assert.True(box.MinY >= nest.Sheet.Margin - slack && box.MaxY <= nest.Sheet.Width - nest.Sheet.Margin + slack);
        });
        for (var i = 0; i < laid.Count; i++)
        {
            for (var j = i + 1; j < laid.Count; j++)
            {
                if (laid[i].Sheet == laid[j].Sheet)
                    Assert.True(laid[i].Shape.Distance(laid[j].Shape) >= nest.Sheet.Spacing - 1e-9);
            }
        }
    }

    /// <summary>Rectangles, discs, quarter rings, triangles and Ls.</summary>
    private static Nest Mixed(int seed)
    {
        // Not for secrets: the same seed must give the same set.
#pragma warning disable CA5394
        var random = new Random(seed);
        double Size() => 30 + (random.NextDouble() * 170);
        ImmutableArray<NestPiece> pieces =
        [
            .. Enumerable.Range(0, 18).Select(i => Piece((i % 5) switch
            {
                0 => Box(Size(), Size()),
                1 => Disc(Size() / 2),
                2 => Quarter(80 + Size(), 60),
                3 => [new(0, 0), new(Size(), 0), new(0, Size())],
                _ => Angle(60 + Size(), 40),
            })),
        ];
#pragma warning restore CA5394
        return Nest.Of(Designs.Stainless, 2, _sheet, pieces);
    }

    private static NestPiece Piece(ImmutableArray<Point2> outline) =>
        new(null, "piece", outline, [0, 1, 2, 3], Shape(outline).Area);

    private static ImmutableArray<Point2> Box(double a, double b) => [new(0, 0), new(a, 0), new(a, b), new(0, b)];

    private static ImmutableArray<Point2> Angle(double a, double t) => [new(0, 0), new(a, 0), new(a, t), new(t, t), new(t, a), new(0, a)];

    private static ImmutableArray<Point2> Disc(double r) =>
        [.. Enumerable.Range(0, 90).Select(i => Point2.Polar(r, Math.PI * 2 * i / 90))];

    private static ImmutableArray<Point2> Quarter(double r, double t) =>
    [
        .. Enumerable.Range(0, 31).Select(i => Point2.Polar(r, Math.PI / 2 * i / 30)),
        .. Enumerable.Range(0, 31).Select(i => Point2.Polar(r - t, Math.PI / 2 * (30 - i) / 30)),
    ];

    private static Polygon Shape(IEnumerable<Point2> points)
    {
        Coordinate[] ring = [.. points.Select(p => new Coordinate(p.U, p.V))];
        return new GeometryFactory().CreatePolygon([.. ring, ring[0]]);
    }
}
