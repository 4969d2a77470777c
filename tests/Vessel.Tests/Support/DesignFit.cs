using Vessel.Design;
using Vessel.Geometry;
using Vessel.Heads.FlatHeads;
using Vessel.Reading;
using Vessel.Sites;

namespace Vessel.Tests.Support;

/// <summary>What random designs keep to: the checks take them, and holes stay two walls off ends, heads, seam and each other.</summary>
internal static class DesignFit
{
    public static bool Holds(VesselDesign vessel) => IsTaken(vessel) && Enumerable.Range(0, vessel.Ports.Length).All(i =>
        HasRoom(vessel with { Ports = vessel.Ports[..i] }, vessel.Ports[i] with { Elbow = null, Windows = [] }));

    public static bool IsTaken(VesselDesign vessel) => !DesignCheck.Find(vessel).Any();

    public static bool HasRoom(VesselDesign vessel, PortDesign port) => port.Host == PortHost.Shell
        ? HasRoomOnShell(vessel, port)
        : HasRoomOnHead(vessel, port);

    /// <summary>Grown by two walls it would still be taken.</summary>
    private static bool HasRoomOnHead(VesselDesign vessel, PortDesign port) => IsTaken(Wider(vessel, port, vessel.Head(port).Wall));

    private static VesselDesign Wider(VesselDesign vessel, PortDesign port, double wall) => vessel with
    {
        Ports = vessel.Ports.Add(
            port with { OutsideDiameter = port.OutsideDiameter + (4 * wall), Bore = port.Bore + (4 * wall), Length = 1000 }),
    };

    private static double Wide(PortDesign port) => port.OuterRadius + port.Clearance;

    private static bool HasRoomOnShell(VesselDesign vessel, PortDesign port)
    {
        var shell = vessel.Shell;
        if (Math.Abs(port.Place.Offset) + port.BoreRadius > 0.9999 * shell.InnerRadius
            || Math.Abs(port.Place.Offset) + port.OuterRadius > 0.9999 * shell.OuterRadius)
        {
            return false;
        }

        var box = Box(shell, port);
        var over = PortSites.Of(vessel).Stand(port).Site?.Over;
        bool Stands(VesselEnd end, bool isClear) => over == end ? IsTaken(Wider(vessel, port, shell.Wall)) : isClear;
        return Stands(VesselEnd.Bottom, box.Low.V > Depth(vessel.Bottom))
            && Stands(VesselEnd.Top, box.High.V < shell.Height - Depth(vessel.Top))
            && (shell.MadeFrom == StockForm.Tube || !Covers(box, shell.SeamAngle, shell.SeamAngle))
            && vessel.Ports.Where(other => other.Host == PortHost.Shell).Select(other => Box(shell, other)).All(other =>
                other.High.V < box.Low.V || other.Low.V > box.High.V || !Covers(box, other.Low.U, other.High.U));
    }

    private static double Depth(HeadDesign head) => head is FlatHead { Seat: Seat.Inset } flat ? flat.Recess + flat.Wall : 0;

    private static bool Covers((Point2 Low, Point2 High) box, double from, double to) =>
        Turns.From(from, box.Low.U) < box.High.U || Turns.From(box.Low.U, from) < to;

    /// <summary>Hole and footprint on every radius of the wall and one wall round them, in (angle, height).</summary>
    private static (Point2 Low, Point2 High) Box(ShellDesign shell, PortDesign port)
    {
        var (place, margin) = (port.Place, shell.Wall);
        var r = Wide(port);
        var away = Math.Sqrt((shell.OuterRadius * shell.OuterRadius) - (place.Offset * place.Offset));
        var points =
            from share in (double[])[0, 0.5, 1]
            from i in Enumerable.Range(0, 360)
            let p = shell.OuterRadius - (share * shell.Wall)
            let phi = Turns.Full * i / 360
            // A set-on tube may stand wider than the inner face.
            let y = Math.Clamp(place.Offset + (r * Math.Sin(phi)), -p, p)
            let x = Math.Sqrt((p * p) - (y * y))
            select new Point2(
                place.Angle + Math.Atan2(y, x),
                place.Height + ((x - away) * Math.Tan(place.Tilt)) - (r * Math.Cos(phi) / Math.Cos(place.Tilt)));
        var all = points.ToList();
        var side = margin / shell.InnerRadius;
        return (new(all.Min(q => q.U) - side, all.Min(q => q.V) - margin), new(all.Max(q => q.U) + side, all.Max(q => q.V) + margin));
    }
}
