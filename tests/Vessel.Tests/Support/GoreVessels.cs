using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Heads.Dishes;
using Vessel.Stock;

namespace Vessel.Tests.Support;

/// <summary>A churn-shaped settling pot whose ends are half spheres of gores, or spun.</summary>
internal static class GoreVessels
{
    public const double Radius = 105;

    public const double Wall = 2;

    public static GoreDesign Gores(int count = 10, double cap = 80, double seam = 0.3) => new("bottom.gores", count, cap, seam);

    /// <param name="gores">Of the bottom, and with another path of the top; null for spun ones.</param>
    /// <param name="metal">Of the half spheres.</param>
    /// <param name="drain">Outside diameter of a bung at the lower pole; zero for none.</param>
    public static VesselDesign Of(GoreDesign? gores, string metal = "stainless 304", double drain = 0,
        double radius = Radius, double wall = Wall)
    {
        var material = Materials.Find(metal)!;
        var thread = Threads.Find("M14x1.5")!;
        var bung = new PortDesign(
            "ports[0]", "drain", PortHost.Bottom, new(0, 0, 0, 0, 0), material, drain, thread.TapDrill, 12, 2, 0.1,
            PortJoint.SetIn, EndCut.Square, thread, null);
        return new(
            "Settling pot",
            "A",
            UserUnits.Millimetres,
            new("shell", material, 2 * radius, wall, 160, StockForm.Sheet, Math.PI, 0.5),
            new HemisphereHead("top", material, wall) { Gores = gores is null ? null : gores with { Path = "top.gores" } },
            new HemisphereHead("bottom", material, wall) { Gores = gores },
            drain == 0 ? [] : [bung],
            new("flow", null, 870, 80),
            ImmutableDictionary<string, Span>.Empty);
    }
}
