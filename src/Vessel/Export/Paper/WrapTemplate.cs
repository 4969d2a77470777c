using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Ports;
using Vessel.Sites;

namespace Vessel.Export.Paper;

/// <summary>
/// Paper to be laid round a tube. Its middle lies half its thickness outside the metal, so everything is stretched round
/// the girth by (R + t/2) / R; heights stay.
/// </summary>
internal static class WrapTemplate
{
    private const int ClockSteps = 24;

    private const double Letter = 2;

    private static readonly string[] _mitreNotes =
        ["Of a mitre the solid line is the wall's OUTER edge; dashed: where the inner edge ends. Hatched side: waste."];

    private const double Tick = 1.6;

    /// <param name="fitted">What is seen of the part on its outside.</param>
    /// <param name="site">Site of a port's tube; null for other parts.</param>
    public static Template Of(Part part, FittedFlat fitted, PortSite? site, PaperOptions paper)
    {
        var flat = fitted.Flat;
        var wrapped = (WrappedDevelopment)flat.From;
        var ink = new Ink(wrapped, 1 + (paper.Thickness / 2 / wrapped.Radius));
        var shape = site is null ? null : PortPieces.Of(site).First(piece => piece.Id == part.Id).Shape;
        var (_, top) = CurveMeasures.Bounds(flat.Cut.Outer);
        var isCoped = shape is { Lower.IsPlain: false } && part.Kind != PartKind.Elbow;
        // Of mitres that a plane cuts: the wall's inner edge lies beside the line.
        ImmutableArray<TubeEnd> sawn = shape is null ? []
            : [.. new[] { shape.Lower, shape.Upper }.Where(
                end => !end.IsPlain && (end != shape.Lower || !isCoped) && site!.Port.Elbow!.Cut == MitreCut.Sawn)];
        double Upper(double phi) => shape is null ? top.V : shape.Upper.Outer(phi) + wrapped.Lift;
        var metal = (Area)ink.Drawn(fitted.Metal);
        var marks = fitted.Marks.Select(ink.Drawn).ToList();
        return new(
            $"{part.Name}: wrap round the outside",
            [
                metal,
                .. metal.Outlines.SkipLast(1).SelectMany(BenchMarks.Hatch),
                .. flat.Cut.Outer.Edges.OfType<GraphCurve2>()
                    .SelectMany(cope => BenchMarks.Hatch([.. Chords.Of(cope, Placing.Chord).Select(ink.On)])),
                .. marks.Where(mark => mark is not Text),
                .. marks.OfType<Text>(),
                .. Clock(ink, Upper, [.. marks.OfType<Text>().Select(Placing.Bounds)]),
                .. part.Holes.Where(hole => hole.Outline is not null)
                    .SelectMany(hole => BenchMarks.Drilled(hole, at => ink.On(flat.From.Flatten(part.Flat!.From.Raise(at))))),
                .. isCoped ? CopedEnd.Items(site!, shape!.Lower, ink) : [],
                .. sawn.Select(end => CopedEnd.InnerEdge(end, ink)),
                .. Ends(ink, flat, shape),
            ],
            [
                .. flat.Notes,
                .. isCoped ? CopedEnd.Notes(shape!.Lower) : [],
                .. sawn.IsEmpty ? [] : _mitreNotes,
                $"Numbers at the upper edge: degrees {(site is null ? "round the vessel" : "round the tube")}, towards the right.",
                Round(wrapped, paper),
            ]);
    }

    /// <summary>The two side edges meet, or lap where the wrap was drawn longer than the girth.</summary>
    private static string Round(WrappedDevelopment wrapped, PaperOptions paper)
    {
        var (metal, girth) = (Turns.Full * wrapped.Radius, Turns.Full * (wrapped.Radius + (paper.Thickness / 2)));
        return $"Drawn for paper {NoteText.Length(paper.Thickness)} mm thick: once round is {NoteText.Length(girth)} mm on it, "
            + $"{NoteText.Length(metal)} mm on the metal. "
            + (wrapped.Lap > 0
                ? $"After one turn the left edge must meet the line 'once round' within 0.5 mm; {NoteText.Length(wrapped.Lap)} mm of metal "
                    + "lap beyond it."
                : "After one turn the left edge must be met within 0.5 mm: a gap or a lap is the error of print or tube.");
    }

    /// <summary>Ticks every 15 degrees along the upper edge, each with its number where no mark is in the way.</summary>
    private static IEnumerable<Item> Clock(Ink ink, Func<double, double> top, List<Box2> taken)
    {
        for (var i = 0; i < ClockSteps; i++)
        {
            var angle = Turns.Full * i / ClockSteps;
            var at = ink.On(ink.Metal.Flatten(new(angle, top(angle) - ink.Metal.Lift)));
            yield return Stroke.Line(at, at - new Point2(0, Tick), Pens.Thin);
            var number = Text.Left(NoteText.Degrees(angle), at + new Point2(0.8, -Tick - 1 - Letter), Letter);
            if (i % 2 == 0 && !taken.Any(box => Placing.Meet(box, Placing.Bounds(number))))
                yield return number;
        }
    }

    /// <summary>Which way up it goes: above the upper edge, outside what is cut out.</summary>
    private static IEnumerable<Item> Ends(Ink ink, Flat flat, TubePiece? shape)
    {
        var bounds = CurveMeasures.Bounds(flat.Cut.Outer);
        var middle = ink.On(new(bounds.Max.U / 2, bounds.Max.V + 4));
        var words = Text.Middle(
            shape is null ? "UP" : shape.Upper.IsPlain ? "FREE END" : "TO THE FREE END: WASTE ABOVE THE LINE", middle, 3);
        yield return words;
        foreach (var side in new[] { -1, 1 })
        {
            var foot = middle + new Point2(side * ((words.Width / 2) + 4), -2.5);
            var tip = foot + new Point2(0, 5);
            yield return Stroke.Line(foot, tip, Pens.Edge);
            yield return Stroke.Through([tip + new Point2(-1.2, -2), tip, tip + new Point2(1.2, -2)], Pens.Edge);
        }

        yield return Text.Middle(shape is null ? "LOWER END" : shape.Lower.IsPlain ? "INNER END" : "WASTE BELOW THE LINE",
            ink.On(new(bounds.Max.U / 2, -10)), 3);
    }
}

/// <summary>Map from what is developed of the metal to paper that lies round it.</summary>
/// <param name="Stretch">Factor by which the paper is longer.</param>
internal sealed record Ink(WrappedDevelopment Metal, double Stretch)
{
    public Point2 On(Point2 flat) => new(flat.U * Stretch, flat.V);

    public Item Drawn(Item item) => Placing.Stretched(item, Stretch);
}
