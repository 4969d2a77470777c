using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Parts;

/// <summary>What a gore is cut from: two curved sides and two straight ends, with its marks.</summary>
internal static class GoreFlat
{
    public static Flat Of(PortHost end, HemisphereHead head, GoreShape shape, WeldNumbers welds)
    {
        var gores = shape.Gores;
        return new(
            FlatKind.Blank,
            new(shape.Flat.Outline(), []),
            new GoreMarks(shape.Flat).All(
                $"equator {welds[head.Path]}",
                Names.Gore(end),
                $"{welds[WeldNumbers.GoreSeam(gores, 0)]} to {welds[WeldNumbers.GoreSeam(gores, gores.Count - 1)]}",
                $"cap {welds[WeldNumbers.CapSeam(gores)]}"),
            [],
            Notes(end, head, shape),
            shape.Flat,
            "equal girth, mean diameter");
    }

    private static ImmutableArray<string> Notes(PortHost end, HemisphereHead head, GoreShape shape)
    {
        var (count, flat) = (shape.Gores.Count, shape.Flat);
        return
        [
            $"{Names.Gore(end).ToUpperInvariant()}, {count} PIECES, {head.Material.Name}, {NoteText.Length(head.Wall)} mm, "
            + $"{NoteText.Length(2 * flat.HalfWidth(0))} x {NoteText.Length(flat.Length)} mm",
            "OUTSIDE FACE UP. x runs with increasing angle, y up. Millimetres. Lines across: every 15 deg of latitude.",
            $"STARTING SIZE, EQUAL GIRTH: half width = (pi x {NoteText.Length(flat.Radius)} / {count}) x cos(latitude) on the mean sphere; both ends straight.",
            $"Bend along the centre line to that radius, then dish: the sides are {NoteText.Percent(flat.Stretch)} % longer than the centre line, which has to stretch.",
            $"Left straight across, the middle lies {NoteText.Length(flat.FlatInside)} mm inside the sphere and the sides {NoteText.Length(flat.FlatOutside)} mm outside "
            + $"(1 - cos(180 deg / {count}) = {NoteText.Percent(flat.RadialError)} %).",
            "Fit all gores before tacking; trim the sides to close.",
        ];
    }
}
