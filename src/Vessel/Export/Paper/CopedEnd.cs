using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Export.Drawing;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Ports;
using Vessel.Sites;

namespace Vessel.Export.Paper;

/// <summary>Which edge of the wall the line of a coped end is for.</summary>
internal static class CopedEnd
{
    private const int Steps = 360;

    private const double Letter = 1.8;

    public static IEnumerable<Item> Items(PortSite site, TubeEnd end, Ink ink)
    {
        Point2 At(double phi, double along) => ink.On(new(ink.Metal.Radius * phi, along + ink.Metal.Lift));
        if (end.Through is not null)
        {
            return [InnerEdge(end, ink)];
        }

        return Stretches(site).SelectMany(stretch =>
        {
            var (start, middle) = (At(stretch.From, end.Outer(stretch.From)), (stretch.From + stretch.To) / 2);
            var room = At(stretch.To, 0).U - start.U;
            var tick = Stroke.Line(start, start - new Point2(0, 6), Pens.Thin);
            return Strokes.Width(stretch.Edge, Letter) > room
                ? new Item[] { tick }
                : [tick, Text.Middle(stretch.Edge, At(middle, end.Outer(middle)) - new Point2(0, 5), Letter)];
        });
    }

    /// <summary>Where the wall's inner edge ends, below the paper.</summary>
    public static Item InnerEdge(TubeEnd end, Ink ink) => Stroke.Through(
        [.. Enumerable.Range(0, Steps + 1).Select(i => Turns.Full * i / Steps)
            .Select(phi => ink.On(new(ink.Metal.Radius * phi, end.Inner(ink.Metal.Start + phi) + ink.Metal.Lift)))],
        Pens.Hidden);

    public static ImmutableArray<string> Notes(TubeEnd end) =>
    [
        "Hatched side of the line: waste.",
        end.Through is null
            ? "The line governs for the whole wall, cut square through: below it stands which edge of the wall touches the host there."
            : "The solid line is the wall's OUTER edge and governs; dashed: where the inner edge ends. Grind the end face from the one to "
                + "the other.",
    ];

    /// <summary>Angles over which the same edge of the wall touches.</summary>
    private static IEnumerable<(double From, double To, string Edge)> Stretches(PortSite site)
    {
        string Edge(double phi)
        {
            var (bore, outside) = (site.Port.BoreRadius, site.Port.OuterRadius);
            var governs = site.Outside.GoverningRadius(bore, outside, phi);
            return governs == outside ? "outer edge" : governs == bore ? "inner edge" : "within";
        }

        var from = 0;
        double Angle(int i) => Turns.Full * i / Steps;
        for (var i = 1; i <= Steps; i++)
        {
            if (i < Steps && Edge(Angle(i) + (Math.PI / Steps)) == Edge(Angle(from) + (Math.PI / Steps)))
                continue;
            yield return (Angle(from), Angle(i), Edge(Angle(from) + (Math.PI / Steps)));
            from = i;
        }
    }
}
