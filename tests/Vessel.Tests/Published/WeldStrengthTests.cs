using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// What a millimetre of weld may carry: the least of weld metal and metal beside it. AISC table J2.5: 0.4 Fy t in shear, 0.6 Fy t in
/// tension, 0.30 of the filler on the throat; Aluminum Design Manual (from memory): as-welded yield over 1.65. Recomputed by hand, printed
/// to three digits: half a unit of the last is the tolerance.
/// </summary>
public sealed class WeldStrengthTests
{
    private const double HalfUnit = 0.5;

    [Theory]
    // 2 mm: 0.4 x 205 x 2 and 0.6 x 205 x 2. The metal of the weld alone would carry 290 in 70 ksi.
    [InlineData("stainless 316", JointKind.Butt, 2, 164, 246)]
    // 0.4 x 170 x 2 and 0.6 x 170 x 2.
    [InlineData("stainless 316L", JointKind.Butt, 2, 136, 204)]
    // The throat of 1.414 mm would carry 219 at 0.30 x 75 ksi.
    [InlineData("stainless 304", JointKind.Fillet, 2, 164, 164)]
    // 0.4 x 220 x 2; the throat 205.
    [InlineData("mild steel", JointKind.Fillet, 2, 176, 176)]
    // 12 ga, 2.052 mm: 0.6 x 65.5 / 1.65 and 65.5 / 1.65, where annealed metal is said to give 50 to 80.
    [InlineData("aluminium 5052", JointKind.Butt, 2.052, 49, 81)]
    // 4043 on the throat of 1.414 mm: 11.5 ksi / 1.95; the metal beside it 0.6 x 103.4 / 1.65 x 2 = 75.
    [InlineData("aluminium 6061", JointKind.Fillet, 2, 58, 58)]
    public void The_least_governs(string metal, JointKind kind, double wall, double shear, double pull)
    {
        var material = Materials.Find(metal)!;

        var strength = WeldStrength.Of(Seam(kind, wall), material.Filler, material, material);

        Assert.Equal(shear, strength.Shear.Value, HalfUnit);
        Assert.Equal(pull, strength.Pull.Value, HalfUnit);
    }

    [Fact]
    public void The_weaker_metal_governs_on_either_side()
    {
        var (strong, weak) = (Materials.Find("stainless 316")!, Materials.Find("stainless 316L")!);
        var seam = Seam(JointKind.Butt, 2);

        Assert.Equal("stainless 316L", WeldStrength.Of(seam, Fillers.Er316L, strong, weak).Pull.By);
        Assert.Equal(WeldStrength.Of(seam, Fillers.Er316L, strong, weak), WeldStrength.Of(seam, Fillers.Er316L, weak, strong));
    }

    /// <summary>Never more than any of the three alone.</summary>
    [Fact]
    public void No_weld_carries_more_than_its_weakest()
    {
        Assert.All(
            from material in Materials.All
            from kind in Enum.GetValues<JointKind>()
            from wall in new[] { 0.8, 2, 6.35 }
            select (material, kind, wall),
            one =>
            {
                var seam = Seam(one.kind, one.wall);
                var strength = WeldStrength.Of(seam, one.material.Filler, one.material, one.material);

                Assert.InRange(strength.Shear.Value, 0, WeldMetalStrength.Shear(one.material.Filler).Value * seam.Throat);
                Assert.InRange(strength.Shear.Value, 0, BaseMetalStrength.Shear(one.material).Value * one.wall);
                Assert.InRange(strength.Pull.Value, strength.Shear.Value, BaseMetalStrength.Pull(one.material).Value * one.wall);
            });
    }

    private static Joint Seam(JointKind kind, double wall) => new(
        "a seam", ["a", "b"], kind, new(0, 100), [],
        x => new(new(x, 0, 0), Vector3.UnitX, Vector3.UnitZ, Vector3.UnitY, Math.PI / 2, 0, 0),
        kind == JointKind.Fillet ? FilletThroat.Of(wall) : wall, wall, "seam")
    { Role = WeldRole.PortSeam, Owner = "seam" };
}
