using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Members.Plates;
using Vessel.Members.Saddles;
using Vessel.Tests.Members.Brackets;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Function;

/// <summary>Mass and its centre against the meshes, and what the mounting bears by statics.</summary>
public sealed class MountTests
{
    private static readonly Assembly _demo = Compiler.Assemble(Compiler.Read(Repository.Design("harbour-launch-breather.yaml")).Value!);

    private static readonly System.Collections.Concurrent.ConcurrentDictionary<double, Assembly> _at = new();

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
        var bare = Plans.Under(built.Design.With(built.Design.Inside with { Packings = [] }), built);
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
        Assert.InRange(full.Centre.Z, _demo.Attitude.Depth.Start, _demo.Attitude.Depth.End);
    }

    /// <summary>A cylinder's oil stands with its centre at half height; a half sphere's 3/8 of the radius below its rim.</summary>
    [Fact]
    public void The_centre_of_oil_in_plain_bodies()
    {
        var shell = Designs.Shell(104, 2, 300);
        var design = Designs.Vessel(shell) with { Bottom = Designs.Inset(shell, "bottom") };
        var cylinder = Compiler.Assemble(design);
        var dome = Compiler.Assemble(Designs.Vessel(shell));
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

        Near.Relative(2 * At(5).Mount.Force, At(10).Mount.Force, 1e-12);
        Near.Relative(2 * once.BoltTension.Likely, twice.BoltTension.Likely, 1e-9);
        Near.Relative(2 * once.BoltShear.Likely, twice.BoltShear.Likely, 1e-9);
        Near.Relative(2 * once.WeldStress.Likely, twice.WeldStress.Likely, 1e-9);
        Near.Relative(2 * once.MemberStress.High, twice.MemberStress.High, 1e-9);
        Near.Relative(2 * once.WallStress.Likely, twice.WallStress.Likely, 1e-9);
        Near.Relative(Weight.Full(_demo).Mass / 1000 * 5 * 9.80665, At(5).Mount.Force, 1e-12);
    }

    /// <summary>
    /// Any direction by lot: tension of the worst bolt by rigid-plate statics never passes the bound, and comes near it.
    /// </summary>
    [Fact]
    public void No_direction_pulls_a_bolt_harder_than_the_bound()
    {
        var (load, site) = (Load(5), ((SaddleSpring)Load(5).Spring).Site);
        var (bolts, n) = (load.Carrier.Bolts, BoltGroup.CountOf(load.Carrier.Bolts));
        var arm = site.Way.ToLocal(Weight.Full(_demo).Centre) - new Vector3(0, 0, site.BackLevel + site.Bracket.Thickness);
        var worst = 0.0;
        for (var i = 0; i < 40; i++)
        {
            for (var j = 0; j < 80; j++)
            {
                var (polar, round) = (Math.PI * (i + 0.5) / 40, Turns.Full * j / 80);
                var force = At(5).Mount.Force
                    * new Vector3(Math.Sin(polar) * Math.Cos(round), Math.Sin(polar) * Math.Sin(round), Math.Cos(polar));
                // Moments of the force about the pattern's middle, held by couples of n / 2 bolts over each distance.
                var moment = arm.Cross(force);
                worst = Math.Max(worst,
                    (force.Z / n) + (Math.Abs(moment.X) / (bolts.Up * n / 2)) + (Math.Abs(moment.Y) / (bolts.Across * n / 2)));
            }
        }

        Assert.InRange(worst, 0.9 * load.BoltTension.Likely, load.BoltTension.Likely * (1 + 1e-9));
    }

    /// <summary>One bracket bears all by statics, whatever gives: forces and moments about the centre are the load's.</summary>
    [Theory]
    [MemberData(nameof(Files))]
    public void Forces_and_moments_of_all_brackets_balance_the_load(string file)
    {
        var mount = Compiler.Assemble(Compiler.Read(Repository.Design(file)).Value!).Mount;
        if (mount.Loads.IsEmpty)
            return;
        var all = mount.Loads.Select(load => load.Shared.At(load.Spring.Welds.Centre, mount.Full.Centre)).ToList();
        for (var i = 0; i < 6; i++)
        {
            var sum = all.Aggregate(Vector3.Zero, (total, wrench) => total + wrench[i]);
            // Moments as a force on a lever of 100 mm.
            var due = i < 3 ? mount.Force * new[] { Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ }[i] : Vector3.Zero;
            Near.Absolute(0, (sum - due).Length / (i < 3 ? 1 : 100), 1e-6 * mount.Force);
        }
    }

    /// <summary>A second bracket like the first, on the far side, takes half of each force, and the vessel rings higher.</summary>
    [Fact]
    public void Two_brackets_alike_share_alike()
    {
        var shell = Designs.Shell(120, 2, 200);
        var plate = new PlateDesign(
            "bracket[0]", "one", Designs.Stainless, 100, 0, 0, 0, 4, 90, 90, 50, 0, 30, new("bracket[0].bolts", 8, 50, 0, 0, 9, 16));
        var bare = Designs.Vessel(shell) with { Bottom = Designs.Inset(shell, "bottom") };
        var alone = Compiler.Assemble(bare with { Members = [plate] }).Mount;
        var pair =
            Compiler.Assemble(bare with { Members = [plate, plate with { Path = "bracket[1]", Name = "two", Angle = Math.PI }] }).Mount;
        var (one, two) = (pair.Loads[0], pair.Loads[1]);

        Near.Relative(pair.Force / 2, one.Shared.Fz.Length, 0.02);
        // Alike but for the places at which the series is cut, 1e-6 of it.
        Near.Relative(one.WallStress.Likely, two.WallStress.Likely, 1e-4);
        Assert.True(one.MemberStress.Likely < 0.6 * one.MemberStress.High);
        Assert.True(pair.Frequency.Likely > 1.2 * alone.Frequency.Likely);
        Assert.Equal(alone.Loads[0].MemberStress.Likely, alone.Loads[0].MemberStress.High, 1e-6 * alone.Loads[0].MemberStress.High);
    }

    /// <summary>
    /// On a workshop's wall by two level plates, one above the other: they share by how stiff they are, the tilting as a pull and a push.
    /// Bearing all of it alone under the 5 g of an engine's frame, one bends beyond its yield,
    /// which is what was found before whatever it hung on.
    /// </summary>
    [Fact]
    public void A_separator_on_a_workshops_wall_is_not_condemned_by_default()
    {
        var shell = Designs.Shell(204, 2, 500);
        PlateDesign At(int i, double height) => new(
            $"bracket[{i}]", $"lug {i}", Designs.Stainless, height, 0, 0, 0, 4, 90, 90, 50, 0, 30,
            new($"bracket[{i}].bolts", 8, 50, 0, 0, 9, 16));
        var design = Designs.Vessel(shell) with { Bottom = Designs.Inset(shell, "bottom"), Members = [At(0, 100), At(1, 400)] };
        bool Found(VesselDesign with) =>
            Assessment.Of(Compiler.Assemble(with)).Any(finding => finding.Code == FindingCodes.MountOverloaded);

        Assert.False(Found(design));
        Assert.True(Found(design with { Members = [At(0, 100)], Mounting = MountingDesign.Of("mounting", null, null, true) }));
        var load = Compiler.Assemble(design).Mount.Loads[0];
        Assert.True(load.MemberStress.High > 2.5 * load.MemberStress.Likely);
    }

    [Fact]
    public void Thicker_ears_bear_more_and_ring_higher_and_longer_ones_less()
    {
        var bracket = (SaddleDesign)_demo.Design.Bracket();
        Mount With(SaddleDesign other) => Compiler.Assemble(_demo.Design.With(other)).Mount;
        var (plain, thick, far) = (With(bracket), With(bracket with { Thickness = 4 }), With(bracket with { StandOff = 40 }));
        double Ears(Mount mount) => mount.Loads[0].MemberStress.Likely;

        Assert.True(Ears(thick) < Ears(plain) && Ears(plain) < Ears(far));
        Assert.True(thick.Frequency.Likely > plain.Frequency.Likely && plain.Frequency.Likely > far.Frequency.Likely);
        Assert.True(plain.Loads[0].BoltTension.Likely < far.Loads[0].BoltTension.Likely);
        // Clamped to hinged: half the moment. The pull in the ears is the same in both.
        Assert.InRange(plain.Loads[0].MemberStress.High / plain.Loads[0].MemberStress.Low, 1.2, 2);
    }

    /// <summary>
    /// A thin wall under stout ears is the weakest piece, and its margin is the one that is named and found; before, the ears' best case
    /// was. A plate bends as its thickness squared, so that half the wall bears less than half.
    /// </summary>
    [Fact]
    public void The_wall_under_the_ears_is_reckoned_and_the_least_margin_leads()
    {
        var bracket = (SaddleDesign)_demo.Design.Bracket() with { Thickness = 4 };
        Assembly With(double wall, double acceleration) => Compiler.Assemble(Designs.Vessel(Designs.Shell(120, wall, 190)) with
        {
            Members = [bracket],
            Mounting = MountingDesign.Of("mounting", acceleration, null, false),
        });
        double Wall(double thickness) => With(thickness, 5).Mount.Loads[0].WallStress.Likely;
        var figures = FunctionFigures.Of(With(1, 5)).SelectMany(group => group.Figures).ToDictionary(figure => figure.Name);
        var least = figures["mount-margin"];

        Assert.True(Wall(1) > 2 * Wall(2));
        Assert.Contains("the shell's wall under the bracket's ears", least.Title, StringComparison.Ordinal);
        Assert.Equal(figures["wall-margin"].Value, least.Value);
        Assert.All(["ear-margin", "weld-margin", "bolt-margin"], name => Assert.True(figures[name].Value.Likely >= least.Value.Likely));
        // Ten per cent past its margin it is found, and by its name.
        var found = Assessment.Of(With(1, 5.5 * least.Value.Likely)).Where(finding => finding.Code == FindingCodes.MountOverloaded);
        Assert.Contains(found, finding => finding.Message.Contains("the shell's wall under the bracket's ears", StringComparison.Ordinal));
    }

    /// <summary>
    /// Ears on a stout wall are nearly clamped, on a thin one nearly hinged, which bends them twice as far; the finding goes by what the
    /// wall gives, not by the best case.
    /// </summary>
    /// <summary>On so wide and thin a shell its wall gives way, and how the ears are held says nothing.</summary>
    [Fact]
    public void A_frequency_that_the_wall_alone_makes_is_a_range_in_order()
    {
        var wide = Repository.Design("harbour-launch-breather.yaml").Replace("{ body: 120,", "{ body: 984.168,", StringComparison.Ordinal);

        var frequency = Compiler.Assemble(Compiler.Read(wide).Value!).Mount.Frequency;

        Near.Relative(frequency.Low, frequency.High, 1e-9);
        Assert.True(frequency.Low <= frequency.Likely && frequency.Likely <= frequency.High);
    }

    [Fact]
    public void A_thin_wall_holds_ears_badly()
    {
        var bracket = (SaddleDesign)_demo.Design.Bracket() with { Thickness = 4 };
        (double Share, Amount Stress) Ears(double wall)
        {
            var load = Compiler.Assemble(Designs.Vessel(Designs.Shell(120, wall, 190)) with { Members = [bracket] }).Mount.Loads[0];
            return ((load.MemberStress.High - load.MemberStress.Likely)
                / (load.MemberStress.High - load.MemberStress.Low), load.MemberStress);
        }

        var (thin, thick) = (Ears(0.8), Ears(5));
        Assert.True(thin.Share < 0.4 && thick.Share > 0.75, $"{thin.Share} {thick.Share}");
        Assert.True(thin.Stress.Likely > 1.3 * thin.Stress.Low);
    }

    [Theory]
    [InlineData(5, false)]
    [InlineData(100, true)]
    public void A_mount_that_is_overloaded_is_found(double acceleration, bool found) =>
        Assert.Equal(found, Assessment.Of(At(acceleration)).Any(finding => finding.Code == FindingCodes.MountOverloaded));

    /// <summary>Aluminium that serves warm is joined with ER5554, not ER5356:
    /// the margin is that of the same weld as in the table of welds.</summary>
    [Theory]
    [InlineData(80, "ER5554")]
    [InlineData(40, "ER5356")]
    public void The_welds_margin_is_that_of_their_own_rod(double temperature, string filler)
    {
        var metal = Vessel.Stock.Materials.Find("aluminium 5052")!;
        var shell = Designs.Shell(120, 3, 190) with { Material = metal };
        var design = Designs.Vessel(shell) with
        {
            Top = Designs.Inset(shell, "top") with { Material = metal },
            Bottom = Designs.Dome(shell, "bottom") with { Material = metal },
            Members = [(SaddleDesign)_demo.Design.Bracket() with { Material = metal }],
            Flow = new("flow", null, 870, temperature),
        };
        var built = Compiler.Assemble(design);
        var load = Assert.Single(built.Mount.Loads);
        var procedures = Vessel.Planning.Plan.Of(built)
            .Procedures.Where(weld => weld.Joint.Path.StartsWith("bracket", StringComparison.Ordinal)).ToList();

        Assert.All(procedures, weld => Assert.Equal(filler, weld.Filler.Name));
        Assert.NotEmpty(procedures);
        Near.Relative(procedures.Min(weld => weld.Strength.Shear.Value / weld.Joint.Throat), load.Throat.Value, 1e-12);
    }

    /// <summary>The figure says on which duty it rests, and whether that is a default: an engine's frame, or a wall.</summary>
    [Theory]
    [InlineData(null, null, true, 5, "vehicle")]
    [InlineData(null, null, false, 2, "fixed")]
    [InlineData(null, "boat", true, 10, "boat")]
    [InlineData(7.0, "boat", true, 7, null)]
    public void The_acceleration_comes_from_the_duty_unless_it_is_given(double? given, string? duty, bool engine,
        double acceleration, string? said)
    {
        var mounting = MountingDesign.Of("mounting", given, duty is null ? null : Vessel.Stock.MountDuties.Of(duty), engine);
        var force = FunctionFigures.Of(Plans.Under(_demo.Design with { Mounting = mounting }, _demo))
            .SelectMany(group => group.Figures).Single(figure => figure.Name == "mount-force");

        Assert.Equal(acceleration, mounting.Acceleration);
        Assert.Equal(said is not null && duty is null, force.Inputs[1].Title.Contains("default", StringComparison.Ordinal));
        Assert.Equal(said is not null, force.Inputs[1].Title.Contains($"'{said}'", StringComparison.Ordinal));
    }

    /// <summary>Order k meets the natural frequency f at 60 f / k, where the engine turns so.</summary>
    [Fact]
    public void Orders_of_the_engine_and_tests_stand_against_the_natural_frequency()
    {
        var engine = new EngineDesign("engine", 3, 3600, 0, EngineCondition.Sound);
        var built = Plans.Under(_demo.Design with { Flow = _demo.Design.Flow with { Engine = engine } }, _demo);
        var group = FunctionFigures.Of(built).Single(g => g.Name == "mounting");
        var (table, frequency) = (Assert.Single(group.Tables), built.Mount.Frequency);

        Assert.Contains(table.Rows, row => row.Label == "IACS E10, general" && row.Values[1] == 100);
        var orders = table.Rows.Where(row => row.Label.StartsWith("engine order ", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(orders);
        Assert.All(orders, row =>
        {
            var order = double.Parse(row.Label["engine order ".Length..], System.Globalization.CultureInfo.InvariantCulture);
            Near.Relative(order * 60, row.Values[1]!.Value, 1e-12);
            var speed = 60 * frequency.Likely / order;
            Assert.Equal(speed is >= 720 and <= 3600, row.Values[3] is not null);
        });
        Assert.Contains(group.Words, word => word.Contains("first natural frequency", StringComparison.Ordinal));
        Assert.DoesNotContain(FunctionFigures.Of(Plans.Under(_demo.Design with { Flow = _demo.Design.Flow with { Engine = null } }, _demo))
            .Single(g => g.Name == "mounting").Tables[0].Rows, row => row.Label.StartsWith("engine", StringComparison.Ordinal));
    }

    /// <summary>
    /// At that shaking the range of stress at the toe is the class at ten million cycles, or that on the throat is; FAT 90 and 80,
    /// 2 a s / a0.
    /// </summary>
    [Fact]
    public void Steady_shaking_uses_up_the_class_of_toe_or_root()
    {
        var (built, limit) = (At(6), Math.Pow(2e6 / 1e7, 1.0 / 3));
        var load = built.Mount.Loads[0];
        var borne = FunctionFigures.Of(built).SelectMany(group => group.Figures)
            .Single(figure => figure.Name == "fatigue-acceleration").Value.Likely;

        var used = new[] { 2 * borne * load.WallStress.Likely / 6 / (90 * limit), 2 * borne * load.WeldBending / 6 / (80 * limit) };
        Near.Relative(1, used.Max(), 1e-9);
    }

    private static Assembly At(double acceleration) => _at.GetOrAdd(
        acceleration, a => Plans.Under(_demo.Design with { Mounting = MountingDesign.Of("mounting", a, null, true) }, _demo));

    private static MountLoad Load(double acceleration) => At(acceleration).Mount.Loads[0];

    private static Vector3 OilCentre(Assembly built)
    {
        var (empty, full) = (Weight.Empty(built), Weight.Full(built));
        return 1 / (full.Mass - empty.Mass) * ((full.Mass * full.Centre) - (empty.Mass * empty.Centre));
    }

    private static Weight Meshed(Part part, Frame3 at)
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
