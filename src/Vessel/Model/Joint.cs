using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Model;

public enum JointKind
{
    /// <summary>Edge to edge, melted through.</summary>
    Butt,

    /// <summary>Weld in the angle between two surfaces.</summary>
    Fillet,

    /// <summary>Weld on the outside of two edges that meet at an angle.</summary>
    Corner,

    /// <summary>Between two surfaces too nearly in line for a fillet, or flush with each other.</summary>
    Groove,
}

/// <summary>One place along a weld, in the vessel's frame.</summary>
/// <param name="Root">Place on the root line, where the outer surfaces meet.</param>
/// <param name="Tangent">d Root / d parameter; its length is the speed along the path.</param>
/// <param name="AlongHost">Unit, square to the path: from the root along the host's surface, away from the other part.</param>
/// <param name="AlongPart">Unit, square to the path: from the root along the attached part's surface, away from the host.</param>
/// <param name="Dihedral">Angle between the two through the air, radians.</param>
/// <param name="GapNormal">Root opening square to the host, mm: what the torch sees.</param>
/// <param name="GapAxial">The same along the attached part's axis, mm: what there is to grind.</param>
public readonly record struct Station(
    Vector3 Root,
    Vector3 Tangent,
    Vector3 AlongHost,
    Vector3 AlongPart,
    double Dihedral,
    double GapNormal,
    double GapAxial);

/// <summary>Where two parts are welded, as a path with its section.</summary>
/// <param name="Name">Name in words: <c>inlet to shell</c>.</param>
/// <param name="Between">
/// Ids of a host and of an attached part, then of further ones on either side; the same twice for a seam of one part.
/// </param>
/// <param name="Domain">Domain of <paramref name="Along"/>; a closed path ends where it begins.</param>
/// <param name="Breaks">Parameters where path or section may change abruptly.</param>
/// <param name="Throat">mm, the same all along.</param>
/// <param name="Wall">The thinner of the two walls, mm.</param>
/// <param name="Path">The design's mapping that asks for the joint.</param>
public sealed record Joint(
    string Name,
    ImmutableArray<string> Between,
    JointKind Kind,
    Interval Domain,
    ImmutableArray<double> Breaks,
    Func<double, Station> Along,
    double Throat,
    double Wall,
    string Path)
{
    /// <summary>Number of the weld as on the flats: <c>W2</c>; see <see cref="Welds"/>.</summary>
    public string Number { get; init; } = string.Empty;

    /// <summary>What it is to the vessel.</summary>
    public required WeldRole Role { get; init; }

    /// <summary>What the bench is told of it; null where its role says all.</summary>
    public JointWords? Words { get; init; }

    /// <summary>Path of the mapping of the shell's course, head, port, inside part or bracket that it belongs to.</summary>
    public required string Owner { get; init; }

    /// <summary>Path of the key whose length sets its gap; null where there is none or it comes of how an end is cut.</summary>
    public string? GapKey { get; init; }

    /// <summary>What leaves that gap and what closes it, as a sentence without its stop; null where that key alone sets it.</summary>
    public string? GapRemedy { get; init; }

    /// <summary>
    /// The wall of what is attached, mm, where it rather than the thinner of both walls says how wide the gap may be; null elsewhere.
    /// </summary>
    public double? OwnWall { get; init; }

    /// <summary>Ids of the parts in the order of <see cref="Between"/>: the first of either side before the others.</summary>
    public static ImmutableArray<string> Sides(ImmutableArray<string> hosts, ImmutableArray<string> parts) =>
        [hosts[0], parts[0], .. hosts[1..], .. parts[1..]];

    /// <summary>Where along the path metal is laid; empty for all along. In order, apart, inside the domain.</summary>
    public ImmutableArray<Interval> Runs { get; init; } = [];

    /// <summary>Section of the V that square edges leave open where they meet at an angle, mm2.</summary>
    public double Vee { get; init; }

    /// <summary>How far the edges are held apart when they are tacked, where they touch as drawn and are bevelled, mm.</summary>
    public double HeldOpen { get; init; }

    /// <summary>Whether short beads alone hold it: less than half of the path is welded.</summary>
    public bool IsTacked => 2 * Welded.Sum(run => run.Length) < Domain.Length;

    /// <summary>The runs, or the whole path.</summary>
    public ImmutableArray<Interval> Welded => Runs.IsEmpty ? [Domain] : Runs;

    /// <summary>Whether the parameter is an angle round an axis, radians; else it is a length, mm.</summary>
    public bool IsRound => Domain == Interval.Turn;

    /// <summary>Length of the root line where it is welded, mm.</summary>
    public double Length => Welded.Sum(run => Quadrature.Periodic(t => Along(t).Tangent.Length, run, BreaksIn(run)));

    /// <summary>The breaks inside a run.</summary>
    public ImmutableArray<double> BreaksIn(Interval run) => [.. Breaks.Where(run.Contains)];
}
