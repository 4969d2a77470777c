using System.Globalization;
using Vessel.Design;
using Vessel.Reading;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Ports;

/// <summary>A tube that ends on a level, wherever its axis comes from.</summary>
public sealed class InnerHeightTests
{
    private static Outcome<VesselDesign> Read(string where, double height) => DesignReader.Read(string.Create(CultureInfo.InvariantCulture, $$"""
        vessel: Day tank
        material: stainless 316
        shell: { outside_diameter: 200, wall: 2, height: 260, made_from: sheet }
        top: { shape: torisphere, standard: DIN 28011, wall: 2, flange: 12 }
        bottom: { shape: hemisphere, wall: 2 }
        ports:
          - { name: suction, {{where}}, tube: { outside_diameter: 22, wall: 2 }, length: 60, joint: set_in, inner_height: {{height}} }
        """));

    [Theory]
    [InlineData("in: top, at: { radius: 0 }", 15)]
    [InlineData("in: top, at: { radius: 30 }", 15)]
    [InlineData("in: top, at: { radius: 40, square_to_surface: true }", 60)]
    [InlineData("in: shell, at: { height: 200, angle: 40, tilt: 60 }", 90)]
    [InlineData("in: shell, at: { height: 60, angle: 40, offset: 12, tilt: -45 }", 110)]
    [InlineData("in: bottom, at: { radius: 0 }", 25)]
    public void Its_inner_end_stands_there(string where, double height)
    {
        var read = Read(where, height);

        var site = Compiler.Assemble(read.Value ?? throw new InvalidOperationException(string.Join('\n', read.Faults))).Sites[0];
        // A height of the file is exact to its rounding.
        Near.Absolute(height, site.Frame.ToOuter(new(0, 0, site.InnerEnd)).Z, 1e-9);
    }

    [Theory]
    [InlineData("in: shell, at: { height: 100, angle: 40 }", 50)]
    [InlineData("in: shell, at: { height: 200, angle: 40, tilt: 60 }", 250)]
    [InlineData("in: bottom, at: { radius: 0 }", -120)]
    public void A_height_to_which_its_axis_never_comes_is_a_fault(string where, double height) =>
        Assert.Equal([FaultCodes.InnerHeightMissed], Read(where, height).Faults.Select(fault => fault.Code));
}
