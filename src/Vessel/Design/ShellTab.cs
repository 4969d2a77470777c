using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>
/// One tab of a bracket: a bar that goes straight through the shell's wall along the bracket's line outward. Its end is coped to
/// the bore as the edge beside it is coped to the outside.
/// </summary>
/// <param name="Bracket">That it belongs to; it has tabs.</param>
/// <param name="Edge">Of the bracket's edges, from 0.</param>
/// <param name="Along">Of its middle, along that edge from the edge's middle, mm.</param>
/// <param name="Middle">Of its section: sideways of the bracket's line outward, and height, mm in the vessel's frame.</param>
/// <param name="Way">Unit direction of its width in (sideways, height).</param>
public sealed record ShellTab(BracketDesign Bracket, int Edge, double Along, Point2 Middle, Point2 Way)
{
    /// <summary>Of all edges, in their order: a saddle's left and right or upper and lower ear, as their welds are numbered.</summary>
    public static ImmutableArray<ShellTab> Of(BracketDesign bracket)
    {
        if (bracket.Tabs is not { } tabs)
            return [];
        var edges = bracket is SaddleBracket ? 2 : 1;
        var spacing = EdgeLength(bracket) / tabs.Count;
        return
        [
            .. from edge in Enumerable.Range(0, edges)
               from i in Enumerable.Range(0, tabs.Count)
               let along = (i - ((tabs.Count - 1) / 2.0)) * spacing
               select On(bracket, edge, along),
        ];
    }

    /// <summary>Of the edge that meets the shell, straight across, mm.</summary>
    public static double EdgeLength(BracketDesign bracket) => bracket switch
    {
        SaddleBracket { Ears: BracketEars.Sides } saddle => saddle.PlateHeight,
        SaddleBracket saddle => saddle.Width,
        PlateBracket plate => plate.Width,
        _ => throw new ArgumentOutOfRangeException(nameof(bracket)),
    };

    /// <summary>
    /// From the vessel's axis along the line outward to the bracket's edge, coped to a cylinder of that radius, at a place along
    /// the edge, mm; NaN beside the cylinder.
    /// </summary>
    public static double Level(BracketDesign bracket, double along, double radius) => bracket switch
    {
        SaddleBracket { Ears: BracketEars.Sides } saddle => BranchAxis.HalfChord(radius, (saddle.Width / 2) - saddle.Thickness),
        SaddleBracket => BranchAxis.HalfChord(radius, along),
        PlateBracket plate => new PlateCope(plate, radius).Level(along),
        _ => throw new ArgumentOutOfRangeException(nameof(bracket)),
    };

    /// <summary>From the vessel's axis along the line outward to the deepest place of its end, mm.</summary>
    public double EndLevel(double innerRadius) =>
        new[] { -0.5, 0.5 }.Min(side => Level(Bracket, Along + (side * Bracket.Tabs!.Width), innerRadius));

    /// <summary>The furthest that its slot reaches sideways, mm.</summary>
    public double Furthest => Slot.Max(corner => Math.Abs(corner.U));

    /// <summary>Of what goes through the slot: the tab and its clearance.</summary>
    public ImmutableArray<Point2> Slot => Section(Bracket.Tabs!.Clearance);

    /// <summary>The hole in a shell that is rolled from sheet.</summary>
    public BarOutline Hole(ShellDesign shell) => new(Slot, shell.InnerRadius, shell.OuterRadius);

    /// <summary>Corners of its section, grown by so much on all sides, counter-clockwise: sideways and height, mm.</summary>
    public ImmutableArray<Point2> Section(double grown)
    {
        var width = ((Bracket.Tabs!.Width / 2) + grown) * Way;
        var thickness = ((Bracket.Thickness / 2) + grown) * Way.Turned;
        return [Middle - width - thickness, Middle + width - thickness, Middle + width + thickness, Middle - width + thickness];
    }

    private static ShellTab On(BracketDesign bracket, int edge, double along)
    {
        var middle = new Point2(0, bracket.Height);
        switch (bracket)
        {
            case SaddleBracket { Ears: BracketEars.Sides } saddle:
                var aside = (saddle.Width - saddle.Thickness) / 2 * ((2 * edge) - 1);
                return new(bracket, edge, along, middle + new Point2(aside, along), new(0, 1));
            case SaddleBracket saddle:
                var up = (saddle.PlateHeight - saddle.Thickness) / 2 * (1 - (2 * edge));
                return new(bracket, edge, along, middle + new Point2(along, up), new(1, 0));
            case PlateBracket plate:
                var way = Point2.Polar(1, plate.Roll);
                return new(bracket, edge, along, middle + new Point2(plate.Offset, 0) + (along * way), way);
            default:
                throw new ArgumentOutOfRangeException(nameof(bracket));
        }
    }
}
