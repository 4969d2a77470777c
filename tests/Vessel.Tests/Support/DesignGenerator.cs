using FsCheck;
using FsCheck.Fluent;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Heads.Cones;

namespace Vessel.Tests.Support;

/// <summary>
/// Valid designs: sheet and tube, thick and thin walls, shells of one to four sheets, every head, ports on shell and heads, some over a
/// spun dish's seam. Choices that do not fit are thrown away by the checks, and nearly all of what a vessel costs is theirs.
/// </summary>
internal static class DesignGenerator
{
    public static Gen<VesselDesign> Vessels { get; } =
        from shell in Shell
        from top in HeadGenerator.Of(shell, "top")
        from bottom in HeadGenerator.Of(shell, "bottom")
        let bare = Designs.Vessel(shell) with { Top = top, Bottom = bottom }
        from branched in Draw.Steps(bare, 3, (vessel, i) => With(vessel, 20, PortGenerator.OnShell(shell, $"branch {i}")))
        from topped in WithPorts(branched, VesselEnd.Top)
        from whole in WithPorts(topped, VesselEnd.Bottom)
        from flush in Each(whole, PortGenerator.Flush)
        from windowed in Each(flush, PortGenerator.Windowed)
        from bent in Each(windowed, (_, port) => PortGenerator.Bent(port))
        select bent;

    private static Gen<ShellDesign> Shell =>
        from form in Gen.Elements(StockForm.Sheet, StockForm.Tube)
        from diameter in Draw.Between(40, 300)
        from wall in Draw.Between(0.015, 0.12)
        from height in Draw.Between(2, 5)
        let isRolled = form == StockForm.Sheet
        from seam in isRolled ? Draw.Between(0, Turns.Full) : Gen.Constant(0.0)
        from gap in isRolled ? Draw.Between(0, 2) : Gen.Constant(0.0)
        from sheets in isRolled ? Draw.Sometimes(0.4, Gen.Choose(2, 4), 1) : Gen.Constant(1)
        select Designs.Shell(diameter, Math.Max(0.8, diameter / 2 * wall), diameter * height, form) with
        {
            SeamAngle = seam,
            RootGap = gap,
            Sheets = sheets,
        };

    private static Gen<VesselDesign> WithPorts(VesselDesign vessel, VesselEnd end) =>
        from closed in vessel.Head(end) is ConeHead ? WithTip(vessel, end) : Gen.Constant(vessel)
        from grown in Draw.Steps(closed, 2, (so, i) => With(so, 6, PortGenerator.OnHead(so, end, $"{end} {i}")))
        select grown;

    /// <summary>With the port that closes a cone, or with a plate instead of the cone where none of the tries fits.</summary>
    private static Gen<VesselDesign> WithTip(VesselDesign vessel, VesselEnd end) =>
        from grown in With(vessel, 20, PortGenerator.OnHead(vessel, end, $"{end} tip").Select(port => port with
        {
            Place = new(0, port.Place.Angle, 0, 0, 0),
        }))
        select grown != vessel ? grown : vessel.With(end, Designs.Inset(vessel.Shell, vessel.Head(end).Path));

    /// <summary>The vessel with one more port, or without where none of the tries fits.</summary>
    private static Gen<VesselDesign> With(VesselDesign vessel, int tries, Gen<PortDesign> port) => port.ArrayOf(tries).Select(drawn => drawn
        .Select(one => vessel with { Ports = vessel.Ports.Add(one with { Path = $"ports[{vessel.Ports.Length}]" }) })
        .FirstOrDefault(grown => DesignFit.IsTaken(grown) && DesignFit.HasRoom(vessel, grown.Ports[^1])) ?? vessel);

    /// <summary>The vessel with each of its ports changed in turn, where the checks take that.</summary>
    private static Gen<VesselDesign> Each(VesselDesign vessel, Func<VesselDesign, PortDesign, Gen<PortDesign>> change) =>
        Draw.Steps(vessel, vessel.Ports.Length, (so, i) => change(so, so.Ports[i]).Select(port =>
            port != so.Ports[i] && so with { Ports = so.Ports.SetItem(i, port) } is var changed
                && DesignFit.IsTaken(changed) ? changed : so));
}
