using Vessel.Mockups;

namespace Vessel.Findings;

/// <summary>What stands in the way of a mock-up to print.</summary>
internal static class MockupRules
{
    public static IEnumerable<Finding> Of(Assembly assembly) => assembly.Mockup.Obstacles.Select(obstacle => new Finding(
        FindingCodes.NoMockup,
        Severity.Note,
        obstacle.Parts,
        $"no mock-up to print: {obstacle.What}.",
        obstacle.Distance is { } distance ? [new("distance", distance, Obstacle.Least, "mm")] : [],
        assembly.Design.PlaceOf(obstacle.Path)));
}
