using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Planning;
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
        var joint = LongSeam.Of(vessel.Shell.Courses[0], vessel, WeldNumbers(vessel)).Single();
        var square = Bead.Of(joint, joint.Along(10)).Area - EdgePreparation.Area(joint.Kind, 6);
        var capAndRoot = square - (1.6 * 6);

        Near.Printed("21.2913", Bead.Of(joint, joint.Along(10)).Area - capAndRoot);
        Assert.Equal(0, EdgePreparation.Area(JointKind.Butt, EdgePreparation.SquareTo));
        Assert.Equal(0, EdgePreparation.Area(JointKind.Fillet, 6));
    }

    [Theory]
    [InlineData(2, 1)]
    [InlineData(4.8, 1)]
    [InlineData(5, 2)]
    [InlineData(10, 5)]
    public void Passes_follow_the_section(double wall, int passes)
    {
        var vessel = Designs.Vessel(Designs.Shell(400, wall, 400), Designs.Branch("p", 60, wall, new(200, 0, 0, 0, 0)));
        var site = Vessel.Parts.PortSite.Of(vessel.Ports[0], vessel);
        // Lap of a straight ring: the section is wall squared over two, as on a right angle.
        var straight = PortSeam.Of(site, vessel, WeldNumbers(vessel)) with
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
            Repository.Design("harbour-launch-breather.yaml"), "material=aluminium 5052", "inside.packing.material=aluminium wool", $"flow.temperature={temperature}");

        Assert.All(plan.Procedures, weld =>
        {
            Assert.Equal(rod, weld.Filler.Name);
            Assert.Equal(told, weld.Notes[0].Contains("magnesium", StringComparison.Ordinal));
        });
    }

    private static string Rod(Material a, Material b, double temperature, bool anodised) =>
        Fillers.Between(a, b, new FillerUse(temperature, anodised))!.Value.Filler.Name;

    private static Vessel.Parts.WeldNumbers WeldNumbers(VesselDesign vessel) => Vessel.Parts.WeldNumbers.Of(vessel);
}
