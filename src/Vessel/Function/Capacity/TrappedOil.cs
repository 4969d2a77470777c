namespace Vessel.Function;

/// <summary>Oil that stays in cups when the vessel has drained.</summary>
internal static class TrappedOil
{
    /// <summary>mm3: below the lowest way out of each room that stands in another.</summary>
    public static double Of(Attitude attitude) => attitude.Cavity.Rooms
        .Where(room => room.Within is not null)
        .Sum(room => attitude.VolumeBelow(room, LowestWayOut(attitude, room)));

    private static double LowestWayOut(Attitude attitude, Room room) => attitude.Cavity.Openings
        .Where(way => !way.Plugged && way.Area > 0 && (way.From == room.Name || way.To == room.Name))
        .Select(attitude.Lowest)
        .DefaultIfEmpty(attitude.Depth.End)
        .Min();
}
