using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Inside;
using Vessel.Parts;

namespace Vessel.Members.Screens;

/// <summary>A perforated disc inside the vessel. Its frame has the lower face at z = 0 and stands at the disc's height.</summary>
internal static class ScreenPart
{
    private const double LargestLetter = 3;

    private const double LeastLetter = 1.5;

    /// <summary>Between letters and an edge or hole, mm.</summary>
    private const double Free = 0.25;

    private const double CrossReach = 4;

    public static Part Build(ScreenDesign disc, Welds welds)
    {
        var id = Slug.Of(disc.Name);
        var (radius, bore) = (disc.OutsideDiameter / 2, disc.Bore / 2);
        var field = new HoleField($"pattern of {disc.Name}", HoleFields.Of(disc.Holes, radius, bore), disc.Holes.Path);
        var cut = new Region2(
            Loop2.Circle(default, radius),
            bore > 0 ? [Loop2.Circle(default, bore, clockwise: true)] : [])
        {
            Fields = [field.Lattice],
        };
        return new(
            id,
            disc.Name,
            PartKind.Member,
            disc.Material,
            disc.Thickness,
            StockPieces.Disc(disc.OutsideDiameter, disc.Thickness, disc.Material),
            [Frame3.At(new(0, 0, disc.Height))],
            ThickSolid.Plate(cut, disc.Thickness),
            CurveMeasures.Area(cut) * disc.Thickness,
            new(FlatKind.Sheet, cut, Marks(disc, welds), [], Notes(disc, field), new PlaneDevelopment(), "plate"),
            bore > 0 ? [Bore(disc, cut.Holes[0])] : [],
            disc.Path)
        {
            Word = "disc",
            IsInside = true,
            Fields = [field],
            Centre = new(0, 0, disc.Height + (disc.Thickness / 2)),
        };
    }

    private static Hole Bore(ScreenDesign disc, Loop2 outline) => new(
        1, $"bore of {disc.Name}", default, outline, disc.Bore, null, null, HoleMethods.Through(disc.Bore), null);

    private static ImmutableArray<Mark> Marks(ScreenDesign disc, Welds welds)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        marks.Add(new LineMark(new(-CrossReach, 0), new(CrossReach, 0)));
        marks.Add(new LineMark(new(0, -CrossReach), new(0, CrossReach)));
        if (InMargin($"{disc.Name} {string.Concat(welds.Of(WeldRole.Hold, disc.Path))}".TrimEnd(), disc) is { } name)
            marks.Add(name);
        return marks.ToImmutable();
    }

    /// <summary>The name below the holes, as large as the margin lets it; null where it lets none.</summary>
    private static TextMark? InMargin(string words, ScreenDesign disc)
    {
        var rim = (disc.OutsideDiameter / 2) - Free;
        var top = disc.Holes.Margin - (disc.OutsideDiameter / 2) - Free;
        for (var letter = LargestLetter; letter >= LeastLetter; letter -= Free)
        {
            var half = TextMark.Width(words, letter) / 2;
            if ((half * half) + ((top - letter) * (top - letter)) <= rim * rim)
                return new(words, new(0, top - (letter / 2)), letter, 0);
        }

        return null;
    }

    private static ImmutableArray<string> Notes(ScreenDesign disc, HoleField field)
    {
        var open = field.Lattice.Area / (Math.PI / 4 * disc.OutsideDiameter * disc.OutsideDiameter);
        return
        [
            $"{disc.Name.ToUpperInvariant()}, {disc.Material.Name}, {NoteText.Length(disc.Thickness)} mm, diameter "
                + $"{NoteText.Length(disc.OutsideDiameter)} mm",
            "UPPER FACE UP. Millimetres, from the centre.",
            $"{field.Lattice.Count} holes of {NoteText.Length(field.Diameter)} mm at a pitch of {NoteText.Length(field.Lattice.Pitch)} mm, "
                + $"{PatternName(disc.Holes.Pattern)}; {NoteText.Length(100 * open)} % of the disc is open.",
            disc.Fixed switch
            {
                Fixing.Weld => $"Welded all round on one face, {NoteText.Length(disc.Clearance)} mm clear.",
                Fixing.Tabs => "Held by three tacks on one face, at 60, 180 and 300 deg.",
                Fixing.Screws => $"Held by three M4 screws at 60, 180 and 300 deg, {NoteText.Length(DividerScrews.Hole)} mm holes, drilled "
                    + "on fitting.",
                Fixing.Press => $"Pressed in, {NoteText.Length(-2 * disc.Clearance)} mm larger than its seat.",
                Fixing.Loose => $"Lies loose, {NoteText.Length(disc.Clearance)} mm clear.",
                _ => throw new ArgumentException($"no such fixing: {disc.Fixed}"),
            },
        ];
    }

    private static string PatternName(HolePattern pattern) => pattern switch
    {
        HolePattern.Staggered60 => "staggered 60 deg",
        HolePattern.Staggered45 => "staggered 45 deg",
        HolePattern.Square => "square",
        HolePattern.Rings => "in rings",
        _ => throw new ArgumentException($"no such pattern: {pattern}"),
    };
}
