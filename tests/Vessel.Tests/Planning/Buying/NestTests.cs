using System.Collections.Immutable;
using NetTopologySuite.Geometries;
using Vessel.Function;
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
        Assert.All(Plans.Of(file).Sheets.Select(s => s.Nest), nest =>
        {
            AssertLaid(nest);
            Assert.Empty(nest.TooLarge);
        });
        Assert.Equal(
            Plans.Of(file).Assembly.Parts.Where(p => p.Flat is { Kind: not FlatKind.Wrap } && p.Stock.Form == "sheet").Sum(p => p.Quantity),
            Plans.Of(file).Sheets.Sum(s => s.Nest.Places.Length));
    }

    /// <summary>
    /// Against a shelf packing of the test's own: boxes with their spacing, as they stand or laid down, tallest first, in
    /// columns up the width. Figures of the ten: seed, true outlines, shelves.
    /// </summary>
    [Theory]
    [MemberData(nameof(Sets))]
    public void No_set_uses_less_of_its_sheets_than_boxes_on_shelves(int seed)
    {
        var nest = Mixed(seed);
        var used = Math.Min(ShelvesOf(nest, layDown: false), ShelvesOf(nest, layDown: true));
        var shelves = nest.Pieces.Sum(piece => piece.Area) / (used * _sheet.Width);

        TestContext.Current.TestOutputHelper!.WriteLine(
            FormattableString.Invariant($"set {seed}: {100 * nest.Utilisation:0.0} %, boxes on shelves {100 * shelves:0.0} %"));
        Assert.True(nest.Utilisation >= shelves - 1e-12, $"{nest.Utilisation} against {shelves}");
    }

    /// <summary>Length of sheets that boxes take: the last one to its furthest box and the margin, those before it likewise.</summary>
    private static double ShelvesOf(Nest nest, bool layDown)
    {
        var (sheet, gap) = (nest.Sheet, nest.Sheet.Spacing);
        var boxes = nest.Pieces.Select(piece => piece.Outline.Aggregate(Box2.Empty, (all, p) => all.Join(p)))
            .Select(box => layDown
                ? (Long: Math.Min(box.Width, box.Height), Wide: Math.Max(box.Width, box.Height)) : (Long: box.Width, Wide: box.Height))
            .OrderByDescending(box => box.Long);
        double total = 0, column = 0, filled = 0, reach = 0;
        foreach (var (along, across) in boxes)
        {
            if (filled > 0 && filled + across > sheet.FreeWidth)
                (column, filled) = (reach + gap, 0);
            if (column > 0 && column + along > sheet.FreeLength)
                (total, column, filled, reach) = (total + reach + (2 * sheet.Margin), 0, 0, 0);
            filled += across + gap;
            reach = Math.Max(reach, column + along);
        }

        return total + reach + (2 * sheet.Margin);
    }

    /// <summary>A remnant keeps spacing and margins, and is never larger than what is used of a sheet.</summary>
    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void The_smallest_rectangle_holds_every_piece(string file) => Assert.All(Plans.Of(file).Sheets, stock =>
    {
        var rectangle = stock.Rectangle!;
        AssertLaid(rectangle);
        Assert.Equal(stock.Nest.Pieces.Length, rectangle.Places.Length);
        Assert.True(rectangle.Sheet.Length * rectangle.Sheet.Width <= stock.Nest.UsedLength.Single() * stock.Nest.Sheet.Width + 1e-6);
        Assert.True(rectangle.Utilisation >= stock.Nest.Utilisation - 1e-12);
    });

    /// <summary>One disc needs its own square and the margins;
    /// four squares of 100 need 225 x 225 with a margin of 10 and 5 between.</summary>
    [Fact]
    public void The_smallest_rectangle_of_what_can_be_told_by_head()
    {
        var one = NestRectangle.Of(Nest.Of(Designs.Stainless, 2, _sheet, [Piece(Disc(50))]))!;
        var four = NestRectangle.Of(Nest.Of(Designs.Stainless, 2, _sheet, [.. Enumerable.Repeat(Piece(Box(100, 100)), 4)]))!;

        // A polygon of 90 corners has them on both axes only along u, within R (1 - cos 2 deg) along v.
        Assert.Equal(120.0, one.Sheet.Length, 0.1);
        Assert.Equal(120.0, one.Sheet.Width, 0.1);
        // A column of four (120 x 435) has more area than two by two.
        Assert.InRange(four.Sheet.Length * four.Sheet.Width, 225 * 225 - 1e-6, 225 * 225 * 1.02);
        Assert.Null(NestRectangle.Of(Nest.Of(Designs.Stainless, 2, _sheet, [.. Enumerable.Repeat(Piece(Box(450, 280)), 5)])));
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
        var nests = Plans.Of("harbour-launch-breather.yaml").Sheets.Select(s => s.Nest);
        foreach (var (nest, place) in nests.SelectMany(n => n.Places.Select(p => (n, p))))
        {
            if (nest.Pieces[place.Piece].Part!.Flat!.Bends is [var bend, ..])
                Assert.Equal(place.Of(bend.A).U, place.Of(bend.B).U, 1e-9);
        }
    }

    /// <summary>Half of the cut goes off either side of its line: what is left between two pieces, and at the edge,
    /// is what the shop keeps.</summary>
    [Fact]
    public void Pieces_keep_the_width_of_the_cut_beside_the_spacing()
    {
        const double Kerf = 3;
        var design = Plans.Of("harbour-launch-breather.yaml").Assembly;

        var (plain, wide) = (Plan.Of(design).Sheets, Plan.Of(design, Kerf).Sheets);

        Assert.Equal(plain.Length, wide.Length);
        foreach (var (one, other) in plain.Zip(wide, (a, b) => (a.Nest, b.Nest)))
        {
            Assert.Equal((one.Sheet.Spacing + Kerf, one.Sheet.Margin + (Kerf / 2)), (other.Sheet.Spacing, other.Sheet.Margin));
            AssertLaid(other);
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
