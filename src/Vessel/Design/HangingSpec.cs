using Vessel.Stock;

namespace Vessel.Design;

/// <summary>Something round inside that goes in with the head that it hangs from.</summary>
/// <param name="OutsideDiameter">mm.</param>
/// <param name="Wall">mm.</param>
/// <param name="HangsFrom">The flat head that carries it.</param>
public abstract record HangingSpec(
    string Path, string Name, Material Material, Fixing Fixed, double OutsideDiameter, double Wall, VesselEnd HangsFrom)
    : InsideSpec(Path, Name, Material, Fixed)
{
    /// <summary>Name of the port whose tube carries it; null where the head itself does.</summary>
    public virtual string? Carrier => null;

    /// <summary>Length as a bore in which a divider may stand, mm; null where it is none.</summary>
    public virtual double? BoreLength => null;

    public double InnerRadius => (OutsideDiameter / 2) - Wall;
}
