using Vessel.Design;

namespace Vessel.Tests.Support;

/// <summary>Keys of <c>mockup</c> in every mixture, within what the reader takes; beds so small that most prints are cut.</summary>
internal static class RandomMockups
{
    private const int Own = 104729;

    public static MockupDesign At(int seed, VesselDesign vessel)
    {
        var dice = new Dice(seed + Own);
        var scale = dice.Pick(4) switch { 0 => 1, 1 => 0.5, 2 => dice.Between(0.1, 1), _ => dice.Between(1, 2) };
        var bed = scale * vessel.Shell.OutsideDiameter * dice.Between(0.5, 2.5);
        return MockupDesign.Usual with
        {
            IsSolid = dice.Chance(0.3),
            Wall = dice.Chance(0.5) ? 1.2 : dice.Between(0.4, 8),
            Scale = scale,
            Clearance = dice.Chance(0.5) ? 0 : dice.Between(0, 1),
            Bed = new(Math.Max(20, bed), Math.Max(20, bed * dice.Between(0.7, 1.3)), Math.Max(20, bed * dice.Between(0.5, 2))),
            Stand = dice.Chance(0.7) ? 0 : dice.Between(5, 40),
            DrainHoles = dice.Chance(0.6) ? [] : [.. Enumerable.Range(0, 1 + dice.Pick(2)).Select(i => new DrainHoleDesign(
                $"mockup.drain_holes[{i}]", dice.Between(1, 12), dice.Chance(0.3) ? 0 : vessel.Shell.InnerRadius * dice.Between(0, 0.9), dice.Between(0, 6.28)))],
            KeepsInternals = dice.Chance(0.5),
            Names = (PrintNames)dice.Pick(3),
            LetterHeight = dice.Between(5, 12),
            LetterDepth = dice.Between(0.3, 1.5),
        };
    }
}
