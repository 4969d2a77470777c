using System.Collections.Immutable;
using Vessel.Export.Drawing;
using Vessel.Geometry;

namespace Vessel.Export.Paper;

/// <summary>
/// What stands on every page: its title, and two scales of known length with the demand to measure them before anything
/// else is believed.
/// </summary>
/// <param name="Size">Size of the page as it lies.</param>
internal sealed record PageFrame(PaperSize Size)
{
    /// <summary>Printers leave up to about 6 mm blank.</summary>
    private const double Margin = 10;

    private const double Letter = 2.5;

    /// <summary>A scale's marks are so long, mm; every fifth or tenth longer.</summary>
    private const double Tick = 1.2;

    /// <summary>Where the drawing may be, mm on the page.</summary>
    public Box2 Area => new(new(Margin, Margin + 14), new(Size.Width - Margin, Size.Height - Margin - 14));

    /// <param name="left">Left of the title line: what it is.</param>
    /// <param name="right">Which sheet.</param>
    /// <param name="below">Name of the vessel it belongs to.</param>
    public ImmutableArray<Item> Items(string left, string right, string below) =>
    [
        .. Title(left, right, below),
        .. Scales(new(Margin, Margin + 4)),
        .. Demand(Margin + 116, Size.Width - (2 * Margin) - 116),
    ];

    /// <summary>Without the scales, for what is not at its true size.</summary>
    public ImmutableArray<Item> Title(string left, string right, string below)
    {
        var (top, room) = (Size.Height - Margin - 4, Size.Width - (2 * Margin));
        var sheet = Text.Right(right, new(Size.Width - Margin, top), Letter);
        return
        [
            Text.Fitted(left, new(Margin, top), 4, room - sheet.Width - 5),
            sheet,
            Text.Fitted(below, new(Margin, top - 4.5), Letter, room),
        ];
    }

    /// <summary>The whole page with what it shows.</summary>
    public Page Page(IEnumerable<Item> frame, IEnumerable<Item> shown) => new(Size.Width, Size.Height, [.. frame, .. shown]);

    private static IEnumerable<Item> Demand(double left, double room) =>
    [
        Text.Fitted("MEASURE THESE SCALES FIRST:", new(left, Margin + 7.5), 2, room),
        Text.Fitted("100 mm above the line, 4 in below it.", new(left, Margin + 4), 2, room),
        Text.Fitted("Not true? Print at 100 %, not fitted to the page.", new(left, Margin + 0.5), 2, room),
    ];

    private static IEnumerable<Item> Scales(Point2 at)
    {
        const double inch = 25.4;
        var lower = at - new Point2(0, 0.6);
        yield return Stroke.Line(at, at + new Point2(100, 0), Pens.Scale);
        for (var mm = 0; mm <= 100; mm++)
        {
            var length = mm % 10 == 0 ? 3 * Tick : mm % 5 == 0 ? 2 * Tick : Tick;
            yield return Stroke.Line(at + new Point2(mm, 0), at + new Point2(mm, length), Pens.Scale);
        }

        yield return Stroke.Line(lower, lower + new Point2(4 * inch, 0), Pens.Scale);
        for (var eighth = 0; eighth <= 32; eighth++)
        {
            var length = eighth % 8 == 0 ? 3 * Tick : eighth % 4 == 0 ? 2 * Tick : Tick;
            var foot = lower + new Point2(eighth * inch / 8, 0);
            yield return Stroke.Line(foot, foot - new Point2(0, length), Pens.Scale);
        }

        yield return Text.Left("100 mm", at + new Point2(100.8, 1.2), 1.8);
        yield return Text.Left("4 in", lower + new Point2(102.4, -2.8), 1.8);
    }
}
