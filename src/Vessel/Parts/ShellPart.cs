using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Parts;

/// <summary>
/// A cylindrical course of the shell, a part for each sheet that differs. Rolled from sheet a cylinder's holes are cut square in the
/// flat and the wall's radial planes stay radial; cut from tube they are drilled along each port's axis, as in a cone. A cylinder's frame
/// is the vessel's, moved up to its lower edge.
/// </summary>
internal static class ShellPart
{
    /// <param name="sites">Sites of the ports that stand in the course.</param>
    public static IEnumerable<Part> Build(ShellCourse course, VesselDesign vessel, ImmutableArray<PortSite> sites, Welds welds) =>
        SheetPiece.Of(course, vessel)
            .Select(piece => Cylinder(course, piece, vessel, [.. sites.Where(site => piece.Ports.Contains(site.Port))], welds));

    private static Part Cylinder(ShellCourse course, SheetPiece piece, VesselDesign vessel, ImmutableArray<PortSite> sites, Welds welds)
    {
        var (number, seams, lift) = (piece.Numbers[0], course.Seams, course.Start);
        var (turned, shell) = (course with { Seams = seams with { First = seams.Of(number) } }, course.At(course.Start));
        Interval? sheet = seams.Count > 1 ? seams.Sheet(number) : null;
        var openings = sites.Where(site => site.Over is null).Select(site => ShellOpening.Of(site, lift)).ToImmutableArray();
        ImmutableArray<NotchedEdge> ends =
            [NotchedEdge.OfShell(VesselEnd.Bottom, course, sites, sheet), NotchedEdge.OfShell(VesselEnd.Top, course, sites, sheet)];
        var slots = SlotHole.Of(vessel, course).Where(slot => seams.SheetAt(slot.Place.U) == number).ToImmutableArray();
        var (outer, inner) = (new CylinderSurface(shell.OuterRadius), new CylinderSurface(shell.InnerRadius));
        var solid = ThickSolid.Of(outer, inner, true,
        [
            .. sheet is { } angles ? [new SheetRim(ends[0], ends[1], angles, course.Heights).Of(outer, inner, lift)]
                : ends.Select((end, i) => end.IsPlain ? Rim.SquareEnd(outer, inner, i * course.Height) : end.OnShell(outer, inner, lift)),
            .. openings.Select(opening => opening.Rim(outer, inner)),
            .. slots.Select(slot => slot.Rim(outer, inner)),
        ]);
        var words = new ShellWords(course, turned, piece, vessel, welds);
        var flat = ShellFlat.Of(words, openings, slots, ends);
        var outlines = new Queue<Loop2>(flat.Cut.Holes);
        var gross = Math.PI * ((shell.OuterRadius * shell.OuterRadius)
            - (shell.InnerRadius * shell.InnerRadius)) * course.Height / seams.Count;
        return new(
            piece.Id,
            piece.Name,
            PartKind.Shell,
            shell.Material,
            shell.Wall,
            Stock(course, flat),
            [.. piece.Numbers.Select(one => Placed(seams.Pitch * (one - number), lift))],
            solid,
            gross - openings.Sum(opening => opening.Volume(shell)) - slots.Sum(slot => slot.Volume) - ends.Sum(end => end.Volume),
            flat,
            [
                .. openings.Select((opening, i) => Drilled(
                    i + 1, opening.Site, lift, flat, course.IsRolled && opening.IsLeft(shell) ? null : outlines.Dequeue(), shell)),
                .. slots.Select((slot, i) => slot.ToHole(openings.Length + i + 1, flat.From, outlines.Dequeue())),
                .. ends.SelectMany(end => end.Ports)
                    .Select((site, i) => Drilled(openings.Length + slots.Length + i + 1, site, lift, flat, null, shell)),
            ],
            course.Shell.Path)
        {
            Forming = course.IsRolled ? Forming.Rolled : Forming.None,
            Wrap = course.IsRolled && !(openings.IsEmpty && slots.IsEmpty && ends.All(end => end.IsPlain))
                ? ShellFlat.Around(words, openings, slots, ends)
                : null,
        };
    }

    /// <summary>The first of several that are alike stands where it is drawn.</summary>
    private static Frame3 Placed(double turn, double lift)
    {
        var (sin, cos) = Math.SinCos(turn);
        return new(new(0, 0, lift), new(cos, sin, 0), new(-sin, cos, 0), Vector3.UnitZ);
    }

    private static Hole Drilled(int number, PortSite site, double lift, Flat flat, Loop2? outline, ShellSection shell)
    {
        var centre = ShellOpening.AxisPlace(site, lift);
        return site.HoleInHost(
            number,
            flat.From.Flatten(centre),
            outline,
            new(shell.OuterRadius * Turns.From(centre.U, 0), centre.V));
    }

    private static StockPiece Stock(ShellCourse course, Flat flat) => flat.From is RolledDevelopment rolled
        ? StockPieces.Rectangle(rolled.Width, course.Height, course.Wall, course.Shell.Material)
        : StockPieces.Tube(2 * course.Low, course.Wall, course.Height, course.Shell.Material);
}
