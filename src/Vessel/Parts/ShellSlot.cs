using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>The hole for a bracket's tab in a shell that is rolled from sheet; its walls are radial.</summary>
internal sealed record ShellSlot(ShellTab Tab, ShellDesign Shell)
{
    /// <param name="shell">The course as a cylinder of its own; heights count from its lower edge.</param>
    public static ImmutableArray<ShellSlot> Of(VesselDesign vessel, ShellCourse course, ShellDesign shell) =>
    [
        .. vessel.Brackets.Where(bracket => vessel.Shell.CourseAt(bracket.Height) == course)
            .SelectMany(bracket => ShellTab.Of(bracket))
            .Select(tab => new ShellSlot(tab with { Middle = tab.Middle - new Point2(0, course.Start) }, shell)),
    ];

    /// <summary>Middle of the tab where it meets the outside: angle round the vessel and height.</summary>
    public Point2 Place => new(Tab.Bracket.Angle + Math.Asin(Tab.Middle.U / Shell.OuterRadius), Tab.Middle.V);

    public Rim Rim(CylinderSurface outer, CylinderSurface inner)
    {
        var path = LoopPath.Of(Tab.Hole(Shell).On(1));
        Point2 At(double t) => new Point2(Tab.Bracket.Angle, 0) + path.At(t);
        return new(path.Domain, path.Breaks, t => outer.ChartOf(At(t)), t => inner.ChartOf(At(t)));
    }

    /// <summary>On the shell's flat, clockwise.</summary>
    /// <param name="radius">Of the cylinder on which the flat keeps its lengths.</param>
    public Loop2 OnFlat(Development development, double radius)
    {
        // From the tab's middle on, so that an outline that runs over the flat's edge stays in one piece.
        var middle = development.Flatten(Place);
        return Tab.Hole(Shell).Cut(radius, middle - new Point2(radius * (Place.U - Tab.Bracket.Angle), Place.V));
    }

    /// <summary>Metal taken out of the wall, mm3.</summary>
    public double Volume => CurveMeasures.Area(Tab.Hole(Shell).On(Shell.MidRadius)) * Shell.Wall;

    public Hole ToHole(int number, Development development, Loop2 outline) => new(
        number,
        $"slot for a tab of {Tab.Bracket.Name}",
        development.Flatten(Place),
        outline,
        Math.Min(Tab.Bracket.Thickness, Tab.Bracket.Tabs!.Width) + (2 * Tab.Bracket.Tabs.Clearance),
        null,
        null,
        HoleMethod.CutOrFile,
        new(Shell.OuterRadius * Turns.From(Place.U, 0), Place.V))
    {
        Shape = CurveMeasures.Bounds(outline) is var box ? new(box.Width, box.Height, 0) : null,
    };
}
