using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;

namespace Vessel.Model;

/// <summary>The welds of a vessel, numbered as they are listed: W1, W2... The same numbers stand on the flats and in the tables.</summary>
public sealed class Welds
{
    private readonly ILookup<(WeldRole Role, string Owner), string> _numbers;

    public Welds(IEnumerable<Joint> joints)
    {
        All = [.. joints.Select((joint, i) => joint with { Number = string.Create(CultureInfo.InvariantCulture, $"W{i + 1}") })];
        _numbers = All.ToLookup(joint => (joint.Role, joint.Owner), joint => joint.Number);
    }

    public ImmutableArray<Joint> All { get; }

    /// <summary>
    /// Numbers of the welds of a role that belong to one mapping of the file, in their order; none where there is no such weld.
    /// </summary>
    public ImmutableArray<string> Of(WeldRole role, string owner) => [.. _numbers[(role, owner)]];

    /// <summary>Number of the one weld of a role that belongs to a mapping.</summary>
    /// <exception cref="InvalidOperationException">There is none, or more than one.</exception>
    public string One(WeldRole role, string owner) => _numbers[(role, owner)].Single();

    /// <summary>Numbers of the long seams of a course of the shell, in the order of its sheets; none for a tube.</summary>
    public ImmutableArray<string> Up(ShellCourse course) =>
        [.. All.Where(joint => joint.Role == WeldRole.LongSeam && course.SeamPaths.Contains(joint.Path)).Select(joint => joint.Number)];
}
