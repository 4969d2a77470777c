using System.Globalization;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Dishes;
using Vessel.Members.Dipsticks;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Members.Dipsticks;

/// <summary>The dipstick's marks stand, in the vessel, at the levels that hold their volumes.</summary>
public sealed class DipstickTests
{
    private const double Clear = 4;

    private static readonly DipstickDesign _stick = new("capacity.dipstick", Designs.Stainless, "filler", 10, 1.5, Clear, 30);

    /// <summary>Over a dome, upright beside the axis, and leaning in a dished top.</summary>
    public static TheoryData<string> Vessels => ["upright", "leaning"];

    [Theory]
    [MemberData(nameof(Vessels))]
    public void Each_number_stands_at_the_level_that_holds_it(string how)
    {
        var (assembly, part) = Built(how);
        var scale = GaugeScale.Of(assembly.Attitude, assembly.Capacity).ToDictionary(mark => mark.Text, mark => mark.Volume);
        var numbers = part.Flat!.Marks.OfType<TextMark>().Where(mark => mark.Text != "MAX").ToList();

        Assert.InRange(numbers.Count, 6, 24);
        Assert.All(numbers, mark =>
        {
            // In the middle of the strip's thickness, on the port's axis.
            var at = part.Placements[0].ToOuter(new(0, mark.Center.V, part.Thickness / 2));
            // The scale's own search ends within 20 mm3 (its test), a micrometre of level elsewhere: 20 mm3 over this bore.
            Near.Absolute(scale[mark.Text], assembly.Attitude.VolumeBelow(at.Z), 40);
            Assert.Contains(part.Flat.Marks.OfType<LineMark>(), line => line.A.V == mark.Center.V && line.B.V == mark.Center.V);
        });
        var max = part.Flat.Marks.OfType<LineMark>().Select(line => part.Placements[0].ToOuter(new(0, line.A.V, part.Thickness / 2)).Z);
        Assert.Contains(max, z => Math.Abs(z - assembly.Capacity.Events[0].Height) < 1e-9);
        Assert.Equal(assembly.Capacity.Usable, assembly.Attitude.VolumeBelow(assembly.Capacity.Events[0].Height), 1e-3);
    }

    [Theory]
    [MemberData(nameof(Vessels))]
    public void It_stands_on_its_ports_axis_clear_of_the_floor_and_ends_above_the_mouth(string how)
    {
        var (assembly, part) = Built(how);
        var port = assembly.Sites.Single(site => site.Port.Name == "filler");
        var middle = part.Placements[0].Place(Frame3.At(new(0, 0, part.Thickness / 2)));
        var inside = InsideProfile.Of(assembly.Design);
        var length = CurveMeasures.Bounds(part.Flat!.Cut.Outer).Height;

        foreach (var y in new[] { 0, length })
        {
            var local = port.Frame.ToLocal(middle.ToOuter(new(0, y, 0)));
            Near.Absolute(0, double.Hypot(local.X, local.Y), 1e-9);
            if (y > 0)
                Near.Absolute(port.Port.Length + 30, local.Z, 1e-9);
        }

        // A rod round the strip stops at the first metal: its nearest line is the clearance away, sixteen lines see that to the
        // slope of the floor times half a spacing of lines: at most 0.2 of the rod's radius on a slope of 1.
        var radius = _stick.Diagonal / 2;
        var least = Enumerable.Range(0, 360).Min(i =>
        {
            var from = middle.ToOuter(new(radius * Math.Cos(i * Math.PI / 180), 0, radius * Math.Sin(i * Math.PI / 180)));
            return -inside.FirstHit(from, port.Frame.Z)!.Value.Along;
        });
        Assert.InRange(least, Clear - (0.2 * radius), Clear + 1e-9);
        // And all of the strip that is inside lies in the room.
        Assert.All(new[] { 0, 0.3, 0.6 }, share => Assert.True(
            inside.Nearest(new(Radius(middle, share * length), middle.ToOuter(new(0, share * length, 0)).Z)).Distance < 0));
    }

    [Fact]
    public void One_that_ends_on_a_disc_is_found_and_one_in_the_side_is_not_made()
    {
        Assert.Null(Finding(Vessel("upright")));

        var covered = Vessel("upright");
        var disc = Discs.Screen("screen", 120) with { OutsideDiameter = covered.Shell.OutsideDiameter - (2 * covered.Shell.Wall) - 0.4 };
        Assert.NotNull(Finding(covered.With(covered.Inside with { Discs = [disc] })));

        var side = Vessel("upright");
        side = side with { Members = [_stick with { Port = "inlet" }] };
        Assert.NotNull(Finding(side));
        Assert.DoesNotContain(Compiler.Assemble(side).Parts, part => part.Word == "dipstick");
    }

    private static Measure? Finding(VesselDesign design) =>
        Assessment.Of(Compiler.Assemble(design)).FirstOrDefault(found => found.Code == FindingCodes.DipstickMissesOil);

    private static double Radius(Frame3 frame, double y) => frame.ToOuter(new(0, y, 0)) is var at ? double.Hypot(at.X, at.Y) : 0;

    private static (Assembly Assembly, Part Part) Built(string how)
    {
        var assembly = Compiler.Assemble(Vessel(how));
        return (assembly, assembly.Parts.Single(part => part.Word == "dipstick"));
    }

    private static VesselDesign Vessel(string how)
    {
        var shell = Designs.Shell(150, 2, 220);
        var filler = Designs.OnHead("filler", VesselEnd.Top, 30, 2, 40, 1);
        var design = Designs.Vessel(shell, Designs.Branch("inlet", 25, 2, new(170, 3, 0, 0, 0)), filler) with
        {
            Members = [_stick],
        };
        return how == "upright" ? design : design with
        {
            Top = new TorisphereHead("top", Designs.Stainless, 2, 150, 15, null),
            Ports = [design.Ports[0], design.Ports[1] with { Place = design.Ports[1].Place with { SquareToSurface = true } }],
        };
    }
}
