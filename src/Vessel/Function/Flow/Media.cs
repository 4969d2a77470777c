using Vessel.Design;

namespace Vessel.Function;

/// <summary>Where packings stand in the cavity, and whether gas can go past them.</summary>
internal static class Media
{
    /// <summary>The packing that fills a room at a height; null for none. One without a disc on both sides has no place.</summary>
    public static PackingDesign? In(Room room, double height, VesselDesign design) => design.All<PackingDesign>().FirstOrDefault(packing =>
        Disc(packing.Lower, design) is { } lower && Disc(packing.Upper, design) is { } upper
        && lower.Fits == room.Within && height >= lower.Height + lower.Thickness && height <= upper.Height);

    /// <summary>A packing between two discs is there, and a way from inlet to vent does not pass any.</summary>
    public static bool IsBypassed(Cavity cavity, VesselDesign design, Opening inlet, Opening vent)
    {
        var shut = cavity.Rooms.Where(room => IsFilled(room, design)).Select(room => room.Name).ToHashSet();
        if (shut.Count == 0)
            return false;
        var left = cavity with
        {
            Openings = [.. cavity.Openings.Where(way => !shut.Contains(way.From) && !shut.Contains(way.To))],
        };
        return !shut.Contains(inlet.From) && !shut.Contains(vent.From) && FlowRoute.Find(left, inlet, vent) is not null;
    }

    private static bool IsFilled(Room room, VesselDesign design) => design.All<PackingDesign>()
        .Select(packing => (Lower: Disc(packing.Lower, design), Upper: Disc(packing.Upper, design)))
        .Any(pair => pair is { Lower: { } lower, Upper: { } upper } && lower.Fits == room.Within
            && room.Heights.Contains((lower.Height + lower.Thickness + upper.Height) / 2));

    private static DividerSpec? Disc(string? name, VesselDesign design) =>
        name is null ? null : design.All<DividerSpec>().FirstOrDefault(disc => disc.Name == name);
}
