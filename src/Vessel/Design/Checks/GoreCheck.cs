namespace Vessel.Design;

/// <summary>Whether a hemisphere can be divided into such gores.</summary>
internal static class GoreCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design) =>
        new[] { PortHost.Top, PortHost.Bottom }.SelectMany(end => design.Head(end) is HemisphereHead { Gores: { } gores } head
            ? Find(new Shown(design.Units), design, end, head, gores)
            : []);

    private static IEnumerable<Fault> Find(
        Shown shown, VesselDesign design, PortHost end, HemisphereHead head, GoreDesign gores)
    {
        var mean = design.Shell.OuterRadius - (head.Wall / 2);
        // Along the meridian a gore keeps at least one wall, and so it does across its tip.
        var most = 2 * mean * Math.Cos(head.Wall / mean);
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
            if (Reach(design, end, port) is var reach && 2 * mean * reach >= gores.CapDiameter)
            {
                var wide = 2 * mean * reach;
                yield return new Fault(FaultCodes.PortOverSeam,
                    port.Place.Radius > 0 ? $"{port.Path}.at.radius" : DesignCheck.SizePath(port),
                    $"'{port.Name}' stands over the seams between the gores of the {head.Path} head.", shown.Length(wide),
                    $"less than {shown.Length(gores.CapDiameter)}",
                    $"Use a port that is smaller or nearer to the pole, or a polar cap of more than {shown.Length(wide)}.");
            }
        }
    }

    /// <summary>
    /// Sine of the greatest angle at the sphere's centre between the pole and a place of the port: of its weld or hole on the
    /// outer face, or of its hole on the inner one. The cap's edge is cut square to the sphere, so it lies at one angle on both,
    /// and the inner face, being the smaller sphere, has less room for a hole with parallel sides.
    /// </summary>
    private static double Reach(VesselDesign design, PortHost end, PortDesign port)
    {
        var hole = ShellHole.HoleRadius(port);
        var wide = Math.Max(port.OuterRadius, hole);
        if (HeadShape.Of(end, design) is not { } shape || HeadFooting.Of(shape, port) is not { } footing || !footing.Takes(wide, hole))
            return double.NaN;
        return footing.Round(footing.Outside, wide).Concat(footing.Round(footing.Inside, hole))
            .Max(at => double.Hypot(at.X, at.Y) / at.Length);
    }
}
