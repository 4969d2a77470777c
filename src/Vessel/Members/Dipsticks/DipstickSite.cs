using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Members.Dipsticks;

/// <summary>Where the dipstick stands: on its port's axis, its tip above the first metal below.</summary>
/// <param name="Tip">Tip in the vessel's frame.</param>
/// <param name="Up">Along the port's axis, outward; unit.</param>
/// <param name="Mouth">Distance from the tip to the port's free end, mm.</param>
/// <param name="Foot">Distance from the tip to where the axis meets the inside of what the port stands in, mm.</param>
public sealed record DipstickSite(DipstickDesign Stick, PortSite Port, Vector3 Tip, Vector3 Up, double Mouth, double Foot)
{
    private const int Lines = 16;

    /// <summary>A stick that leans more than this from the plumb line cannot be read. Common practice, no source.</summary>
    private static readonly double _leastRise = Math.Cos(70 * Math.PI / 180);

    public double Length => Mouth + Stick.Above;

    /// <summary>Distance from the tip to where oil at a level stands, along the stick; mm.</summary>
    public double At(double level) => (level - Tip.Z) / Up.Z;

    /// <summary>Null where its port does not lead down into the vessel.</summary>
    public static DipstickSite? Of(DipstickDesign stick, VesselDesign design, IEnumerable<PortSite> sites)
    {
        if (sites.FirstOrDefault(site => site.Port.Name == stick.Port) is not { } port || port.Frame.Z.Z < _leastRise)
            return null;

        var foot = port.InsideAxis;
        var reach = Reach(design, sites.Where(site => site != port), port, foot, stick.Diagonal / 2) - stick.Clear;
        return reach > 0
            ? new(stick, port, port.Frame.ToOuter(new(0, 0, foot - reach)), port.Frame.Z, port.Port.Length - foot + reach, reach)
            : null;
    }

    /// <summary>
    /// How far a round rod can go in along the axis, from the host's inside; mm. Lines along its outside meet what stands there.
    /// </summary>
    private static double Reach(VesselDesign design, IEnumerable<PortSite> others, PortSite port, double foot, double radius)
    {
        var inside = InsideProfile.Of(design);
        var rings = InsideSpec.BodiesIn(design)
            .Concat(others.Select(other => other.UprightBody).OfType<InsideBody>().Where(body => body.IsRound))
            .SelectMany(body => body.Rings).ToList();
        var down = -1 * port.Frame.Z;
        var free = Enumerable.Range(0, Lines).Min(i =>
        {
            var from = port.Frame.ToOuter(Footprint.OnLine(radius, Turns.Full * i / Lines, foot));
            // Where a line from below would enter the room, one from above leaves it.
            var floor = inside.FirstHit(from, port.Frame.Z) is { } hit ? -hit.Along : 0;
            return rings.Select(ring => ring.FirstMeeting(from, down)).OfType<double>().Append(floor).Min();
        });
        return others.Aggregate(free, (least, other) => Math.Min(least, BesideTube(port, other, foot, least, radius)));
    }

    /// <summary>The same before another port's tube: to the last place, by halves, where the rod is still clear of it.</summary>
    private static double BesideTube(PortSite port, PortSite other, double foot, double free, double radius)
    {
        if (other.InnerEnd >= 0)
            return free;
        bool Clear(double reach) => Segments.Distance(
            port.Frame.ToOuter(new(0, 0, foot)), port.Frame.ToOuter(new(0, 0, foot - reach)),
            other.Frame.ToOuter(new(0, 0, other.InnerEnd)), other.Frame.Origin) > other.Port.OuterRadius + radius;
        if (Clear(free))
            return free;
        var (low, high) = (0.0, free);
        while (high - low > 0.01)
            (low, high) = Clear((low + high) / 2) ? ((low + high) / 2, high) : (low, (low + high) / 2);
        return low;
    }
}
