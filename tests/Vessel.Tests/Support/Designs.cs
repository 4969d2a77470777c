using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Heads.Dishes;
using Vessel.Heads.FlatHeads;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Tests.Support;

/// <summary>Designs as records, for tests that need no file; vary them by <c>with</c>.</summary>
internal static class Designs
{
    public static readonly Material Stainless = Materials.Find("stainless 304")!;

    public static readonly ThreadSize Thread = Threads.Find("M14x1.5")!;

    /// <summary>A shell rolled from sheet, a flat inset lid with the outlet set in, a half sphere with a drain set in.</summary>
    public static VesselDesign Sound { get; } = Vessel(
        Shell(),
        Branch("inlet", 32, 2, new(120, 0.5, 10, 0.2, 0)),
        OnHead("outlet", VesselEnd.Top, 32, 2, 0) with { Joint = PortJoint.SetIn, InsideLength = 10, Clearance = 0.1 },
        OnHead("drain", VesselEnd.Bottom, 22, (22 - Thread.TapDrill) / 2, 0) with
        {
            Joint = PortJoint.SetIn,
            Length = 8,
            InsideLength = 3,
            Clearance = 0.1,
            Thread = Thread,
        });

    public static VesselDesign Vessel(ShellDesign shell, params ReadOnlySpan<PortDesign> ports) => new(
        "Test vessel", "A", UserUnits.Millimetres, shell, Inset(shell, "top"), Dome(shell, "bottom"), Numbered(ports),
        new("flow", null, 870, 80), ImmutableDictionary<string, Span>.Empty);

    public static ShellDesign Shell(
        double outsideDiameter = 110, double wall = 2, double height = 180, StockForm madeFrom = StockForm.Sheet) =>
        new("shell", Stainless, outsideDiameter, wall, height, madeFrom, madeFrom == StockForm.Sheet
            ? Math.PI : 0, madeFrom == StockForm.Sheet ? 1 : 0);

    public static FlatHead Inset(ShellDesign shell, string end, double wall = 3, double recess = 0, double clearance = 0.2) =>
        Inset(shell.AtEnd(VesselEnd.Bottom), end, wall, recess, clearance);

    public static FlatHead Inset(ShellSection shell, string end, double wall = 3, double recess = 0, double clearance = 0.2) =>
        new(end, Stainless, wall, Seat.Inset, recess, clearance, 2 * (shell.InnerRadius - clearance));

    public static FlatHead Overlay(string end, double outsideDiameter, double wall = 3) =>
        new(end, Stainless, wall, Seat.Overlay, 0, 0, outsideDiameter);

    public static HemisphereHead Dome(ShellDesign shell, string end) => new(end, Stainless, shell.Wall);

    /// <summary>A tube set on the shell, cut square.</summary>
    public static PortDesign Branch(string name, double outsideDiameter, double wall, PortPlace place) => new(
        "ports", name, PortHost.Shell, place, Stainless, outsideDiameter, outsideDiameter - (2 * wall),
        50, 0, 0, PortJoint.SetOn, EndCut.Square, null, null);

    /// <summary>A tube set on a head, <paramref name="radius"/> from the vessel's axis.</summary>
    public static PortDesign OnHead(string name, VesselEnd end, double outsideDiameter, double wall, double radius, double angle = 0) =>
        Branch(name, outsideDiameter, wall, new(0, angle, 0, 0, radius)) with { Host = end == VesselEnd.Top ? PortHost.Top : PortHost.Bottom };

    /// <summary>A vessel whose only port is this one.</summary>
    public static (VesselDesign Vessel, PortSite Site) Alone(ShellDesign shell, PortDesign port)
    {
        var vessel = Vessel(shell, port);
        return (vessel, PortSites.Of(vessel).Of(vessel.Ports[0]));
    }

    /// <summary>A branch on a shell of radius R, with no more of a vessel than that; also where none could be built.</summary>
    /// <param name="tilt">Radians.</param>
    public static (VesselDesign Vessel, PortSite Site) Tee(
        double shellRadius, double branchRadius, double branchWall = 1e-3, double offset = 0, double tilt = 0, double shellWall = 2,
        StockForm madeFrom = StockForm.Sheet)
    {
        var vessel = Vessel(
            Shell(2 * shellRadius, shellWall, 10 * shellRadius, madeFrom),
            Branch("branch", 2 * branchRadius, branchWall, new(5 * shellRadius, 0, offset, tilt, 0)) with { Length = 4 * shellRadius });
        var footing = ShellFooting.Of(vessel.Shell, vessel.Ports[0]);
        return (vessel, new(vessel.Ports[0], footing.Axis, footing.Outside, footing.Inside, shellWall) { OnShell = footing });
    }

    /// <summary>Paths as the reader gives them.</summary>
    private static ImmutableArray<PortDesign> Numbered(ReadOnlySpan<PortDesign> ports)
    {
        var numbered = ImmutableArray.CreateBuilder<PortDesign>(ports.Length);
        for (var i = 0; i < ports.Length; i++)
            numbered.Add(ports[i] with { Path = $"ports[{i}]" });
        return numbered.MoveToImmutable();
    }
}
