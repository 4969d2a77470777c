using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>Whether a dished head can be divided into such gores.</summary>
internal static class GoreCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design) =>
        new[] { PortHost.Top, PortHost.Bottom }.SelectMany(end => design.Head(end) is DishedHead { Gores: { } gores } head
            ? Find(new Shown(design.Units), design, end, head, gores)
            : []);

    private static IEnumerable<Fault> Find(
        Shown shown, VesselDesign design, PortHost end, DishedHead head, GoreDesign gores)
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
                shown.Length(gores.CapDiameter), isLarge ? $"at most {shown.Length(most)}" : $"at least {shown.Length(least)}",
                isLarge ? "Make the polar cap smaller." : "Make the polar cap larger, or use fewer gores.");
            yield break;
        }

        foreach (var port in design.Ports.Where(p => p.Host == end))
        {
            if (2 * Reach(shape, middle, port) is var wide && wide >= gores.CapDiameter)
            {
                yield return new Fault(FaultCodes.PortOverSeam,
                    port.Place.Radius > 0 ? $"{port.Path}.at.radius" : DesignCheck.SizePath(port),
                    $"'{port.Name}' stands over the seams between the gores of the {head.Path} head.", shown.Length(wide),
                    $"less than {shown.Length(gores.CapDiameter)}",
                    $"Use a port that is smaller or nearer to the pole, or a polar cap of more than {shown.Length(wide)}.");
            }
        }
    }

    /// <summary>
    /// The greatest distance from the axis, on the middle of the wall, of what lies square across it at a place of the port: of its
    /// weld or hole on the outer face, or of its hole on the inner one. The cap's edge is cut square to the wall, so that the inner
    /// face has less room for a hole with parallel sides.
    /// </summary>
    private static double Reach(HeadShape shape, Profile middle, PortDesign port)
    {
        var hole = ShellHole.HoleRadius(port);
        var wide = Math.Max(port.OuterRadius, hole);
        if (HeadFooting.Of(shape, port) is not { } footing || !footing.Takes(wide, hole))
            return double.NaN;
        return footing.Round(footing.Outside, wide).Concat(footing.Round(footing.Inside, hole))
            .Max(at => middle.Nearest(new(double.Hypot(at.X, at.Y), at.Z)).At.U);
    }
}
