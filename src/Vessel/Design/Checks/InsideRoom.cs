namespace Vessel.Design;

/// <summary>Heights between which something can stand inside the vessel, mm.</summary>
internal static class InsideRoom
{
    /// <summary>The lower face of the head from which caps and sleeves hang; NaN where it is not flat.</summary>
    public static double Ceiling(VesselDesign design) =>
        design.Top.Plate is not null ? UpperEnd(design) : double.NaN;

    /// <summary>The bottom's inner face at that distance from the axis.</summary>
    public static double Floor(VesselDesign design, double radius)
    {
        if (HeadShape.Of(VesselEnd.Bottom, design) is not { } shape)
            return design.Bottom.Plate is not null ? LowerEnd(design) : double.NaN;
        return -shape.DepthAt(radius);
    }

    /// <summary>The lower end of the bore of full width.</summary>
    public static double LowerEnd(VesselDesign design) => design.Bottom.Depth;

    /// <summary>The upper end of the bore of full width.</summary>
    public static double UpperEnd(VesselDesign design) => design.Shell.Height - design.Top.Depth;
}
