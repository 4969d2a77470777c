using Vessel.Stock;

namespace Vessel.Joints;

/// <summary>What a millimetre of a weld may carry for static loads; no rating.</summary>
/// <param name="Shear">Along the seam.</param>
/// <param name="Pull">Across the seam, apart.</param>
public sealed record WeldStrength(AllowedLoad Shear, AllowedLoad Pull)
{
    /// <summary>
    /// The least of the weld's metal on its throat and of either metal beside it on the thinner wall, which is the leg of a fillet too. A
    /// fillet's throat is sheared whichever way it is loaded, so its pull is its shear.
    /// </summary>
    public static WeldStrength Of(Joint joint, Filler filler, Material host, Material part)
    {
        var shear = Least(
            joint, filler, WeldMetalStrength.Shear(filler), (host, BaseMetalStrength.Shear(host)), (part, BaseMetalStrength.Shear(part)));
        return new(shear, joint.Kind == JointKind.Fillet
            ? shear
            : Least(joint, filler, WeldMetalStrength.Pull(filler), (host, BaseMetalStrength.Pull(host)),
                (part, BaseMetalStrength.Pull(part))));
    }

    private static AllowedLoad Least(Joint joint, Filler filler, Datum weld, params ReadOnlySpan<(Material Metal, Datum Stress)> beside)
    {
        var least = new AllowedLoad(weld.Value * joint.Throat, filler.Name, weld.Source);
        foreach (var (metal, stress) in beside)
        {
            if (stress.Value * joint.Wall < least.Value)
                least = new(stress.Value * joint.Wall, metal.Name, stress.Source);
        }

        return least;
    }
}

/// <summary>A load with what sets it.</summary>
/// <param name="Value">N/mm.</param>
/// <param name="By">The filler, or the metal beside the weld, that is the weakest.</param>
/// <param name="Source">Source of the stress that it may carry.</param>
public sealed record AllowedLoad(double Value, string By, string Source);
