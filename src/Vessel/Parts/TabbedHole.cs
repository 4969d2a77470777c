using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>
/// A large hole whose metal stays in the sheet while that is rolled: closed slots inside it, which follow its outline exactly on their
/// outer side, and tabs between them. All widths are common practice, no source.
/// </summary>
internal static class TabbedHole
{
    private const int Tabs = 4;
    private const double LeastTab = 3;
    private const double LeastSlot = 2;
    private const double SlotShare = 0.4;

    /// <summary>A slot takes a cut and its pierce, mm.</summary>
    public static double SlotWidth(double thickness) => Math.Max(LeastSlot, SlotShare * thickness);

    /// <summary>Wider than a tab that is only to break off, for it is bent with the sheet, mm.</summary>
    public static double TabWidth(double thickness) => Math.Max(LeastTab, 2 * thickness);

    /// <summary>Clockwise loops, as holes of a flat are; the first tab lies where the outline begins.</summary>
    /// <param name="outline">Clockwise, closed, seen whole from the centre.</param>
    /// <param name="centre">Towards which the inner sides lie.</param>
    public static ImmutableArray<Loop2> Slots(GraphCurve2 outline, Point2 centre, double thickness)
    {
        var (domain, least) = (outline.Domain,
            Enumerable.Range(0, 360).Min(i => (outline.At(outline.Domain.At(i / 360.0)) - centre).Length));
        var inward = 1 - (SlotWidth(thickness) / least);
        double Half(double t) => TabWidth(thickness) / 2 / outline.Slope(t).Length;
        Point2 Inside(double t) => centre + (inward * (outline.At(t) - centre));
        return [.. Enumerable.Range(0, Tabs).Select(i => Slot(domain.At((double)i / Tabs), domain.At((i + 1.0) / Tabs)))];

        Loop2 Slot(double tab, double next)
        {
            var (from, to) = (tab + Half(tab), next - Half(next));
            ImmutableArray<double> breaks = [.. outline.Breaks.Where(t => t > from && t < to)];
            var outer = new GraphCurve2(outline.At, outline.Slope, new(from, to), breaks);
            // Back from the one end to the other.
            double Back(double t) => from + to - t;
            var inner = new GraphCurve2(
                t => Inside(Back(t)), t => -inward * outline.Slope(Back(t)), new(from, to), [.. breaks.Select(Back).Order()]);
            return new([outer, new Line2(outer.End, inner.Start), inner, new Line2(inner.End, outer.Start)]);
        }
    }
}
