using Vessel.Stock;

namespace Vessel.Design;

/// <summary>The shell cut level at a height: a ring of one course.</summary>
/// <param name="Course">The course that is cut.</param>
/// <param name="OuterRadius">Radius of the outside there, mm.</param>
public sealed record ShellSection(ShellCourse Course, double OuterRadius)
{
    /// <summary>Thickness as cut, mm: level through the wall, which on a cone is more than square to it.</summary>
    public double Wall => Course.Across;

    public double OutsideDiameter => 2 * OuterRadius;

    public double InnerRadius => OuterRadius - Wall;

    public double MidRadius => OuterRadius - (Wall / 2);

    public Material Material => Course.Shell.Material;

    /// <summary>Long seams that are cut; there are none where the course is a tube.</summary>
    public SheetSeams Seams => Course.Seams;
}
