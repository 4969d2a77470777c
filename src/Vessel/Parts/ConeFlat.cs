using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

namespace Vessel.Parts;

/// <summary>The sector that a cone is cut from: its edges, lines to roll by, and the outlines of what is drilled in it.</summary>
internal static class ConeFlat
{
    private const double LetterHeight = 4;

    /// <summary>Between a mark and an edge, mm.</summary>
    private const double Margin = 2;

    /// <summary>Pieces of a drilled outline, to see how far it reaches; names keep a margin of their own.</summary>
    private const int OutlinePieces = 36;

    /// <summary>Places of a title, from the line opposite the seam, in half turns.</summary>
    private static readonly ImmutableArray<double> _steps = [0.12, -0.12, 0.36, -0.36, 0.6, -0.6];

    /// <summary>Levels from the narrow to the wide edge.</summary>
    private static readonly ImmutableArray<double> _levels = [0.5, 0.7, 0.85, 0.3];

    private static readonly ImmutableArray<double> _sizes = [1, 0.75, 0.5, 0.3];

    /// <param name="cone">Cone in the frame of the piece.</param>
    public static Flat Of(SheetPiece piece, ConeShape cone, ImmutableArray<PortSite> sites, Welds welds)
    {
        var development = cone.Development;
        var drilled = sites.Where(ConePart.IsDrilled).ToImmutableArray();
        return new(
            FlatKind.Sheet,
            new(development.Outline(), []),
            [
                .. cone.Sheet.Segments == 1 ? Quarters(cone, development) : CentreLine(development),
                .. development.Trim > 0 ? new[] { -1, 1 }.Select(development.TrimLine).Select(line => new LineMark(line.Start, line.End))
                    : [],
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

    /// <summary>Marks where the middle of a segment goes.</summary>
    private static IEnumerable<Mark> CentreLine(ConeDevelopment development)
    {
        var (narrow, wide) = (development.Lengths.Start, development.Lengths.End);
        var tick = Math.Min(5, (wide - narrow) / 4);
        Point2 At(double level) => development.Flatten(new(development.Seam + (Math.PI / development.Segments), level));
        return [new LineMark(At(narrow + 1), At(narrow + tick)), new LineMark(At(wide - tick), At(wide - 1))];
    }

    /// <summary>Scribed, since it is drilled after rolling: where the outside of the sheet is met.</summary>
    private static IEnumerable<Mark> Outline(ConeShape cone, ConeDevelopment development, PortSite site, Welds welds)
    {
        var (face, radius) = (site.Outside, site.OpeningRadius);
        Point2 At(double phi) => development.Flatten(Drilled(cone, site, phi));
        Point2 Slope(double phi)
        {
            var place = Drilled(cone, site, phi);
            var way = cone.PlaceSlope(cone.Frame.ToLocal(site.Frame.ToOuter(face.At(radius, phi))),
                cone.Frame.TurnBack(site.Frame.Turn(face.PathSlope(radius, phi))));
            return development.FlatSlope(place, way);
        }

        yield return new CurveMark(new GraphCurve2(At, Slope, Interval.Turn, face.Breaks(radius)));
        if (NamePlace(cone, development, site, welds) is { } place)
            yield return Text(development, NameOf(site, welds), place, LetterHeight);
    }

    /// <summary>Where the drill's line at an angle round it meets the outside: (angle, distance from the tip).</summary>
    private static Point2 Drilled(ConeShape cone, PortSite site, double phi) =>
        cone.PlaceOf(cone.Frame.ToLocal(site.Frame.ToOuter(site.Outside.At(site.OpeningRadius, phi))));

    private static string NameOf(PortSite site, Welds welds) => $"{site.Port.Name} {welds.One(WeldRole.PortSeam, site.Port.Path)}";

    /// <summary>
    /// In what is drilled where it has room, else beside it, towards the wide edge or the narrow one; null where it has none.
    /// </summary>
    private static Point2? NamePlace(ConeShape cone, ConeDevelopment development, PortSite site, Welds welds)
    {
        var place = cone.PlaceOf(cone.Frame.ToLocal(site.Frame.Origin));
        var half = TextMark.Width(NameOf(site, welds), LetterHeight) / 2;
        if (half < site.OpeningRadius)
            return place;
        // An oblique hole is longer than it is wide.
        var reach = Enumerable.Range(0, OutlinePieces)
            .Max(i => Math.Abs(Drilled(cone, site, Turns.Full * i / OutlinePieces).V - place.V));
        return new[] { 1, -1 }.Select(way => (Point2?)(place + new Point2(0, way * (reach + LetterHeight))))
            .FirstOrDefault(at => IsFree(at!.Value));

        bool IsFree(Point2 at)
        {
            var (inner, outer) = (at.V - (LetterHeight / 2) - Margin, double.Hypot(at.V + (LetterHeight / 2), half) + Margin);
            var aside = Math.Abs(Turns.Signed(at.U - development.Seam - (Math.PI / development.Segments))) * development.Share;
            var side = Math.PI / development.Segments * development.Share;
            return inner > development.Lengths.Start && outer < development.Lengths.End
                && at.V * Math.Sin(Math.Min(Math.PI / 2, side - aside)) > half + Margin + (development.Gap / 2);
        }
    }

    /// <summary>
    /// Opposite the seam where nothing is drilled, else as near to it as may be; smaller where the sheet is short or crowded.
    /// </summary>
    private static IEnumerable<Mark> Title(
        SheetPiece piece, ConeShape cone, ConeDevelopment development, ImmutableArray<PortSite> sites, Welds welds)
    {
        var (first, last) = (piece.Seams[0], piece.Seams[^1]);
        var text = $"{piece.Name}  {(first == last ? $"seam {first}" : $"seams {first} to {last}")}  {piece.Ends}";
        var taken = sites.Where(ConePart.IsDrilled).SelectMany(site => Taken(cone, development, site, welds)).ToList();
        // A segment's title stands amid it, at one level or another.
        var (levels, steps) = development.Segments > 1 ? (_levels, [0]) : (_levels[..1], _steps);
        var marks = from size in _sizes
                    from level in levels.Select(share => development.Lengths.At(share))
                    let letter = size * Math.Min(LetterHeight, 0.8 * Room(development, level) / TextMark.Width(text, 1))
                    where letter <= development.Lengths.Length / 4 && level - (letter / 2) - Margin > development.Lengths.Start
                    from step in steps
                    let place = new Point2(development.Seam + ((Math.PI + (step * Math.PI)) / development.Segments), level)
                    let at = development.Flatten(place)
                    let half = TextMark.Width(text, letter) / 2 * at.Unit().Turned
                    where taken.TrueForAll(circle => FromLine(circle.At, at - half, at + half) > circle.Radius + (letter / 2) + Margin)
                    select Text(development, text, place, letter);
        return marks.Take(1);
    }

    /// <summary>What is drilled as a circle round it, its name as a row of circles along it.</summary>
    private static IEnumerable<(Point2 At, double Radius)> Taken(ConeShape cone, ConeDevelopment development, PortSite site, Welds welds)
    {
        yield return (development.Flatten(cone.PlaceOf(cone.Frame.ToLocal(site.Frame.Origin))), site.OpeningRadius);
        if (NamePlace(cone, development, site, welds) is not { } place)
            yield break;
        var at = development.Flatten(place);
        var half = TextMark.Width(NameOf(site, welds), LetterHeight) / 2;
        for (var along = -half; along <= half; along += LetterHeight)
            yield return (at + (along * at.Unit().Turned), LetterHeight);
    }

    private static double FromLine(Point2 point, Point2 a, Point2 b) =>
        (point - a - (Math.Clamp((point - a).Dot(b - a) / (b - a).Dot(b - a), 0, 1) * (b - a))).Length;

    /// <summary>For a straight title at a level, mm: amid a segment its sides or its wide edge leave it a chord.</summary>
    private static double Room(ConeDevelopment development, double level)
    {
        if (development.Segments == 1)
            return level * Math.Min(1, development.Share);
        var (edge, foot) = (development.Lengths.End - Margin, level + (LetterHeight / 2));
        return 2 * Math.Min(
            level * Math.Sin(Math.Min(Math.PI / 2, Math.PI / development.Segments * development.Share)),
            Math.Sqrt(Math.Max(0, (edge - foot) * (edge + foot))));
    }

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
        var sheet = cone.Sheet;
        string[] holes = drilled.IsEmpty ? []
            : ["Scribed outlines: drill after rolling, along the ports' axes (holes table)."];
        var segments = sheet.Segments == 1 ? string.Empty
            : $"{piece.Numbers.Length} PIECE{(piece.Numbers.Length > 1 ? "S" : "")}, {sheet.Segments} GO ROUND, ";
        var seams = sheet.Segments == 1 ? $"Seam at {NoteText.Degrees(sheet.SeamAngle)} deg"
            : $"Seams from {NoteText.Degrees(sheet.SeamAngle)} deg on, every {NoteText.Degrees(sheet.Pitch)} deg";
        return
        [
            $"{piece.Name.ToUpperInvariant()}, {segments}CONE OF {NoteText.Degrees(2 * sheet.HalfAngle)} DEG, {sheet.Material.Name}, "
                + $"{NoteText.Length(sheet.Wall)} mm",
            "OUTSIDE FACE UP. x runs with increasing angle, y up. Millimetres, from the cone's tip.",
            $"Radii {NoteText.Length(development.Lengths.End)} and {NoteText.Length(development.Lengths.Start)} mm, sector "
            + $"{NoteText.Degrees(sheet.Pitch * development.Share)} deg, on the middle of the wall; root gap "
            + $"{NoteText.Length(sheet.RootGap)} mm.",
            $"Roll about the tip, marks outside. {seams}; both edges {NoteText.Length(development.SeamLength)} mm.",
            .. piece.EdgeNotes,
            .. holes,
        ];
    }
}
