using FsCheck;
using FsCheck.Fluent;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Tests.Support;

/// <summary>Keys of <c>mockup</c> in every mixture, within what the reader takes; beds so small that most prints are cut.</summary>
internal static class RandomMockups
{
    public static MockupDesign At(int seed, VesselDesign vessel) => Mockups(vessel).At(seed);

    private static Gen<MockupDesign> Mockups(VesselDesign vessel) =>
        from scale in Gen.OneOf(Gen.Constant(1.0), Gen.Constant(0.5), Draw.Between(0.1, 1), Draw.Between(1, 2))
        from bed in Bed(scale * vessel.Shell.OutsideDiameter)
        from isSolid in Draw.Chance(0.3)
        from wall in Draw.Sometimes(0.5, Draw.Between(0.4, 8), 1.2)
        from clearance in Draw.Sometimes(0.5, Draw.Between(0, 1), 0)
        from stand in Draw.Sometimes(0.3, Draw.Between(5, 40), 0)
        from holes in Draw.Sometimes(0.4, Gen.Choose(1, 2), 0)
        from drains in Gen.CollectToArray(Enumerable.Range(0, holes), i => Drain(i, vessel.Shell.InnerRadius))
        from keepsInternals in Draw.Chance(0.5)
        from names in Gen.Elements(Enum.GetValues<PrintNames>())
        from letterHeight in Draw.Between(5, 12)
        from letterDepth in Draw.Between(0.3, 1.5)
        select MockupDesign.Usual with
        {
            IsSolid = isSolid,
            Wall = wall,
            Scale = scale,
            Clearance = clearance,
            Bed = bed,
            Stand = stand,
            DrainHoles = [.. drains],
            KeepsInternals = keepsInternals,
            Names = names,
            LetterHeight = letterHeight,
            LetterDepth = letterDepth,
        };

    private static Gen<BedDesign> Bed(double diameter) =>
        from wide in Draw.Between(0.5, 2.5)
        from deep in Draw.Between(0.7, 1.3)
        from high in Draw.Between(0.5, 2)
        let width = wide * diameter
        select new BedDesign(Math.Max(20, width), Math.Max(20, width * deep), Math.Max(20, width * high));

    private static Gen<DrainHoleDesign> Drain(int i, double bore) =>
        from diameter in Draw.Between(1, 12)
        from aside in Draw.Sometimes(0.7, Draw.Between(0, 0.9), 0)
        from angle in Draw.Between(0, Turns.Full)
        select new DrainHoleDesign($"mockup.drain_holes[{i}]", diameter, aside * bore, angle);
}
