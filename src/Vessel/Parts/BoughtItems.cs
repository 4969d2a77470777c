using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Parts;

/// <summary>What the design asks for that is bought.</summary>
internal static class BoughtItems
{
    /// <summary>Fittings in the order of the ports, then what walls and members need.</summary>
    public static ImmutableArray<BoughtItem> Of(VesselDesign design, IEnumerable<Wall> walls, ImmutableArray<Member> members) =>
    [
        .. design.Ports.Where(port => port.Fitting is not null).Select(Fitting),
        .. walls.SelectMany(wall => wall.Bought),
        .. members.SelectMany(member => member.Bought),
    ];

    private static BoughtItem Fitting(PortDesign port) => new(
        $"fitting of {port.Name}", 1, $"{port.Fitting!.Name}, {port.Fitting.Thread}", null, null, port.Path);
}
