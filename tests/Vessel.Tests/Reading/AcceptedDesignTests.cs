using System.Globalization;
using FsCheck.Xunit;
using Vessel.Design;
using Vessel.Reading;
using Xunit;

namespace Vessel.Tests.Reading;

/// <summary>What the reader accepts can be built: no fault may be left for a later stage to trip over.</summary>
public sealed class AcceptedDesignTests
{
    [Property(MaxTest = 60)]
    public void A_random_design_without_faults_is_built(int seed)
    {
        var outcome = DesignReader.Read(Text(new Random(seed)));

        if (outcome.Value is { } design)
            Assert.NotEmpty(Compiler.Assemble(design).Parts);
    }

    [Fact]
    public void Most_random_designs_are_without_faults()
    {
        // Else the test above would test little.
        var good = Enumerable.Range(0, 60).Count(seed => DesignReader.Read(Text(new Random(seed))).Value is not null);

        Assert.InRange(good, 20, 60);
    }

    private static string Text(Random random)
    {
        var made = Pick(random, "sheet", "tube");
        var ports = Enumerable.Range(0, random.Next(3)).Select(i => Port(random, i));
        return $$"""
            vessel: Random {{random.Next()}}
            material: mild steel
            shell: { outside_diameter: 110, wall: {{Number(random, 1, 5)}}, height: {{Number(random, 60, 300)}}, made_from: {{made}} }
            top: {{Head(random)}}
            bottom: {{Head(random)}}
            ports: [ {{string.Join(", ", ports)}} ]
            {{Inside(random)}}
            """;
    }

    /// <summary>As often nothing as something: most of what is drawn at random does not go together.</summary>
    private static string Inside(Random random) => random.Next(2) == 0 ? "" : $$"""
        inside:
          sleeve: { tube: { outside_diameter: {{Number(random, 60, 90)}}, wall: 2 }, length: {{Number(random, 30, 80)}} }
          discs: [ { name: screen, fits: {{Pick(random, "shell", "sleeve")}}, at: { height: {{Number(random, 5, 200)}} }, thickness: 2, hole_diameter: 3, pitch: {{Number(random, 4, 8)}}, pattern: {{Pick(random, "square", "rings", "staggered_45", "staggered_60")}} } ]
          cap: { outside_diameter: 50, wall: 2, skirt: {{Number(random, 10, 40)}}, opens: {{Pick(random, "up", "up", "down")}} }
        bracket: { at: { height: {{Number(random, 30, 150)}}, angle: {{Number(random, 90, 270)}} }, thickness: 3, width: 70, height: 50, stand_off: {{Number(random, 0, 30)}}, ears: {{Pick(random, "sides", "ends")}}, bolts: { diameter: 8, across: 20 } }
        """;

    private static string Head(Random random) => random.Next(3) switch
    {
        0 => $"{{ shape: hemisphere, made_from: {Pick(random, "spinning", "gores")} }}",
        1 => $"{{ shape: flat, thickness: {Number(random, 1, 6)}, recess: {Number(random, 0, 10)} }}",
        _ => $"{{ shape: flat, thickness: {Number(random, 1, 6)}, seat: overlay }}",
    };

    private static string Port(Random random, int index)
    {
        var host = Pick(random, "shell", "shell", "top", "bottom");
        var at = host == "shell"
            ? $"{{ height: {Number(random, 20, 250)}, angle: {Number(random, -90, 90)}, offset: {Number(random, -30, 30)}, tilt: "
                + $"{Number(random, -40, 60)} }}"
            : $"{{ radius: {Pick(random, "0", Number(random, 0, 30))}, angle: {Number(random, 0, 360)} }}";
        var joint = Pick(random, "set_on, cut: square", "set_on, cut: ground", "set_in");
        var what = random.Next(3) == 0
            ? "bung: { thread: M14x1.5, outside_diameter: 22, length: 40 }"
            : $"length: 60, tube: {{ outside_diameter: {Number(random, 10, 40)}, wall: {Number(random, 1, 3)} }}";
        return $"{{ name: port {index.ToString(CultureInfo.InvariantCulture)}, in: {host}, at: {at}, joint: {joint}, {what} }}";
    }

    private static string Number(Random random, double low, double high) =>
        (low + (random.NextDouble() * (high - low))).ToString("0.###", CultureInfo.InvariantCulture);

    private static string Pick(Random random, params string[] choices) => choices[random.Next(choices.Length)];
}
