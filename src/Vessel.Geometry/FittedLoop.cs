using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A closed chain of lines and circular arcs that stands for an exact loop.</summary>
/// <param name="Vertices">Vertices in the loop's direction; the last leads back to the first.</param>
/// <param name="Deviation">Greatest distance between chain and loop, mm; zero for lines and arcs, which are kept.</param>
public sealed record FittedLoop(ImmutableArray<Bulge> Vertices, double Deviation)
{
    /// <summary>The chain itself as an exact loop.</summary>
    public Loop2 ToLoop() =>
        new([.. Vertices.Select((vertex, i) => vertex.To(Vertices[(i + 1) % Vertices.Length].At))]);
}

/// <summary>A vertex and the way to the next one.</summary>
/// <param name="At">mm.</param>
/// <param name="Value">Tangent of a quarter of the arc's sweep, positive counter-clockwise; zero for a line.</param>
public readonly record struct Bulge(Point2 At, double Value)
{
    /// <summary>The line or arc from here to the vertex <paramref name="next"/>.</summary>
    public Curve2 To(Point2 next)
    {
        var chord = next - At;
        if (Value == 0)
            return new Line2(At, next);

        // Chord 2 r sin(sweep / 2) and distance r cos(sweep / 2) of the centre from it, in terms of tan(sweep / 4).
        var sweep = 4 * Math.Atan(Value);
        var center = (0.5 * (At + next)) + (((1 - (Value * Value)) / (4 * Value)) * chord.Turned);
        return new Arc2(center, (At - center).Length, (At - center).Angle, sweep);
    }
}
