using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Planning;

/// <summary>What each part of a vessel puts in a torch's way.</summary>
internal static class Obstacles
{
    public static IEnumerable<Body> Of(Assembly assembly)
    {
        var design = assembly.Design;
        foreach (var course in design.Shell.Courses)
        {
            yield return course.IsCone
                ? new ConeBody(course.Id, course)
                : Ring(course.Id, course.Low - course.Wall, course.Low, course.Start, course.End);
        }

        foreach (var body in assembly.Chamber.Heads.SelectMany(head => head.Bodies))
            yield return body;
        foreach (var body in assembly.Members.SelectMany(member => member.Bodies))
            yield return body;
    }

    private static RingBody Ring(string part, double inner, double outer, double low, double high) =>
        new(part, Frame3.Identity, inner, outer, low, high);
}
