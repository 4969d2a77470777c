using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Model;

/// <summary>How a hole is made at the bench; a laser-cut flat has it already.</summary>
public enum HoleMethod
{
    Drill,
    StepDrill,
    HoleSaw,
    CutOrFile,
    DrillAndTap,
}

/// <summary>One hole of one part.</summary>
/// <param name="Number">1-based within the part; stands on the drawing and in the table.</param>
/// <param name="Purpose">Purpose in words: <c>bore of inlet</c>.</param>
/// <param name="Center">Place on the part's flat, or on the face that is drilled, mm: where the tool's axis meets it.</param>
/// <param name="Outline">The hole on the flat, clockwise; null where the part has no flat.</param>
/// <param name="Diameter">Diameter of the tool that would make it, mm.</param>
/// <param name="Depth">Null when through.</param>
/// <param name="OnOutside">Shells and tubes: arc length along the outside from the reference line (angle 0), and
/// height above the lower edge, mm; null for flat parts.</param>
public sealed record Hole(
    int Number,
    string Purpose,
    Point2 Center,
    Loop2? Outline,
    double Diameter,
    double? Depth,
    ThreadSize? Thread,
    HoleMethod Made,
    Point2? OnOutside)
{
    /// <summary>Shape of a window or slot; null for what one round tool makes.</summary>
    public HoleShape? Shape { get; init; }

    /// <summary>
    /// That the hole leaves all round what goes through it, mm; null where nothing does, or it may be no wider than it is.
    /// </summary>
    public double? Clearance { get; init; }

    /// <summary>Where a tool's middle goes: one place, or those of a window's corners or a slot's ends; on the part's flat, mm.</summary>
    public ImmutableArray<Point2> ToolPlaces => Shape?.Centres(Center) ?? [Center];

    /// <summary>Made when the part is welded to its neighbour, through both.</summary>
    public bool IsLater { get; init; }
}
