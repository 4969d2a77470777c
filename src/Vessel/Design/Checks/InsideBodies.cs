namespace Vessel.Design;

/// <summary>The rings of which each part inside the vessel is made up.</summary>
internal static class InsideBodies
{
    /// <summary>Sleeves, caps and discs.</summary>
    public static IEnumerable<InsideBody> OfInside(VesselDesign design) =>
    [
        .. design.Inside.Sleeves.Select(sleeve => Of(design, sleeve)),
        .. design.Inside.Caps.Select(cap => Of(design, cap)),
        .. design.Inside.Discs.Select(Of),
    ];

    /// <summary>What reaches in from the heads.</summary>
    public static IEnumerable<InsideBody> OfPorts(VesselDesign design) => design.Ports
        .Where(p => p.Host != PortHost.Shell && p.Joint == PortJoint.SetIn && p.InsideLength > 0 && !Leans(design, p))
        .Select(p => OfPort(design, p));

    public static InsideBody Of(VesselDesign design, CapDesign cap)
    {
        var ceiling = InsideRoom.Ceiling(design);
        var (outer, inner) = (cap.OutsideDiameter / 2, (cap.OutsideDiameter / 2) - cap.Wall);
        var under = ceiling - (cap.Opens == CapOpening.Up ? cap.Skirt : cap.Drop);
        var plate = new Ring(OpeningRadius(design, cap), outer, under - cap.Wall, under);
        var skirt = cap.Opens == CapOpening.Up
            ? new Ring(inner, outer, under, ceiling)
            : new Ring(inner, outer, plate.Low - cap.Skirt, plate.Low);
        return new InsideBody(cap.Path, cap.Name, [plate, skirt]);
    }

    public static InsideBody Of(VesselDesign design, SleeveDesign sleeve)
    {
        var ceiling = InsideRoom.Ceiling(design);
        return new InsideBody(sleeve.Path, sleeve.Name,
            [new Ring(sleeve.InnerRadius, sleeve.OutsideDiameter / 2, ceiling - sleeve.Length, ceiling)]);
    }

    public static InsideBody Of(DiscDesign disc) => new(disc.Path, disc.Name,
        [new Ring(disc.Bore / 2, disc.OutsideDiameter / 2, disc.Height, disc.Height + disc.Thickness)]);

    /// <summary>Of the opening in the middle of a cap's plate: for the outlet's tube, or to drain it; mm.</summary>
    public static double OpeningRadius(VesselDesign design, CapDesign cap) => cap.Opens == CapOpening.Up
        ? cap.DrainHole / 2
        : (InsideNames.Outlet(cap.Outlet, cap.HangsFrom, design.Ports)?.OuterRadius ?? double.NaN) + cap.Clearance;

    /// <summary>Whether a port's axis is not the vessel's, nor parallel to it.</summary>
    public static bool Leans(VesselDesign design, PortDesign port) => port.Host == PortHost.Shell
        || (port.Place is { SquareToSurface: true, Radius: > 0 } && design.Head(port.Host) is not FlatHead);

    private static InsideBody OfPort(VesselDesign design, PortDesign port)
    {
        var (end, inward) = port.Host == PortHost.Top
            ? (InsideRoom.UpperEnd(design), -1)
            : (InsideRoom.LowerEnd(design), 1);
        var from = HeadShape.Of(port.Host, design) is { } shape ? end - (inward * shape.DepthAt(port.Place.Radius)) : end;
        var to = from + (inward * port.InsideLength);
        var (low, high) = (Math.Min(from, to), Math.Max(from, to));
        var aside = port.Place.Radius;
        return aside > 0
            ? new InsideBody(port.Path, port.Name,
                [new Ring(Math.Max(0, aside - port.OuterRadius), aside + port.OuterRadius, low, high)], false)
            : new InsideBody(port.Path, port.Name, [new Ring(port.BoreRadius, port.OuterRadius, low, high)]);
    }
}
