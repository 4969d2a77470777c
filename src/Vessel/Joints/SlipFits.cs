using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Joints;

/// <summary>Tools for fits: what a size may be off by, as it is made.</summary>
/// <remarks>
/// Sheet is taken as cut by laser; tubes as their standard has them; holes drilled in tubes and turned bungs as of the shop's usual work. A
/// rolled bore is its blank's length over pi less the sheet's thickness, and what its long seams draw in; out of round a thin wall is
/// pulled over the plate.
/// </remarks>
public static class SlipFits
{
    /// <summary>A level plate in its bore.</summary>
    internal static SlipFit Divider(DividerSpec disc, VesselDesign vessel)
    {
        var sleeve = InternalHost.Tube(disc.Fits, vessel);
        return new(
            $"'{disc.Name}' in {(sleeve is null ? Names.Shell : $"'{sleeve.Name}'")}",
            Joint.Sides(InternalHost.Ids(disc, vessel), [Slug.Of(disc.Name)]),
            2 * disc.Clearance,
            [
                .. sleeve is null ? ShellBore(vessel.Shell.At(disc.Height))
                    : TubeBore(sleeve.Name, sleeve.OutsideDiameter, sleeve.Wall, sleeve.Material),
                Laser($"diameter of '{disc.Name}'", disc.OutsideDiameter, disc.Thickness),
            ],
            $"{disc.Path}.clearance");
    }

    /// <summary>What a butt draws in across itself, as a share of its mean width. Common practice, from memory.</summary>
    private const double SeamShare = 0.1;

    /// <summary>
    /// By how much a seam may differ from what the shop has measured of others, as a share of that. Common practice, no source.
    /// </summary>
    private const double SeamScatter = 0.5;

    /// <summary>Between the greatest and the least diameter of a rolled shell, as a share of it: ASME VIII-1, UG-80, from memory.</summary>
    private const double OutOfRound = 0.01;

    /// <summary>The bore of the shell, as it is made.</summary>
    internal static ImmutableArray<FitShare> ShellBore(ShellSection shell)
    {
        var bore = 2 * shell.InnerRadius;
        var course = shell.Course;
        if (!course.IsRolled)
            return TubeBore("shell", 2 * shell.OuterRadius, shell.Wall, shell.Material);
        var (sheets, blank) = (course.Seams.Count, (Math.Tau * shell.MidRadius / course.Seams.Count) - course.RootGap);
        var shrinkage = course.Shell.Rolls.SeamShrinkage;
        return
        [
            new(
                "shell's bore, by its blank's length", bore, sheets * CuttingTolerances.Laser(blank, shell.Wall) / Math.PI,
                CuttingTolerances.LaserSource),
            new("shell's bore, by its sheet's thickness", bore, SheetTolerances.Thickness(shell.Wall), SheetTolerances.Source),
            shrinkage > 0
                ? new(
                    "shell's bore, by its long seam's shrinkage over the shop's figure", bore, sheets * SeamScatter * shrinkage / Math.PI,
                    "half of the shop's own figure: common practice, no source")
                : new(
                    "shell's bore, by its long seam's shrinkage", bore, sheets * SeamShare * Bead.MeanWidth(shell.Wall) / Math.PI,
                    "a tenth of the weld's mean width [practice]"),
            new("shell's bore, out of round until it is pulled over the plate", bore, OutOfRound / 2 * bore,
                "ASME VIII-1, UG-80, 1 % of the diameter, not checked against the source")
            {
                IsTakenUp = true,
            },
        ];
    }

    private static ImmutableArray<FitShare> TubeBore(string name, double outside, double wall, Material material)
    {
        var byWall = TubeTolerances.BoreByWall(wall);
        return [Tube($"outside of '{name}'", outside, material), new($"twice the wall of '{name}'", 2 * wall, byWall.Value, byWall.Source)];
    }

    /// <summary>The outside of a tube as its standard has it.</summary>
    internal static FitShare Tube(string what, double size, Material material)
    {
        var off = TubeTolerances.Outside(material.Family, size);
        return new(what, size, off.Value, off.Source);
    }

    /// <summary>A size cut by laser.</summary>
    internal static FitShare Laser(string what, double size, double thickness) =>
        new($"{what}, laser cut", size, CuttingTolerances.Laser(size, thickness), CuttingTolerances.LaserSource);

    /// <summary>A size turned or drilled in the shop.</summary>
    internal static FitShare Turned(string what, double size) => new(what, size, CuttingTolerances.Shop(size), CuttingTolerances.ShopSource);
}
