using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>Which rooms and ports gas can reach from each other while oil stands at a level.</summary>
internal sealed class GasPath
{
    private readonly Cavity _cavity;
    private readonly Dictionary<string, int> _group = [];

    private GasPath(Cavity cavity, double level)
    {
        _cavity = cavity;
        foreach (var (room, i) in cavity.Rooms.Select((room, i) => (room, i)))
            _group[room.Name] = i;
        foreach (var way in cavity.Openings.Where(way => !way.IsPort && IsOpen(way, level)))
            Join(way.From, way.To);
        OpenPorts = [.. cavity.OpenPorts.Where(port => IsOpen(port, level))];
    }

    /// <summary>Ports that are neither plugged nor sealed.</summary>
    public ImmutableArray<Opening> OpenPorts { get; }

    public static GasPath At(Cavity cavity, double level) => new(cavity, level);

    /// <summary>Pairs of open ports with a way from one to the other through the rooms.</summary>
    public int ConnectedPairs =>
        OpenPorts.GroupBy(port => _group[port.From]).Sum(group => group.Count() * (group.Count() - 1) / 2);

    /// <summary>Whether air can leave the room.</summary>
    public bool Breathes(Room room) => OpenPorts.Any(port => _group[port.From] == _group[room.Name]);

    /// <summary>Heights at which something is sealed, ascending.</summary>
    public static ImmutableArray<double> Seals(Cavity cavity) =>
        [.. cavity.Openings.Where(way => !way.Plugged).Select(way => way.Highest).Distinct().Order()];

    private static bool IsOpen(Opening way, double level) => !way.Plugged && way.Area > 0 && way.Highest > level;

    private void Join(string a, string b)
    {
        var (keep, drop) = (_group[a], _group[b]);
        foreach (var room in _cavity.Rooms.Where(room => _group[room.Name] == drop))
            _group[room.Name] = keep;
    }
}
