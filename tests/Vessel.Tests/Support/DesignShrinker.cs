using System.Collections.Immutable;
using System.Globalization;
using Vessel.Design;
using Vessel.Heads.Cones;
using Vessel.Heads.Dishes;
using Vessel.Heads.FlatHeads;

namespace Vessel.Tests.Support;

/// <summary>
/// Smaller vessels of one that is too large to look at: with a port less, plain heads, one sheet, no elbows and windows, round
/// numbers. Each is as valid as those that are drawn.
/// </summary>
internal static class DesignShrinker
{
    private static readonly ImmutableArray<VesselEnd> _ends = [VesselEnd.Top, VesselEnd.Bottom];

    public static IEnumerable<VesselDesign> Smaller(VesselDesign vessel) => Candidates(vessel).Where(DesignFit.Holds);

    public static VesselDesign With(this VesselDesign vessel, VesselEnd end, HeadDesign head) =>
        end == VesselEnd.Top ? vessel with { Top = head } : vessel with { Bottom = head };

    private static IEnumerable<VesselDesign> Candidates(VesselDesign vessel) =>
    [
        .. vessel.Members.Select(member => vessel with { Members = vessel.Members.Remove(member) }),
        .. vessel.Ports.Select(port => vessel with { Ports = vessel.Ports.Remove(port) }),
        .. from end in _ends from head in Heads(vessel, end) where head != vessel.Head(end) select vessel.With(end, head),
        .. from shell in Shells(vessel.Shell) where shell != vessel.Shell select On(vessel, shell),
        .. from i in Enumerable.Range(0, vessel.Ports.Length)
           from port in Ports(vessel.Ports[i])
           where port != vessel.Ports[i]
           select vessel with { Ports = vessel.Ports.SetItem(i, port) },
    ];

    private static IEnumerable<HeadDesign> Heads(VesselDesign vessel, VesselEnd end)
    {
        var head = vessel.Head(end);
        yield return Designs.Inset(vessel.Shell, head.Path);
        if (head is DishedHead dish)
        {
            yield return dish with { Gores = null };
            yield return dish with { Flange = 0 };
            yield return dish with { Wall = Round(dish.Wall), Flange = Round(dish.Flange) };
        }

        if (head is ConeHead cone)
        {
            yield return cone with { Segments = 1 };
            yield return cone with { SeamAngle = 0 };
            yield return cone with { RootGap = 0 };
            yield return cone with { Wall = Round(cone.Wall), HalfAngle = Round(cone.HalfAngle) };
        }
    }

    private static IEnumerable<ShellDesign> Shells(ShellDesign shell)
    {
        yield return shell with { MadeFrom = StockForm.Tube, SeamAngle = 0, RootGap = 0, Sheets = 1 };
        yield return shell with { Sheets = 1 };
        yield return shell with { SeamAngle = 0 };
        yield return shell with { RootGap = 0 };
        yield return shell with { OutsideDiameter = Round(shell.OutsideDiameter) };
        yield return shell with { Wall = Round(shell.Wall) };
        yield return shell with { Height = Round(shell.Height) };
    }

    /// <summary>The same vessel on another shell: plates that are let into it follow its bore.</summary>
    private static VesselDesign On(VesselDesign vessel, ShellDesign shell) => _ends.Aggregate(vessel with { Shell = shell }, (on, end) =>
        on.Head(end) is FlatHead { Seat: Seat.Inset } plate
            ? on.With(end, plate with { OutsideDiameter = 2 * (shell.InnerRadius - plate.Clearance) })
            : on);

    private static IEnumerable<PortDesign> Ports(PortDesign port)
    {
        yield return port with { Elbow = null };
        yield return port with { Windows = [] };
        yield return port with { IsFlush = false };
        yield return port with { Thread = null };
        yield return port with { Joint = PortJoint.SetOn, IsFlush = false, Clearance = 0, InsideLength = 0 };
        yield return port with { Cut = EndCut.Square };
        yield return port with { Clearance = 0 };
        yield return port with { Place = port.Place with { SquareToSurface = false } };
        yield return port with { Place = port.Place with { Tilt = 0 } };
        yield return port with { Place = port.Place with { Offset = 0 } };
        yield return port with { Place = port.Place with { Radius = 0 } };
        yield return port with { Place = port.Place with { Angle = 0 } };
        yield return port with { Place = port.Place with { Height = Round(port.Place.Height), Angle = Round(port.Place.Angle) } };
        yield return port with { Place = port.Place with { Offset = Round(port.Place.Offset), Tilt = Round(port.Place.Tilt) } };
        yield return port with { Place = port.Place with { Radius = Round(port.Place.Radius) } };
        yield return port with { Length = Round(port.Length), InsideLength = Round(port.InsideLength) };
        if (port.Thread is null)
            yield return port with
            {
                OutsideDiameter = Round(port.OutsideDiameter),
                Bore = Round(port.OutsideDiameter) - (2 * Round(port.Wall))
            };
    }

    /// <summary>Two figures.</summary>
    private static double Round(double value) =>
        double.Parse(value.ToString("G2", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
