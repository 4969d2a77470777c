using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
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
    private static Gen<VesselEnd> End { get; } = Gen.Elements(VesselEnd.Top, VesselEnd.Bottom);

    private static Gen<Fixing> Fixed { get; } = Gen.Elements(Enum.GetValues<Fixing>());

    private static Gen<InsideDesign> Insides { get; } =
        from sleeves in UpTo(2, Sleeve)
        from cups in UpTo(2, Cup)
        from screens in UpTo(4, i => Screen(i, sleeves))
        let packed = screens.GroupBy(screen => screen.Fits).Where(alike => alike.Count() > 1)
            .Select(alike => alike.OrderBy(screen => screen.Height).Take(2).ToList())
        select new InsideDesign(cups, sleeves, screens, [.. packed.Select((pair, i) => new PackingDesign(
            $"inside.packing[{i}]", $"packing {i}", "wool", null, pair[0].Name, pair[1].Name, 70, null))]);

    public static InsideDesign At(int seed) => Insides.At(seed);

    private static Gen<ImmutableArray<T>> UpTo<T>(int most, Func<int, Gen<T>> one) =>
        from count in Gen.Choose(0, most)
        from all in Gen.CollectToArray(Enumerable.Range(0, count), one)
        select all.ToImmutableArray();

    private static Gen<InnerTubeDesign> Sleeve(int i) =>
        from wider in Draw.Pick(4)
        from end in End
        from held in Fixed
        select new InnerTubeDesign($"inside.sleeve[{i}]", $"sleeve {i}", Designs.Stainless, 40 + (10 * wider), 2, 50, end, held, []);

    private static Gen<CupDesign> Cup(int i) =>
        from opens in Gen.Elements(CupOpening.Up, CupOpening.Down)
        let isDown = opens == CupOpening.Down
        from end in isDown ? Gen.Constant(VesselEnd.Top) : End
        from form in isDown ? Gen.Constant(StockForm.Sheet) : Gen.Elements(StockForm.Sheet, StockForm.Tube)
        select new CupDesign(
            $"inside.cap[{i}]", $"cap {i}", Designs.Stainless, 30 + (12 * i), 2, 30, opens, end, Fixing.Weld, isDown ? 10 : 0,
            isDown ? "way out" : null, 0.2, 0, form, 0, [], null);

    private static Gen<ScreenDesign> Screen(int i, ImmutableArray<InnerTubeDesign> sleeves) =>
        from fits in Gen.Elements(sleeves.Select(sleeve => sleeve.Name).Prepend<string?>(null))
        from held in Fixed
        select new ScreenDesign(
            $"inside.discs[{i}]", $"disc {i}", Designs.Stainless, fits, 20 + (7 * (3 * i % 5)), 1.5, 0.2, held, 0, 30,
            new($"inside.discs[{i}]", 3, 5, HolePattern.Square, 3));
}
