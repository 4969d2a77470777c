using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Export.Drawing;

/// <summary>A flat with its outlines as a cutter knows them: fitted once, for all that is drawn and told of
/// it.</summary>
/// <param name="Holes">In the order of the flat's; those of fields are circles and stay a rule.</param>
/// <param name="Tolerance">Greatest deviation allowed, mm.</param>
public sealed record FittedFlat(Flat Flat, FittedOutline Outer, ImmutableArray<FittedOutline> Holes, double Tolerance)
{
    /// <summary>Lines and arcs drawn; a circle is one.</summary>
    public int Entities => Flat.Cut.FieldHoles + Holes.Append(Outer).Sum(outline => outline.Fit?.Vertices.Length ?? 1);

    /// <summary>Scribed curves, in the order of the flat's marks.</summary>
    public ImmutableArray<FittedPath> Scribed { get; private init; } = [];

    /// <summary>Greatest distance between what is drawn and the exact lines, cut or scribed, mm.</summary>
    public double Deviation => Holes.Append(Outer).Select(outline => outline.Fit?.Deviation ?? 0).Concat(Scribed.Select(path => path.Deviation)).Max();

    public static FittedFlat Of(Flat flat, double tolerance) => new(
        flat,
        FittedOutline.Of(flat.Cut.Outer, tolerance),
        [.. flat.Cut.Holes.Select(hole => FittedOutline.Of(hole, tolerance))],
        tolerance)
    {
        Scribed = [.. flat.Marks.OfType<CurveMark>().Select(mark => ArcFit.Fit(mark.Curve, tolerance))],
    };
}

/// <param name="Fit">Null for a circle, which is drawn as it is.</param>
public sealed record FittedOutline(Loop2 Exact, FittedLoop? Fit)
{
    public static FittedOutline Of(Loop2 loop, double tolerance) =>
        new(loop, loop.AsCircle is null ? ArcFit.Fit(loop, tolerance) : null);
}
