using Vessel.Design;
using Vessel.Fixtures;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Dishes;
using Vessel.Heads.FlatHeads;
using Vessel.Mockups;
using Vessel.Planning;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Fixtures;

public sealed class PortFixtureTests
{
    private const string Launch = "harbour-launch-breather.yaml";

    public static TheoryData<string> DesignFiles() => Repository.DesignFiles();

    [Fact]
    public void Only_a_design_that_asks_for_fixtures_gets_them()
    {
        Assert.Empty(Fixtures(Plans.Of(Launch).Assembly));
        Assert.Equal(3, Fixtures(Asked(Plans.Of(Launch).Assembly)).Length);
    }

    /// <summary>A bung that stands out by 12.5 mm leaves no room for a window and a grip; the tubes do.</summary>
    [Fact]
    public void The_launch_breathers_tubes_get_fixtures_and_its_bung_is_refused()
    {
        var fixtures = Fixtures(Asked(Plans.Of(Launch).Assembly));

        Assert.Equal(["shell's lower edge", "top's rim", null],
            fixtures.Select(f => f.Hook?.Replace("the ", "", StringComparison.Ordinal)));
        Assert.Equal([2, 2, 0], fixtures.Select(f => f.Halves.Length));
        Assert.Contains("stands out", fixtures[2].Refused, StringComparison.Ordinal);
        Assert.All(fixtures.Take(2), f => Assert.True(f.HasStop));
    }

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Fixtures_of_every_design_keep_the_laws(string file) => AssertLawful(Asked(Plans.Of(file).Assembly));

    /// <summary>Thick walls, offsets, tilts to 60 degrees, tubes nearly as wide as the shell, ports square to domes.</summary>
    [Fact]
    public void Fixtures_of_random_vessels_keep_the_laws()
    {
        var written = 0;
        foreach (var seed in RandomDesigns.First(12))
            RandomDesigns.Hold(seed, vessel => written += AssertLawful(Asked(vessel)));

        Assert.True(written > 6, $"only {written} fixtures");
    }

    /// <summary>
    /// Where the inlet stands the hook's inner face is the clearance below the edge, and the sleeve's ends are a half slit from
    /// the vessel's line through the port's foot: so the height and the clock angle are those of the set-up table.
    /// </summary>
    [Fact]
    public void The_hook_and_the_joint_of_the_halves_tell_height_and_clock_angle()
    {
        var assembly = Asked(Plans.Of(Launch).Assembly);
        var site = assembly.Sites[0];
        var halves = Form(site, assembly, FixtureHook.Lower)!.Halves().ToList();
        var points = halves.SelectMany(h => h.Vertices).Select(site.Frame.ToOuter).ToList();
        // What lies below the outside by more than the clearance is the hook.
        var hook = points.Where(p => double.Hypot(p.X, p.Y) < assembly.Design.Shell.OuterRadius - PortFixture.Clearance).ToList();

        Assert.NotEmpty(hook);
        Assert.Equal(-PortFixture.Clearance, hook.Max(p => p.Z), 1e-9);
        var top = halves.SelectMany(h => h.Vertices).Max(v => v.Z);
        // The inlet's fitting comes to stand on the sleeve; the outlet's bare end meets a lip of 3 mm.
        Assert.Equal(site.Port.Length, top, 1e-9);
        var outlet = assembly.Sites[1];
        Assert.Equal(outlet.Port.Length + 3,
            Form(outlet, assembly, FixtureHook.Lower)!.Halves().SelectMany(h => h.Vertices).Max(v => v.Z), 1e-9);
        Assert.All(halves[0].Vertices, v => Assert.True(v.Y > 0));
        Assert.All(halves[1].Vertices, v => Assert.True(v.Y < 0));
    }

    /// <summary>A round of 8 mm over each tack is free up to where the window ends, and beside it out to the end of the feet.</summary>
    [Fact]
    public void Every_tack_lies_in_a_window()
    {
        var assembly = Asked(Plans.Of(Launch).Assembly);
        foreach (var site in assembly.Sites.Take(2))
        {
            var tacks = Tacks.Of(assembly.Welds.Single(w => w.Joint.Path == site.Port.Path)).Places;
            var points = Form(site, assembly, FixtureHook.Lower)!.Halves().SelectMany(h => h.Vertices).ToList();
            foreach (var tack in tacks)
            {
                var at = Point2.Polar(site.Port.OuterRadius, tack * Math.PI / 180);
                var foot = new Vector3(at.U, at.V, site.Outside.Reach(site.Port.OuterRadius, at.Angle));

                Assert.DoesNotContain(points, p => (p - foot).Length < 7.5);
            }
        }
    }

    private static PortDesign Tube(string name, double height, double angle = 0) =>
        Designs.Branch(name, 32, 2, new(height, angle, 0, 0, 0));

    private static Assembly Pair(double apart) =>
        Asked(Compiler.Assemble(
            Designs.Vessel(Designs.Shell(height: 260, madeFrom: StockForm.Tube), Tube("first", 100), Tube("second", 100 + apart))));

    /// <summary>
    /// The first is tacked alone; when the second's turn comes the first stands there. Far off nothing changes, nearer the feet are shorter
    /// or fewer, too near there is none and a finding says why; and no fixture comes nearer to the neighbour than 4 mm (5 are kept from
    /// places 3 mm apart along it).
    /// </summary>
    [Theory]
    [InlineData(110, true)]
    [InlineData(60, true)]
    [InlineData(52, true)]
    [InlineData(46, true)]
    [InlineData(40, false)]
    public void A_fixture_keeps_off_the_port_that_is_there_by_then(double apart, bool written)
    {
        var assembly = Pair(apart);
        var plan = Plan.Of(assembly);
        var fixtures = PortFixture.Of(plan);
        var (first, second) = (assembly.Sites[0], assembly.Sites[1]);

        Assert.Equal(2, fixtures[0].Halves.Length);
        Assert.Equal(written, fixtures[1].Refused is null);
        Assert.Equal(!written, Vessel.Findings.Assessment.Of(plan).Any(f => f.Code == Vessel.Findings.FindingCodes.NoFixture));
        if (!written)
        {
            Assert.Contains("first", fixtures[1].Refused, StringComparison.Ordinal);
            return;
        }

        foreach (var p in Form(second, assembly, HookOf(fixtures[1]))!.Halves().SelectMany(half => half.Vertices)
            .Select(second.Frame.ToOuter).Select(first.Frame.ToLocal))
            Assert.True(double.Hypot(p.X, p.Y) > first.Port.OuterRadius + 4 || p.Z > first.Port.Length + 4, $"{apart}: {p}");
    }

    /// <summary>Ports over both seams: the second's turn comes when both ends are on.</summary>
    [Fact]
    public void Nothing_hooks_over_an_edge_that_a_head_stands_on_by_then()
    {
        var shell = Designs.Shell(madeFrom: StockForm.Tube);
        var design = Designs.Vessel(shell, Tube("low", 4, 0.5), Tube("high", 176, 0.5)) with { Top = Designs.Dome(shell, "top") };
        var plan = Plan.Of(Asked(Compiler.Assemble(design)));
        var turns = plan.Assembly.Sites.Select(site => FixtureTurn.Of(site, plan)).ToList();

        Assert.Equal([(false, true), (true, true)], turns.Select(turn => (turn.IsTopOn, turn.IsBottomOn)));
        Assert.DoesNotContain(PortFixture.Of(plan), fixture => fixture.Hook is { } hook
            && hook.Contains("lower", StringComparison.Ordinal));
        Assert.Null(PortFixture.Of(plan)[1].Hook);
    }

    [Fact]
    public void A_bed_that_is_too_small_takes_the_legs_off_first_then_all()
    {
        var assembly = Asked(Plans.Of(Launch).Assembly);
        Assembly On(double bed) =>
            Compiler.Assemble(assembly.Design with { Mockup = assembly.Design.Mockup with { Bed = new(bed, bed, 200) } });

        Assert.NotNull(Fixtures(On(220))[0].Hook);
        Assert.Null(Fixtures(On(80))[0].Hook);
        Assert.Equal(2, Fixtures(On(80))[0].Halves.Length);
        Assert.Contains("bed", Fixtures(On(25))[0].Refused, StringComparison.Ordinal);
    }

    /// <summary>Closed, on the bed, outside host and tube; how many there are.</summary>
    private static int AssertLawful(Assembly assembly)
    {
        var count = 0;
        foreach (var fixture in Fixtures(assembly))
        {
            Assert.Equal(fixture.Halves.IsEmpty, fixture.Refused is not null);
            if (fixture.Refused is not null)
                continue;
            count++;
            Assert.All(fixture.Halves, half =>
            {
                MeshLaws.IsClosed(half);
                Assert.NotNull(BedFit.Of(half, assembly.Design.Mockup.Bed));
            });
            var site = fixture.Site;
            foreach (var half in Form(site, assembly, HookOf(fixture))!.Halves())
            {
                var middles = half.Triangles.Select(t => 1 / 3.0 * (half.Vertices[t.A] + half.Vertices[t.B] + half.Vertices[t.C]));
                Assert.All(half.Vertices.Concat(middles), p => AssertOutside(p, site, assembly));
            }
        }

        return count;
    }

    /// <summary>
    /// Nowhere in the tube's metal nor in the host's. Facets of three degrees come nearer to the host than the clearance by their
    /// sagitta, at most R (1 - cos 1.5 deg) of the foot's 40 mm or so, and to the tube likewise.
    /// </summary>
    private static void AssertOutside(Vector3 p, PortSite site, Assembly assembly)
    {
        var across = double.Hypot(p.X, p.Y);
        if (p.Z < site.Port.Length - 1e-9)
            Assert.True(across >= site.Port.OuterRadius - (site.Port.OuterRadius * (1 - Math.Cos(Math.PI / 120))), $"in the tube at {p}");
        var there = site.Frame.ToOuter(p);
        // A cone is hollow between the corners of a foot, and bulges into it by as much as a cylinder does.
        var shell = assembly.Design.Shell;
        if (site.Port.Host == PortHost.Shell && there.Z > 0 && there.Z < shell.Height)
            Assert.True(double.Hypot(there.X, there.Y) >= shell.OuterAt(there.Z) - 1e-9,
                $"in the shell by {double.Hypot(there.X, there.Y) - shell.OuterAt(there.Z)} at {p}");
        if (site.Port.Host != PortHost.Shell && assembly.Design.Head(site.Port) is FlatHead flat
            && double.Hypot(there.X, there.Y) < flat.OutsideDiameter / 2)
            Assert.True(p.Z >= -1e-9, $"in the lid at {p}");
        if (site.Port.Host != PortHost.Shell && assembly.Design.Head(site.Port) is not FlatHead)
            Assert.True(site.Outside.Distance(p) >= -1e-9,
                $"in the head of {assembly.Design.Name} {site.Port.Name} by {site.Outside.Distance(p)} at {p}");
    }

    private static System.Collections.Immutable.ImmutableArray<PortFixture> Fixtures(Assembly assembly) =>
        PortFixture.Of(Plan.Of(assembly));

    private static FixtureHook HookOf(PortFixture fixture) => fixture.Hook is null ? FixtureHook.None
        : fixture.Hook.Contains("upper", StringComparison.Ordinal) ? FixtureHook.Upper
        : FixtureHook.Lower;

    private static Assembly Asked(Assembly assembly) => Compiler.Assemble(assembly.Design with { Fixtures = true });

    private static FixtureForm? Form(PortSite site, Assembly assembly, FixtureHook hook) => FixtureForm.Of(
        site, assembly.Design, FixtureTurn.Of(site, Plan.Of(assembly)), hook, out _);
}
