namespace Vessel.Function;

/// <summary>Oil that stays in cups when the vessel has drained.</summary>
internal static class TrappedOil
{
    /// <summary>mm3, upright: below the lowest way out of each room that stands in another.</summary>
    public static double Of(Cavity cavity) => cavity.Rooms
        .Where(room => room.Within is not null)
        .Sum(room => room.VolumeBelow(LowestWayOut(cavity, room)));

    private static double LowestWayOut(Cavity cavity, Room room) => cavity.Openings
        .Where(way => !way.Plugged && way.Area > 0 && (way.From == room.Name || way.To == room.Name))
        .Select(way => way.Lowest)
        .DefaultIfEmpty(room.Heights.End)
        .Min();
}
