using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Model;

/// <summary>Something on the vessel's outside as convex bodies, for questions of distance.</summary>
/// <param name="Id">Id of the part that stands for it.</param>
/// <param name="Path">Path of its mapping in the file; null for what others are moved away from.</param>
/// <param name="Bodies">Each with how far it may lie inside the true surface, mm.</param>
/// <param name="Around">A ball that holds them all.</param>
internal sealed record OutsideBody(
    string Id, string Name, string? Path, ImmutableArray<(ConvexBody Body, double Slack)> Bodies, Ball Around)
{
    /// <summary>Id of the head that it stands on; null for none.</summary>
    public string? OnRim { get; init; }

    /// <summary>A ball round each of the bodies.</summary>
    public Ball[] Balls() => [.. Bodies.Select(body => Ball.Round([body.Body]))];

    /// <summary>
    /// A plane that it is bolted to, by the direction out of the vessel and how far out it lies, mm; null where either side may be.
    /// </summary>
    public (Vector3 Outward, double Level)? BoltedTo { get; init; }
}
