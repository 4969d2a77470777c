using System.Globalization;
using System.Text.RegularExpressions;
using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// Tap drills against the basic thread forms of ISO 68-1 / ASME B1.1 (minor diameter D - 1.08253 P) and ASME B1.20.1.
/// </summary>
public sealed partial class ThreadTests
{
    public static TheoryData<string> Straight() =>
        [.. Threads.All.Where(t => !t.Name.EndsWith("NPT", StringComparison.Ordinal)).Select(t => t.Name)];

    public static TheoryData<string> Pipe() =>
        [.. Threads.All.Where(t => t.Name.EndsWith("NPT", StringComparison.Ordinal)).Select(t => t.Name)];

    [Theory]
    [MemberData(nameof(Straight))]
    public void A_tap_drill_leaves_at_most_a_full_thread_and_at_least_seven_tenths(string name)
    {
        var thread = Threads.Find(name)!;
        var full = 1.08253 * Pitch(thread);

        Assert.InRange((thread.MajorDiameter - thread.TapDrill) / full, 0.7, 1);
    }

    /// <summary>ISO 6149-1: minor diameters, mm; the drill is 0.08253 P larger (D - P against D - 1.08253 P).</summary>
    [Theory]
    [InlineData("M10x1", 8.917), InlineData("M12x1.5", 10.376), InlineData("M14x1.5", 12.376), InlineData("M16x1.5", 14.376)]
    [InlineData("M18x1.5", 16.376), InlineData("M22x1.5", 20.376), InlineData("M27x2", 24.835), InlineData("M33x2", 30.835)]
    [InlineData("M42x2", 39.835)]
    public void A_metric_minor_diameter_is_that_of_the_basic_profile(string name, double minor)
    {
        var thread = Threads.Find(name)!;

        // Published to 0.001 mm.
        Assert.Equal(minor, thread.TapDrill - (0.08253 * Pitch(thread)), 0.0006);
    }

    /// <summary>Dash numbers are sixteenths of an inch of tube; each thread is larger than its tube.</summary>
    [Theory]
    [InlineData(4, "7/16-20 UNF"), InlineData(6, "9/16-18 UNF"), InlineData(8, "3/4-16 UNF"), InlineData(10, "7/8-14 UNF")]
    [InlineData(12, "1 1/16-12 UN"), InlineData(16, "1 5/16-12 UN"), InlineData(20, "1 5/8-12 UN")]
    public void A_dash_size_has_the_thread_of_sae_j514(int dash, string thread)
    {
        var found = Threads.Find(string.Create(CultureInfo.InvariantCulture, $"dash {dash}"))!;

        Assert.Equal(thread, found.Thread);
        Assert.InRange(found.MajorDiameter, dash * 25.4 / 16, double.PositiveInfinity);
        Assert.Equal(Major(thread) * 25.4, found.MajorDiameter, 1e-9);
        Assert.InRange(found.Bore!.Value, 0, dash * 25.4 / 16);
    }

    /// <summary>
    /// ASME B1.20.1: minor diameter at the small end E0 - 0.8/n with E0 = D - (0.05 D + 1.1)/n. A drill for a tap
    /// without a reamer lies at it, within 1/64 in as the published charts differ, and half a step of 0.005 in of drills.
    /// </summary>
    [Theory]
    [MemberData(nameof(Pipe))]
    public void A_pipe_drill_lies_at_the_minor_diameter_of_the_small_end(string name)
    {
        var thread = Threads.Find(name)!;
        var perInch = double.Parse(PerInch().Match(thread.Thread).Groups[1].Value, CultureInfo.InvariantCulture);
        var major = thread.MajorDiameter / 25.4;
        var pitchDiameter = major - (((0.05 * major) + 1.1) / perInch);

        Assert.Equal(pitchDiameter - (0.8 / perInch), thread.TapDrill / 25.4, 0.018);
    }

    private static double Pitch(ThreadSize thread) => thread.Thread.StartsWith('M')
        ? double.Parse(thread.Thread[(thread.Thread.IndexOf('x', StringComparison.Ordinal) + 1)..], CultureInfo.InvariantCulture)
        : 25.4 / double.Parse(PerInch().Match(thread.Thread).Groups[1].Value, CultureInfo.InvariantCulture);

    private static double Major(string thread)
    {
        var parts = Size().Match(thread).Groups.Values.Skip(1)
            .Select(g => g.Success ? double.Parse(g.Value, CultureInfo.InvariantCulture) : 0).ToArray();
        return parts[0] + (parts[1] / parts[2]);
    }

    [GeneratedRegex(@"-([0-9.]+) ")]
    private static partial Regex PerInch();

    [GeneratedRegex(@"^(?:(\d+) )?(\d+)/(\d+)-")]
    private static partial Regex Size();
}
