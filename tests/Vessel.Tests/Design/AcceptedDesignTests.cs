using System.Globalization;
using FsCheck.Xunit;
using Vessel.Design;
using Xunit;

namespace Vessel.Tests.Design;

/// <summary>What the reader accepts can be built: no fault may be left for a later stage to trip over.</summary>
public sealed class AcceptedDesignTests
{
    [Property(MaxTest = 60)]
    public void A_random_design_without_faults_is_built(int seed)
    {
        var outcome = DesignReader.Read(Text(new Random(seed)));

        if (outcome.Value is { } design)
            Assert.NotEmpty(Assembly.Of(design).Parts);
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
            """;
    }

    private static string Head(Random random) => random.Next(3) switch
    {
        0 => "{ shape: hemisphere }",
        1 => $"{{ shape: flat, thickness: {Number(random, 1, 6)}, recess: {Number(random, 0, 10)} }}",
        _ => $"{{ shape: flat, thickness: {Number(random, 1, 6)}, seat: overlay }}",
    };

    private static string Port(Random random, int index)
    {
        var host = Pick(random, "shell", "shell", "top", "bottom");
        var at = host == "shell"
            ? $"{{ height: {Number(random, 20, 250)}, angle: {Number(random, -90, 90)}, offset: {Number(random, -30, 30)}, tilt: {Number(random, -40, 60)} }}"
            : $"{{ radius: {Pick(random, "0", Number(random, 0, 30))}, angle: {Number(random, 0, 360)} }}";
        var joint = Pick(random, "set_on, cut: square", "set_on, cut: ground", "set_in, inside_length: 5");
        var what = random.Next(3) == 0
            ? "bung: { thread: M14x1.5, outside_diameter: 22, length: 40 }"
            : $"length: 60, tube: {{ outside_diameter: {Number(random, 10, 40)}, wall: {Number(random, 1, 3)} }}";
        return $"{{ name: port {index.ToString(CultureInfo.InvariantCulture)}, in: {host}, at: {at}, joint: {joint}, {what} }}";
    }

    private static string Number(Random random, double low, double high) =>
        (low + (random.NextDouble() * (high - low))).ToString("0.###", CultureInfo.InvariantCulture);

    private static string Pick(Random random, params string[] choices) => choices[random.Next(choices.Length)];
}
