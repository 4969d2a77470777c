using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Members.Dipsticks;

/// <summary>
/// A strip of sheet, its tip at y = 0, with lines at round volumes, at the highest level of use and at its port's free end.
/// </summary>
internal static class DipstickPart
{
    private const double HoleDiameter = 4;

    private const double LargestLetter = 3;

    /// <summary>Between letters, lines and edges, mm.</summary>
    private const double Free = 0.5;

    /// <param name="scale">Levels in the vessel's frame with what is written beside them, from the bottom up.</param>
    /// <param name="highest">The level that oil must not pass; null where there is none.</param>
    public static Part Build(DipstickSite site, IEnumerable<(double Height, string Text)> scale, double? highest)
    {
        var stick = site.Stick;
        var cut = new Region2(
            RoundedRectangle.Outline(new(0, site.Length / 2), stick.Width, site.Length, stick.Width / 3),
            [Loop2.Circle(HoleAt(site), HoleDiameter / 2, clockwise: true)]);
        return new(
            DipstickDesign.PartName,
            DipstickDesign.PartName,
            PartKind.Member,
            stick.Material,
            stick.Thickness,
            StockPieces.Rectangle(stick.Width, site.Length, stick.Thickness, stick.Material),
            [Standing(site)],
            ThickSolid.Plate(cut, stick.Thickness),
            CurveMeasures.Area(cut) * stick.Thickness,
            new(FlatKind.Sheet, cut, Marks(site, scale, highest), [], Notes(site, highest), new PlaneDevelopment(), "plate"),
            [new(1, "hole to hang it by", HoleAt(site), cut.Holes[0], HoleDiameter, null, null, HoleMethods.Through(HoleDiameter), null)],
            stick.Path)
        {
            Word = "dipstick",
            IsInside = true,
            Centre = Standing(site).ToOuter(new(0, site.Length / 2, stick.Thickness / 2)),
        };
    }

    private static Point2 HoleAt(DipstickSite site) => new(0, site.Length - (site.Stick.Width / 2));

    /// <summary>Frame of the stick, its middle on the port's axis; the port's own Y across.</summary>
    private static Frame3 Standing(DipstickSite site)
    {
        var (across, up) = (site.Port.Frame.Y, site.Up);
        var thick = across.Cross(up);
        return new(site.Tip - (site.Stick.Thickness / 2 * thick), across, up, thick);
    }

    private static ImmutableArray<Mark> Marks(DipstickSite site, IEnumerable<(double Height, string Text)> scale, double? highest)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var half = site.Stick.Width / 2;
        var letter = Math.Min(LargestLetter, half - (2 * Free));
        void Across(double y, double to) => marks.Add(new LineMark(new(Free - half, y), new(to, y)));
        double? max = highest is { } level && site.At(level) is var at && at > 0 && at < site.Foot ? at : null;
        // Words stand along the strip, each clear of the one below it.
        var free = Free;
        void Beside(string text, double y)
        {
            var reach = TextMark.Width(text, letter) / 2;
            if (y - reach < free || y + reach > site.Length - (2 * half))
                return;
            marks.Add(new TextMark(text, new(half / 2, y), letter, Math.PI / 2));
            free = y + reach + Free;
        }

        foreach (var (height, text) in scale)
        {
            var y = site.At(height);
            if (y < Free || y > site.Foot)
                continue;
            Across(y, 0);
            if (max is not { } line || Math.Abs(y - line) > TextMark.Width($"{text}MAX", letter) / 2)
                Beside(text, y);
        }

        if (max is { } most)
        {
            Across(most, half - Free);
            marks.Add(new TextMark("MAX", new(half / 2, most + Free + (TextMark.Width("MAX", letter) / 2)), letter, Math.PI / 2));
        }

        Across(site.Mouth, half - Free);
        return marks.ToImmutable();
    }

    private static ImmutableArray<string> Notes(DipstickSite site, double? highest) =>
    [
        $"DIPSTICK, {site.Stick.Material.Name}, {NoteText.Length(site.Stick.Thickness)} mm, stands in {site.Port.Port.Name}",
        "Millilitres, vessel upright, all rooms level. By calculation: check with a measured litre.",
        $"The upper line across, {NoteText.Length(site.Mouth)} mm from the tip, stands at the free end of {site.Port.Port.Name}: fix cap "
            + "or plug there.",
        .. highest is { } level && site.At(level) < site.Foot ? new[] { $"MAX: {NoteText.Length(level)} mm above the shell's lower edge, "
            + "the highest level of use." } : [],
    ];
}
