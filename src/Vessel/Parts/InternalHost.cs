using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Parts;

/// <summary>What an internal part fits: a sleeve by name, or the shell.</summary>
internal static class InternalHost
{
    /// <summary>Id of the host's part.</summary>
    public static string Id(string? fits) => fits is null ? Names.Shell : Slug.Of(fits);

    public static string Name(string? fits) => fits ?? Names.Shell;

    /// <summary>mm.</summary>
    public static double InnerRadius(string? fits, VesselDesign design) =>
        Sleeve(fits, design)?.InnerRadius ?? design.Shell.InnerRadius;

    /// <summary>Its lower and upper end, mm in the vessel's frame.</summary>
    public static Interval Heights(string? fits, VesselDesign design)
    {
        if (Sleeve(fits, design) is not { } sleeve)
            return new(0, design.Shell.Height);
        var face = HeadSite.Of(sleeve.HangsFrom, design).InnerFace;
        return sleeve.HangsFrom == PortHost.Top ? new(face - sleeve.Length, face) : new(face, face + sleeve.Length);
    }

    /// <summary>mm.</summary>
    public static double Wall(string? fits, VesselDesign design) => Sleeve(fits, design)?.Wall ?? design.Shell.Wall;

    public static Material Material(string? fits, VesselDesign design) =>
        Sleeve(fits, design)?.Material ?? design.Shell.Material;

    private static SleeveDesign? Sleeve(string? fits, VesselDesign design) =>
        fits is null ? null : design.Inside.Sleeves.Single(sleeve => sleeve.Name == fits);
}
