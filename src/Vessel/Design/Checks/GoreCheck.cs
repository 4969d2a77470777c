namespace Vessel.Design;

/// <summary>Whether a dished head can be divided into such gores.</summary>
internal static class GoreCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design) => new[] { PortHost.Top, PortHost.Bottom }.Select(end =>
        design.Head(end) is DishedHead { Gores: { } gores } head && HeadShape.Of(end, design) is { } shape
            ? Size(new(design.Units), shape, head, gores) : null).OfType<Fault>();

    /// <summary>Null where the polar cap leaves gores, and they have a width at their tips.</summary>
    public static Fault? Size(Shown shown, HeadShape shape, DishedHead head, GoreDesign gores)
    {
        var middle = shape.Middle;
        var mean = middle.End.U;
        // Along the meridian of the dish a gore keeps at least one wall, and so it does across its tip.
        var most = 2 * middle.At(Math.Max(0, middle.Length - head.Flange - head.Wall)).U;
        var least = gores.Count * head.Wall / Math.PI;
        if (!(mean > head.Wall && (gores.CapDiameter > most || gores.CapDiameter < least)))
            return null;
        var isLarge = gores.CapDiameter > most;
        return new Fault(FaultCodes.GoresDoNotFit, $"{gores.Path}.cap_diameter",
            isLarge ? $"The polar cap of the {head.Path} head leaves no gores."
                : $"The gores of the {head.Path} head are less than one wall wide at their tips.",
            shown.Length(gores.CapDiameter), isLarge ? $"at most {shown.LengthDown(most)}" : $"at least {shown.LengthUp(least)}",
            isLarge ? "Make the polar cap smaller." : "Make the polar cap larger, or use fewer gores.");
    }
}
