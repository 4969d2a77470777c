using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Parts;

/// <summary>What an internal part fits: a sleeve by name, or the shell.</summary>
internal static class InternalHost
{
    /// <summary>Ids of the parts that a disc stands in.</summary>
    public static ImmutableArray<string> Ids(DiscDesign disc, VesselDesign design) =>
        disc.Fits is null ? Names.ShellParts(disc.Height, design) : [Slug.Of(disc.Fits)];

    public static string Name(string? fits) => fits ?? Names.Shell;

    /// <summary>Of what a disc fits, mm.</summary>
    public static double InnerRadius(DiscDesign disc, VesselDesign design) =>
        Sleeve(disc.Fits, design)?.InnerRadius ?? design.Shell.InnerAt(disc.Height);

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
