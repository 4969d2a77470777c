using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Function;

/// <summary>Mass and its centre against the meshes, and what the mounting bears by statics.</summary>
public sealed class MountTests
{
    private static readonly Assembly _demo = Compiler.Assemble(Compiler.Read(Repository.Design("harbour-launch-breather.yaml")).Value!);

    public static TheoryData<string> Files => [.. Repository.Designs.Select(file => Path.GetFileName(file)!)];

    /// <summary>
    /// By the meshes' tetrahedra. Facets of a chord of 0.2 mm lie at most so far inside a curve, which takes twice that over the
    /// radius from a sphere's mass, evenly round; the least radius is 12 mm. Ports are taken square at the foot: a cope reaches a
    /// few mm along it, and a port weighs a tenth of the vessel. Together less than half a millimetre.
    /// </summary>
    [Theory]
    [MemberData(nameof(Files))]
    public void The_centre_of_mass_is_that_of_the_solids(string file)
    {
        var built = Compiler.Assemble(Compiler.Read(Repository.Design(file)).Value!);
        var bare = built with { Design = built.Design with { Inside = built.Design.Inside with { Packings = [] } } };
        var meshed = Weight.Sum(built.Parts.SelectMany(part => part.Placements.Select(at => Meshed(part, at))));
        var ours = Weight.Empty(bare);

        Near.Relative(meshed.Mass, ours.Mass, 2 * 0.2 / 12);
        Near.Absolute(0, (meshed.Centre - ours.Centre).Length, 0.5);
    }

    [Fact]
    public void Full_is_empty_and_the_brims_oil()
    {
        var (empty, full) = (Weight.Empty(_demo), Weight.Full(_demo));

        Near.Relative(_demo.Capacity.Brim * 870e-6, full.Mass - empty.Mass, 1e-12);
        Assert.InRange(full.Centre.Z, _demo.Cavity.Floor, _demo.Cavity.Ceiling);
    }

    /// <summary>A cylinder's oil stands with its centre at half height; a half sphere's 3/8 of the radius below its rim.</summary>
    [Fact]
    public void The_centre_of_oil_in_plain_bodies()
    {
        var shell = Designs.Shell(104, 2, 300);
        var design = Designs.Vessel(shell) with { Bottom = Designs.Inset(shell, "bottom") };
        var cylinder = Assembly.Of(design);
        var dome = Assembly.Of(Designs.Vessel(shell));
        double Height(Assembly built) => OilCentre(built).Z;

        Near.Relative(150, Height(cylinder), 1e-9);
        // Dome 2/3 pi 50^3 at -3/8 x 50, cylinder pi 50^2 x 297 at 148.5. Simpson over the dome's cubic is exact, and the
        // step that holds its rim spoils less than its own height's share of the fourth power.
        var (ball, tube) = (2.0 / 3 * 50, 297.0);
        Near.Absolute(((ball * -18.75) + (tube * 148.5)) / (ball + tube), Height(dome), 0.01);
    }

    [Fact]
    public void Twice_the_acceleration_is_twice_the_load()
    {
        var (once, twice) = (Load(5), Load(10));

        Near.Relative(2 * once.Force, twice.Force, 1e-12);
        Near.Relative(2 * once.BoltTension, twice.BoltTension, 1e-12);
        Near.Relative(2 * once.BoltShear, twice.BoltShear, 1e-12);
        Near.Relative(2 * once.WeldStress, twice.WeldStress, 1e-12);
        Near.Relative(2 * once.MemberStress.Likely, twice.MemberStress.Likely, 1e-12);
        Near.Relative(Weight.Full(_demo).Mass / 1000 * 5 * 9.80665, once.Force, 1e-12);
    }

    /// <summary>
    /// Any direction by lot: tension of the worst bolt by rigid-plate statics never passes the bound, and comes near it.
    /// </summary>
    [Fact]
    public void No_direction_pulls_a_bolt_harder_than_the_bound()
    {
        var load = Load(5);
        var (bolts, n, arm) = (load.Bracket.Bolts, load.BoltCount, load.Arm);
        var worst = 0.0;
        for (var i = 0; i < 40; i++)
        {
            for (var j = 0; j < 80; j++)
            {
                var (polar, round) = (Math.PI * (i + 0.5) / 40, Turns.Full * j / 80);
                var force = load.Force * new Vector3(Math.Sin(polar) * Math.Cos(round), Math.Sin(polar) * Math.Sin(round), Math.Cos(polar));
                // Moments of the force about the pattern's middle, held by couples of n / 2 bolts over each distance.
                var moment = arm.Cross(force);
                worst = Math.Max(worst, (force.Z / n) + (Math.Abs(moment.X) / (bolts.Up * n / 2)) + (Math.Abs(moment.Y) / (bolts.Across * n / 2)));
            }
        }

        Assert.InRange(worst, 0.9 * load.BoltTension, load.BoltTension * (1 + 1e-12));
    }

    [Fact]
    public void Thicker_ears_bear_more_and_ring_higher_and_longer_ones_less()
    {
        var bracket = (SaddleBracket)_demo.Design.Brackets[0];
        SaddleLoad With(SaddleBracket other) => SaddleLoad.Of(other, Assembly.Of(_demo.Design with { Brackets = [other] }), Weight.Full(_demo));
        var (plain, thick, far) = (With(bracket), With(bracket with { Thickness = 4 }), With(bracket with { StandOff = 40 }));

        Assert.True(thick.MemberStress.Likely < plain.MemberStress.Likely && plain.MemberStress.Likely < far.MemberStress.Likely);
        Assert.True(thick.Frequency(2e5).Likely > plain.Frequency(2e5).Likely && plain.Frequency(2e5).Likely > far.Frequency(2e5).Likely);
        Assert.True(plain.BoltTension < far.BoltTension);
    }

    [Theory]
    [InlineData(5, false)]
    [InlineData(100, true)]
    public void A_mount_that_is_overloaded_is_found(double acceleration, bool found)
    {
        var design = _demo.Design with { Mounting = new("mounting", acceleration, true) };

        Assert.Equal(found, Assessment.Of(Assembly.Of(design)).Any(finding => finding.Code == FindingCodes.MountOverloaded));
    }

    [Fact]
    public void A_default_acceleration_is_said_to_be_one()
    {
        string From(bool given) => FunctionFigures.Of(_demo with { Design = _demo.Design with { Mounting = new("mounting", 5, given) } })
            .SelectMany(group => group.Figures).Single(figure => figure.Name == "mount-force").Source;

        Assert.Contains("default", From(false), StringComparison.Ordinal);
        Assert.DoesNotContain("default", From(true), StringComparison.Ordinal);
    }

    private static SaddleLoad Load(double acceleration) => SaddleLoad.Of(
        (SaddleBracket)_demo.Design.Brackets[0],
        _demo with { Design = _demo.Design with { Mounting = new("mounting", acceleration, true) } },
        Weight.Full(_demo));

    private static Vector3 OilCentre(Assembly built)
    {
        var (empty, full) = (Weight.Empty(built), Weight.Full(built));
        return 1 / (full.Mass - empty.Mass) * ((full.Mass * full.Centre) - (empty.Mass * empty.Centre));
    }

    private static Weight Meshed(Vessel.Parts.Part part, Frame3 at)
    {
        var mesh = Mesher.Flatten(part.Solid, new(0.2, 0.5));
        var (volume, moment) = (0.0, default(Vector3));
        foreach (var t in mesh.Triangles)
        {
            var (a, b, c) = (mesh.Vertices[t.A], mesh.Vertices[t.B], mesh.Vertices[t.C]);
            var six = a.Dot(b.Cross(c));
            (volume, moment) = (volume + (six / 6), moment + (six / 24 * (a + b + c)));
        }

        return new(volume * part.Material.Density / 1000, at.ToOuter(1 / volume * moment));
    }
}
