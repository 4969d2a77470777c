using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>Walls of revolution round a space inside: an inner tube, a cup.</summary>
/// <param name="Inner">Heights of the space inside, mm in the vessel's frame.</param>
/// <param name="Outer">Heights of the whole thing, walls included.</param>
/// <param name="OpenEnd">Height of the open end that does not lie against a head; null when there is none.</param>
/// <param name="Plate">Area, edges and place of the holes in the plate that closes an end; null for none.</param>
/// <param name="Windows">Windows in the wall, row by row, with the height of their lower edges.</param>
/// <param name="InWalls">What windows and holes leave open within the walls.</param>
internal sealed record Enclosure(
    string Name,
    double InnerRadius,
    double OuterRadius,
    Interval Inner,
    Interval Outer,
    double? OpenEnd,
    (double Area, double Perimeter, OpeningShape Shape)? Plate,
    ImmutableArray<(WindowsDesign Design, double Sill)> Windows,
    ImmutableArray<RoomPiece> InWalls,
    string Path)
{
    /// <summary>Area below which a way through a wall or plate counts as shut, mm2: what is left is rounding.</summary>
    public const double LeastOpening = 1e-6;

    public bool Holds(double radius, double height) => radius < InnerRadius && Inner.Contains(height);

    public bool Holds(Enclosure other) =>
        other != this && other.OuterRadius <= InnerRadius && other.Outer.Start < Inner.End && other.Outer.End > Inner.Start;
}
