using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Parts;

/// <summary>What an internal part fits: a tube that hangs inside, by name, or the shell.</summary>
internal static class InternalHost
{
    /// <summary>Ids of the parts that a disc stands in.</summary>
    public static ImmutableArray<string> Ids(DividerSpec disc, VesselDesign design) =>
        disc.Fits is null ? Names.ShellParts(disc.Height, design) : [Slug.Of(disc.Fits)];

    public static string Name(string? fits) => fits ?? Names.Shell;

    /// <summary>Inner radius of what a disc fits, mm.</summary>
    public static double InnerRadius(DividerSpec disc, VesselDesign design) =>
        Tube(disc.Fits, design)?.InnerRadius ?? design.Shell.InnerAt(disc.Height);

    /// <summary>Heights of the lower and upper end of what a disc fits, mm in the vessel's frame.</summary>
    public static Interval Heights(string? fits, VesselDesign design)
    {
        if (Tube(fits, design) is not { BoreLength: { } length } tube)
            return new(0, design.Shell.Height);
        var face = HeadSite.Of(tube.HangsFrom, design).InnerFace;
        return tube.HangsFrom == VesselEnd.Top ? new(face - length, face) : new(face, face + length);
    }

    /// <summary>mm.</summary>
    public static double Wall(string? fits, VesselDesign design) => Tube(fits, design)?.Wall ?? design.Shell.Wall;

    public static Material Material(string? fits, VesselDesign design) =>
        Tube(fits, design)?.Material ?? design.Shell.Material;

    public static HangingSpec? Tube(string? fits, VesselDesign design) =>
        fits is null ? null : design.All<HangingSpec>().Single(hanging => hanging.BoreLength is not null && hanging.Name == fits);
}
