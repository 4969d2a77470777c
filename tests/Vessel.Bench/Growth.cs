using System.Diagnostics;
using System.Globalization;
using Vessel;
using Vessel.Export;
using Vessel.Export.Dxf;
using Vessel.Function;
using Vessel.Geometry;

/// <summary>How a whole build's time grows with the holes of its disc.</summary>
internal static class Growth
{
    private const double Hole = 3;

    private const double Pitch = 5;

    // The last a little under what a design may have: the rim of the disc takes some more than were asked for.
    private static readonly int[] _holes = [100, 1000, 10_000, 20_000, Vessel.Design.Limits.Holes * 9 / 10];

    /// <summary>
    /// What a hole costs of processors' time beyond a build of the least disc, against n log n: a column of numbers that do not rise means
    /// no faster than that.
    /// </summary>
    public static void Print()
    {
        // Compiled code first.
        Build(_holes[1]);
        var least = Build(_holes[0]).Processor;
        foreach (var holes in _holes)
        {
            var (count, wall, processor) = Build(holes);
            var each = Math.Max(0, processor - least) * 1e6 / (count * Math.Log2(count));
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{count,7} holes: {wall,7:F0} ms, of processors {processor,7:F0} ms, {each,7:F0} ns for each of n log2 n"));
        }

        Console.WriteLine($"peak {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MiB");
    }

    private static (long Count, double Wall, double Processor) Build(int holes)
    {
        var folder = Directory.CreateTempSubdirectory("vessel-growth-").FullName;
        try
        {
            var text = Text(holes);
            var (watch, before) = (Stopwatch.StartNew(), Process.GetCurrentProcess().TotalProcessorTime);
            var design = Compiler.Read(text).Value ?? throw new InvalidOperationException("the design has faults");
            var build = Compiler.Compile(
                design, new(new DrawingOptions(), false, Accuracy.Solids, "bench", Compiler.HashOf(text)));
            OutputFolder.Commit(folder, Compiler.Files(build));
            return (
                build.Assembly.Parts.Sum(part => part.Fields.Sum(field => (long)field.Lattice.Count)),
                watch.Elapsed.TotalMilliseconds,
                (Process.GetCurrentProcess().TotalProcessorTime - before).TotalMilliseconds);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Text(int holes)
    {
        // A staggered pattern has a hole on every sqrt(3) / 2 pitch^2.
        var body = Math.Ceiling(2 * Math.Sqrt(holes * Math.Sqrt(3) / 2 * Pitch * Pitch / Math.PI)) + 16;
        return string.Create(CultureInfo.InvariantCulture, $$"""
            vessel: Wide sieve drum
            material: stainless 304
            shell: { outside_diameter: {{body}}, wall: 3, height: 200, made_from: sheet, seam_angle: 180 }
            top: { shape: flat, thickness: 4, seat: inset, recess: 0, clearance: 0.2 }
            bottom: { shape: flat, thickness: 4, seat: inset, recess: 0, clearance: 0.2 }
            ports:
              - { name: inlet, in: shell, at: { height: 60, angle: 0 }, tube: { outside_diameter: 32, wall: 2 }, length: 60, joint: set_on }
              - { name: outlet, in: top, at: { radius: 0 }, tube: { outside_diameter: 32, wall: 2 }, length: 50, inside_length: 10, joint: set_in }
            inside:
              discs:
                - { name: screen, fits: shell, at: { height: 120 }, thickness: 1.5, clearance: 0.2, fixed: tabs,
                    hole_diameter: {{Hole}}, pitch: {{Pitch}}, pattern: staggered_60, margin: 3 }
            """);
    }
}
