using Vessel.Design;

namespace Vessel.Model;

/// <summary>A wall that is a length of shell between two level edges.</summary>
/// <param name="spec">The course as it was read.</param>
internal abstract class Course(ShellCourse spec) : Wall(spec.Path, spec.Name, spec.Shell.Material, spec.Wall)
{
    public ShellCourse Spec { get; } = spec;

    /// <summary>The weld round its lower edge, to the course below; null for the lowest, which a head closes.</summary>
    public abstract Joint? Girth { get; }
}
