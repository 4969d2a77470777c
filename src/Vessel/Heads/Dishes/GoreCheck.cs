using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Heads.Dishes;

/// <summary>Whether a dished head can be divided into such gores.</summary>
internal static class GoreCheck
{
    public static IEnumerable<Fault> Find(
        UnitFormat shown, VesselDesign design, VesselEnd end, DishedHead head, GoreDesign gores)
    {
        if (HeadShape.Of(end, design) is not { } shape)
            yield break;
        var middle = shape.Middle;
        var mean = middle.End.U;
        // Along the meridian of the dish a gore keeps at least one wall, and so it does across its tip.
        var most = 2 * middle.At(Math.Max(0, middle.Length - head.Flange - head.Wall)).U;
        var least = gores.Count * head.Wall / Math.PI;
        if (mean > head.Wall && (gores.CapDiameter > most || gores.CapDiameter < least))
        {
            var isLarge = gores.CapDiameter > most;
            yield return new Fault(FaultCodes.GoresDoNotFit, $"{gores.Path}.cap_diameter",
                isLarge ? $"The polar cap of the {head.Path} head leaves no gores."
                    : $"The gores of the {head.Path} head are less than one wall wide at their tips.",
                shown.Length(gores.CapDiameter), isLarge ? $"at most {shown.LengthDown(most)}" : $"at least {shown.LengthUp(least)}",
                isLarge ? "Make the polar cap smaller." : "Make the polar cap larger, or use fewer gores.");
            yield break;
        }

        foreach (var site in PortSites.Of(design).All.Where(stand => stand.Port.End == end && stand.Misfit == PortMisfit.None)
            .Select(stand => stand.Site!))
        {
            if (SeamStraddle(shown, shape, gores, site) is { } over)
                yield return over;
        }
    }

    /// <summary>The end that a head of gores closes.</summary>
    private static string Names(GoreDesign gores) => gores.Path[..gores.Path.LastIndexOf('.')];

    /// <summary>
    /// A port stands on one piece, with its weld or hole on the outer face and its hole on the inner one. Seams are cut square to the wall,
    /// so that the inner face has less room for a hole with parallel sides.
    /// </summary>
    private static Fault? SeamStraddle(UnitFormat shown, HeadShape shape, GoreDesign gores, PortSite site)
    {
        var port = site.Port;
        var places = site.Round(site.Outside, Math.Max(port.OuterRadius, port.HoleRadius))
            .Concat(site.Round(site.Inside, port.HoleRadius)).ToList();
        var reach = places.ConvertAll(at => 2 * shape.OnMiddle(shape.Frame.ToLocal(at)));
        var path = port.Place.Radius > 0 ? $"{port.Path}.at.radius" : port.SizeKey;
        var (most, least) = (reach.Max(), reach.Min());
        if (gores.IsInCap(port, shape))
        {
            return most < gores.CapDiameter ? null : new Fault(FaultCodes.PortOverSeam, path,
                $"'{port.Name}' stands over the seam of the polar cap of the {Names(gores)} head.", shown.Length(most),
                $"less than {shown.LengthDown(gores.CapDiameter)}",
                $"Use a port that is smaller or nearer to the pole, or a polar cap of more than {shown.LengthUp(most)}.");
        }

        if (least <= gores.CapDiameter)
        {
            return new Fault(FaultCodes.PortOverSeam, path,
                $"'{port.Name}' stands over the seam of the polar cap of the {Names(gores)} head.", shown.Length(least),
                $"more than {shown.LengthUp(gores.CapDiameter)}",
                $"Use a port that is smaller or further from the pole, or a polar cap of less than {shown.LengthDown(least)} or of more "
                    + $"than {shown.LengthUp(most)}.");
        }

        var turns = places.ConvertAll(
            at => Turns.Signed(Math.Atan2(at.Y, at.X) - port.Place.Angle));
        var taken = new Interval(port.Place.Angle + turns.Min(), port.Place.Angle + turns.Max());
        if (gores.Seams.Angles.Where(seam => Turns.From(seam, taken.Start) <= taken.End).Select(seam => (double?)seam)
            .FirstOrDefault() is not { } over)
            return null;
        return new Fault(FaultCodes.PortOverSeam, $"{port.Path}.at",
            $"'{port.Name}' stands over a seam between two gores of the {Names(gores)} head.",
            $"seam at {shown.Angle(Turns.From(over, 0))}",
            $"outside {shown.AngleDown(taken.Start)} to {shown.AngleUp(taken.End)}",
            taken.Length < gores.Seams.Pitch
                ? $"Turn the gores: 'seam_angle: {shown.Angle(Turns.From(taken.At(0.5) + (gores.Seams.Pitch / 2), 0))}' has it amid one."
                : "Use fewer gores, a smaller port, or a wider polar cap with the port in it.");
    }
}
