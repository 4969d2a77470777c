namespace Vessel.Stock;

/// <summary>The group that decides gauges, filler and bending.</summary>
public enum MaterialFamily
{
    Aluminium,
    Stainless,
    MildSteel,
}

/// <summary>A metal that can be bought as sheet and tube.</summary>
/// <param name="Name">Name by which the file calls it: <c>stainless 304</c>.</param>
/// <param name="Family">Family of metals, one of <see cref="MaterialFamily"/>.</param>
/// <param name="Density">For mass, g/cm3.</param>
/// <param name="Filler">The usual TIG rod for joining it to itself.</param>
/// <param name="Source">Where the figures come from, in words for the report.</param>
public sealed record Material(string Name, MaterialFamily Family, double Density, Filler Filler, string Source);

/// <summary>A TIG filler rod alloy.</summary>
/// <param name="Density">g/cm3.</param>
public sealed record Filler(string Name, double Density, string Source);
