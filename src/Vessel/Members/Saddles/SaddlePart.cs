using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Parts;

namespace Vessel.Members.Saddles;

/// <summary>
/// The mounting bracket: a plate with two ears bent towards the shell. Its frame is that of its flat, the plate's outer
/// face in z = 0.
/// </summary>
internal static class SaddlePart
{
    public static Part Build(SaddleSite site, Welds welds)
    {
        var (bracket, sheet) = (site.Bracket, site.Sheet);
        var holes = site.BoltPlaces.Select(at => BoltHole.Outline(bracket.Bolts, at)).ToImmutableArray();
        var cut = new Region2(site.Outline, holes);
        var volume = Volume(site, sheet, cut);
        return new(
            Slug.Of(bracket.Name),
            bracket.Name,
            PartKind.Member,
            bracket.Material,
            bracket.Thickness,
            StockPieces.Rectangle(site.OverTabs.U, site.OverTabs.V, bracket.Thickness, bracket.Material),
            [site.Frame],
            ThickSolid.Of(
                new FoldedSurface(sheet, 0),
                new FoldedSurface(sheet, bracket.Thickness),
                true,
                [Rim.Square(cut.Outer), .. holes.Select(Rim.Square)]),
            volume,
            new(
                FlatKind.Sheet,
                cut,
                SaddleMarks.Of(site, holes, welds),
                [.. sheet.Bends.Select(bend => OnFlat(site, bend))],
                SaddleNotes.Of(site, sheet),
                new FoldedDevelopment(sheet),
                "neutral line of the bends"),
            [.. site.BoltPlaces.Select((at, i) => BoltHole.Of(i + 1, bracket.Bolts, at, holes[i]))],
            bracket.Path)
        {
            Word = "bracket",
            Centre = Centre(site, volume),
        };
    }

    /// <summary>Where its mass acts: the plate flat between its outer edges, the ears from there to the shell.</summary>
    private static Vector3 Centre(SaddleSite site, double volume)
    {
        var bracket = site.Bracket;
        var holes = site.BoltPlaces.Length * BoltHole.Area(bracket.Bolts);
        var plate = Math.Min(volume, ((site.Overall * site.BendLength) - holes) * bracket.Thickness);
        var ears = volume - plate;
        var (near, far) = (site.AtSides ? site.EarEnd : (site.EarEnd + (2 * site.ShellRadius)) / 3, site.BackLevel);
        var outward = ((plate * (site.BackLevel + (bracket.Thickness / 2))) + (ears * (near + far) / 2)) / volume;
        return site.Way.ToOuter(new(0, 0, outward));
    }

    private static BendLine OnFlat(SaddleSite site, Bend bend)
    {
        var (a, b) = site.AtSides
            ? (new Point2(bend.Line, 0), new Point2(bend.Line, site.FlatHeight))
            : (new Point2(0, bend.Line), new Point2(site.FlatWidth, bend.Line));
        return new(a, b, bend.Angle, bend.InsideRadius, bend.K);
    }

    /// <summary>
    /// Area x thickness, but for the bends: there every piece of the flat takes up what Pappus gives its turned section.
    /// </summary>
    private static double Volume(SaddleSite site, FoldedSheet sheet, Region2 cut)
    {
        var swollen = sheet.Bends.Sum(bend =>
        {
            var zone = bend.Zone(sheet.Thickness);
            var holes = site.BoltPlaces.Sum(at => BoltHole.AreaWithin(site.Bracket.Bolts, at, sheet.Across, zone));
            return ((zone.Length * site.BendLength) - holes) * (bend.Swelling(sheet.Thickness) - 1);
        });
        return (CurveMeasures.Area(cut) + swollen) * sheet.Thickness;
    }
}
