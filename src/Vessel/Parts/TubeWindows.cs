using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>
/// All windows in one round tube: their walls are radial, their sizes are those of its outside. Heights and angles are in the tube's own
/// frame.
/// </summary>
/// <param name="CutRadius">Radius of the cylinder on which a round window is round, mm.</param>
internal sealed record TubeWindows(ImmutableArray<WindowRow> Rows, double OuterRadius, double Wall, double CutRadius)
{
    private double MidRadius => OuterRadius - (Wall / 2);

    /// <summary>Outlines on a flat or wrap, row by row.</summary>
    /// <param name="radius">Radius of the cylinder whose girth the flat has, mm.</param>
    public ImmutableArray<Loop2> Outlines(Development development, double radius) =>
    [
        .. Each().Select(
            window => window.Row.Outline(Centre(development, radius, window.Row, window.Angle), radius / CutRadius, radius / OuterRadius)),
    ];

    /// <summary>One that runs over the left edge of a wrap that laps is drawn whole at its other end.</summary>
    private Point2 Centre(Development development, double radius, WindowRow row, double angle)
    {
        var at = development.Flatten(new(angle, row.Sill + (row.Design.Height / 2)));
        return at.U < row.Design.Width / 2 * radius / OuterRadius ? at + new Point2(Turns.Full * radius, 0) : at;
    }

    /// <summary>Rims of the windows in the solid.</summary>
    /// <param name="outlines">Outlines on the flat of <paramref name="development"/>.</param>
    public IEnumerable<Rim> Rims(Development development, ImmutableArray<Loop2> outlines)
    {
        var (outer, inner) = (new CylinderSurface(OuterRadius), new CylinderSurface(OuterRadius - Wall));
        return outlines.Select(LoopPath.Of).Select(path => new Rim(
            path.Domain,
            path.Breaks,
            t => outer.ChartOf(development.Raise(path.At(t))),
            t => inner.ChartOf(development.Raise(path.At(t)))));
    }

    /// <summary>Metal that they take out: their area on the mean cylinder times the wall, mm3.</summary>
    /// <param name="radius">Radius of the cylinder whose girth the flat has, mm.</param>
    public double Removed(ImmutableArray<Loop2> outlines, double radius) =>
        outlines.Sum(hole => -CurveMeasures.Area(hole)) * MidRadius / radius * Wall;

    public ImmutableArray<Hole> Table(ImmutableArray<Loop2> outlines) =>
    [
        .. Each().Zip(outlines, (window, hole) => (window.Row.Design, window.Angle, Outline: hole)).Select((hole, i) =>
        {
            var (low, high) = CurveMeasures.Bounds(hole.Outline);
            var centre = 0.5 * (low + high);
            var windows = hole.Design;
            return new Hole(
                i + 1,
                WindowRow.Purpose(windows),
                centre,
                hole.Outline,
                windows.IsRound ? windows.Width : ShapeOf(windows, high.U - low.U).Drill,
                null,
                null,
                windows.IsRound ? HoleMethods.Through(windows.Width) : HoleMethod.CutOrFile,
                new(OuterRadius * Turns.From(hole.Angle, 0), centre.V))
            {
                Shape = windows.IsRound ? null : ShapeOf(windows, high.U - low.U),
            };
        }),
    ];

    /// <param name="width">Width on the flat, mm.</param>
    private static HoleShape ShapeOf(WindowsDesign windows, double width) =>
        new(width, windows.Height, Math.Min(windows.Corner, width / 2)) { WidthOutside = windows.Width };

    /// <summary>
    /// Volume of metal that each row takes out, mm3, and where that would act; several windows evenly round act on the axis.
    /// </summary>
    public IEnumerable<(double Volume, Vector3 Centre)> Taken()
    {
        var (outer, inner) = (OuterRadius, OuterRadius - Wall);
        // Of a sector's mass over the wall: the mean of r, weighed by itself.
        var reach = 2.0 / 3 * ((outer * outer) + (outer * inner) + (inner * inner)) / (outer + inner);
        foreach (var row in Rows)
        {
            var (sin, cos) = Math.SinCos(row.Design.Angle);
            var aside = row.Design.Count > 1 ? 0 : reach * row.Strips().Sum(strip => strip.Share * Math.Cos(strip.Middle / outer));
            yield return (
                row.Design.Count * row.Design.AreaOfOne * MidRadius / outer * Wall,
                new(aside * cos, aside * sin, row.Sill + (row.Design.Height / 2)));
        }
    }

    /// <summary>Row by row, each with the angle of its middle.</summary>
    public IEnumerable<(WindowRow Row, double Angle)> Each() =>
        from row in Rows
        from i in Enumerable.Range(0, row.Design.Count)
        select (row, row.Design.Angle + (Turns.Full * i / row.Design.Count));
}
