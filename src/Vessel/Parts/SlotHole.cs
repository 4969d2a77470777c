using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>A member's slot in a course that is rolled from sheet; its walls are radial.</summary>
internal sealed record SlotHole(ShellSlot Slot, ShellSection Shell)
{
    /// <param name="course">A cylinder; heights count from its lower edge.</param>
    public static ImmutableArray<SlotHole> Of(VesselDesign vessel, ShellCourse course) =>
    [
        .. vessel.Members.SelectMany(member => member.Slots).Where(slot => vessel.Shell.CourseAt(slot.Height) == course)
            .Select(slot => new SlotHole(slot with { Middle = slot.Middle - new Point2(0, course.Start) }, course.At(course.Start))),
    ];

    /// <summary>Middle of the slot on the outside: angle round the vessel and height.</summary>
    public Point2 Place => new(Slot.Angle + Math.Asin(Slot.Middle.U / Shell.OuterRadius), Slot.Middle.V);

    private BarOutline Outline => new(Slot.Corners, Shell.InnerRadius, Shell.OuterRadius);

    public Rim Rim(CylinderSurface outer, CylinderSurface inner)
    {
        var path = LoopPath.Of(Outline.On(1));
        Point2 At(double t) => new Point2(Slot.Angle, 0) + path.At(t);
        return new(path.Domain, path.Breaks, t => outer.ChartOf(At(t)), t => inner.ChartOf(At(t)));
    }

    /// <summary>Outline on the shell's flat, clockwise.</summary>
    /// <param name="radius">Radius of the cylinder on which the flat keeps its lengths.</param>
    public Loop2 OnFlat(Development development, double radius)
    {
        // From the slot's middle on, so that an outline that runs over the flat's edge stays in one piece.
        var middle = development.Flatten(Place);
        return Outline.Cut(radius, middle - new Point2(radius * (Place.U - Slot.Angle), Place.V));
    }

    /// <summary>Metal taken out of the wall, mm3.</summary>
    public double Volume => CurveMeasures.Area(Outline.On(Shell.MidRadius)) * Shell.Wall;

    public Hole ToHole(int number, Development development, Loop2 outline) => new(
        number,
        $"slot for {Slot.What}",
        development.Flatten(Place),
        outline,
        Slot.Width,
        null,
        null,
        HoleMethod.CutOrFile,
        new(Shell.OuterRadius * Turns.From(Place.U, 0), Place.V))
    {
        Shape = CurveMeasures.Bounds(outline) is var box ? new(box.Width, box.Height, 0) : null,
    };
}
