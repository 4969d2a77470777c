using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Function;

/// <summary>A mass and where it acts: grams, mm in the vessel's frame.</summary>
public readonly record struct Weight(double Mass, Vector3 Centre)
{
    /// <summary>
    /// Weight of the vessel with cold air and nothing else inside: parts and packing, without fittings and the metal of the welds.
    /// </summary>
    public static Weight Empty(Assembly assembly) => Sum(
        assembly.Parts.Select(part => new Weight(part.Mass * part.Quantity, PartCentre.Of(part)))
            .Concat(Packings(assembly)));

    /// <summary>Filled to the brim with oil.</summary>
    public static Weight Full(Assembly assembly) => Sum([Empty(assembly), Oil(assembly.Attitude, assembly.Design.Flow.OilDensity)]);

    public static Weight Sum(IEnumerable<Weight> weights)
    {
        var (mass, moment) = (0.0, default(Vector3));
        foreach (var weight in weights)
            (mass, moment) = (mass + weight.Mass, moment + (weight.Mass * weight.Centre));
        return new(mass, mass > 0 ? (1 / mass) * moment : default);
    }

    /// <summary>
    /// The volume's height of centre is the ceiling less the mean of V(z) / V over the depth; by Simpson's rule. Tubes that
    /// stand off the axis are taken as if evenly round it.
    /// </summary>
    private static Weight Oil(Attitude attitude, double density)
    {
        const int Steps = 48;
        var (floor, depth) = (attitude.Depth.Start, attitude.Depth.End - attitude.Depth.Start);
        var brim = attitude.VolumeBelow(attitude.Depth.End);
        var sum = Enumerable.Range(0, Steps + 1)
            .Sum(i => (i is 0 or Steps ? 1 : i % 2 == 0 ? 2 : 4) * attitude.VolumeBelow(floor + (depth * i / Steps)));
        var height = floor + depth - (sum * depth / Steps / 3 / brim);
        return new(brim * density * 1e-6, new(0, 0, height));
    }

    private static IEnumerable<Weight> Packings(Assembly assembly) =>
        from packing in assembly.Design.All<PackingDesign>()
        let room = PackingRoom.Of(packing, assembly.Design, assembly.Sites)
        where room is not null
        let discs = assembly.Design.All<DividerSpec>().Where(disc => disc.Name == packing.Lower || disc.Name == packing.Upper).ToList()
        select new Weight(room.Value * packing.Density * 1e-6, new(0, 0, discs.Average(disc => disc.Height + (disc.Thickness / 2))));
}
