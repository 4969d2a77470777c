using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Planning;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

public sealed class TorchAccessTests
{
    private const string Launch = "harbour-launch-breather.yaml";

    private static readonly TorchShop _torch = Shop.Usual.Torch;

    public static TheoryData<string> DesignFiles() => Repository.DesignFiles();

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Every_weld_of_every_design_is_reached(string file) =>
        Assert.All(Plans.Of(file).Access, access => Assert.Equal((access.Joint.Name, 1.0), (access.Joint.Name, access.ReachedShare)));

    /// <summary>A screen deep in a long narrow sleeve: no line of sight from either end comes down to its upper face.</summary>
    [Fact]
    public void A_design_with_an_unreachable_inside_seam_is_refused_with_the_reason()
    {
        using var folder = new TemporaryFolder();
        folder.Put("a.yaml", Repository.Design(Launch));

        var run = CommandRun.In(
            folder.Path, "check", "a.yaml", "--with", "shell.height=400", "--with", "inside.sleeve.length=300",
            "--with", "inside.discs[0].at.height=230", "--with", "inside.discs[1].at.height=250");

        Assert.Equal(4, run.Code);
        Assert.Contains("error joint-out-of-reach: W10, lower screen to sleeve, is out of reach", run.Output, StringComparison.Ordinal);
        Assert.Contains("sleeve is in the way; move the disc nearer to the open end", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_screens_held_by_screws_are_not_refused() => Assert.DoesNotContain(
        Codes("shell.height=400", "inside.sleeve.length=300", "inside.discs[0].at.height=230", "inside.discs[1].at.height=250",
            "inside.discs[0].fixed=screws", "inside.discs[1].fixed=screws"),
        code => code == FindingCodes.JointOutOfReach);

    [Fact]
    public void A_cup_that_is_too_thick_for_the_sleeve_does_not_come_in() => Assert.Contains(
        FindingCodes.JointOutOfReach,
        Compiler.Assess(Compiler.Assemble(Compiler.Read(
            Repository.Design(Launch), DesignSettings.None with { Shop = "torch: { cup_diameter: 60 mm }" }).Value!)).Select(f => f.Code));

    /// <summary>Plate of 6 mm in aluminium asks for 4.8 mm of tungsten in a cup of number 10,
    /// four sixteenths of an inch wider than number 6.</summary>
    [Fact]
    public void The_cup_is_the_one_that_the_electrode_asks_for()
    {
        var thick = Plans.OfText("""
            vessel: Thick tank
            material: aluminium 5052
            shell: { outside_diameter: 300, wall: 6.35, height: 200, made_from: sheet, seam_angle: 200 }
            top: { shape: flat, thickness: 6.35 }
            bottom: { shape: flat, thickness: 6.35 }
            ports: [{ name: vent, in: top, at: { radius: 0 }, tube: { outside_diameter: 32, wall: 2 }, length: 40 }]
            """);

        Assert.Contains(thick.Procedures, weld => weld.Tungsten?.Cup == 10);
        Assert.All(thick.Access, access => Assert.Equal(
            thick.Procedures.Single(weld => weld.Joint.Path == access.Joint.Path).Tungsten?.Cup == 10
                ? 12.5 + (4 * 25.4 / 16) : 12.5, access.CupDiameter, 9));
        Assert.Contains(Plans.Of(Launch).Access, access => access.CupDiameter == _torch.CupDiameter);
    }

    /// <summary>A cup without windows or drain under an outlet that opens elsewhere is shut; with a drain it breathes.</summary>
    [Fact]
    public void A_room_without_a_way_out_is_an_error_until_it_has_one()
    {
        const string inside = """

            inside:
              cap: { outside_diameter: 40, wall: 2, skirt: 30, opens: up, hangs_from: bottom_or_top, fixed: weld }
            """;
        var vessel = """
            vessel: Pot
            material: stainless 304
            shell: { outside_diameter: 110, wall: 2, height: 180, made_from: tube }
            top: { shape: flat, thickness: 3 }
            bottom: { shape: flat, thickness: 3 }
            ports:
              - { name: inlet, in: shell, at: { height: 60 }, tube: { outside_diameter: 20, wall: 2 }, length: 30 }
            """ + inside.Replace("bottom_or_top", "top", StringComparison.Ordinal);
        string[] Found(string text) => [.. Compiler.Assess(Compiler.Assemble(Compiler.Read(text).Value!)).Select(f => f.Code)];

        Assert.Contains(FindingCodes.SealedRoom, Found(vessel));
        Assert.DoesNotContain(
            FindingCodes.SealedRoom, Found(vessel.Replace("skirt: 30", "skirt: 30, drain_hole: 4", StringComparison.Ordinal)));
    }

    /// <summary>In the open half space over a plate: all directions are free; under a roof close by none is.</summary>
    [Fact]
    public void An_open_seam_is_free_and_one_under_a_roof_is_not()
    {
        var joint = Plans.Of(Launch).Procedures.Single(p => p.Role == WeldRole.LongSeam).Joint;
        var shell = new RingBody("shell", Frame3.Identity, 58, 60, 0, 190);
        var roof = new RingBody("roof", Frame3.Identity, 65, 70, -1e5, 1e5);

        // A needle: a cup touches the shell at the flattest directions.
        var needle = _torch with { CupDiameter = 0.1 };

        var open = TorchAccess.Of(joint, [shell], needle, new(0, 0, 95));
        var shut = TorchAccess.Of(joint, [shell, roof], needle, new(0, 0, 95));

        Assert.Equal((1.0, 1.0), (open.FreeShare, open.ReachedShare));
        Assert.Equal((0.0, 0.0, "roof"), (shut.FreeShare, shut.ReachedShare, shut.InTheWay));
    }

    [Fact]
    public void More_in_the_way_never_frees_a_direction()
    {
        var plan = Plans.Of(Launch);
        var bodies = Obstacles.Of(plan.Assembly).ToList();

        Assert.All(plan.Access, access => Assert.True(
            TorchAccess.Of(access.Joint, [.. bodies], _torch, new(0, 0, 95)).FreeShare <= access.FreeShare + 1e-12));
    }

    private static readonly Profile _dish = Domes.Torisphere(30, 50, 8);

    /// <summary>Against marching along the ray in small steps.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_ray_is_stopped_by_what_it_runs_into(int seed)
    {
        // Not for secrets.
#pragma warning disable CA5394
        var random = new Random(seed);
        double Next(double low, double high) => low + (random.NextDouble() * (high - low));
#pragma warning restore CA5394
        var ring = new RingBody("ring", Frame3.Identity, 20, 25, -10, 30);
        var ball = new DomeBody("ball", Frame3.Identity, Domes.Sphere(25), Domes.Sphere(20));
        var dish = new DomeBody("dish", Frame3.Identity, _dish.Offset(5), _dish);
        var box = new BoxBody("box", Frame3.Identity, new(-20, -5, 0), new(15, 8, 12));
        var hits = 0;
        for (var i = 0; i < 300; i++)
        {
            var from = new Vector3(Next(-60, 60), Next(-60, 60), Next(-60, 60));
            var way = new Vector3(Next(-1, 1), Next(-1, 1), Next(-1, 1)).Unit();
            bool Marches(Func<Vector3, double> depth) =>
                Enumerable.Range(0, 4000).Any(k => depth(from + (0.05 * k * way)) > 0.05);
            bool Never(Func<Vector3, double> depth) =>
                Enumerable.Range(0, 4000).All(k => depth(from + (0.05 * k * way)) < -0.05);
            void Check(Body body, Func<Vector3, double> depth)
            {
                // Steps of 0.05 decide unless the ray only grazes.
                if (Marches(depth))
                {
                    hits++;
                    Assert.True(body.Stops(from, way));
                }
                else if (Never(depth))
                {
                    Assert.False(body.Stops(from, way));
                }
            }

            Check(ring, p => Math.Min(Shell(Math.Sqrt((p.X * p.X) + (p.Y * p.Y))), Math.Min(p.Z + 10, 30 - p.Z)));
            Check(ball, p => Math.Min(Shell(p.Length), -p.Z));
            // Outside the inner face and inside the outer one, below the rim.
            if (i % 8 == 0)
                Check(dish, p => Math.Min(-p.Z, Math.Min(_dish.Distance(p), 5 - _dish.Distance(p))));
            Check(box, p => Math.Min(Math.Min(p.X + 20, 15 - p.X), Math.Min(Math.Min(p.Y + 5, 8 - p.Y), Math.Min(p.Z, 12 - p.Z))));
        }

        Assert.InRange(hits, 30, 1000);

        static double Shell(double r) => Math.Min(r - 20, 25 - r);
    }

    private static string[] Codes(params string[] with) =>
        [.. Compiler.Assess(Compiler.Assemble(Compiler.Read(Repository.Design(Launch), new(null, [.. with])).Value!)).Select(f => f.Code)];
}
