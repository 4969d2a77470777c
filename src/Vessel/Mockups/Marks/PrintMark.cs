using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>A name, a weld's number or the line of a seam on the print, as fields of its outside.</summary>
/// <param name="Text">Text as it reads; of a line, the seam's number.</param>
/// <param name="Outlines">Convex, counter-clockwise, in the chart.</param>
/// <param name="Height">Height of its letters, mm of the print; null for a line.</param>
/// <param name="Rise">Out of the surface, mm of the vessel; below zero it is sunk.</param>
internal sealed record PrintMark(
    string Text, MarkChart Chart, ImmutableArray<ImmutableArray<Point2>> Outlines, double? Height, double Rise)
{
    public Box2 Box => Outlines.SelectMany(outline => outline).Aggregate(Box2.Empty, (box, p) => box.Join(p));

    public IEnumerable<Relief> Reliefs => Outlines.Select(outline => new Relief(
        Chart.Ground.Piece,
        LoopPath.Of(Loop2.Polygon([.. outline])),
        Chart.At,
        Rise,
        Chart.StationsOf(outline) is var taken ? new(taken.Start - Obstacle.Least, taken.End + Obstacle.Least) : default,
        Chart.Angle));
}

/// <summary>What was to stand on the print and does not.</summary>
/// <param name="Because">Reason in words, without a stop.</param>
/// <param name="Path">Path of the port, or of the key that turns the seam.</param>
internal sealed record MissingMark(string Text, string Because, string Path);
