using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Members.Inside;

/// <summary>Fillets that hold something round inside: level rings about the axis.</summary>
internal static class InsideSeams
{
    private static readonly JointWords _words = new("central, square, to its depth by the set-up table; ")
    {
        Heed = Quarters,
        Remedy = Widen,
    };

    /// <summary>What to heed where a ring is welded that has to stand square.</summary>
    public const string Quarters = "in quarters, opposite ones after each other; check that it stands square after the tacks";

    /// <summary>What to do where a torch does not reach it.</summary>
    public const string Widen = "widen the room round it, or hold it otherwise (fixed)";

    /// <summary>Outside of what hangs, in the angle with the head's inner face.</summary>
    /// <param name="face">Height of that face, mm.</param>
    public static Joint ToHead(HangingSpec hanging, VesselDesign vessel, (string Id, string Name) part, double face) => Fillet(
        hanging, Names.Of(hanging.HangsFrom), part, Math.Min(hanging.Wall, vessel.Head(hanging.HangsFrom).Wall),
        LevelRing.Along(hanging.OutsideDiameter / 2, face, Way.Outward, Way.Axial(hanging.HangsFrom == VesselEnd.Top ? -1 : 1), 0));

    public static Joint Fillet(
        InsideSpec held, string host, (string Id, string Name) part, double wall, Func<double, Station> along)
    {
        return new(
            $"{part.Name} to {host}", [host, part.Id], JointKind.Fillet, Interval.Turn, [], along, FilletThroat.Of(wall), wall,
                $"{held.Path}.fixed")
        {
            Role = WeldRole.Hold,
            Owner = held.Path,
            Words = _words,
        };
    }
}
