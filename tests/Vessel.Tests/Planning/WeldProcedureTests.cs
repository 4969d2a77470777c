using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Planning;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Planning;

public sealed class WeldProcedureTests
{
    public static TheoryData<string> DesignFiles() => Repository.DesignFiles();

    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void A_leg_is_never_below_the_published_least(string file)
    {
        var plan = Plans.Of(file);

        Assert.Equal(plan.Assembly.Welds.Length, plan.Procedures.Length);
        Assert.All(plan.Procedures.Where(p => p.Joint.Kind == JointKind.Fillet && p.LeastLeg is not null), p =>
            // On a right angle; what opens further takes longer legs, what closes carries on its throat.
            Assert.True(p.Joint.Throat * Math.Sqrt(2) >= p.LeastLeg - 1e-9));
    }

    [Fact]
    public void Stainless_walls_are_purged_and_other_welds_are_not()
    {
        var plan = Plans.Of("harbour-launch-breather.yaml");

        Assert.All(plan.Procedures, p => Assert.Equal(p.Role.IsWall(), p.Purged));
        Assert.Contains(plan.Procedures, p => p.Purged);
        Assert.Contains(plan.Procedures, p => !p.Purged);
        Assert.DoesNotContain(Plans.Of("shop-compressor-catch-can.yaml").Procedures, p => p.Purged);
    }

    [Fact]
    public void Every_role_is_told_apart()
    {
        var rolled = Plans.OfText(Repository.Design("harbour-launch-breather.yaml"), "inside.cap.made_from=sheet");

        var roles = Repository.DesignFiles().Select(f => Plans.Of(f.Data)).Append(rolled)
            .SelectMany(p => p.Procedures).Select(p => p.Role).Distinct();

        Assert.Equal(Enum.GetValues<WeldRole>(), roles.Order());
    }

    /// <summary>Weld tables: t 6, root face 1.5, gap 1.6, 60 degrees: 21.2913 mm2 of groove; cap and root of the butt are on top.</summary>
    [Fact]
    public void A_thick_butt_is_bevelled()
    {
        var vessel = Designs.Vessel(Designs.Shell(wall: 6) with { RootGap = 1.6 });
        var joint = LongSeam.Of(vessel.Shell.Courses[0], vessel).Single();
        var square = Bead.Of(joint, joint.Along(10)).Area - EdgePreparation.Area(joint.Kind, 6);
        var capAndRoot = square - (1.6 * 6);

        Near.Printed("21.2913", Bead.Of(joint, joint.Along(10)).Area - capAndRoot);
        Assert.Equal(0, EdgePreparation.Area(JointKind.Butt, Bevel.SquareTo));
        Assert.Equal(0, EdgePreparation.Area(JointKind.Fillet, 6));
    }

    /// <summary>
    /// What the preparation asks for is what metal and blank are worked out with: a V of 60 degrees in 5 mm held open by 1.6 mm.
    /// Area of the groove by
    /// hand: 1.6 x 5 + (5 - 1.5)^2 tan 30 = 15.07 mm2, against 7.07 at edges that touch; the blank is the mean girth less 1.6.
    /// </summary>
    [Fact]
    public void A_bevelled_seam_is_reckoned_at_the_gap_that_it_is_prepared_with()
    {
        string Rolled(string gap) => $$"""
            vessel: Thick pot
            material: mild steel
            shell: { outside_diameter: 160, wall: 5, height: 200, made_from: sheet{{gap}} }
            top: { shape: ellipsoid, wall: 5 }
            bottom: { shape: ellipsoid, wall: 5 }
            ports:
              - { name: vent, in: top, at: { radius: 0 }, tube: { outside_diameter: 32, wall: 2 }, length: 40 }
            """;
        var (usual, tight) = (Plans.OfText(Rolled("")), Plans.OfText(Rolled(", root_gap: 0.5")));
        double Blank(Plan plan) => CurveMeasures.Bounds(plan.Assembly.Parts[0].Flat!.Cut.Outer).Width;
        WeldProcedure Of(Plan plan, WeldRole role) => plan.Procedures.First(weld => weld.Role == role);
        double Area(WeldProcedure weld) => weld.Weld.Deposit / weld.Weld.Length;

        Assert.Equal((Math.PI * 155) - 1.6, Blank(usual), 1e-6);
        Assert.Contains("gap 1.6 mm", Of(usual, WeldRole.LongSeam).Preparation, StringComparison.Ordinal);
        Assert.Equal((Math.PI * 155) - 0.5, Blank(tight), 1e-6);
        Assert.Contains("gap 0.5 mm", Of(tight, WeldRole.LongSeam).Preparation, StringComparison.Ordinal);
        // 5 mm of wall at 1.1 mm more of gap; the deposit is integrated to 1e-7 of itself.
        Assert.Equal(1.1 * 5, Area(Of(usual, WeldRole.LongSeam)) - Area(Of(tight, WeldRole.LongSeam)), 1e-4);
        // The head's edges touch as drawn and are held apart by as much.
        Assert.Contains("gap 1.6 mm", Of(usual, WeldRole.HeadSeam).Preparation, StringComparison.Ordinal);
        Assert.Equal(Area(Of(usual, WeldRole.LongSeam)), Area(Of(usual, WeldRole.HeadSeam)), 1e-4);
    }

    /// <summary>Aluminium is welded on alternating current, steels with the electrode negative,
    /// and every list for the bench says which.</summary>
    [Theory]
    [InlineData("shop-compressor-catch-can.yaml", "AC", "AC (balance")]
    [InlineData("harbour-launch-breather.yaml", "DCEN", "DC electrode negative")]
    public void The_current_is_told(string file, string word, string words)
    {
        var plan = Plans.Of(file);

        Assert.All(plan.Procedures, weld => Assert.Equal(word, weld.Current.Short()));
        Assert.All(plan.Steps.Where(step => step.Kind == StepKind.Weld),
            step => Assert.Contains(words, step.What, StringComparison.Ordinal));
    }

    /// <summary>Two tacks warm nothing; a fillet all round does, and then a temperature is told that an instrument shows.</summary>
    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Only_a_hot_weld_is_waited_for(string file)
    {
        var plan = Plans.Of(file);

        Assert.All(plan.Procedures.Where(weld => !weld.Joint.Runs.IsEmpty), weld => Assert.Null(weld.CoolBelow));
        Assert.All(plan.Steps, step => Assert.DoesNotContain("hand can rest", step.What, StringComparison.Ordinal));
        Assert.All(plan.Steps.Where(step => step.Kind == StepKind.Cool),
            step => Assert.Matches("thermometer.* less than [0-9]+ degC", step.What));
    }

    /// <summary>
    /// A pass of 1 kJ/mm round a closed seam of 400 mm in 3 mm stainless, by hand: 4 mm2/s over 2 + 4 min reach 75.9 mm to either side, 400
    /// x 151.8 x 3 mm3 take 3.97e-3 J/K each: 400 kJ warm them by 553 K. Parts of fewer cubic millimetres are warmed by more.
    /// </summary>
    [Fact]
    public void Heat_spreads_into_the_strip_beside_the_seam()
    {
        var joint = new Joint(
            "a ring", ["a", "b"], JointKind.Butt, Interval.Turn, [],
            t => new(default, new(200 / Math.PI, 0, 0), Vector3.UnitX, Vector3.UnitY, Math.PI, 0, 0), 3, 3, "ring")
        { Role = WeldRole.GirthSeam, Owner = "ring" };
        var weld = WeldFigures.Of(joint);
        var parts = Plans.Of("harbour-launch-breather.yaml").Assembly.Parts;
        var (large, small) = (parts[0] with { Volume = 1e9 }, parts[1] with { Volume = 1e4 });

        double After(Part host, Part part) => WeldHeat.After(weld, Thermal.Of(MaterialFamily.Stainless), 1, 1, 200, 4, host, part);

        Assert.Equal(573, After(large, large), 0.5);
        Assert.True(After(small, small) > After(large, small));
    }

    [Theory]
    [InlineData(2, 1)]
    [InlineData(4.8, 1)]
    [InlineData(5, 2)]
    [InlineData(10, 5)]
    public void Passes_follow_the_section(double wall, int passes)
    {
        var vessel = Designs.Vessel(Designs.Shell(400, wall, 400), Designs.Branch("p", 60, wall, new(200, 0, 0, 0, 0)));
        var site = PortSites.Of(vessel).Of(vessel.Ports[0]);
        // Lap of a straight ring: the section is wall squared over two, as on a right angle.
        var straight = PortSeam.Of(site, vessel) with
        {
            Along = t => new(
                new(1e6 * Math.Cos(t), 1e6 * Math.Sin(t), 0), new(-1e6 * Math.Sin(t), 1e6 * Math.Cos(t), 0),
                new(Math.Cos(t), Math.Sin(t), 0), Vector3.UnitZ, Math.PI / 2, 0, 0),
        };

        Assert.Equal(passes, WeldPasses.Of(WeldFigures.Of(straight)));
        Assert.Equal(passes, (int)Math.Ceiling(wall * wall / 2 / WeldPasses.MostArea));
    }

    [Fact]
    public void Hot_service_changes_the_rod_of_5052()
    {
        var metal = Materials.Find("aluminium 5052")!;

        Assert.Equal("ER5356", Rod(metal, metal, 65, false));
        Assert.Equal("ER5554", Rod(metal, metal, 66, false));
        Assert.Equal("ER4043", Rod(metal, Materials.Find("aluminium 6061")!, 120, false));
    }

    /// <summary>ER5356 keeps its colour, ER4043 turns dark: supplier's guides; but above 150 degF it is not to be used.</summary>
    [Theory]
    [InlineData(60, true, "ER5356")]
    [InlineData(80, true, "ER4043")]
    [InlineData(60, false, "ER4043")]
    public void Anodising_changes_the_rod_of_6061_where_it_stays_cool(double temperature, bool anodised, string rod)
    {
        var metal = Materials.Find("aluminium 6061")!;

        Assert.Equal(rod, Rod(metal, metal, temperature, anodised));
        Assert.Equal(anodised, Fillers.Between(metal, metal, new(temperature, anodised))!.Value.Why is not null);
    }

    /// <summary>The reason stands with every weld of the hot vessel, and with none of the cool one.</summary>
    [Theory]
    [InlineData("80 degC", "ER5554", true)]
    [InlineData("60 degC", "ER5356", false)]
    public void The_procedure_says_why_the_rod_is_not_the_usual_one(string temperature, string rod, bool told)
    {
        var plan = Plans.OfText(
            Repository.Design("harbour-launch-breather.yaml"), "material=aluminium 5052", "inside.packing.material=aluminium wool",
            $"flow.temperature={temperature}");

        Assert.All(plan.Procedures, weld =>
        {
            Assert.Equal(rod, weld.Filler.Name);
            Assert.Equal(told, weld.Notes[0].Contains("magnesium", StringComparison.Ordinal));
        });
    }

    private static string Rod(Material a, Material b, double temperature, bool anodised) =>
        Fillers.Between(a, b, new FillerUse(temperature, anodised))!.Value.Filler.Name;
}
