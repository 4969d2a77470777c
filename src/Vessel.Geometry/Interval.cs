namespace Vessel.Geometry;

/// <summary>A closed range of numbers, both ends included; Start may not exceed End.</summary>
public readonly record struct Interval
{
    public Interval(double start, double end)
    {
        if (!(start <= end))
            throw new ArgumentException($"an interval may not run backwards: {start} to {end}");
        Start = start;
        End = end;
    }

    /// <summary>Once round: 0 to 2 pi.</summary>
    public static Interval Turn { get; } = new(0, 2 * Math.PI);

    public double Start { get; }

    public double End { get; }

    public double Length => End - Start;

    public double At(double share) => Start + (share * Length);

    /// <summary>Interval from the lesser start to the greater end of the two.</summary>
    public Interval With(Interval other) => new(Math.Min(Start, other.Start), Math.Max(End, other.End));

    public bool Contains(double value) => value >= Start && value <= End;
}
