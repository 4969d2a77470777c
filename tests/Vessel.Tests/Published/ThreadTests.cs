using System.Globalization;
using System.Text.RegularExpressions;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// Tap drills against the basic thread forms of ISO 68-1 / ASME B1.1 (minor diameter D - 1.08253 P) and ASME B1.20.1.
/// </summary>
public sealed partial class ThreadTests
{
    /// <summary>Depth of a full thread over its pitch: 60 degrees (ISO 68-1, ASME B1.1), 55 degrees (ISO 228-1, ISO 7-1).</summary>
    private const double Metric = 1.08253;
    private const double Whitworth = 1.280654;

    public static TheoryData<string> Straight() => [.. Threads.All.Where(t => !t.IsTaper).Select(t => t.Name)];

    public static TheoryData<string> Pipe() =>
        [.. Threads.All.Where(t => t.Name.EndsWith("NPT", StringComparison.Ordinal)).Select(t => t.Name)];

    [Theory]
    [MemberData(nameof(Straight))]
    public void A_tap_drill_leaves_at_most_a_full_thread_and_at_least_seven_tenths(string name)
    {
        var thread = Threads.Find(name)!;
        var full = (name.StartsWith('G') ? Whitworth : Metric) * thread.Pitch;

        Assert.InRange((thread.MajorDiameter - thread.TapDrill) / full, 0.7, 1);
    }

    /// <summary>What is stamped on the tap says its pitch.</summary>
    [Fact]
    public void The_pitch_is_that_of_the_name() =>
        Assert.All(Threads.All.Where(t => !t.Name.StartsWith('G') && !t.Name.StartsWith('R')), t => Near.Relative(Pitch(t), t.Pitch, 1e-12));

    /// <summary>Tap drills of ISO 2306 for coarse threads, as published charts print them: rounded to whole drills.</summary>
    [Theory]
    [InlineData("M5", 4.2), InlineData("M6", 5), InlineData("M8", 6.8), InlineData("M10", 8.5), InlineData("M12", 10.2)]
    [InlineData("M14", 12), InlineData("M16", 14), InlineData("M18", 15.5), InlineData("M20", 17.5), InlineData("M22", 19.5)]
    [InlineData("M24", 21), InlineData("M27", 24), InlineData("M30", 26.5), InlineData("M33", 29.5), InlineData("M36", 32)]
    [InlineData("M39", 35), InlineData("M42", 37.5), InlineData("M45", 40.5), InlineData("M48", 43), InlineData("M52", 47)]
    [InlineData("M56", 50.5), InlineData("M60", 54.5), InlineData("M64", 58)]
    public void A_coarse_metric_drill_is_that_of_the_charts(string name, double drill) =>
        Near.Absolute(drill, Threads.Find(name)!.TapDrill, 0.05 + 1e-9);

    /// <summary>
    /// ISO 228-1: minor diameters and their tolerances (the latter from memory), mm. The minor diameters also stand in a tap maker's
    /// catalogue (Yamawa 2021, page 720), for ISO 7-1 has the same.
    /// </summary>
    [Theory]
    [InlineData("1/8", 8.566, 0.282), InlineData("1/4", 11.445, 0.445), InlineData("3/8", 14.950, 0.445), InlineData("1/2", 18.631, 0.541)]
    [InlineData("5/8", 20.587, 0.541), InlineData("3/4", 24.117, 0.541), InlineData("7/8", 27.877, 0.541), InlineData("1", 30.291, 0.640)]
    [InlineData("1 1/4", 38.952, 0.640), InlineData("1 1/2", 44.845, 0.640), InlineData("1 3/4", 50.788, 0.640), InlineData("2", 56.656, 0.640)]
    public void A_parallel_pipe_threads_drill_lies_within_its_minor_diameter(string size, double minor, double tolerance)
    {
        var thread = Threads.Find($"G {size}")!;

        // Both are printed to 0.001 mm.
        Near.Absolute(minor, thread.MajorDiameter - (Whitworth * thread.Pitch), 0.0011);
        Assert.InRange(thread.TapDrill, minor, minor + tolerance);
    }

    /// <summary>
    /// A hole for a taper tap is that of the thread's minor diameter where its useful length ends, a sixteenth less a length, rounded
    /// down by up to 0.3 mm: useful lengths of the same catalogue.
    /// </summary>
    [Theory]
    [InlineData("1/8", 4.4), InlineData("1/4", 6.7), InlineData("3/8", 7.0), InlineData("1/2", 9.1), InlineData("3/4", 10.2)]
    [InlineData("1", 11.6), InlineData("1 1/4", 13.4), InlineData("1 1/2", 13.4), InlineData("2", 16.9)]
    public void A_taper_pipe_threads_drill_is_its_minor_diameter_at_the_end_of_its_useful_length(string size, double useful)
    {
        var (taper, parallel) = (Threads.Find($"Rc {size}")!, Threads.Find($"Rp {size}")!);
        var minor = taper.MajorDiameter - (Whitworth * taper.Pitch);

        Assert.InRange(minor - (useful / 16) - taper.TapDrill, 0, 0.3);
        Near.Absolute(minor, parallel.TapDrill, 0.05 + 1e-9);
        Assert.True(taper.IsTaper && parallel.IsTaper);
    }

    /// <summary>Diameter and pitch are the designer's; a pitch that no thread of that size can have is none.</summary>
    [Theory]
    [InlineData("M35x1.5", 33.5)]
    [InlineData("m 14.5 x 1.25", 13.25)]
    [InlineData("M35x15", null)]
    [InlineData("M2x0.4", null)]
    [InlineData("M35x1.5x2", null)]
    [InlineData("bspp 1/2", 19.0)]
    public void A_thread_of_ones_own_size_is_taken(string name, double? drill) => Assert.Equal(drill, Threads.Find(name)?.TapDrill);

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
    [InlineData(2, "5/16-24 UNF"), InlineData(3, "3/8-24 UNF"), InlineData(5, "1/2-20 UNF"), InlineData(14, "1 3/16-12 UN")]
    [InlineData(24, "1 7/8-12 UN"), InlineData(32, "2 1/2-12 UN"), InlineData(4, "7/16-20 UNF"), InlineData(6, "9/16-18 UNF"), InlineData(8, "3/4-16 UNF"), InlineData(10, "7/8-14 UNF")]
    [InlineData(12, "1 1/16-12 UN"), InlineData(16, "1 5/16-12 UN"), InlineData(20, "1 5/8-12 UN")]
    public void A_dash_size_has_the_thread_of_sae_j514(int dash, string thread)
    {
        var found = Threads.Find(string.Create(CultureInfo.InvariantCulture, $"dash {dash}"))!;

        Assert.Equal(thread, found.Thread);
        Assert.InRange(found.MajorDiameter, dash * 25.4 / 16, double.PositiveInfinity);
        Assert.Equal(Major(thread) * 25.4, found.MajorDiameter, 1e-9);
        Assert.InRange(found.Bore ?? 0, 0, dash * 25.4 / 16);
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
