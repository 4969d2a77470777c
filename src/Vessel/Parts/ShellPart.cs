using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>
/// The cylinder. Rolled from sheet its holes are cut square in the flat and the wall's radial planes stay radial; cut
/// from tube they are drilled along each port's axis. Its frame is the vessel's.
/// </summary>
internal static class ShellPart
{
    public static Part Build(VesselDesign vessel, ImmutableArray<PortSite> sites, WeldNumbers welds)
    {
        var shell = vessel.Shell;
        var openings = sites
            .Where(site => site.Port.Host == PortHost.Shell)
            .Select(site => ShellOpening.Of(site, shell))
            .ToImmutableArray();
        var slots = ShellSlot.Of(vessel);
        var (outer, inner) = (new CylinderSurface(shell.OuterRadius), new CylinderSurface(shell.InnerRadius));
        var solid = ThickSolid.Of(outer, inner, true,
        [
            Rim.SquareEnd(outer, inner, 0),
            Rim.SquareEnd(outer, inner, shell.Height),
            .. openings.Select(opening => opening.Rim(outer, inner)),
            .. slots.Select(slot => slot.Rim(outer, inner)),
        ]);
        var flat = ShellFlat.Of(vessel, openings, slots, welds);
        var gross = Math.PI * ((shell.OuterRadius * shell.OuterRadius) - (shell.InnerRadius * shell.InnerRadius)) * shell.Height;
        return new(
            Names.Shell,
            Names.Shell,
            PartKind.Shell,
            shell.Material,
            shell.Wall,
            Stock(shell, flat),
            [Frame3.Identity],
            solid,
            gross - openings.Sum(opening => opening.Volume(shell)) - slots.Sum(slot => slot.Volume),
            flat,
            [
                .. openings.Select((opening, i) => Drilled(i + 1, opening, flat, shell)),
                .. slots.Select((slot, i) => (slot, openings.Length + i)).Select(at => at.slot.ToHole(at.Item2 + 1, flat.From, flat.Cut.Holes[at.Item2])),
            ],
            shell.Path)
        {
            Wrap = shell.MadeFrom == StockForm.Sheet && !(openings.IsEmpty && slots.IsEmpty) ? ShellFlat.Around(vessel, openings, slots, welds) : null,
        };
    }

    private static Hole Drilled(int number, ShellOpening opening, Flat flat, ShellDesign shell)
    {
        var centre = opening.AxisPlace;
        return opening.Site.HoleInHost(
            number,
            flat.From.Flatten(centre),
            flat.Cut.Holes[number - 1],
            new(shell.OuterRadius * Turns.From(centre.U, 0), centre.V));
    }

    private static StockPiece Stock(ShellDesign shell, Flat flat) => flat.From is RolledDevelopment rolled
        ? StockPieces.Rectangle(rolled.Width, shell.Height, shell.Wall, shell.Material)
        : StockPieces.Tube(shell.OutsideDiameter, shell.Wall, shell.Height, shell.Material);
}
