using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A set of angles: ranges, ascending and apart.</summary>
internal readonly record struct Directions(ImmutableArray<(double Low, double High)> Ranges)
{
    public static Directions None { get; } = new([]);

    public static Directions All { get; } = new([(double.NegativeInfinity, double.PositiveInfinity)]);

    public bool IsNone => Ranges.IsEmpty;

    public (double Low, double High)? Longest => IsNone ? null : Ranges.MaxBy(range => range.High - range.Low);

    public Directions Within((double Low, double High) range) => new(
    [
        .. Ranges.Select(r => (Low: Math.Max(r.Low, range.Low), High: Math.Min(r.High, range.High))).Where(r => r.Low <= r.High),
    ]);

    /// <summary>Every angle a turned to 2 x chord - a: what an arc on that chord does.</summary>
    public Directions Mirrored(double chord) =>
        new([.. Ranges.Reverse().Select(r => ((2 * chord) - r.High, (2 * chord) - r.Low))]);

    public Directions Widened(double by) => None.With(new([.. Ranges.Select(r => (r.Low - by, r.High + by))]));

    /// <summary>Both sets together.</summary>
    public Directions With(Directions more)
    {
        if (more.IsNone)
            return this;
        var joined = ImmutableArray.CreateBuilder<(double Low, double High)>();
        foreach (var range in Ranges.Concat(more.Ranges).OrderBy(range => range.Low))
        {
            if (joined.Count > 0 && range.Low <= joined[^1].High)
                joined[^1] = (joined[^1].Low, Math.Max(joined[^1].High, range.High));
            else
                joined.Add(range);
        }

        return new(joined.ToImmutable());
    }

    /// <summary>The angle of the set that lies nearest to the one given; null when there is none.</summary>
    public double? Nearest(double angle) =>
        IsNone ? null : Ranges.Select(r => Math.Clamp(angle, r.Low, r.High)).MinBy(a => Math.Abs(a - angle));
}
