using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Joints;

public enum JointKind
{
    Butt,
    Fillet,
    Corner,
    Groove,
}

/// <summary>One place along a weld.</summary>
/// <param name="Root">On the root line, where the outer surfaces meet, in the vessel's frame.</param>
/// <param name="Tangent">Unit, along the path.</param>
/// <param name="Along">Unit, square to the path: the way the metal's first leg runs from the root.</param>
/// <param name="Across">The same for the second leg.</param>
/// <param name="Dihedral">Angle between the legs through the air, radians.</param>
/// <param name="GapNormal">Root opening normal to the host, mm: what the torch sees.</param>
/// <param name="GapAxial">The same along the attached part's axis, mm: what there is to grind.</param>
public readonly record struct Station(
    Vector3 Root, Vector3 Tangent, Vector3 Along, Vector3 Across, double Dihedral, double GapNormal, double GapAxial);

/// <summary>Where two parts are welded, as a path with its section.</summary>
/// <param name="Name">For the map and the tables: <c>inlet to shell</c>.</param>
/// <param name="Between">Ids of the two parts; the same twice for a seam of one part.</param>
/// <param name="Domain">Of <paramref name="Along"/>; a closed path ends where it begins.</param>
/// <param name="Breaks">Parameters where the path or section may change abruptly.</param>
/// <param name="Throat">mm, the same all along.</param>
/// <param name="Path">The design's mapping that asks for the joint.</param>
public sealed record Joint(
    string Name,
    ImmutableArray<string> Between,
    JointKind Kind,
    Interval Domain,
    ImmutableArray<double> Breaks,
    Func<double, Station> Along,
    double Throat,
    string Path);
