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

/// <summary>A thread of a bung or fitting, with its hole.</summary>
/// <param name="Name">Name by which the file calls it: <c>M14x1.5</c>, <c>dash 20</c>, <c>1/4 NPT</c>.</param>
/// <param name="Thread">The thread itself, as stamped on a tap: <c>1 5/8-12 UN</c>.</param>
/// <param name="MajorDiameter">mm.</param>
/// <param name="TapDrill">Drill before tapping, mm.</param>
/// <param name="Bore">Through bore of the usual male fitting, mm; null where no figure is known.</param>
/// <param name="Source">Where the figures come from, in words for the report.</param>
public sealed record ThreadSize(
    string Name, string Thread, double MajorDiameter, double TapDrill, double? Bore, string Source)
{
    /// <summary>It seals by its own taper, without a face.</summary>
    public bool IsTaper { get; init; }
}
