using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Reading;
using Xunit;

namespace Vessel.Tests.Hard;

/// <summary>What mutated designs brought to light, each by its own name.</summary>
public sealed class FoundTests
{
    [Fact]
    public void A_height_whose_limit_hangs_on_another_fault_is_not_judged()
    {
        var faults = WithDisc("120", "at: { height: 6 }, thickness: weld");

        Assert.Equal(FaultCodes.UnknownName, Assert.Single(faults).Code);
    }

    [Fact]
    public void A_bracket_is_not_judged_against_a_shell_without_a_height()
    {
        var faults = DesignReader.Read("""
            vessel: Bilge breather
            material: stainless 304
            shell: { outside_diameter: 110, wall: 2, made_from: sheet }
            top: { shape: flat, thickness: 3 }
            bottom: { shape: hemisphere }
            bracket: { at: { height: 5, angle: 90 }, thickness: 3, width: 70, height: 100, stand_off: 28, ears: ends, inside_radius: 8,
                       bolts: { diameter: 8, across: 40, up: 50 } }
            """).Faults;

        Assert.Equal(FaultCodes.MissingKey, Assert.Single(faults).Code);
    }

    [Fact]
    public void A_discs_height_is_not_judged_against_a_sleeve_without_a_length()
    {
        var faults = WithDisc(".inf", "fits: sleeve, at: { height: 300 }, thickness: 1.5");

        Assert.Equal("inside.sleeve.length", Assert.Single(faults).Path);
    }

    [Fact]
    public void A_port_as_wide_as_the_cone_that_it_closes_is_refused()
    {
        var text = Support.Repository.Design("canal-boat-day-tank.yaml")
            .Replace("outside_diameter: 34, length: 24", "outside_diameter: 200, length: 24", StringComparison.Ordinal);

        Assert.Contains(DesignReader.Read(text).Faults, fault => fault.Code == FaultCodes.PortOffHead);
    }

    [Theory]
    [InlineData("1e-300")]
    [InlineData("5e-324")]
    [InlineData("1e-9")]
    public void A_flange_of_next_to_nothing_is_none(string flange)
    {
        var text = Support.Repository.Design("canal-boat-day-tank.yaml")
            .Replace("flange: 12", $"flange: {flange}", StringComparison.Ordinal);

        Assert.NotEmpty(Compiler.Assemble(DesignReader.Read(text).Value!).Parts);
    }

    /// <summary>The hose's port is wider than the bore of so narrow a body: no length lets its end come through.</summary>
    [Fact]
    public void A_fault_tells_no_length_that_is_not_a_number()
    {
        var text = Support.Repository.Design("harbour-launch-breather.yaml")
            .Replace("{ body: 120,", "{ body: 29.082,", StringComparison.Ordinal);

        var faults = DesignReader.Read(text).Faults;

        Assert.Contains(faults, fault => fault.Code == FaultCodes.EndOutsideHost);
        Assert.DoesNotContain(faults, fault => fault.ToString()!.Contains("NaN", StringComparison.Ordinal));
    }

    private static ImmutableArray<Fault> WithDisc(string sleeveLength, string disc) => DesignReader.Read($$"""
        vessel: Bilge breather
        material: stainless 304
        shell: { outside_diameter: 110, wall: 2, height: 180, made_from: sheet }
        top: { shape: flat, thickness: 3 }
        bottom: { shape: hemisphere }
        inside:
          sleeve: { tube: { outside_diameter: 76, wall: 2 }, length: {{sleeveLength}} }
          discs:
            - { name: screen, {{disc}}, hole_diameter: 3, pitch: 5 }
        """).Faults;
}
