using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Members.Screens;
using Vessel.Parts;
using Vessel.Stock;

namespace Vessel.Tests.Support;

/// <summary>Vessels with discs and packing, as records.</summary>
internal static class Discs
{
    /// <summary>Fits the bore of <see cref="Designs.Shell"/>, 106 mm, with 0.2 mm all round.</summary>
    public static ScreenDesign Screen(
        string name, double height, Fixing held = Fixing.Tabs, double bore = 0, HolePattern pattern = HolePattern.Staggered60) => new(
        $"inside.discs.{name}", name, Designs.Stainless, null, height, 1.5, 0.2, held, bore, 105.6,
        new($"inside.discs.{name}", 3, 5, pattern, 4));

    /// <summary>A shell cut from tube, flat overlay heads, an outlet that reaches in by <paramref name="outletInside"/>.</summary>
    public static VesselDesign Vessel(
        ImmutableArray<ScreenDesign> discs, ImmutableArray<PackingDesign> packings = default, double outletInside = 10)
    {
        var shell = Designs.Shell(madeFrom: StockForm.Tube);
        return Designs.Vessel(
            shell,
            Designs.Branch("inlet", 32, 2, new(40, 0.5, 0, 0, 0)),
            Designs.OnHead("outlet", VesselEnd.Top, 32, 2, 0) with
            {
                Joint = PortJoint.SetIn,
                InsideLength = outletInside,
                Clearance = 0.1,
            }) with
        {
            Bottom = Designs.Inset(shell, "bottom"),
            Members = [.. discs, .. packings.IsDefault ? [] : packings],
        };
    }

    public static PackingDesign Wool(string? lower, string? upper) => new(
        "inside.packing", "packing", "stainless wool", MaterialFamily.Stainless, lower, upper, 60, 0.05);

    public static Part PartOf(ScreenDesign disc) =>
        Compiler.Assemble(Vessel([disc])).Parts.Single(part => part.Name == disc.Name);
}
