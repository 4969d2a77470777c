using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Heads.Cones;

/// <summary>A cone whose tip nothing closes, segments too narrow at their tips, and ports over a seam.</summary>
internal static class ConeCheck
{
    public static IEnumerable<Fault> Find(UnitFormat shown, VesselDesign design, VesselEnd end, ConeHead cone)
    {
        if (Tip(shown, design, end, cone) is { } open)
            yield return open;
        if (cone.Segments > 1 && Narrow(shown, design, end, cone) is { } narrow)
            yield return narrow;
        foreach (var over in OverSeams(shown, design, end, cone))
            yield return over;
    }

    /// <summary>Ports over a seam, but for the one that closes the tip.</summary>
    public static IEnumerable<Fault> OverSeams(UnitFormat shown, VesselDesign design, VesselEnd end, ConeHead cone) =>
        double.IsFinite(cone.SeamAngle + cone.RootGap)
            ? PortSites.Of(design).All
                .Where(stand => stand.Port.End == end && stand.Port.Place.Radius > 0 && stand.Misfit == PortMisfit.None)
                .Select(stand => SeamStraddle(shown, cone, stand.Site!)).OfType<Fault>()
            : [];

    private static Fault? SeamStraddle(UnitFormat shown, ConeHead cone, PortSite site)
    {
        var port = site.Port;
        // Half the gap counts to the seam, where it is widest in angle: at the port's place nearest to the axis.
        var places = site.Round(site.Outside, Math.Max(port.OuterRadius, port.HoleRadius))
            .Concat(site.Round(site.Inside, port.HoleRadius)).ToList();
        var half = cone.RootGap / 2 / places.Min(at => double.Hypot(at.X, at.Y));
        var turns = places.ConvertAll(at => Turns.Signed(Math.Atan2(at.Y, at.X) - port.Place.Angle));
        var taken = new Interval(port.Place.Angle + turns.Min() - half, port.Place.Angle + turns.Max() + half);
        if (cone.Seams.Angles.Where(seam => Turns.From(seam, taken.Start) <= taken.End).Select(seam => (double?)seam)
            .FirstOrDefault() is not { } over)
            return null;
        return new Fault(FaultCodes.PortOverSeam, $"{port.Path}.at",
            $"'{port.Name}' stands over {(cone.Segments > 1 ? "a" : "the")} seam of the {cone.Path} cone.",
            $"seam at {shown.Angle(Turns.From(over, 0))}",
            $"outside {shown.AngleDown(taken.Start)} to {shown.AngleUp(taken.End)}",
            cone.Segments == 1 ? $"Turn the cone: 'seam_angle: {shown.Angle(Turns.From(port.Place.Angle + Math.PI, 0))}' lies opposite."
            : taken.Length < cone.Pitch
            ? $"Turn the cone: 'seam_angle: {shown.Angle(Turns.From(taken.At(0.5) + (cone.Pitch / 2), 0))}' has it amid a segment."
            : "Use fewer segments, or a smaller port.");
    }

    /// <summary>A segment keeps at least one wall across its tip, on the middle of the wall.</summary>
    private static Fault? Narrow(UnitFormat shown, VesselDesign design, VesselEnd end, ConeHead cone)
    {
        if (HeadShape.Of(end, design) is not { Tip: > 0 } shape || !double.IsFinite(cone.RootGap))
            return null;
        var wide = (shape.Tip * cone.Pitch) - cone.RootGap;
        return wide >= cone.Wall ? null : new Fault(
            FaultCodes.SegmentsDoNotFit, $"{cone.Path}.segments",
            $"The segments of the {cone.Path} cone are less than one wall wide at their tips.", shown.Length(Math.Max(0, wide)),
            $"at least {shown.LengthUp(cone.Wall)}", "Use fewer segments, or a wider port at the pole.");
    }

    private static Fault? Tip(UnitFormat shown, VesselDesign design, VesselEnd end, ConeHead cone)
    {
        if (design.Ports.FirstOrDefault(p => HeadShape.IsAtPole(p, end)) is not { } port)
        {
            // A port whose place is at fault may be meant for it.
            return design.Ports.Any(p => p.End == end && double.IsNaN(p.Place.Radius)) ? null
                : new Fault(FaultCodes.ConeTipOpen, cone.Path,
                    $"Nothing closes the tip of the {cone.Path} cone, and a pointed one can be neither cut nor welded.", null, null,
                    $"Add a port with 'in: {cone.Path}, at: {{ radius: 0 }}'.");
        }

        // The tip is cut square to the sheet, so that its inner edge is narrower than a bore taken on the outside.
        var least = cone.Wall * Math.Cos(cone.HalfAngle);
        return port.Joint == PortJoint.SetOn && port.BoreRadius <= least
            ? new Fault(FaultCodes.ConeTipOpen, port.SizeKey,
                $"The bore of '{port.Name}' is too narrow for the tip of a cone so thick.", shown.Length(port.Bore),
                $"more than {shown.LengthUp(2 * least)}", "Make its bore wider, or use 'joint: set_in'.")
            : null;
    }
}
