using System.Collections.Immutable;

namespace Vessel.Function;

/// <summary>Which rooms and ports gas can reach from each other while oil stands at a level.</summary>
internal sealed class GasPath
{
    private readonly Cavity _cavity;
    private readonly Dictionary<string, int> _group = [];

    private GasPath(Stance stance, double level)
    {
        var cavity = _cavity = stance.Cavity;
        bool IsOpen(Opening way) => !way.Plugged && way.Area > 0 && stance.Highest(way) > level;
        foreach (var (room, i) in cavity.Rooms.Select((room, i) => (room, i)))
            _group[room.Name] = i;
        foreach (var way in cavity.Openings.Where(way => !way.IsPort && IsOpen(way)))
            Join(way.From, way.To);
        OpenPorts = [.. cavity.OpenPorts.Where(IsOpen)];
    }

    /// <summary>Ports that are neither plugged nor sealed.</summary>
    public ImmutableArray<Opening> OpenPorts { get; }

    /// <summary>With oil at a level in a vessel that stands so.</summary>
    public static GasPath At(Stance stance, double level) => new(stance, level);

    /// <summary>Ways of the gas with oil at a level in an upright vessel.</summary>
    public static GasPath At(Cavity cavity, double level) => new(new(cavity, Lean.Upright), level);

    /// <summary>
    /// Pairs of open ports with a way from one to the other through the rooms; <see cref="Opening.IsStandpipe"/> counts to none.
    /// </summary>
    public int ConnectedPairs =>
        OpenPorts.Where(port => !port.IsStandpipe).GroupBy(port => _group[port.From]).Sum(group => group.Count() * (group.Count() - 1) / 2);

    /// <summary>Whether air can leave the room.</summary>
    public bool Breathes(Room room) => OpenPorts.Any(port => _group[port.From] == _group[room.Name]);

    /// <summary>Levels at which something is sealed, ascending.</summary>
    public static ImmutableArray<double> Seals(Stance stance) =>
        [.. stance.Cavity.Openings.Where(way => !way.Plugged).Select(stance.Highest).Distinct().Order()];

    private void Join(string a, string b)
    {
        var (keep, drop) = (_group[a], _group[b]);
        foreach (var room in _cavity.Rooms.Where(room => _group[room.Name] == drop))
            _group[room.Name] = keep;
    }
}
