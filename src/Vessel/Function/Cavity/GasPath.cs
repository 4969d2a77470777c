using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>Which rooms and ports gas can reach from each other while oil stands at a level.</summary>
internal sealed class GasPath
{
    private readonly Cavity _cavity;
    private readonly Dictionary<string, int> _group = [];

    private GasPath(Attitude attitude, double level)
    {
        var cavity = _cavity = attitude.Cavity;
        bool IsOpen(Opening way) => !way.Plugged && way.Area > 0 && attitude.Highest(way) > level;
        foreach (var (room, i) in cavity.Rooms.Select((room, i) => (room, i)))
            _group[room.Name] = i;
        foreach (var way in cavity.Openings.Where(way => !way.IsPort && IsOpen(way)))
            Join(way.From, way.To);
        OpenPorts = [.. cavity.OpenPorts.Where(IsOpen)];
    }

    /// <summary>Ports that are neither plugged nor sealed.</summary>
    public ImmutableArray<Opening> OpenPorts { get; }

    /// <summary>Path of the gas with oil at a level in a vessel that stands so.</summary>
    public static GasPath At(Attitude attitude, double level) => new(attitude, level);

    /// <summary>
    /// Pairs of open ports with a way from one to the other through the rooms; <see cref="Opening.IsStandpipe"/> counts to none.
    /// </summary>
    public int ConnectedPairs =>
        OpenPorts.Where(port => !port.IsStandpipe).GroupBy(port => _group[port.From]).Sum(group => group.Count() * (group.Count() - 1) / 2);

    /// <summary>Whether air can leave the room.</summary>
    public bool Breathes(Room room) => OpenPorts.Any(port => _group[port.From] == _group[room.Name]);

    /// <summary>Levels at which something is sealed, ascending.</summary>
    public static ImmutableArray<double> Seals(Attitude attitude) =>
        [.. attitude.Cavity.Openings.Where(way => !way.Plugged).Select(attitude.Highest).Distinct().Order()];

    private void Join(string a, string b)
    {
        var (keep, drop) = (_group[a], _group[b]);
        foreach (var room in _cavity.Rooms.Where(room => _group[room.Name] == drop))
            _group[room.Name] = keep;
    }
}
