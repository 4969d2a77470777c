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
            var wide = 2 * Math.Max(port.OuterRadius, ShellHole.HoleRadius(port));
            if (wide >= gores.CapDiameter)
            {
                yield return new Fault(FaultCodes.PortOverSeam, DesignCheck.SizePath(port),
                    $"'{port.Name}' stands over the seams between the gores of the {head.Path} head.", shown.Length(wide),
                    $"less than {shown.Length(gores.CapDiameter)}",
                    $"Use a port that is smaller, or a polar cap of more than {shown.Length(wide)}.");
            }
        }
    }
}
