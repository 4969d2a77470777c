namespace Vessel.Geometry;

/// <summary>
/// One bend of a sheet about a straight line. Allowance = |angle| (R + K T), setback = (R + T) tan(|angle| / 2),
/// deduction = 2 setback - allowance (The Fabricator).
/// </summary>
/// <param name="Line">Where its middle lies on the flat, along the direction across the bends, mm.</param>
/// <param name="Angle">Turned, radians, less than pi either way; positive towards the viewer of the flat.</param>
/// <param name="InsideRadius">Radius of the face inside the bend, mm; positive.</param>
/// <param name="K">Place of the neutral line as a share of the thickness from the inside.</param>
public sealed record Bend(double Line, double Angle, double InsideRadius, double K)
{
    /// <summary>Flat metal that the bend uses up, mm.</summary>
    public double Allowance(double thickness) => Math.Abs(Angle) * (InsideRadius + (K * thickness));

    /// <summary>Length from where the bend begins to where the outside faces would meet, mm. Grows without end towards pi.</summary>
    public double Setback(double thickness) => (InsideRadius + thickness) * Math.Tan(Math.Abs(Angle) / 2);

    /// <summary>Length by which the flat is shorter than the two outside lengths together, mm.</summary>
    public double Deduction(double thickness) => (2 * Setback(thickness)) - Allowance(thickness);

    /// <summary>The stretch of the flat that becomes round.</summary>
    public Interval Zone(double thickness) => new(Line - (Allowance(thickness) / 2), Line + (Allowance(thickness) / 2));

    /// <summary>Volume of a bend over that of the flat metal it is made from: Pappus on the mean radius.</summary>
    public double Swelling(double thickness) => (InsideRadius + (thickness / 2)) / (InsideRadius + (K * thickness));
}
