using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Heads.FlatHeads;

/// <summary>A flat head: a disc with a hole for each port. Its frame is the head site's, inner face at z = 0.</summary>
internal static class LidPart
{
    private const double LetterHeight = 4;

    public static Part Build(VesselEnd end, FlatHead lid, VesselDesign vessel, ImmutableArray<PortSite> sites, Welds welds)
    {
        var name = Names.Of(end);
        var frame = HeadSite.Of(end, vessel).Frame;
        var own = sites.Where(site => site.Port.End == end).ToImmutableArray();
        var radius = lid.OutsideDiameter / 2;
        var holes = own
            .Select(site => Loop2.Circle(site.On(frame), site.OpeningRadius, clockwise: true))
            .ToImmutableArray();
        var cut = new Region2(Loop2.Circle(default, radius), holes);
        var area = Math.PI * ((radius * radius) - own.Sum(site => site.OpeningRadius * site.OpeningRadius));
        return new(
            name,
            name,
            PartKind.Lid,
            lid.Material,
            lid.Wall,
            StockPieces.Disc(lid.OutsideDiameter, lid.Wall, lid.Material),
            [frame],
            ThickSolid.Plate(cut, lid.Wall),
            area * lid.Wall,
            new(FlatKind.Sheet, cut, Marks(end, radius, own, frame, welds, lid.Path), [], Notes(name, lid), new PlaneDevelopment(),
                "plate"),
            [.. own.Select((site, i) => site.HoleInHost(i + 1, site.On(frame), holes[i]))],
            lid.Path);
    }

    private static ImmutableArray<Mark> Marks(
        VesselEnd end, double radius, ImmutableArray<PortSite> own, Frame3 frame, Welds welds, string path)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var tick = Math.Min(8, radius / 4);
        for (var quarter = 0; quarter < 4; quarter++)
        {
            // Angles count the vessel's way round, which is clockwise on a bottom seen from below.
            var angle = quarter * Math.PI / 2;
            var way = frame.ToLocal(frame.Origin + new Vector3(Math.Cos(angle), Math.Sin(angle), 0));
            var (inner, rim) = ((radius - tick) * new Point2(way.X, way.Y), (radius - 1) * new Point2(way.X, way.Y));
            marks.Add(new LineMark(inner, rim));
            AddText(marks, $"{90 * quarter}", (radius - tick - (2 * LetterHeight)) * new Point2(way.X, way.Y), own, frame);
        }

        foreach (var site in own)
        {
            var at = site.On(frame);
            marks.Add(new LineMark(at - new Point2(4, 0), at + new Point2(4, 0)));
            marks.Add(new LineMark(at - new Point2(0, 4), at + new Point2(0, 4)));
            AddText(marks, $"{site.Port.Name} {welds.One(WeldRole.PortSeam, site.Port.Path)}",
                at + new Point2(0, site.OpeningRadius + LetterHeight), own, frame);
        }

        AddText(marks, $"{Names.Of(end)} {welds.One(WeldRole.HeadSeam, path)}", new(0, -radius / 2), own, frame);
        return marks.ToImmutable();
    }

    /// <summary>Leaves out a text whose middle would fall into a hole.</summary>
    private static void AddText(
        ImmutableArray<Mark>.Builder marks, string text, Point2 center, ImmutableArray<PortSite> own, Frame3 frame)
    {
        if (own.All(site => (site.On(frame) - center).Length > site.OpeningRadius + (LetterHeight / 2)))
            marks.Add(new TextMark(text, center, LetterHeight, 0));
    }

    private static ImmutableArray<string> Notes(string name, FlatHead lid) =>
    [
        $"{name.ToUpperInvariant()}, {lid.Material.Name}, {NoteText.Length(lid.Wall)} mm, diameter {NoteText.Length(lid.OutsideDiameter)} "
            + "mm",
        "OUTSIDE FACE UP. Millimetres, from the centre. Ticks at 0, 90, 180 and 270 deg of the vessel.",
        lid.Seat == Seat.Inset
            ? $"Sits inside the shell, outer face {NoteText.Length(lid.Recess)} mm below its end, {NoteText.Length(lid.Clearance)} mm "
                + "clear all round."
            : "Sits on the shell's end.",
    ];
}
