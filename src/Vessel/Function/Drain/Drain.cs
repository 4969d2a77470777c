using Vessel.Design;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Function;

/// <summary>How the oil leaves: by the drain, else the lowest port, when its plug is out, and back to the sump by a hose.</summary>
/// <param name="Port">Name of the lowest port.</param>
/// <param name="Bore">Bore of the hose or the port, mm.</param>
/// <param name="Viscosity">Kinematic, m2/s.</param>
/// <param name="Depression">Pa, the upper bound; null where nothing tells it.</param>
internal sealed record Drain(
    string Port, double Bore, double Length, double Viscosity, double? Depression, Assembly Assembly, PortSite Site)
{
    private const int Steps = 40;

    /// <summary>Null where no port is low enough to drain anything.</summary>
    public static Drain? Of(Assembly assembly, FlowPath? path)
    {
        var design = assembly.Design;
        var attitude = assembly.Attitude;
        var ports = attitude.Cavity.Openings.Where(way => way.IsPort && way.Name != path?.Inlet && way.Name != path?.Vent)
            .OrderBy(attitude.Sill).ToList();
        var lowest = ports.Find(way => way.Purpose == PortPurpose.Drain) ?? ports.Find(MayDrain);
        if (lowest is null
            || (lowest.Purpose is null && attitude.VolumeBelow(attitude.Sill(lowest)) > assembly.Capacity.Usable / 2))
            return null;
        var site = assembly.Sites.First(s => s.Port.Name == lowest.Name);
        return new(
            lowest.Name,
            design.DrainBack.Bore ?? site.Port.Thread?.Bore ?? site.Port.Bore,
            lowest.Depth,
            (design.Flow.OilViscosity ?? design.Flow.Liquid.Viscosity(design.Flow.Temperature)) * 1e-6,
            design.DrainBack.Depression ?? (path?.Loss is { IsFinite: true } loss ? loss.High : null),
            assembly,
            site);
    }

    /// <summary>Where no port is said to be the drain: one that its plug, hose or pipe can be taken from.</summary>
    private static bool MayDrain(Opening way) =>
        way.Purpose is null or PortPurpose.LiquidOut or PortPurpose.LiquidIn or PortPurpose.Plugged or PortPurpose.Spare;

    /// <summary>Height down to which it drains, mm: of the mouth's lowest point, or of what its tube rises to behind that.</summary>
    public double Mouth => Assembly.Attitude.Sill(Assembly.Cavity.Openings.First(way => way.Name == Port));

    /// <summary>mm3 that stay below the mouth.</summary>
    public double Left => Assembly.Attitude.VolumeBelow(Mouth);

    /// <summary>
    /// Minutes from the usable level down to a millimetre above the mouth with the plug out: each slice of the volume at the
    /// speed of its middle level. The bore is the port's own.
    /// </summary>
    public double TimeToEmpty
    {
        get
        {
            var (bore, length) = (Site.Port.Bore * 1e-3, Length * 1e-3);
            var area = Math.PI / 4 * bore * bore;
            var (low, high) = (Mouth + 1,
                Math.Max(Mouth + 2, Assembly.Capacity.Events.IsEmpty ? Assembly.Attitude.Depth.End : Assembly.Capacity.Events[0].Height));
            // Below the mouth the oil still falls the length of an upright bung.
            var below = Math.Abs(Site.Frame.Z.Z) * length;
            var seconds = 0.0;
            var held = Assembly.Attitude.VolumeBelow(low);
            for (var i = 1; i <= Steps; i++)
            {
                var level = low + ((high - low) * i / Steps);
                var middle = level - ((high - low) / (2 * Steps));
                var next = Assembly.Attitude.VolumeBelow(level);
                seconds += (next - held) * 1e-9 / (area * OilFlow.Speed(((middle - Mouth) * 1e-3) + below, bore, length, Viscosity));
                held = next;
            }

            return seconds / 60;
        }
    }

    /// <summary>mm of oil that the depression holds up; null where it is not known.</summary>
    public double? Held => Depression is { } pascals ? pascals / (Assembly.Design.Flow.OilDensity * Air.Gravity) * 1e3 : null;

    /// <summary>L/h back to the sump through the hose; null where its head or the depression is not known.</summary>
    public double? Return
    {
        get
        {
            if (Assembly.Design.DrainBack.Head is not { } head || Held is not { } held)
                return null;
            var (bore, length) = (Bore * 1e-3, Hose(head) * 1e-3);
            var speed = OilFlow.Speed((head - held) * 1e-3, bore, length, Viscosity);
            return Math.PI / 4 * bore * bore * speed * 3600 * 1000;
        }
    }

    /// <summary>mm.</summary>
    public double Hose(double head) => Assembly.Design.DrainBack.Length ?? Math.Max(head, Length);
}
