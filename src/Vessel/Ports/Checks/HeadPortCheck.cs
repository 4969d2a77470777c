using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Ports;

/// <summary>Whether a port in a head finds room there.</summary>
internal static class HeadPortCheck
{
    /// <summary>What is proposed is then good to a ten-thousandth of what was given.</summary>
    private const int Halvings = 14;

    private const int Lines = 120;

    /// <summary>Enough to propose by.</summary>
    private const int FewLines = 24;

    public static IEnumerable<Fault> Find(PortSites sites)
    {
        var (shown, design) = (new UnitFormat(sites.Design.Units), sites.Design);
        foreach (var stand in sites.All)
        {
            var port = stand.Port;
            if (port.End is not { } end)
                continue;
            var fault = design.Head(port).Plate is { } flat ? OnFlat(shown, design.Shell.AtEnd(end), flat, port)
                : sites.Shape(end) is { } shape ? OnShape(shown, sites, shape, stand)
                : AtTip(shown, design, port, end);
            if (fault is not null)
                yield return fault;
        }
    }

    private static Fault? OnFlat(UnitFormat shown, ShellSection shell, HeadPlate head, PortDesign port)
    {
        // The port stands on the plate, and its hole leaves as much metal to the rim as the thinner of the two welded there has; an
        // overlay's port must also open into the shell's bore.
        var (rim, hole) = (head.OutsideDiameter / 2, port.HoleRadius);
        var left = Math.Min(head.Wall, port.Wall);
        if (port.Place.Radius + port.OuterRadius > rim)
            return Off(shown, port, port.OuterRadius, rim, "on the plate");
        if (port.Place.Radius + hole > rim - left)
            return Off(
                shown, port, hole, rim - left, $"far enough inside the plate's rim: its hole must leave {shown.Length(left)} of metal");
        return !head.IsInset && port.Place.Radius + hole > shell.InnerRadius
            ? Off(shown, port, hole, shell.InnerRadius, "inside the shell's bore")
            : null;
    }

    private static Fault? OnShape(UnitFormat shown, PortSites sites, HeadShape shape, PortStand stand)
    {
        var port = stand.Port;
        if (!double.IsFinite(port.OuterRadius + port.HoleRadius + port.Place.Radius + port.Place.Angle)
            || Fits(shape, stand, Lines))
        {
            return null;
        }

        var most = Most(
            radius => Fits(shape, sites.Stand(port with { Place = port.Place with { Radius = radius } }), FewLines), port.Place.Radius);
        return new Fault(
            FaultCodes.PortOffHead,
            most > 0 ? $"{port.Path}.at.radius" : port.SizeKey,
            $"'{port.Name}' does not stay on the head, one wall from its rim.",
            shown.Length(most > 0 ? port.Place.Radius : port.OutsideDiameter),
            most > 0 ? $"at most {shown.LengthDown(most)}" : $"less than {shown.LengthDown(2 * shape.Outer.End.U)}",
            most > 0 ? $"Use a radius of at most {shown.LengthDown(most)}, or a smaller port." : "Use a smaller port.");
    }

    /// <summary>A port that closes a cone's tip must leave some of the cone; where it does not there is no shape to ask.</summary>
    private static Fault? AtTip(UnitFormat shown, VesselDesign design, PortDesign port, VesselEnd end) =>
        design.Head(end).IsClosedByPort && HeadShape.IsAtPole(port, end)
            && HeadShape.TipOf(port) >= design.Shell.AtEnd(end).InnerRadius
            ? new(
                FaultCodes.PortOffHead, port.SizeKey, $"'{port.Name}' does not stay on the head, one wall from its rim.",
                shown.Length(port.OutsideDiameter), $"less than {shown.LengthDown(2 * design.Shell.AtEnd(end).InnerRadius)}",
                "Use a smaller port.")
            : null;

    /// <summary>All lines round the port meet both faces and leave one wall of metal between them and the rim.</summary>
    private static bool Fits(HeadShape shape, PortStand stand, int lines)
    {
        return stand is { Misfit: PortMisfit.None, Site: { } site }
            && Clear(shape.Outer, site.Outside, Math.Max(site.Port.OuterRadius, site.OpeningRadius))
                && Clear(shape.Inner, site.Inside, site.OpeningRadius);

        // A line that misses has a place beside the face.
        bool Clear(Profile face, Footprint on, double radius) => site.Round(on, radius, lines).Select(shape.Frame.ToLocal).All(at =>
            face.Nearest(new(double.Hypot(at.X, at.Y), at.Z)).Along <= face.Length - shape.Wall);
    }

    /// <summary>The greatest radius, below one that does not, at which a port fits; zero for none.</summary>
    private static double Most(Func<double, bool> fits, double above)
    {
        var (low, high) = (0.0, above);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = fits(middle) ? (middle, high) : (low, middle);
        }

        return low;
    }

    private static Fault Off(UnitFormat shown, PortDesign port, double wide, double room, string where)
    {
        var fits = wide <= room;
        return new Fault(
            FaultCodes.PortOffHead,
            fits ? $"{port.Path}.at.radius" : port.SizeKey,
            $"'{port.Name}' does not stay {where}.",
            shown.Length(port.Place.Radius + wide),
            $"at most {shown.LengthDown(room)}",
            fits ? $"Use a radius of at most {shown.LengthDown(room - wide)}, or a smaller port." : "Use a smaller port.");
    }
}
