using Vessel.Design;
using Xunit;

namespace Vessel.Tests.Hard;

/// <summary>What mutated designs brought to light, each by its own name.</summary>
public sealed class FoundTests
{
    [Fact]
    public void A_height_whose_limit_hangs_on_another_fault_is_not_judged()
    {
        var faults = DesignReader.Read("""
            vessel: Bilge breather
            material: stainless 304
            shell: { outside_diameter: 110, wall: 2, height: 180, made_from: sheet }
            top: { shape: flat, thickness: 3 }
            bottom: { shape: hemisphere }
            inside:
              sleeve: { tube: { outside_diameter: 76, wall: 2 }, length: 120 }
              discs:
                - { name: screen, at: { height: 6 }, thickness: weld, hole_diameter: 3, pitch: 5 }
            """).Faults;

        Assert.Equal(FaultCodes.UnknownName, Assert.Single(faults).Code);
    }
}
