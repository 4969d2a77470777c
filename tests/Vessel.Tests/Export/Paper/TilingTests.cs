using Vessel.Export.Drawing;
using Vessel.Export.Paper;
using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Export.Paper;

public sealed class TilingTests
{
    private static readonly Box2 _window = new(default, new(190, 240));

    public static TheoryData<double, double> Sizes => new() { { 100, 100 }, { 191, 30 }, { 377, 190 }, { 190, 240.001 }, { 1500, 900 } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Cores_cover_the_drawing_exactly_once(double width, double height)
    {
        var drawing = new Box2(new(-7, 12), new(width - 7, 12 + height));
        var tiling = Tiling.Of(drawing, _window);
        var cores = tiling.Tiles().Select(tile => tile.Core).ToList();
        var room = tiling.Room;

        Assert.Equal(room, room.Join(drawing));
        Assert.Equal(tiling.Count, cores.Count);
        // As large together as the room, and none outside it: with no gap there is no overlap. 1e-12 of the area is rounding.
        Assert.Equal(1, cores.Sum(core => core.Width * core.Height) / (room.Width * room.Height), 1e-12);
        Assert.All(cores, core => Assert.True(Inside(core, room)));
        Assert.All(Scattered(room, 200), p => Assert.Equal(1, cores.Count(core => core.Join(p) == core)));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Neighbours_share_the_overlap_and_no_page_is_larger_than_its_window(double width, double height)
    {
        var tiles = Tiling.Of(new(default, new(width, height)), _window).Tiles().ToList();

        Assert.All(tiles, tile =>
        {
            Assert.Equal(_window.Width, tile.Window.Width, 1e-9);
            Assert.Equal(_window.Height, tile.Window.Height, 1e-9);
            if (tile.Right is { } right)
                Assert.Equal(Tiling.Overlap, tile.Window.Max.U - tiles[right - 1].Window.Min.U, 1e-9);
            if (tile.Below is { } below)
                Assert.Equal(Tiling.Overlap, tiles[below - 1].Window.Max.V - tile.Window.Min.V, 1e-9);
        });
    }

    [Fact]
    public void A_drawing_cut_at_the_cores_is_as_long_as_before()
    {
        var room = new Box2(default, new(700, 500));
        var lines = Scattered(room, 60).Chunk(6).Select((points, i) => Stroke.Through([.. points], Pens.Thin, closed: i % 2 == 0)).ToList();
        var cores = Tiling.Of(room, _window).Tiles().Select(tile => tile.Core);

        var pieces = cores.SelectMany(core => lines.SelectMany(line => Placing.Within(line, core)));

        // Each of some hundred cuts is off by some 1e-13 of a coordinate.
        Assert.Equal(lines.Sum(Length), pieces.Sum(Length), 1e-9);
    }

    [Fact]
    public void Nothing_is_drawn_outside_its_window()
    {
        var box = new Box2(new(100, 100), new(300, 220));
        Item[] items = [Stroke.Through([.. Scattered(new(default, new(700, 500)), 40)], Pens.Thin),
            Text.Left("across the edge", new(290, 150), 8)];

        Assert.All(items.SelectMany(item => Placing.Within(item, box)), piece =>
            Assert.True(Inside(Placing.Bounds(piece), box)));
    }

    private static bool Inside(Box2 inner, Box2 outer) =>
        inner.Min.U >= outer.Min.U - 1e-9 && inner.Min.V >= outer.Min.V - 1e-9 && inner.Max.U <= outer.Max.U + 1e-9
            && inner.Max.V <= outer.Max.V + 1e-9;

    private static List<Point2> Scattered(Box2 box, int count)
    {
        var random = new Random(11);
        return Enumerable.Range(0, count)
            .Select(_ => box.Min + new Point2(random.NextDouble() * box.Width, random.NextDouble() * box.Height)).ToList();
    }

    private static double Length(Item item)
    {
        var stroke = (Stroke)item;
        return stroke.Edges.Sum(CurveMeasures.Length);
    }
}
