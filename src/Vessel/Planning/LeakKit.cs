using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;
using Vessel.Joints;

namespace Vessel.Planning;

/// <summary>What shuts the ports at the leak test, and where leaks are looked for.</summary>
/// <param name="Test">Pressure and medium of the test.</param>
/// <param name="Blanks">Port and what shuts it.</param>
/// <param name="Points">Weld's number or port, and what to look at.</param>
public sealed record LeakKit(
    LeakTestDesign Test, ImmutableArray<(string Port, string Blank)> Blanks, ImmutableArray<(string Where, string What)> Points)
{
    public static LeakKit Of(VesselDesign design, IEnumerable<Joint> joints) => new(
        design.LeakTest,
        [.. design.Ports.Select(port => (port.Name, Blank(port)))],
        [
            .. from joint in joints
               let place = joint.Role.IsWall() ? ", all along" : joint.Words?.Leaks
               where place is not null
               select (joint.Number, joint.Name + place),
            .. design.Ports.Where(port => port.Thread is not null).Select(port => (port.Name, "round the blank in its thread")),
        ]);

    private static string Blank(PortDesign port) => port.Thread is { } thread
        ? $"plug {thread.Name}"
        : port.Fitting is { } fitting ? $"cap {fitting.Name}"
        : string.Create(CultureInfo.InvariantCulture, $"clamped plug for a bore of {port.Bore:0.#} mm");
}
