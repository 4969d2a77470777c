using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Ports;

namespace Vessel.Planning;

/// <summary>What each part of a vessel puts in a torch's way.</summary>
internal static class Obstacles
{
    private const int Samples = 24;

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
        foreach (var body in assembly.Sites.SelectMany(Port))
            yield return body;
        foreach (var body in assembly.Members.SelectMany(member => member.Bodies))
            yield return body;
    }

    private static RingBody Ring(string part, double inner, double outer, double low, double high) =>
        new(part, Frame3.Identity, inner, outer, low, high);

    /// <summary>
    /// An elbow's pieces square at the middles of their mitres: what that adds on the inside of the bend lies within the next piece.
    /// </summary>
    private static IEnumerable<Body> Port(PortSite site)
    {
        var port = site.Port;
        var face = port.IsFlush ? site.Inside : site.Outside;
        var foot = port is { Joint: PortJoint.SetIn, IsFlush: false }
            ? site.InnerEnd
            : Enumerable.Range(0, Samples).Min(i => face.Reach(port.OuterRadius, Turns.Full * i / Samples));
        var first = Slug.Of(port.Name);
        return site.Legs.Zip(PortPieces.Ids(port), (leg, id) => new RingBody(
            id, leg.Frame, port.BoreRadius, port.OuterRadius, id == first ? foot : 0, leg.Length));
    }
}
