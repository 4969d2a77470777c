using System.Diagnostics;
using System.Globalization;
using Vessel.Export.Drawing;
using Vessel;
using Vessel.Design;
using Vessel.Export;
using Vessel.Export.Dxf;
using Vessel.Export.Stl;
using Vessel.Geometry;
using Vessel.Parts;

// Times and peak memory of hole fields, and of a whole build: dotnet run -c Release --project tests/Vessel.Bench [design.yaml]
// "growth" instead measures whole builds of a vessel whose disc has 100 to 100,000 holes, written to a folder that is removed again.
// A pattern and a number of holes instead measure that alone in a fresh process: ... -- Rings 100000

if (args is [var pattern, var count])
{
    Measure(Enum.Parse<HolePattern>(pattern), int.Parse(count, CultureInfo.InvariantCulture));
    Console.WriteLine($"peak {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MiB");
    return;
}

if (args is ["growth"])
{
    Growth.Print();
    return;
}

if (args is [var file])
{
    for (var run = 0; run < 3; run++)
        Console.WriteLine($"{file}: {Build(File.ReadAllText(file)):F1} ms");
    Build(File.ReadAllText(file), tellsFiles: true);
    Console.WriteLine($"peak {Process.GetCurrentProcess().PeakWorkingSet64 >> 20} MiB");
    return;
}

// Once beforehand, so that compiling does not count.
Measure(HolePattern.Staggered60, 1000, quiet: true);
Measure(HolePattern.Rings, 1000, quiet: true);
foreach (var kind in Enum.GetValues<HolePattern>())
{
    foreach (var holes in new[] { 100, 1000, 10_000, 20_000, 100_000 })
        Measure(kind, holes);
}

static void Measure(HolePattern kind, int holes, bool quiet = false)
{
    // 3 mm holes at 5 mm: about pi R^2 / (0.87 to 1) 25 of them.
    var radius = Math.Sqrt(holes * (kind == HolePattern.Staggered60 ? 0.866 : 1) * 25 / Math.PI) + 4;
    var watch = Stopwatch.StartNew();
    var field = HoleFields.Of(new("bench", 3, 5, kind, 4), radius, 0);
    var region = new Region2(Loop2.Circle(default, radius), []) { Fields = [field] };
    var found = watch.Elapsed.TotalMilliseconds;

    watch.Restart();
    var flat = new Flat(FlatKind.Sheet, region, [], [], ["bench"], new PlaneDevelopment(), "plate");
    FlatDxf.Write(FittedFlat.Of(flat, 0.01), new DrawingOptions(), Stream.Null);
    var drawn = watch.Elapsed.TotalMilliseconds;

    watch.Restart();
    var mesh = Mesher.Flatten(ThickSolid.Plate(region, 1.5), Accuracy.Solids);
    var meshed = watch.Elapsed.TotalMilliseconds;
    StlWriter.Write(mesh, "bench", Stream.Null);
    var written = watch.Elapsed.TotalMilliseconds - meshed;
    if (!quiet)
    {
        Console.WriteLine(
            $"{kind,-12} {field.Count,7} holes: phase {found,6:F1} ms, DXF {drawn,6:F1} ms, mesh {meshed,7:F1} ms, "
            + $"STL {written,6:F1} ms, {mesh.Triangles.Length} triangles");
    }
}

// The ten slowest files, once all that they share was worked out for the first that wanted it.
static double Build(string text, bool tellsFiles = false)
{
    var watch = Stopwatch.StartNew();
    var design = Compiler.Read(text).Value ?? throw new ArgumentException("the design has faults");
    var options = new BuildOptions(new DrawingOptions(), false, Accuracy.Solids, "bench", Compiler.HashOf(text));
    var times = new List<(string Path, double Time)>();
    var build = Compiler.Compile(design, options);
    var compiled = watch.Elapsed;
    var facets = build.Mockup?.Mesh.Triangles.Length ?? 0;
    if (tellsFiles)
        Console.WriteLine($"  mock-up of {facets} facets, pieces and stand {(watch.Elapsed - compiled).TotalMilliseconds,10:F1} ms");
    foreach (var output in Compiler.Files(build))
    {
        var start = watch.Elapsed;
        output.Write(Stream.Null);
        times.Add((output.Path, (watch.Elapsed - start).TotalMilliseconds));
    }

    foreach (var (path, time) in times.OrderByDescending(file => file.Time).Take(tellsFiles ? 10 : 0))
        Console.WriteLine($"  {path,-40} {time,6:F1} ms");
    return watch.Elapsed.TotalMilliseconds;
}
