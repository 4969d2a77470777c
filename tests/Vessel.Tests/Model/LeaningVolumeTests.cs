using Vessel.Function;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Model;

/// <summary>Volumes under a plane that leans, against closed forms derived here and recomputed to 20 digits.</summary>
public sealed class LeaningVolumeTests
{
    private const double R = 50;

    private static readonly double _lean = 15 * Math.PI / 180;

    private static readonly RoomPiece _tube = PrismPiece.Cylinder(new(0, 300), R);

    private static readonly ProfileRoomPiece _lower = new(new(-R, 0), Domes.Sphere(R).Pieces[0]);

    private static readonly ProfileRoomPiece _upper = new(new(0, R), Domes.Sphere(R).Flipped().Pieces[0]);

    /// <summary>Oil on the bottom from the dry edge x0 on: the level along the plumb line is -x0 sin t.</summary>
    [Theory]
    [InlineData(0, "22329.099")]
    [InlineData(-25, "56829.230")]
    public void A_cylinder_whose_bottom_is_partly_dry(double dryEdge, string volume) =>
        Near.Printed(volume, _tube.VolumeBelow(-dryEdge * Math.Sin(_lean), new(_lean, 0)));

    [Theory]
    [InlineData(5, 20)]
    [InlineData(30, 80)]
    [InlineData(60, 150)]
    public void A_cylinder_whose_bottom_is_wetted_all_over_holds_what_its_axis_says(double degrees, double onAxis)
    {
        var lean = degrees * Math.PI / 180;

        Near.Relative(Math.PI * R * R * onAxis, _tube.VolumeBelow(onAxis * Math.Cos(lean), new(lean, 2)), 1e-12);
    }

    /// <summary>A ball does not know which way is up: the cap of height h holds pi h^2 (3 R - h) / 3.</summary>
    [Theory]
    [InlineData(15, 10)]
    [InlineData(30, 50)]
    [InlineData(45, 77)]
    [InlineData(60, 99)]
    public void Two_halves_of_a_ball_hold_together_what_its_cap_holds(double degrees, double cap)
    {
        var lean = new Position(degrees * Math.PI / 180, 1);
        var level = cap - R;

        var held = _lower.VolumeBelow(level, lean) + _upper.VolumeBelow(level, lean);

        Near.Relative(Math.PI * cap * cap * ((3 * R) - cap) / 3, held, 1e-9);
    }

    [Fact]
    public void A_lean_of_next_to_nothing_holds_what_upright_holds()
    {
        foreach (var piece in new RoomPiece[] { _tube, _lower })
        {
            var level = piece.Heights.At(0.4);
            // A level plane through the same point of the axis: the wedges on both sides differ in the second order alone.
            Near.Relative(piece.VolumeBelow(level), piece.VolumeBelow(level, new(1e-5, 0)), 1e-7);
        }
    }

    [Fact]
    public void A_ring_with_windows_holds_its_share_of_a_whole_ring()
    {
        var ring = new PrismPiece(new(0, 20), 300, 40, 42);
        var whole = new PrismPiece(new(0, 20), Math.PI * ((42 * 42) - (40 * 40)), 40, 42);

        Near.Relative(300 / whole.Area, ring.VolumeBelow(9, new(0.4, 0)) / whole.VolumeBelow(9, new(0.4, 0)), 1e-12);
        Near.Relative(ring.VolumeBelow(20), ring.VolumeBelow(100, new(0.4, 0)), 1e-12);
    }

    /// <summary>
    /// A shape that the tool does not have, so that a new head need only know its radius: a cone from 10 to 50 mm over
    /// 60 mm. The oracle sums columns of oil over the floor plan by the midpoint rule instead of sections over the height.
    /// </summary>
    [Theory]
    [InlineData(10, 15)]
    [InlineData(25, 40)]
    [InlineData(50, 30)]
    public void A_shape_that_only_knows_its_radius_holds_what_columns_of_oil_add_up_to(double degrees, double onAxis)
    {
        var lean = degrees * Math.PI / 180;
        const int steps = 2000;
        const double cell = 100.0 / steps;
        var columns = 0.0;
        for (var i = 0; i < steps; i++)
        {
            for (var j = 0; j < steps; j++)
            {
                var (x, y) = (-50 + ((i + 0.5) * cell), -50 + ((j + 0.5) * cell));
                var floor = Math.Max(0, (Math.Sqrt((x * x) + (y * y)) - 10) * 60 / 40);
                columns += Math.Max(0, Math.Min(60, onAxis + (x * Math.Tan(lean))) - Math.Min(60, floor)) * cell * cell;
            }
        }

        // The midpoint rule on a cell of 0.05 mm is exact but where a column ends: second order there, too.
        Near.Relative(columns, new Funnel().VolumeBelow(onAxis * Math.Cos(lean), new(lean, 0)), 2e-5);
    }

    private sealed record Funnel() : RoomPiece(new Interval(0, 60))
    {
        public override double RadiusAt(double height) => 10 + (40 * height / 60);

        public override double VolumeBelow(double level) => throw new InvalidOperationException("upright is not asked for");
    }
}
