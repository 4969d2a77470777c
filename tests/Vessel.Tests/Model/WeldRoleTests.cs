using Vessel.Design;
using Vessel.Function;
using Vessel.Heads.Cones;
using Vessel.Heads.Dishes;
using Vessel.Joints;
using Vessel.Members.Brackets;
using Vessel.Parts;
using Vessel.Planning;
using Vessel.Reading;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Model;

public sealed class WeldRoleTests
{
    public static TheoryData<string> DesignFiles() => Repository.DesignFiles();

    /// <summary>How many welds of each role a design asks for, counted from the design alone.</summary>
    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Each_weld_has_the_role_that_its_design_gives_it(string file) => AssertRoles(Plans.Of(file).Assembly);

    [Theory]
    [MemberData(nameof(RandomDesigns.Seeds), MemberType = typeof(RandomDesigns))]
    public void So_have_those_of_random_vessels(int seed) => RandomDesigns.Hold(seed, AssertRoles);

    /// <summary>Of one sheet, and of three.</summary>
    [Theory]
    [InlineData("bottom.root_gap=0.5")]
    [InlineData("bottom.segments=3")]
    public void Up_a_cone_there_is_no_dome_to_lay_a_template_on(string with)
    {
        var plan = Plans.OfText(Repository.Design("canal-boat-day-tank.yaml"), with);
        var cones = plan.Assembly.Welds.Where(weld => weld.Joint.Role == WeldRole.ConeSeam).Select(weld => weld.Joint.Number).ToList();

        Assert.NotEmpty(cones);
        Assert.All(plan.Steps.Where(step => step.Task.Weld is { } weld && cones.Contains(weld.Number)),
            step => Assert.DoesNotContain("dome", step.What, StringComparison.Ordinal));
        Assert.Contains(plan.Steps, step => step.Task.Weld?.Number == cones[^1] && step.What.Contains("by tape", StringComparison.Ordinal));
    }

    /// <summary>The key that a weld names is one that the file may have, and its owner is a mapping of it.</summary>
    [Theory]
    [MemberData(nameof(DesignFiles))]
    public void Owner_and_gap_key_are_keys_of_the_file(string file) => Assert.All(Plans.Of(file).Assembly.Welds, weld =>
    {
        Assert.True(KeyPaths.Exist(weld.Joint.Owner), weld.Joint.Owner);
        Assert.True(weld.Joint.GapKey is not { } key || KeyPaths.Exist(key), weld.Joint.GapKey);
        Assert.True(weld.Joint.GapKey is null || weld.Joint.GapKey.StartsWith(weld.Joint.Owner, StringComparison.Ordinal)
            || weld.Joint.Role == WeldRole.LongSeam);
    });

    private static void AssertRoles(Assembly assembly)
    {
        var design = assembly.Design;
        var (heads, inside) = (new[] { design.Top, design.Bottom }, design.Inside);
        var gores = heads.OfType<DishedHead>().Select(head => head.Gores).OfType<GoreDesign>().ToList();
        var expected = new Dictionary<WeldRole, int>
        {
            [WeldRole.LongSeam] = design.Shell.Courses.Where(course => course.IsRolled).Sum(course => course.Seams.Count),
            [WeldRole.GirthSeam] = design.Shell.Courses.Length - 1,
            [WeldRole.ConeSeam] = heads.OfType<ConeHead>().Sum(cone => cone.Segments),
            [WeldRole.GoreSeam] = gores.Sum(one => one.Count),
            [WeldRole.CrownSeam] = gores.Count,
            [WeldRole.HeadSeam] = 2,
            [WeldRole.PortSeam] = design.Ports.Length,
            [WeldRole.MitreSeam] = design.Ports.Sum(port => port.Elbow?.Mitres ?? 0),
            [WeldRole.InnerSeam] = inside.Caps.Count(cap => cap.MadeFrom == StockForm.Sheet),
            [WeldRole.Within] = inside.Caps.Length,
            [WeldRole.Hold] = design.All<HangingSpec>().Count(one => one.Fixed == Fixing.Weld)
                + design.All<DividerSpec>().Count(one => one.Fixed is Fixing.Weld or Fixing.Tabs),
            [WeldRole.Mount] = 2 * design.All<BracketDesign>().Count(),
        };

        Assert.Equal(Enum.GetValues<WeldRole>().Order(), expected.Keys.Order());
        Assert.Equal(expected,
            Enum.GetValues<WeldRole>().ToDictionary(role => role, role => assembly.Welds.Count(weld => weld.Joint.Role == role)));
    }
}
