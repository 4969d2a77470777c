using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Members.Dipsticks;

/// <summary>A strip of sheet that stands in the oil through a port, with marks at round volumes; mm.</summary>
/// <param name="Port">Name of the port that it stands in.</param>
/// <param name="Clear">Distance from its tip to the metal below.</param>
/// <param name="Above">What stands out of the port's free end.</param>
public sealed record DipstickDesign(
    string Path, Material Material, string Port, double Width, double Thickness, double Clear, double Above)
    : MemberSpec(Path, PartName)
{
    /// <summary>The name of the one dipstick, which the file gives none.</summary>
    public const string PartName = "dipstick";

    /// <summary>Diameter of the round bore that its section just passes, mm.</summary>
    public double Diagonal => double.Hypot(Width, Thickness);
}
