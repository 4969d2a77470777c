using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>
/// A hole that a member wants in a shell that is rolled from sheet: a rectangle that is carried straight through the wall along a line
/// outward from the vessel's axis.
/// </summary>
/// <param name="What">What goes through it, in words.</param>
/// <param name="Height">Height of the member, which tells the course that is cut, mm.</param>
/// <param name="Angle">Angle of that line round the vessel, radians.</param>
/// <param name="Middle">Middle of the rectangle: sideways of that line, and height, mm.</param>
/// <param name="Along">Vector from its middle to the middle of its end, mm.</param>
/// <param name="Across">Vector from its middle to the middle of its side, a quarter turn on from <paramref name="Along"/>, mm.</param>
/// <param name="Width">The lesser of its two widths, mm.</param>
public sealed record ShellSlot(string What, double Height, double Angle, Point2 Middle, Point2 Along, Point2 Across, double Width)
{
    /// <summary>Corners of the slot counter-clockwise: sideways of its line, and height, mm.</summary>
    public ImmutableArray<Point2> Corners =>
        [Middle - Along - Across, Middle + Along - Across, Middle + Along + Across, Middle - Along + Across];
}
