using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Members.Cups;
using Vessel.Parts;
using Vessel.Tests.Members.Inside;
using Vessel.Tests.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Function;

/// <summary>What a whole vessel holds when it leans, and what happens first.</summary>
public sealed class LeaningCapacityTests
{
    private static readonly ShellDesign _shell = Designs.Shell(104, 2, 200);

    private static readonly Assembly _sleeved = Compiler.Assemble(InsideTests.Vessel(InsideTests.Cap(CupOpening.Up)));

    private static readonly int[] _leans = [10, 35, 60];

    public static TheoryData<int> Seeds => [.. RandomDesigns.First(12)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Volume_rises_with_the_level_from_nothing_to_the_brim_however_it_leans(int seed) => RandomDesigns.Hold(seed, built =>
    {
        foreach (var degrees in _leans)
        {
            var attitude = new Attitude(built.Cavity, new(degrees * Math.PI / 180, seed));
            var reach = built.Design.Shell.OuterRadius * Math.Sin(attitude.Position.Angle);
            var (cos, depth) = (Math.Cos(attitude.Position.Angle), built.Attitude.Depth);
            var (low, high) = ((depth.Start * cos) - reach, (depth.End * cos) + reach);
            var held = Enumerable.Range(0, 41).Select(i => attitude.VolumeBelow(low + ((high - low) * i / 40))).ToList();

            Near.Absolute(0, held[0], 1e-6 * built.Capacity.Brim);
            Assert.All(held, volume => Assert.True(volume >= 0));
            // Tubes that a level cuts are summed to about 1e-4 of their metal.
            Near.Relative(built.Capacity.Brim, held[^1], 1e-6);
            Assert.All(held.Zip(held.Skip(1)), pair => Assert.True(pair.First <= pair.Second + (1e-6 * built.Capacity.Brim)));
        }
    });

    /// <summary>
    /// By lot: points of a Halton row in the vessel's box, counted by what a ball, a cylinder and a tube are. With n points
    /// the share p is known to better than 4 sqrt(p (1 - p) / n), the bound for points thrown by chance.
    /// </summary>
    [Theory]
    [InlineData(20, 0.3, 60)]
    [InlineData(45, 2.5, 120)]
    [InlineData(60, -1, 150)]
    public void A_dome_a_shell_and_a_tube_hold_what_points_by_lot_say(double degrees, double toward, double onAxis)
    {
        var outlet = Designs.OnHead("outlet", VesselEnd.Top, 40, 8, 20, 1) with { Joint = PortJoint.SetIn, InsideLength = 60 };
        var built = Compiler.Assemble(Designs.Vessel(_shell, outlet));
        var lean = new Position(degrees * Math.PI / 180, toward);
        var (up, level, ceiling) = (lean.Up, onAxis * Math.Cos(lean.Angle), 200 - 3);
        const int points = 400_000;
        var inside = 0;
        for (var i = 1; i <= points; i++)
        {
            var p = new Vector3(-50 + (100 * Halton(i, 2)), -50 + (100 * Halton(i, 3)), -50 + ((ceiling + 50) * Halton(i, 5)));
            var square = (p.X * p.X) + (p.Y * p.Y);
            var metal = p.Z > ceiling - 60 && (new Point2(p.X, p.Y) - Point2.Polar(20, 1)).Length is > 12 and < 20;
            if (p.Dot(up) < level && !metal && square < 2500 && (p.Z > 0 || square + (p.Z * p.Z) < 2500))
                inside++;
        }

        var box = 100.0 * 100 * (ceiling + 50);
        var share = (double)inside / points;
        Near.Absolute(share, new Attitude(built.Cavity, lean).VolumeBelow(level) / box, 4 * Math.Sqrt(share * (1 - share) / points));
    }

    [Fact]
    public void A_port_in_the_side_spills_sooner_on_that_side()
    {
        var built = Compiler.Assemble(Designs.Vessel(_shell, Designs.Branch("spill", 32, 2, new(100, Math.PI / 2, 0, 0, 0))));
        double At(double toward) => built.Capacity.Leaning
            .Single(f => Math.Abs(f.Position.Toward - toward) < 1e-9 && Math.Abs(f.Position.Angle - (Math.PI / 6)) < 1e-9).Usable;

        Assert.True(At(Math.PI / 2) < built.Capacity.Usable);
        Assert.True(At(3 * Math.PI / 2) > built.Capacity.Usable);
        Assert.Equal(At(Math.PI / 2), built.Capacity.Worst.Usable);
        // Towards either side alike.
        Near.Relative(At(0), At(Math.PI), 1e-9);
    }

    /// <summary>The rim is shut when its highest point is: half a bore's rise above its middle.</summary>
    [Fact]
    public void A_leaning_rim_is_sealed_by_its_highest_point()
    {
        var rim = _sleeved.Cavity.Openings.Single(way => way.Name == "rim of sleeve");
        var seals = _sleeved.Capacity.Leaning
            .SelectMany(filling => filling.Events.Select(e => (filling.Position, Event: e)))
            .Where(at => at.Event.What.Contains("rim of sleeve", StringComparison.Ordinal))
            .ToList();

        // Leaning far towards the inlet, that is sealed first.
        Assert.InRange(seals.Count, 8, 15);
        Assert.All(seals, at => Near.Relative(rim.Axial.Start + (43 * Math.Tan(at.Position.Angle)), at.Event.Height, 1e-12));
    }

    [Fact]
    public void Sideways_acceleration_of_one_g_is_a_lean_of_45_degrees()
    {
        var design = _sleeved.Design with
        {
            Capacity = CapacityDesign.Usual with { GreatestLean = Math.PI / 4, LeanStep = Math.PI / 4, Sideways = 1 },
        };
        var leaning = Compiler.Assemble(design).Capacity.Leaning;

        Assert.Equal(16, leaning.Length);
        Assert.All(leaning.Take(8).Zip(leaning.Skip(8)), pair => Near.Relative(pair.First.Usable, pair.Second.Usable, 1e-12));
        Assert.All(leaning.Skip(8), f => Assert.Equal("1 g sideways", f.Because));
    }

    [Fact]
    public void A_vessel_that_stands_still_has_no_leans()
    {
        var design = _sleeved.Design with { Capacity = CapacityDesign.Usual with { GreatestLean = 0 } };

        Assert.Empty(Compiler.Assemble(design).Capacity.Leaning);
    }

    [Fact]
    public void Windows_and_holes_reach_as_far_as_their_edges()
    {
        var windows = _sleeved.Cavity.Openings.Single(way => way.Name == "windows of cap");
        var design = _sleeved.Design.Inside.Caps[0];
        // Upright they are as high as the file says.
        Near.Relative(design.Windows[0].Height, windows.Axial.End - windows.Axial.Start, 1e-12);

        var lean = new Position(Math.PI / 6, design.Windows[0].Angle);
        var reach = windows.Shape.Along(lean.Up);
        // The window on the lower side: its lower edge in the middle of the wall, 29 mm off the axis, lies lowest.
        Near.Relative((windows.Axial.Start * Math.Cos(lean.Angle)) - (29 * Math.Sin(lean.Angle)), reach.Start, 1e-9);
    }

    private static double Halton(int index, int root)
    {
        var (sum, share) = (0.0, 1.0);
        for (var i = index; i > 0; i /= root)
        {
            share /= root;
            sum += share * (i % root);
        }

        return sum;
    }
}
