using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Shells.Cones;
using Vessel.Shells.Cylinders;
using Vessel.Sites;

namespace Vessel.Shells;

/// <summary>The kinds of course that there are: the one place outside them that names them.</summary>
internal static class Courses
{
    /// <summary>The courses of the shell, built, from the lower edge up.</summary>
    public static ImmutableArray<Course> Build(VesselDesign design, ImmutableArray<PortSite> sites) =>
        [.. design.Shell.Courses
            .Select(course => course.IsCone ? (Course)new Cone(course, design, sites) : new Cylinder(course, design, sites))];
}
