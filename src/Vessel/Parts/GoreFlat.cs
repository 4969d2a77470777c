using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Parts;

/// <summary>What a gore is cut from: two curved sides and two straight ends, with its marks.</summary>
internal static class GoreFlat
{
    public static Flat Of(PortHost end, GoreShape shape, WeldNumbers welds)
    {
        var gores = shape.Gores;
        return new(
            FlatKind.Blank,
            new(shape.Flat.Outline(), []),
            new GoreMarks(shape.Flat).All(
                $"equator {welds[shape.Design.Path]}",
                Names.Gore(end),
                $"{welds[WeldNumbers.GoreSeam(gores, 0)]} to {welds[WeldNumbers.GoreSeam(gores, gores.Count - 1)]}",
                $"cap {welds[WeldNumbers.CapSeam(gores)]}"),
            [],
            Notes(end, shape),
            shape.Flat,
            "equal width, mean diameter");
    }

    private static ImmutableArray<string> Notes(PortHost end, GoreShape shape)
    {
        var (count, flat, head) = (shape.Gores.Count, shape.Flat, shape.Design);
        var isSphere = head is HemisphereHead { Flange: 0 };
        var round = isSphere ? "sphere" : "head";
        string[] flange = head.Flange > 0 ? [$"Straight flange: the first {NoteText.Length(head.Flange)} mm from the rim stay straight."] : [];
        return
        [
            $"{Names.Gore(end).ToUpperInvariant()}, {count} PIECES, {head.Material.Name}, {NoteText.Length(head.Wall)} mm, "
            + $"{NoteText.Length(2 * flat.HalfWidth(0))} x {NoteText.Length(flat.Length)} mm",
            "OUTSIDE FACE UP. x runs with increasing angle, y up. Millimetres. Lines across: every 15 deg of "
            + (isSphere ? "latitude." : "lean towards the pole."),
            isSphere
                ? $"STARTING SIZE, EQUAL WIDTH: half width = (pi x {NoteText.Length(flat.Radius)} / {count}) x cos(latitude) on the mean sphere; both ends straight."
                : $"STARTING SIZE, EQUAL WIDTH: half width = (pi / {count}) x distance from the axis on the middle of the wall; both ends straight.",
            $"Bend along the centre line to {(isSphere ? "that radius" : $"a gauge of the {head.Shape}")}, then dish: the sides are {NoteText.Percent(flat.Stretch)} % longer than the centre line, which has to stretch.",
            .. flange,
            $"Left straight across, the middle lies {NoteText.Length(flat.FlatInside)} mm inside the {round} and the sides {NoteText.Length(flat.FlatOutside)} mm outside "
            + $"(1 - cos(180 deg / {count}) = {NoteText.Percent(flat.RadialError)} %).",
            "Fit all gores before tacking; trim the sides to close.",
            "The solid is drawn round, as dished; gores that are only bent make a faceted head.",
        ];
    }
}
