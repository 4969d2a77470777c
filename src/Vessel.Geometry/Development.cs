namespace Vessel.Geometry;

/// <summary>
/// How a flat and the finished surface correspond, exactly and both ways. A closed set, to be matched by switch.
/// A place on the finished surface is (angle round the part's axis in radians, height along it in mm), or (x, y) in
/// mm for a plane; a gore's is told at <see cref="GoreDevelopment"/>.
/// </summary>
public abstract record Development
{
    private protected Development()
    {
    }

    /// <summary>Place on the flat of a place on the finished surface, mm.</summary>
    public abstract Point2 Flatten(Point2 place);

    /// <summary>Place on the finished surface of a place on the flat.</summary>
    public abstract Point2 Raise(Point2 flat);
}

/// <summary>A plate that stays flat: the flat is the part's outer face.</summary>
public sealed record PlaneDevelopment : Development
{
    public override Point2 Flatten(Point2 place) => place;

    public override Point2 Raise(Point2 flat) => flat;
}

/// <summary>
/// A sheet rolled to a cylinder or, of several, to its share of one. The blank is one root gap shorter than the neutral arc, and half
/// the gap lies on either side of a seam, so angle = seam + (x + gap/2) / radius.
/// </summary>
/// <param name="OuterRadius">Outer radius of the finished cylinder, mm.</param>
/// <param name="Wall">mm.</param>
/// <param name="K">Place of the neutral line as a share of the wall from the inside; 0.5 once the radius is more
/// than about five walls (reference: DIN 6935 correction reaches 1).</param>
/// <param name="Seam">Angle of the middle of the gap at its left edge, radians.</param>
/// <param name="Gap">Root gap, mm along the neutral circle; below zero where a seam draws in by more.</param>
public sealed record RolledDevelopment(double OuterRadius, double Wall, double K, double Seam, double Gap) : Development
{
    /// <summary>K of a neutral line in the middle of the wall: holds once the radius is more than about five walls.</summary>
    public const double MeanLine = 0.5;

    /// <summary>Radius of the line that keeps its length, mm.</summary>
    public double NeutralRadius => OuterRadius - Wall + (K * Wall);

    /// <summary>Equal sheets that go round.</summary>
    public int Sheets { get; init; } = 1;

    /// <summary>Added at either end and cut off when it is rolled, mm.</summary>
    public double Trim { get; init; }

    /// <summary>Width of the blank round the girth, mm, with what is trimmed off.</summary>
    public double Width => (2 * Math.PI * NeutralRadius / Sheets) - Gap + (2 * Trim);

    /// <summary>Angles are first brought to [seam, seam + 2 pi).</summary>
    public override Point2 Flatten(Point2 place) =>
        new((NeutralRadius * (Turns.From(place.U, Seam) - Seam)) - (Gap / 2) + Trim, place.V);

    public override Point2 Raise(Point2 flat) => new(Seam + ((flat.U + (Gap / 2) - Trim) / NeutralRadius), flat.V);
}

/// <summary>A sheet wrapped round the outside of a tube: x = radius (angle - start), y = height + lift.</summary>
/// <param name="Radius">Radius of the tube's outside, mm.</param>
/// <param name="Start">Angle of the wrap's left edge, radians.</param>
/// <param name="Lift">Added to heights so that the flat starts at y = 0, mm.</param>
public sealed record WrappedDevelopment(double Radius, double Start, double Lift) : Development
{
    /// <summary>
    /// By how much the sheet is longer than once round and laps over itself, mm: where no line up the tube is free of holes.
    /// </summary>
    public double Lap { get; init; }

    public override Point2 Flatten(Point2 place) => new(Radius * (Turns.From(place.U, Start) - Start), place.V + Lift);

    public override Point2 Raise(Point2 flat) => new(Start + (flat.U / Radius), flat.V - Lift);
}

/// <summary>
/// A sheet with bends. A place is named by its point of the flat, which is the chart of <see cref="FoldedSurface"/>;
/// <see cref="FoldedSheet.At"/> and <see cref="FoldedSheet.Locate"/> lead into space and back.
/// </summary>
public sealed record FoldedDevelopment(FoldedSheet Sheet) : Development
{
    public override Point2 Flatten(Point2 place) => place;

    public override Point2 Raise(Point2 flat) => flat;
}
