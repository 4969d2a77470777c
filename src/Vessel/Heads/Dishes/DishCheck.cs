using Vessel.Design;

namespace Vessel.Heads.Dishes;

/// <summary>Radii of dished heads that do not fit the shell.</summary>
internal static class DishCheck
{
    public static Fault? Knuckle(UnitFormat shown, ShellSection shell, DishedHead head, double knuckle, string key = "knuckle_radius")
    {
        var radius = shell.OuterRadius - head.Wall;
        return radius > 0 && knuckle >= radius
            ? new Fault(FaultCodes.RadiiDoNotFit, $"{head.Path}.{key}",
                $"The knuckle of the {head.Path} head is as wide as its bore.", shown.Length(knuckle),
                $"less than {shown.LengthDown(radius)}", "Make the knuckle radius smaller, or use 'shape: hemisphere'.")
            : null;
    }
}
