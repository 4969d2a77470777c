namespace Vessel.Geometry;

/// <summary>Where a line first enters a body of revolution.</summary>
/// <param name="Along">Signed distance from the line's point along its direction, mm.</param>
/// <param name="At">The place.</param>
/// <param name="Normal">Unit, out of the body.</param>
/// <param name="Piece">Number of the profile's piece that is met.</param>
/// <param name="Grazes">The line runs along the surface there: it only just meets it.</param>
public readonly record struct LineHit(double Along, Vector3 At, Vector3 Normal, int Piece, bool Grazes)
{
    /// <summary>Arc length from the profile's start at which it is met, mm.</summary>
    public double Station { get; init; }

    /// <summary>Lines that meet a surface under less than this, as a sine, graze it: rounding decides whether they meet at all.</summary>
    internal const double Touch = 1e-6;
}
