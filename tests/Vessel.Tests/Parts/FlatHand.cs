using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Parts;

/// <summary>A flat seen from the wrong side makes a mirror-image vessel: ports off centre prove the hand.</summary>
public sealed class FlatHand
{
    private static Assembly Vessel(double offset, double angle, StockForm madeFrom = StockForm.Sheet) => Compiler.Assemble(Designs.Vessel(
        Designs.Shell(madeFrom: madeFrom), Designs.Branch("side", 32, 2, new(90, angle, offset, 0, 0))));

    [Theory]
    [InlineData(20, 0, StockForm.Sheet)]
    [InlineData(-20, 1, StockForm.Sheet)]
    [InlineData(20, 5, StockForm.Sheet)]
    [InlineData(20, 1, StockForm.Tube)]
    public void An_offset_towards_increasing_angle_lies_at_plus_x_of_the_ports_line(double offset, double angle, StockForm madeFrom)
    {
        var vessel = Vessel(offset, angle, madeFrom);
        var flat = vessel.Parts[0].Flat!;

        var box = CurveMeasures.Bounds(flat.Cut.Holes[0]);
        var line = flat.From.Flatten(new(angle, 0)).U;

        Assert.Equal(Math.Sign(offset), Math.Sign(((box.Min.U + box.Max.U) / 2) - line));
        // In space the same side: the port's axis lies counter-clockwise of its angle, seen from above.
        var origin = vessel.Sites[0].Frame.Origin;
        Assert.Equal(Math.Sign(offset), Math.Sign(new Point2(Math.Cos(angle), Math.Sin(angle)).Cross(new(origin.X, origin.Y))));
    }

    [Theory]
    [InlineData(-0.7)]
    [InlineData(2)]
    public void Left_and_right_on_a_wrap_are_as_seen_from_outside_the_vessel(double angle)
    {
        var vessel = Vessel(0, angle);
        var flat = vessel.Parts.Single(part => part.Name == "side").Flat!;
        var outward = new Vector3(Math.Cos(angle), Math.Sin(angle), 0);
        // Who looks along -outward with the vessel's axis up has this on the right.
        var right = (-outward).Cross(Vector3.UnitZ);

        double SideOf(string text)
        {
            var mark = flat.Marks.OfType<TextMark>().Single(mark => mark.Text == text);
            var (sin, cos) = Math.SinCos(flat.From.Raise(mark.Center).U);
            return vessel.Sites[0].Frame.Turn(new(cos, sin, 0)).Dot(right);
        }

        // The letters stand beside their lines, a small turn off.
        Assert.InRange(SideOf("right"), 0.7, 1);
        Assert.InRange(SideOf("left"), -1, -0.7);
    }

    [Fact]
    public void The_free_end_of_a_wrap_is_its_top_and_down_faces_down()
    {
        var vessel = Vessel(0, 1);
        var flat = vessel.Parts.Single(part => part.Name == "side").Flat!;

        var place = flat.From.Raise(new(0, CurveMeasures.Bounds(flat.Cut.Outer).Max.V));

        Near.Absolute(50, place.V, 1e-12);
        Near.Absolute(-1, vessel.Sites[0].Frame.Turn(new(Math.Cos(place.U), Math.Sin(place.U), 0)).Z, 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(2.5)]
    public void A_tubes_wrap_starts_clear_of_its_ports(double angle)
    {
        var vessel = Vessel(0, angle, StockForm.Tube);

        var box = CurveMeasures.Bounds(vessel.Parts[0].Flat!.Cut.Holes[0]);

        Near.Relative(2 * 55 * Math.Asin(14.0 / 55), box.Width, 1e-9);
    }

    [Fact]
    public void A_hole_of_the_bottom_lies_where_its_port_does_seen_from_below()
    {
        var shell = Designs.Shell();
        var design = Designs.Vessel(shell, Designs.OnHead("drain", VesselEnd.Bottom, 20, 2, 25, Math.PI / 2)) with
        {
            Bottom = Designs.Inset(shell, "bottom"),
        };

        var centre = Compiler.Assemble(design).Parts[2].Flat!.Cut.Holes[0].AsCircle!.Center;

        // The vessel's +Y; the plate is drawn with +X to the right, looked at from below, which puts +Y at the foot.
        Near.Absolute(0, centre.U, 1e-12);
        Near.Absolute(-25, centre.V, 1e-12);
    }
}
