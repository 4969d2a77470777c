using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Parts;

namespace Vessel.Members.Plates;

/// <summary>A flat plate that stands on the shell: cut square, coped at the edge that is welded.</summary>
internal static class PlatePart
{
    private const double LetterHeight = 4;

    /// <summary>Off an edge or a hole, mm.</summary>
    private const double Margin = 2;

    public static Part Build(PlateSite site, Welds welds)
    {
        var bracket = site.Bracket;
        var holes = site.BoltPlaces.Select(at => BoltHole.Outline(bracket.Bolts, at)).ToImmutableArray();
        var cut = new Region2(site.Outline, holes);
        return new(
            Slug.Of(bracket.Name),
            bracket.Name,
            PartKind.Member,
            bracket.Material,
            bracket.Thickness,
            StockPieces.Rectangle(site.Across, site.Deepest, bracket.Thickness, bracket.Material),
            [site.Frame],
            ThickSolid.Plate(cut, bracket.Thickness),
            CurveMeasures.Area(cut) * bracket.Thickness,
            new(FlatKind.Sheet, cut, Marks(site, holes, welds), [], Notes(site), new PlaneDevelopment(), "plate"),
            [.. site.BoltPlaces.Select((at, i) => BoltHole.Of(i + 1, bracket.Bolts, at, holes[i]))],
            bracket.Path)
        {
            Word = "bracket",
            // Of its outline's area, holes and all.
            Centre = CurveMeasures.Centre(cut) is var at ? site.Frame.ToOuter(new(at.U, at.V, bracket.Thickness / 2)) : null,
        };
    }

    /// <summary>Name and welds above the free edge; where the holes leave the middle line free, a line and its angle.</summary>
    private static ImmutableArray<Mark> Marks(PlateSite site, ImmutableArray<Loop2> holes, Welds welds)
    {
        var bracket = site.Bracket;
        var depth = bracket.Depth;
        var title = $"{bracket.Name} {string.Join(' ', welds.Of(WeldRole.Mount, bracket.Path))}";
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var boxes = holes.Select(CurveMeasures.Bounds).ToList();
        bool IsFree(Point2 middle, double width, double height) => Fits(site, middle, width, height)
            && boxes.All(box => middle.U + (width / 2) + Margin < box.Min.U || middle.U - (width / 2) - Margin > box.Max.U
                || middle.V + (height / 2) + Margin < box.Min.V || middle.V - (height / 2) - Margin > box.Max.V);
        void Text(string text, double letter)
        {
            // The first free place from the free edge inward.
            var width = TextMark.Width(text, letter);
            for (var y = Margin + letter; y < depth - Margin; y += letter)
            {
                var at = new Point2(site.Across / 2, y);
                if (!IsFree(at, width, 1.5 * letter))
                    continue;
                marks.Add(new TextMark(text, at, letter, 0));
                boxes.Add(new(at - new Point2(width / 2, letter), at + new Point2(width / 2, letter)));
                return;
            }
        }

        Text(title, LetterHeight);
        Text($"{NoteText.Degrees(bracket.Angle)} deg", LetterHeight);
        // Where the edge's middle meets the line that is drawn on the shell.
        var tick = new Point2(site.Across / 2, depth - Margin - (LetterHeight / 2));
        if (IsFree(tick, 0, LetterHeight))
            marks.Add(new LineMark(tick - new Point2(0, LetterHeight / 2), tick + new Point2(0, LetterHeight / 2)));
        return marks.ToImmutable();
    }

    /// <summary>Whether a box round a place lies on the plate, by its corners.</summary>
    private static bool Fits(PlateSite site, Point2 middle, double width, double height)
    {
        var bracket = site.Bracket;
        foreach (var (a, b) in from x in (double[])[-1, 1] from y in (double[])[-1, 1] select (x, y))
        {
            var u = middle.U + (a * ((width / 2) + Margin)) - (site.Across / 2);
            var level = site.Cope.FreeLevel - middle.V - (b * ((height / 2) + Margin));
            var edge = site.Cope.Level(Math.Clamp(u, -bracket.Width / 2, bracket.Width / 2));
            var share = Math.Clamp((level - edge) / Math.Max(1e-9, site.Cope.FreeLevel - edge), 0, 1);
            var half = (bracket.Width + (share * (bracket.FreeWidth - bracket.Width))) / 2;
            if (Math.Abs(u) > half || level < edge || level > site.Cope.FreeLevel)
                return false;
        }

        return true;
    }

    private static ImmutableArray<string> Notes(PlateSite site)
    {
        var bracket = site.Bracket;
        var upright = Math.Abs(Math.Abs(bracket.Roll) - (Math.PI / 2)) < 1e-9;
        return
        [
            $"{bracket.Name.ToUpperInvariant()}, {bracket.Material.Name}, {NoteText.Length(bracket.Thickness)} mm, "
                + $"{NoteText.Length(bracket.Width)} mm along the shell, {NoteText.Length(bracket.Depth)} mm deep",
            bracket.Roll == 0 ? "UPPER FACE UP: x towards increasing angle, y towards the vessel. Millimetres, from the free edge's lower "
                + "left."
                : upright ? $"Stands upright: x {(bracket.Roll > 0 ? "up" : "down")}, y towards the vessel. Millimetres, from the free "
                    + "edge's lower left."
                : $"Rolled by {NoteText.Degrees(bracket.Roll)} deg about the line outward; y towards the vessel. Millimetres, from the "
                    + "free edge's lower left.",
            bracket.Roll == 0
                ? $"Upper edge coped to the shell: an arc of radius {NoteText.Length(site.ShellRadius)} mm, touching all through."
                : "Upper edge cut square: it touches the shell along the face nearer to the vessel's axis.",
        ];
    }
}
