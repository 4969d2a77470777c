using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Members.Brackets;

/// <summary>
/// One tab of a bracket: a bar that goes straight through the shell's wall along the bracket's line outward. Its end is coped to
/// the bore as the edge beside it is coped to the outside.
/// </summary>
/// <param name="Bracket">Bracket that it belongs to; it has tabs.</param>
/// <param name="Edge">Number of the bracket's edges, from 0.</param>
/// <param name="Along">Place of its middle, along that edge from the edge's middle, mm.</param>
/// <param name="Middle">Middle of its section: sideways of the bracket's line outward, and height, mm in the vessel's frame.</param>
/// <param name="Way">Unit direction of its width in (sideways, height).</param>
public sealed record ShellTab(BracketDesign Bracket, int Edge, double Along, Point2 Middle, Point2 Way)
{
    /// <summary>Tabs of all edges of a bracket, in their order.</summary>
    public static ImmutableArray<ShellTab> Of(BracketDesign bracket)
    {
        if (bracket.Tabs is not { } tabs)
            return [];
        var spacing = bracket.EdgeLength / tabs.Count;
        return
        [
            .. from edge in Enumerable.Range(0, bracket.Edges)
               from i in Enumerable.Range(0, tabs.Count)
               let along = (i - ((tabs.Count - 1) / 2.0)) * spacing
               let place = bracket.OnEdge(edge, along)
               select new ShellTab(bracket, edge, along, place.Middle, place.Way),
        ];
    }

    /// <summary>Distance from the vessel's axis along the line outward to the deepest place of its end, mm.</summary>
    public double EndLevel(double innerRadius) =>
        new[] { -0.5, 0.5 }.Min(side => Bracket.EdgeLevel(Along + (side * Bracket.Tabs!.Width), innerRadius));

    /// <summary>The furthest that its slot reaches sideways, mm.</summary>
    public double Furthest => Slot.Corners.Max(corner => Math.Abs(corner.U));

    /// <summary>The hole for the tab and its clearance.</summary>
    public ShellSlot Slot => Grown(Bracket.Tabs!.Clearance);

    /// <summary>Section of the tab, grown by so much on all sides, mm.</summary>
    public ShellSlot Grown(double grown) => new(
        $"a tab of {Bracket.Name}",
        Bracket.Height,
        Bracket.Angle,
        Middle,
        ((Bracket.Tabs!.Width / 2) + grown) * Way,
        ((Bracket.Thickness / 2) + grown) * Way.Turned,
        Math.Min(Bracket.Thickness, Bracket.Tabs.Width) + (2 * grown));
}
