using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>What a print weighs.</summary>
public static class Plastic
{
    /// <summary>Depth below each surface that is printed full: three lines of a usual nozzle, mm. Common practice, no source.</summary>
    private const double Skin = 1.2;

    /// <summary>Grams. Densities of ABS, PLA and PETG from memory: 1.04, 1.24 and 1.27 g/cm3.</summary>
    public static Estimate Mass(Mesh mesh)
    {
        var (volume, skin) = (mesh.Volume, Math.Min(mesh.Volume, Skin * mesh.Area));
        double Filled(double share) => (skin + (share * (volume - skin))) / 1000;
        return new(
            1.04 * Filled(0.1), 1.24 * Filled(0.2), 1.27 * Filled(1),
            "1.2 mm of skin, the rest filled to 10, 20 or 100 %; ABS, PLA or PETG; without supports");
    }
}
