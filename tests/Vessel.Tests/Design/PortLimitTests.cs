using System.Globalization;
using System.Text.RegularExpressions;
using Vessel.Design;
using Vessel.Reading;
using Xunit;

namespace Vessel.Tests.Design;

/// <summary>Each limit from both sides: what just fits is taken, what just does not is refused.</summary>
public sealed partial class PortLimitTests
{
    private const string Tube = "tube: { outside_diameter: 32, wall: 2 }, length: 90";

    [Theory]
    // |offset| + 16 against the outer radius 55, and against the inner radius 53 less the clearance 0.2.
    [InlineData("{ height: 90, offset: 39 }", Tube, null)]
    [InlineData("{ height: 90, offset: 39.01 }", Tube, "branch-wider-than-shell")]
    [InlineData("{ height: 90, offset: -39.01 }", Tube, "branch-wider-than-shell")]
    [InlineData("{ height: 90, offset: 36.79 }", Tube + ", joint: set_in", null)]
    [InlineData("{ height: 90, offset: 36.81 }", Tube + ", joint: set_in", "tube-does-not-enter")]
    // The footprint's radius 16 against the lower edge; the bore's 14 against the inset plate 3 thick at the upper.
    [InlineData("{ height: 16.01 }", Tube, null)]
    [InlineData("{ height: 15.99 }", Tube, "hole-near-shell-end")]
    [InlineData("{ height: 162.99 }", Tube, null)]
    [InlineData("{ height: 163.01 }", Tube, "hole-behind-lid")]
    // A set-in hole of radius 16.2 and one wall of 2.
    [InlineData("{ height: 18.21 }", Tube + ", joint: set_in", null)]
    [InlineData("{ height: 18.19 }", Tube + ", joint: set_in", "hole-near-shell-end")]
    // Tilted by 60 degrees a radius r reaches r / cos 60 = 2 r down: the footprint 32, the bore 28 and 2 of wall.
    [InlineData("{ height: 32.01, tilt: 60 }", Tube, null)]
    [InlineData("{ height: 31.99, tilt: 60 }", Tube, "port-off-shell")]
    [InlineData("{ height: 29.9, tilt: 60 }", Tube, "hole-near-shell-end")]
    // Far side: 53 + sqrt(53^2 - 16^2) = 103.527.
    [InlineData("{ height: 90 }", Tube + ", joint: set_in, inside_length: 103.52", null)]
    [InlineData("{ height: 90 }", Tube + ", joint: set_in, inside_length: 103.53", "port-too-deep")]
    // Rising by 45 degrees the shell is met 16 out along the axis.
    [InlineData("{ height: 60, tilt: 45 }", "tube: { outside_diameter: 32, wall: 2 }, length: 16.01", null)]
    [InlineData("{ height: 60, tilt: 45 }", "tube: { outside_diameter: 32, wall: 2 }, length: 15.99", "port-too-short")]
    // A bung needs more than its thread and 1.5 on either side.
    [InlineData("{ height: 90 }", "bung: { thread: M14x1.5, outside_diameter: 17.01, length: 15 }", null)]
    [InlineData("{ height: 90 }", "bung: { thread: M14x1.5, outside_diameter: 17, length: 15 }", "bung-too-thin")]
    public void A_port_in_the_shell(string at, string rest, string? code) =>
        AssertOnly(code, With($"in: shell, at: {at}, {rest}"));

    [Theory]
    // The plate is 106 - 0.4 wide: the tube's 16 stands on it, and the bore's 14 leave the tube's wall of 2 to the rim.
    [InlineData("top", "{ radius: 36.79 }", Tube, null)]
    [InlineData("top", "{ radius: 36.81 }", Tube, "port-off-head")]
    // Of one set in the hole of 16.2 leaves as much.
    [InlineData("top", "{ radius: 34.59 }", Tube + ", joint: set_in", null)]
    [InlineData("top", "{ radius: 34.61 }", Tube + ", joint: set_in", "port-off-head")]
    [InlineData("bottom", "{ radius: 0 }", Tube, null)]
    // One wall along the inner face, 53 cos(2 / 53) = 52.9623 from the axis, less the bore's 14; outside 55 cos(2 / 55) - 16.
    [InlineData("bottom", "{ radius: 38.96 }", Tube, null)]
    [InlineData("bottom", "{ radius: 38.97 }", Tube, "port-off-head")]
    [InlineData("bottom", "{ radius: 0 }", "tube: { outside_diameter: 110.01, wall: 5 }, length: 90", "port-off-head")]
    // From the plate's inner face at 177 down to the hemisphere: 177 + sqrt(53^2 - 16^2) = 227.527.
    [InlineData("top", "{ radius: 0 }", Tube + ", joint: set_in, inside_length: 227.52", null)]
    [InlineData("top", "{ radius: 0 }", Tube + ", joint: set_in, inside_length: 227.53", "port-too-deep")]
    [InlineData("top", "{ radius: 0 }", Tube + ", cut: hole_saw", "key-does-not-apply")]
    [InlineData("top", "{ radius: 0 }", Tube + ", inside_length: 5", "key-does-not-apply")]
    [InlineData("top", "{ radius: 0 }", "bung: { thread: M14x1.5, outside_diameter: 22, length: 15 }, length: 5", "key-does-not-apply")]
    public void A_port_in_a_head(string host, string at, string rest, string? code) =>
        AssertOnly(code, With($"in: {host}, at: {at}, {rest}"));

    [Theory]
    // Bores of radius 14 at one height: they touch at twice asin(14/55), 29.49 degrees; on one line at 28 mm.
    [InlineData("{ height: 90, angle: 10 }", "{ height: 90, angle: 39.6 }", false)]
    [InlineData("{ height: 90, angle: 10 }", "{ height: 90, angle: 39.4 }", true)]
    [InlineData("{ height: 90, angle: 350 }", "{ height: 90, angle: 19.4 }", true)]
    [InlineData("{ height: 90, angle: -10 }", "{ height: 90, angle: -340.6 }", true)]
    [InlineData("{ height: 60 }", "{ height: 88.01 }", false)]
    [InlineData("{ height: 60 }", "{ height: 87.99 }", true)]
    public void Two_holes_in_the_shell(string one, string other, bool overlap) => AssertOnly(
        overlap ? "holes-overlap" : null,
        With($"in: shell, at: {one}, {Tube}", $"in: shell, at: {other}, {Tube}"));

    [Fact]
    public void A_small_hole_within_a_large_one_overlaps_it() => AssertOnly("holes-overlap", With(
        $"in: shell, at: {{ height: 90 }}, {Tube}",
        "in: shell, at: { height: 92, angle: 2 }, tube: { outside_diameter: 6, wall: 1 }, length: 50"));

    [Theory]
    [InlineData(new[] { 175 })]
    [InlineData(new[] { 185, 90, 0, 270 })]
    [InlineData(new[] { 180, 300, 345, 30 })]
    public void The_angle_that_is_proposed_for_the_seam_is_free(int[] angles)
    {
        var text = With([.. angles.Select(a => $"in: shell, at: {{ height: 90, angle: {Text(a)} }}, {Tube}")]);
        var fault = Assert.Single(DesignReader.Read(text).Faults);
        var proposed = Proposal().Match(fault.Remedy).Groups[1].Value;

        AssertOnly(null, text.Replace("made_from: sheet", $"made_from: sheet, seam_angle: {proposed}", StringComparison.Ordinal));
    }

    [Fact]
    public void A_seam_that_no_port_leaves_free_is_said_to_be_so()
    {
        // Eight ports of radius 24 on a radius of 55, 45 degrees apart: each takes 2 asin(24/55) = 51.7 degrees.
        var text = With([.. Enumerable.Range(0, 8).Select(i =>
            $"in: shell, at: {{ height: 90, angle: {Text(45 * i)} }}, tube: {{ outside_diameter: 48, wall: 8 }}, length: 90")]);
        var fault = DesignReader.Read(text).Faults.First(f => f.Code == FaultCodes.PortOverSeam);

        Assert.Contains("whole circumference", fault.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Half_the_root_gap_belongs_to_the_seam()
    {
        // The footprint of radius 16 ends asin(16/55) = 16.910 degrees from its middle; a gap of 2 is 1.04 degrees wide.
        var text = With($"in: shell, at: {{ height: 90, angle: 162.8 }}, {Tube}");

        AssertOnly(null, text);
        AssertOnly("port-over-seam", text.Replace("made_from: sheet", "made_from: sheet, root_gap: 2", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("at: { height: 15 }")]
    [InlineData("at: { height: 175 }")]
    [InlineData("at: { height: 24, tilt: 40, offset: 20 }")]
    [InlineData("at: { height: 160, tilt: 40, offset: -20 }")]
    public void The_height_that_is_proposed_is_enough(string at)
    {
        var text = With($"in: shell, {at}, {Tube}, joint: set_in");
        var fault = Assert.Single(DesignReader.Read(text).Faults);
        var height = HeightProposal().Match(fault.Remedy);
        // The proposal is rounded to the sound side.
        var enough = double.Parse(height.Groups[2].Value, CultureInfo.InvariantCulture);

        AssertOnly(null, HeightValue().Replace(text, $"height: {Text(enough)}$1"));
    }

    /// <summary>Nearer to the edge than a wall, on either side of it, a hole would leave slivers;
    /// further over it stands over the seam.</summary>
    [Theory]
    [InlineData("at: { height: 15 }")]
    [InlineData("at: { height: 17 }")]
    [InlineData("at: { height: 24, tilt: 40, offset: 20 }")]
    public void The_height_that_is_proposed_over_the_seam_is_enough(string at)
    {
        var text = With($"in: shell, {at}, {Tube}, joint: set_in");
        var height = OverSeamProposal().Match(Assert.Single(DesignReader.Read(text).Faults).Remedy);
        var enough = double.Parse(height.Groups[1].Value, CultureInfo.InvariantCulture);

        AssertOnly(null, HeightValue().Replace(text, $"height: {Text(enough)}$1"));
    }

    private static void AssertOnly(string? code, string text) =>
        Assert.Equal(code is null ? [] : [code], DesignReader.Read(text).Faults.Select(f => f.Code));

    private static string With(params string[] ports) =>
        """
        vessel: Header tank
        material: stainless 304
        shell: { outside_diameter: 110, wall: 2, made_from: sheet, height: 180 mm }
        top: { shape: flat, thickness: 3 }
        bottom: { shape: hemisphere }
        ports:

        """ + string.Concat(ports.Select((p, i) => $"  - {{ name: port {Text(i)}, {p} }}\n"));

    private static string Text(double number) => number.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex("'seam_angle: ([0-9.]+) deg'")]
    private static partial Regex Proposal();

    [GeneratedRegex("at (least|most) ([0-9.]+) mm")]
    private static partial Regex HeightProposal();

    [GeneratedRegex("Or at most ([0-9.]+) mm, to stand over")]
    private static partial Regex OverSeamProposal();

    [GeneratedRegex("height: [0-9.]+( }|,)")]
    private static partial Regex HeightValue();
}
