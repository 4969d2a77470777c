using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Heads.Dishes;

/// <summary>What a gore is cut from: two curved sides and two straight ends, with its marks.</summary>
internal static class GoreFlat
{
    public static Flat Of(GoreShape shape, SheetPiece piece, Welds welds)
    {
        var seams = welds.Of(WeldRole.GoreSeam, shape.Design.Path);
        return new(
            FlatKind.Blank,
            new(shape.Flat.Outline(), []),
            new GoreMarks(shape.Flat).All(
                $"equator {welds.One(WeldRole.HeadSeam, shape.Design.Path)}",
                piece.Name,
                $"{seams[0]} to {seams[^1]}",
                $"cap {welds.One(WeldRole.CrownSeam, shape.Design.Path)}"),
            [],
            Notes(shape, piece),
            shape.Flat,
            "equal width, mean diameter");
    }

    private static ImmutableArray<string> Notes(GoreShape shape, SheetPiece piece)
    {
        var (count, flat, head) = (shape.Gores.Count, shape.Flat, shape.Design);
        var pieces = piece.Numbers.Length == count ? $"{count} PIECES"
            : $"{piece.Numbers.Length} PIECE{(piece.Numbers.Length > 1 ? "S" : "")} OF {count}";
        string[] drilled = piece.Ports.IsEmpty ? []
            : [$"Drill for {string.Join(" and ", piece.Ports.Select(port => $"'{port.Name}'"))} when the head is welded, along the port's "
                + "axis (holes table)."];
        var isSphere = head is { IsSphere: true, Flange: 0 };
        var round = isSphere ? "sphere" : "head";
        string[] flange = head.Flange > 0 ? [$"Straight flange: the first {NoteText.Length(head.Flange)} mm from the rim stay straight."]
            : [];
        return
        [
            $"{piece.Name.ToUpperInvariant()}, {pieces}, {head.Material.Name}, {NoteText.Length(head.Wall)} mm, "
            + $"{NoteText.Length(2 * flat.HalfWidth(0))} x {NoteText.Length(flat.Length)} mm",
            "OUTSIDE FACE UP. x runs with increasing angle, y up. Millimetres. Lines across: every 15 deg of "
            + (isSphere ? "latitude." : "lean towards the pole."),
            isSphere
                ? $"STARTING SIZE, EQUAL WIDTH: half width = (pi x {NoteText.Length(flat.Radius)} / {count}) x cos(latitude) on the mean "
                    + "sphere; both ends straight."
                : $"STARTING SIZE, EQUAL WIDTH: half width = (pi / {count}) x distance from the axis on the middle of the wall; both ends "
                    + "straight.",
            $"Bend along the centre line to {(isSphere ? "that radius" : $"a gauge of the {head.Form}")}, then dish: the sides are "
                + $"{NoteText.Percent(flat.Stretch)} % longer than the centre line, which has to stretch.",
            .. flange,
            $"Left straight across, the middle lies {NoteText.Length(flat.FlatInside)} mm inside the {round} and the sides "
            + $"{NoteText.Length(flat.FlatOutside)} mm outside "
            + $"(1 - cos(180 deg / {count}) = {NoteText.Percent(flat.RadialError)} %).",
            "Fit all gores before tacking; trim the sides to close.",
            .. drilled,
            "The solid is drawn round, as dished; gores that are only bent make a faceted head.",
        ];
    }
}
