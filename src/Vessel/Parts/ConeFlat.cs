using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>The sector that a cone is cut from: its edges, lines to roll by, and the outlines of what is drilled in it.</summary>
internal static class ConeFlat
{
    private const double LetterHeight = 4;

    /// <summary>Between a mark and an edge, mm.</summary>
    private const double Margin = 2;

    private const int OutlinePieces = 36;

    /// <param name="cone">In the frame of the piece.</param>
    public static Flat Of(SheetPiece piece, ConeShape cone, ImmutableArray<PortSite> sites, WeldNumbers welds)
    {
        var development = cone.Development;
        var drilled = sites.Where(ConePart.IsDrilled).ToImmutableArray();
        return new(
            FlatKind.Sheet,
            new(development.Outline(), []),
            [
                .. cone.Head.Segments == 1 ? Quarters(cone, development) : CentreLine(development),
                .. development.Trim > 0 ? new[] { -1, 1 }.Select(development.TrimLine).Select(line => new LineMark(line.Start, line.End)) : [],
                .. drilled.SelectMany(site => Outline(cone, development, site, welds)),
                .. Title(piece, cone, development, sites, welds),
            ],
            [],
            Notes(piece, cone, development, drilled),
            development,
            "middle of the wall");
    }

    /// <summary>A line along the sheet every 90 degrees of the vessel, its label at the wide edge; both clear of the seam.</summary>
    private static IEnumerable<Mark> Quarters(ConeShape cone, ConeDevelopment development)
    {
        var (from, to) = (development.Lengths.Start + Margin, development.Lengths.End - Margin);
        for (var quarter = 0; quarter < 4; quarter++)
        {
            var angle = Own(cone, quarter * Math.PI / 2);
            var clear = Math.Abs(Turns.Signed(angle - development.Seam)) * from * development.Share;
            if (to - from < Margin || clear < Margin + (development.Gap / 2))
                continue;
            yield return new LineMark(development.Flatten(new(angle, from)), development.Flatten(new(angle, to)));
            var text = $"{90 * quarter}";
            var level = to - LetterHeight;
            var aside = (Margin + (TextMark.Width(text, LetterHeight) / 2)) / level / development.Share;
            if (level - from > LetterHeight && clear > 4 * LetterHeight)
                yield return Text(development, text, new(angle + (cone.Frame.Z.Z * aside), level), LetterHeight);
        }
    }

    /// <summary>Of a segment: where its middle goes.</summary>
    private static IEnumerable<Mark> CentreLine(ConeDevelopment development)
    {
        var (narrow, wide) = (development.Lengths.Start, development.Lengths.End);
        var tick = Math.Min(5, (wide - narrow) / 4);
        Point2 At(double level) => development.Flatten(new(development.Seam + (Math.PI / development.Segments), level));
        return [new LineMark(At(narrow + 1), At(narrow + tick)), new LineMark(At(wide - tick), At(wide - 1))];
    }

    /// <summary>Scribed, since it is drilled after rolling: where the outside of the sheet is met.</summary>
    private static IEnumerable<Mark> Outline(ConeShape cone, ConeDevelopment development, PortSite site, WeldNumbers welds)
    {
        Point2 At(double phi) => development.Flatten(
            cone.PlaceOf(cone.Frame.ToLocal(site.Frame.ToOuter(site.Outside.At(site.OpeningRadius, phi)))));
        for (var i = 0; i < OutlinePieces; i++)
            yield return new LineMark(At(Turns.Full * i / OutlinePieces), At(Turns.Full * (i + 1) / OutlinePieces));
        var place = cone.PlaceOf(cone.Frame.ToLocal(site.Frame.Origin));
        var text = $"{site.Port.Name} {welds[site.Port.Path]}";
        if (TextMark.Width(text, LetterHeight) < 2 * site.OpeningRadius)
            yield return Text(development, text, place, LetterHeight);
    }

    /// <summary>Opposite the seam where nothing is drilled, else as near to it as may be; smaller where the sheet is short.</summary>
    private static IEnumerable<Mark> Title(
        SheetPiece piece, ConeShape cone, ConeDevelopment development, ImmutableArray<PortSite> sites, WeldNumbers welds)
    {
        var (first, last) = (welds[WeldNumbers.ConeSeam(cone.Head, 0)], welds[WeldNumbers.ConeSeam(cone.Head, cone.Head.Segments - 1)]);
        var text = $"{piece.Name}  {(first == last ? $"seam {first}" : $"seams {first} to {last}")}  {(piece.Ends.Length > 0 ? piece.Ends : $"shell {welds[cone.Head.Path]}")}";
        var level = development.Lengths.At(0.5);
        var letter = Math.Min(LetterHeight, 0.8 * level * Math.Min(1, development.Share) * Fill(development) / TextMark.Width(text, 1));
        if (letter > development.Lengths.Length / 4)
            yield break;
        var half = TextMark.Width(text, letter) / 2;
        var taken = sites.Where(ConePart.IsDrilled).Select(site => (
            At: development.Flatten(cone.PlaceOf(cone.Frame.ToLocal(site.Frame.Origin))), Radius: site.OpeningRadius)).ToList();
        // A segment's title stands amid it.
        double[] steps = development.Segments > 1 ? [0] : [0.12, -0.12, 0.36, -0.36, 0.6, -0.6];
        foreach (var step in steps)
        {
            var place = new Point2(development.Seam + ((Math.PI + (step * Math.PI)) / development.Segments), level);
            var at = development.Flatten(place);
            if (taken.TrueForAll(hole => (hole.At - at).Length > hole.Radius + half + Margin))
            {
                yield return Text(development, text, place, letter);
                yield break;
            }
        }
    }

    /// <summary>What a segment's sides leave of a title's room: the chord of its sheet, over a single sheet's radius.</summary>
    private static double Fill(ConeDevelopment development) =>
        development.Segments == 1 ? 1 : Math.Min(1, 2 * Math.Sin(Math.PI / development.Segments * development.Share) / Math.Min(1, development.Share));

    private static TextMark Text(ConeDevelopment development, string text, Point2 place, double letter)
    {
        var at = development.Flatten(place);
        // Across the line, upright opposite the seam.
        var turn = Math.Atan2(at.U, at.V);
        return new(text, at, letter, development.TipUp ? Math.PI - turn : -turn);
    }

    /// <summary>An angle of the vessel in the head's own frame.</summary>
    private static double Own(ConeShape cone, double angle) => cone.Frame.Z.Z * angle;

    private static ImmutableArray<string> Notes(
        SheetPiece piece, ConeShape cone, ConeDevelopment development, ImmutableArray<PortSite> drilled)
    {
        var head = cone.Head;
        string[] holes = drilled.IsEmpty ? []
            : ["Scribed outlines: drill after rolling, along the ports' axes (holes table)."];
        var segments = head.Segments == 1 ? string.Empty
            : $"{piece.Numbers.Length} PIECE{(piece.Numbers.Length > 1 ? "S" : "")}, {head.Segments} GO ROUND, ";
        var seams = head.Segments == 1 ? $"Seam at {NoteText.Degrees(head.SeamAngle)} deg"
            : $"Seams from {NoteText.Degrees(head.SeamAngle)} deg on, every {NoteText.Degrees(head.Pitch)} deg";
        return
        [
            $"{piece.Name.ToUpperInvariant()}, {segments}CONE OF {NoteText.Degrees(2 * head.HalfAngle)} DEG, {head.Material.Name}, {NoteText.Length(head.Wall)} mm",
            "OUTSIDE FACE UP. x runs with increasing angle, y up. Millimetres, from the cone's tip.",
            $"Radii {NoteText.Length(development.Lengths.End)} and {NoteText.Length(development.Lengths.Start)} mm, sector "
            + $"{NoteText.Degrees(head.Pitch * development.Share)} deg, on the middle of the wall; root gap {NoteText.Length(head.RootGap)} mm.",
            $"Roll about the tip, marks outside. {seams}; both edges {NoteText.Length(development.SeamLength)} mm.",
            .. piece.EdgeNotes,
            .. holes,
        ];
    }
}
