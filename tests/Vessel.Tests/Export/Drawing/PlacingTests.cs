using Vessel.Export.Drawing;
using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Export.Drawing;

public sealed class PlacingTests
{
    private static readonly Stroke _slot = new(
        [new(new(0, 0), 0), new(new(30, 0), 1), new(new(30, 10), 0), new(new(0, 10), 1)], Pens.Cut, Closed: true);

    [Fact]
    public void Bounds_hold_the_bellies_of_arcs() => Assert.Equal(new Box2(new(-5, 0), new(35, 10)), Rounded(Placing.Bounds(_slot)));

    [Fact]
    public void Bounds_of_a_pattern_hold_all_of_each_motif()
    {
        var lattice = new GridLattice2(GridKind.Square, new Annulus2(40, 0, 1), 2, 6, default);
        var pattern = Pattern.On(lattice, new Circle(new(1, 0), 2, Pens.Cut));

        Assert.Equal(Placing.Bounds(pattern.Items), Placing.Bounds(pattern));
        Assert.Equal(lattice.Count, pattern.Items.Count());
    }

    /// <summary>Whatever is drawn: half as large, a quarter turn on, elsewhere.</summary>
    [Fact]
    public void A_placed_item_measures_as_its_place_says()
    {
        static Point2 To(Point2 p) => (0.5 * p.Turned) + new Point2(7, -3);
        var lattice = new GridLattice2(GridKind.Square, new Annulus2(40, 0, 1), 2, 6, default);
        Item[] items =
        [
            _slot, new Circle(new(3, 4), 5, Pens.Cut), new Area([_slot, new Circle(new(9, 5), 2, Pens.Cut)], Pens.Cut),
            Text.Left("W1 up", new(2, 1), 3), Text.Middle("W2", new(2, 1), 3, 0.3),
            Pattern.On(lattice, Stroke.Cross(new(1, 0), 2, Pens.Thin)),
        ];
        Assert.All(items, item =>
        {
            var (before, after) = (Placing.Bounds(item), Placing.Bounds(Placing.Placed(item, To, 0.5, Math.PI / 2)));
            // A box turned by a quarter is a box, but the corners of a slanted text are not its box.
            var corners = new Box2(To(before.Min), To(before.Min)).Join(To(before.Max));
            Assert.Equal(Rounded(corners), Rounded(after));
        });
    }

    [Fact]
    public void A_stretched_circle_is_an_ellipse_and_letters_keep_their_shape()
    {
        var ellipse = (Stroke)Placing.Stretched(new Circle(new(10, 0), 10, Pens.Cut), 1.5);
        var text = (Text)Placing.Stretched(Text.Middle("up", new(20, 0), 4), 1.5);

        Assert.All(ellipse.Vertices, v => Assert.Equal(1, new Point2((v.At.U - 15) / 15, v.At.V / 10).Length, 1e-12));
        Assert.Equal((30.0, 4.0), (text.At.U, text.Height));
    }

    [Fact]
    public void Arcs_that_are_cut_stay_within_their_chord()
    {
        var window = new Box2(new(-10, -10), new(32, 20));

        var pieces = Placing.Within(_slot, window).Cast<Stroke>().ToList();

        Assert.All(pieces.SelectMany(piece => piece.Vertices), v => Assert.True(v.At.U <= 32 + 1e-9));
        // Both sides, the left end, and of the right one what lies left of the cut: its two arcs turn by asin(2/5).
        var whole = 60 + (Math.PI * 5) + (2 * 5 * Math.Asin(2 / 5.0));
        // A chord over an angle a is shorter than its arc by a^2/24, and stands off by r a^2/8: by a third of the share of that.
        Assert.InRange(pieces.Sum(piece => piece.Edges.Sum(CurveMeasures.Length)), whole * (1 - (Placing.Chord / 5 / 3)) - 1e-9, whole);
    }

    private static Box2 Rounded(Box2 box)
    {
        static Point2 Near(Point2 p) => new(Math.Round(p.U, 9) + 0.0, Math.Round(p.V, 9) + 0.0);
        return new(Near(box.Min), Near(box.Max));
    }
}
