using System.Collections.Immutable;
using Vessel.Design;

namespace Vessel.Model;

/// <summary>
/// The walls round a vessel's inside, a closed chain from end to end. Whatever is asked of every wall is asked here; how a head closes its
/// end is the head's own affair: welded (<see cref="Head.Closing"/>), or not.
/// </summary>
/// <param name="Courses">Courses from the lower edge up; never empty.</param>
/// <param name="Top">The head at the upper end.</param>
/// <param name="Bottom">The head at the lower end.</param>
internal sealed record Chamber(ImmutableArray<Course> Courses, Head Top, Head Bottom)
{
    /// <summary>The two closures, the top first.</summary>
    public ImmutableArray<Head> Heads => [Top, Bottom];

    /// <summary>The closure of an end.</summary>
    public Head Head(VesselEnd end) => end == VesselEnd.Top ? Top : Bottom;

    /// <summary>All walls in the order in which their parts are listed.</summary>
    public ImmutableArray<Wall> Walls => [.. Courses, .. Heads];

    /// <summary>
    /// Welds of the walls in the order of their numbers: along the courses, round between them, then each head's own and the one that
    /// closes.
    /// </summary>
    public IEnumerable<Joint> Joints =>
    [
        .. Courses.SelectMany(course => course.Joints),
        .. Courses.Select(course => course.Girth).OfType<Joint>(),
        .. Heads.SelectMany(head => head.Joints),
    ];
}
