using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Members.Straps;

/// <summary>Both halves of a strap, each one strip of sheet, bent and rolled. A half's frame is that of its flat.</summary>
internal static class StrapParts
{
    private const double LetterHeight = 4;

    public static Part Half(StrapSite site)
    {
        var (strap, sheet, cut) = (site.Strap, site.Sheet, site.Cut);
        var places = site.EarBolts.Select(at => (At: at, strap.Bolts)).Concat(site.FootBolts.Select(at => (At: at, strap.Feet.Bolts)));
        return new(
            Slug.Of(site.Name),
            site.Name,
            PartKind.Member,
            strap.Material,
            strap.Thickness,
            StockPieces.Rectangle(site.Developed, strap.Width, strap.Thickness, strap.Material),
            [site.Frame],
            ThickSolid.Of(
                new FoldedSurface(sheet, 0),
                new FoldedSurface(sheet, strap.Thickness),
                true,
                [Rim.Square(cut.Outer), .. cut.Holes.Select(Rim.Square)]),
            Volume(site, sheet, cut),
            new(
                FlatKind.Sheet,
                cut,
                Marks(site, sheet, cut),
                [.. Bends(site, sheet)
                    .Select(bend => new BendLine(new(bend.Line, 0), new(bend.Line, strap.Width), bend.Angle, bend.InsideRadius, bend.K))],
                Notes(site, sheet),
                new FoldedDevelopment(sheet),
                "neutral line of the bends, middle of the rolled band"),
            [.. places.Select((hole, i) => BoltHole.Of(i + 1, hole.Bolts, hole.At, cut.Holes[i], alongStrip: true))],
            strap.Path)
        {
            Word = "strap",
            Forming = Forming.Rolled,
            Shaping = "roll its band, bend its ears",
            Centre = StrapCentre.Of(site),
        };
    }

    /// <summary>Without the band, which is rolled.</summary>
    private static IEnumerable<Bend> Bends(StrapSite site, FoldedSheet sheet) => sheet.Bends.Where((_, i) => i != site.BandNumber);

    /// <summary>Area x thickness, but for the bends; all holes lie on the straight.</summary>
    private static double Volume(StrapSite site, FoldedSheet sheet, Region2 cut) => sheet.Thickness * (CurveMeasures.Area(cut)
        + sheet.Bends.Sum(bend => bend.Zone(sheet.Thickness).Length * site.Strap.Width * (bend.Swelling(sheet.Thickness) - 1)));

    /// <summary>The middle, where the band begins and ends, and the name.</summary>
    private static ImmutableArray<Mark> Marks(StrapSite site, FoldedSheet sheet, Region2 cut)
    {
        var marks = new FlatMarks(site.Developed, site.Strap.Width, cut.Holes);
        var zone = sheet.Bends[site.BandNumber].Zone(sheet.Thickness);
        marks.AddTitle(site.Name, LetterHeight, zone.Start, site.Strap.Width);
        marks.AddVertical(site.Developed / 2, $"{NoteText.Degrees(Turns.From(site.Middle, 0))} deg", LetterHeight,
            top: site.Strap.Width - (2 * LetterHeight));
        foreach (var (x, label) in new[] { (zone.Start, "roll"), (zone.End, string.Empty) })
            marks.AddVertical(x, label, LetterHeight);
        return marks.ToImmutable();
    }

    private static ImmutableArray<string> Notes(StrapSite site, FoldedSheet sheet)
    {
        var strap = site.Strap;
        var zone = sheet.Bends[site.BandNumber].Zone(sheet.Thickness);
        var liner = strap.Liner > 0 ? $" over a liner of {NoteText.Length(strap.Liner)} mm" : string.Empty;
        return
        [
            $"{site.Name.ToUpperInvariant()}, {strap.Material.Name}, {NoteText.Length(strap.Thickness)} mm, "
                + $"{NoteText.Length(strap.Width)} mm wide, for {NoteText.Length(2 * site.ShellRadius)} mm outside{liner}",
            "OUTSIDE FACE UP: the face away from the shell. x towards increasing angle, y up. Millimetres, from the lower left corner.",
            $"Roll from x = {NoteText.Length(zone.Start)} to {NoteText.Length(zone.End)} mm DOWN, inside radius "
                + $"{NoteText.Length(site.InnerRadius)} mm, "
                + $"{NoteText.Degrees(2 * site.HalfBand)} deg; rolls leave the ends flat: roll before the ears are bent, or bend the band "
                + "round a former.",
            .. Bends(site, sheet).Select((bend, i) => BendLine.Note(i + 1, bend, "x")),
            $"Check: flat {NoteText.Length(site.Developed)} mm; the rolled band is {NoteText.Length(site.Band)} mm of it; "
                + $"a gap of {NoteText.Length(strap.Gap)} mm is left between the halves before they are drawn up.",
            "Clamps the vessel by friction; it is not welded to it.",
        ];
    }
}
