using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Members.DividerPlates;

/// <summary>A solid plate that is welded all round into the shell and parts it in two.</summary>
/// <param name="Notch">Radius of a half-round notch in its rim, through which liquid drains, mm; zero for none.</param>
/// <param name="NotchAngle">Round the vessel of the notch's middle, radians.</param>
/// <param name="Vent">Diameter of a hole opposite the notch, through which the lower room breathes, mm; zero for none.</param>
public sealed record DividerPlateDesign(
    string Path,
    string Name,
    Material Material,
    double Height,
    double Thickness,
    double Clearance,
    double OutsideDiameter,
    double Notch,
    double NotchAngle,
    double Vent)
    : DividerSpec(Path, Name, Material, null, Height, Thickness, Clearance, Fixing.Weld, 0, OutsideDiameter)
{
    /// <summary>Metal that is left between the vent hole and the rim, in thicknesses. Common practice, no source.</summary>
    private const double Rim = 3;

    public double Radius => OutsideDiameter / 2;

    /// <summary>Half of the angle that the notch takes out of the rim, radians.</summary>
    public double HalfNotch => 2 * Math.Asin(Notch / OutsideDiameter);

    /// <summary>Radius from the axis to the middle of the vent hole, mm.</summary>
    public double VentRadius => Radius - (Rim * Thickness) - (Vent / 2);

    public override IEnumerable<string> Ways => Notch > 0 || Vent > 0 ? [Name] : [];
}
