using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Members.Cups;
using Vessel.Members.InnerTubes;
using Vessel.Members.Screens;

namespace Vessel.Tests.Support;

/// <summary>
/// Internals in every mixture of kinds, ends and fixings, for what only asks who holds whom: sizes are in order, but
/// nothing says that they fit the vessel.
/// </summary>
internal static class RandomInsides
{
    public static InsideDesign At(int seed)
    {
        // Not for secrets: the same seed must give the same internals.
#pragma warning disable CA5394
        var random = new Random(seed);
        int Pick(int count) => random.Next(count);
#pragma warning restore CA5394
        PortHost End() => Pick(2) == 0 ? PortHost.Top : PortHost.Bottom;
        Fixing Fixed() => (Fixing)Pick(5);
        var sleeves = Enumerable.Range(0, Pick(3)).Select(i => new InnerTubeDesign(
            $"inside.sleeve[{i}]", $"sleeve {i}", Designs.Stainless, 40 + (10 * Pick(4)), 2, 50, End(), Fixed(), [])).ToImmutableArray();
        var caps = Enumerable.Range(0, Pick(3)).Select(i => Pick(2) == 0
            ? Cap(i, CupOpening.Up, End(), Pick(2) == 0)
            : Cap(i, CupOpening.Down, PortHost.Top, true)).ToImmutableArray();
        var discs = Enumerable.Range(0, Pick(5)).Select(i => new ScreenDesign(
            $"inside.discs[{i}]", $"disc {i}", Designs.Stainless,
            sleeves.IsEmpty || Pick(3) == 0 ? null : sleeves[Pick(sleeves.Length)].Name, 20 + (7 * ((3 * i) % 5)), 1.5, 0.2, Fixed(), 0, 30,
            new($"inside.discs[{i}]", 3, 5, HolePattern.Square, 3))).ToImmutableArray();
        var packings = discs.GroupBy(disc => disc.Fits).Where(group => group.Count() > 1).Select(group => group.OrderBy(d => d.Height).ToList())
            .Select((pair, i) => new PackingDesign($"inside.packing[{i}]", $"packing {i}", "wool", null, pair[0].Name, pair[1].Name, 70, null));
        return new(caps, sleeves, discs, [.. packings]);
    }

    private static CupDesign Cap(int i, CupOpening opens, PortHost from, bool rolled) => new(
        $"inside.cap[{i}]", $"cap {i}", Designs.Stainless, 30 + (12 * i), 2, 30, opens, from, Fixing.Weld, opens == CupOpening.Down ? 10 : 0,
        opens == CupOpening.Down ? "way out" : null, 0.2, 0, rolled ? StockForm.Sheet : StockForm.Tube, 0, [], null);
}
