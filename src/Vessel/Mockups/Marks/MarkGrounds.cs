using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Mockups;

/// <summary>The shell's courses from the lower edge up, and flat heads.</summary>
internal static class MarkGrounds
{
    public static IEnumerable<MarkGround> Of(MockupPlan plan, VesselDesign design)
    {
        var (outside, wall) = (plan.Outside, plan.Options.LeastWall);
        // What is filled may be sunk into as far as it is thick; so deep no letters are.
        double Deepest(double metal) => plan.Inside is null ? double.PositiveInfinity : Math.Max(0, metal - wall);
        foreach (var course in design.Shell.Courses)
        {
            // An edge of the outline may be left out where a lid is as wide as the shell.
            var start = outside.NearestTo(new(course.Low, 0, course.Start)).Along;
            yield return new(course.Name, course.Outer, start, Deepest(course.Wall));
        }

        var ends = new[] { (VesselEnd.Bottom, 0, 0.0), (VesselEnd.Top, outside.Pieces.Length - 1, outside.Joints[^1]) };
        foreach (var (end, piece, start) in ends)
        {
            // A ring to stand it in takes the room under it.
            if (design.Head(end).Plate is { } head && outside.Pieces[piece] is LinePiece line
                && (end == VesselEnd.Top || plan.Options.Stand == 0))
                yield return new(Names.Of(end), line, start, Deepest(head.Wall));
        }
    }
}
