using System.Collections.Immutable;
using Vessel.Joints;
using Vessel.Parts;

namespace Vessel.Planning;

/// <summary>
/// Welds that are all fitted and tacked before one of them is welded, for the first bead would pull what the others hold out of its place:
/// both ears or sides of a bracket, the seams of a course or cone of several sheets, the gores of a head. Common practice, no source.
/// </summary>
/// <param name="Path">Path of the bracket, or of the key that turns the seams.</param>
/// <param name="Joints">Two or more, in the order of their numbers.</param>
public sealed record TackGroup(string Path, ImmutableArray<Joint> Joints)
{
    /// <summary>Id of the task in which they are tacked.</summary>
    public string Task => $"tack {Path}";

    public static ImmutableArray<TackGroup> Of(IEnumerable<Joint> joints) =>
    [
        .. joints.Where(joint => joint.Role is WeldRole.LongSeam or WeldRole.ConeSeam or WeldRole.GoreSeam or WeldRole.Mount)
            .GroupBy(joint => joint.Role == WeldRole.Mount ? joint.Owner : LongSeam.Turning(joint))
            .Where(group => group.Skip(1).Any())
            .Select(group => new TackGroup(group.Key, [.. group])),
    ];
}
