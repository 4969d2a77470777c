using FsCheck;
using FsCheck.Fluent;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Heads.FlatHeads;
using Vessel.Sites;

namespace Vessel.Tests.Support;

/// <summary>Ports with every joint and cut, whether or not they fit; and what may be made of one that fits.</summary>
internal static class PortGenerator
{
    /// <summary>Offsets up to near the tangent, tilts to 60 degrees either way, now and then nearly as wide as the shell.</summary>
    public static Gen<PortDesign> OnShell(ShellDesign shell, string name) =>
        from setIn in Draw.Chance(0.4)
        from clearance in setIn ? Draw.Sometimes(0.6, Draw.Between(0.02, 0.4), 0) : Gen.Constant(0.0)
        let room = (setIn ? shell.InnerRadius : shell.OuterRadius) - clearance
        from width in Draw.Chance(0.2).SelectMany(isWide => isWide ? Draw.Between(0.9, 0.97) : Draw.Between(0.06, 0.5))
        let radius = room * width
        from offset in Offset(room - radius)
        from tilt in Draw.Sometimes(0.6, Draw.Between(-Math.PI / 3, Math.PI / 3), 0)
        from height in Draw.Between(0, shell.Height)
        from angle in Draw.Between(0, Turns.Full)
        from wall in Draw.Between(0.04, 0.3)
        from cut in setIn ? Gen.Constant(EndCut.Square) : Gen.Elements(EndCut.Square, EndCut.Ground, EndCut.HoleSaw)
        from inside in setIn ? Draw.Between(0, shell.InnerRadius / 4) : Gen.Constant(0.0)
        from free in Draw.Between(5, 60)
        select Designs.Branch(name, 2 * radius, radius * wall, new(height, angle, offset, tilt, 0)) with
        {
            Joint = setIn ? PortJoint.SetIn : PortJoint.SetOn,
            Cut = cut,
            Clearance = clearance,
            InsideLength = inside,
            Length = (2 * radius * Math.Abs(Math.Tan(tilt))) + free,
        };

    /// <summary>Tubes and bungs anywhere on a head, upright and square to it.</summary>
    public static Gen<PortDesign> OnHead(VesselDesign vessel, VesselEnd end, string name) =>
        from setIn in Draw.Chance(0.5)
        from isBung in Draw.Chance(0.3)
        let isFormed = vessel.Head(end) is not FlatHead
        from radius in isBung ? Draw.Between(8.6, 14) : Draw.Between(0.05, 0.6).Select(share => share * vessel.Shell.InnerRadius)
        from wall in isBung ? Gen.Constant(radius - (Designs.Thread.TapDrill / 2)) : Draw.Between(0.04, 0.3).Select(share => share * radius)
        from aside in Draw.Sometimes(isFormed ? 0.7 : 0.8, Draw.Between(isFormed ? 0.1 : 0, 0.9), 0)
        from angle in Draw.Between(0, Turns.Full)
        from isSquare in Draw.Chance(0.5)
        from cut in setIn ? Gen.Constant(EndCut.Square) : Gen.Elements(EndCut.Square, EndCut.Ground)
        from clearance in setIn ? Draw.Between(0, 0.3) : Gen.Constant(0.0)
        from inside in setIn ? Draw.Between(0, 20) : Gen.Constant(0.0)
        from free in Draw.Between(5, 60)
        let port = Designs.OnHead(name, end, 2 * radius, wall, aside * vessel.Shell.InnerRadius, angle)
        select port with
        {
            Place = port.Place with { SquareToSurface = isSquare },
            Joint = setIn ? PortJoint.SetIn : PortJoint.SetOn,
            Cut = cut,
            Clearance = clearance,
            InsideLength = inside,
            Length = free + (isFormed ? radius : 0),
            Thread = isBung ? Designs.Thread : null,
        };

    /// <summary>Some that are set in end flush inside.</summary>
    public static Gen<PortDesign> Flush(VesselDesign vessel, PortDesign port) =>
        port is { Joint: PortJoint.SetIn, Thread: null } && port with { IsFlush = true, InsideLength = 0 } is var flush
        && PortSites.Of(vessel) is var sites && sites.Stand(flush).Site?.Over == sites.Stand(port).Site?.Over
            ? Draw.Sometimes(0.4, Gen.Constant(flush), port) : Gen.Constant(port);

    /// <summary>Windows in some of the tubes that stand free inside: round, slots, rectangles, one or many,
    /// up to a wall from each other.</summary>
    public static Gen<PortDesign> Windowed(VesselDesign vessel, PortDesign port)
    {
        var room = PortSites.Of(vessel).Of(port).FreeLength - (2 * port.Wall);
        return port.Thread is null && room > port.Wall
            ? Draw.Sometimes(0.7, Windows(port, room).Select(row => port with { Windows = [row] }), port)
            : Gen.Constant(port);
    }

    private static Gen<WindowsDesign> Windows(PortDesign port, double room) =>
        from count in Gen.Choose(1, 6)
        from share in Draw.Between(0.2, 0.95)
        let wide = share * ((Math.PI * port.OutsideDiameter / count) - port.Wall)
        from isRound in Draw.Chance(0.3)
        from high in Draw.Between(0.2, 0.95)
        let height = isRound ? Math.Min(0.95 * room, Math.Min(wide, port.OutsideDiameter)) : high * room
        let width = isRound ? height : wide
        let half = Math.Min(width, height) / 2
        from corner in isRound ? Gen.Constant(half) : Draw.Pick(3).Select(i => half * i / 2)
        from up in Draw.Between(0, room - height)
        from angle in Draw.Between(0, Turns.Full)
        select new WindowsDesign($"{port.Path}.windows", count, width, height, corner, port.Wall + up, angle) { IsRound = isRound };

    /// <summary>Some of the tubes with elbows; whether the pieces keep clear of the vessel is no matter of its parts.</summary>
    public static Gen<PortDesign> Bent(PortDesign port) =>
        port.Thread is null ? Draw.Sometimes(0.4, Elbow(port), port) : Gen.Constant(port);

    private static Gen<PortDesign> Elbow(PortDesign port) =>
        from pieces in Gen.Choose(2, 5)
        from turn in Draw.Between(0.1, 1)
        from direction in Draw.Between(0, Turns.Full)
        from cut in Gen.Elements(MitreCut.Sawn, MitreCut.Square)
        let shape = new ElbowDesign(
            $"{port.Path}.elbow", Math.Min(Math.PI, (pieces - 1) * turn * ElbowDesign.MostTurn), 0, pieces, direction, 0, cut)
        from isMitre in Draw.Chance(pieces == 2 ? 0.5 : 0)
        from bend in Draw.Between(0.5, 5)
        from end in Draw.Between(1, 40)
        let across = port.Wall + (port.OuterRadius * shape.Slope)
        select port with
        {
            Elbow = shape with { Radius = isMitre ? 0 : port.OuterRadius + (port.Wall / shape.Slope * bend), EndLength = across + end },
            Length = port.Length + across,
        };

    private static Gen<double> Offset(double side) => Gen.OneOf(
        Gen.Constant(0.0), Gen.Elements(0.999 * side, -0.999 * side), Draw.Between(-side, side), Draw.Between(-side, side));
}
