using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Planning;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Ports;

/// <summary>What is done for a port beside making its parts and laying its welds, and how it is set up.</summary>
internal static class PortWork
{
    /// <summary>A lower lip in the bore is left as it is, mm. Common practice, no source.</summary>
    private const double LeastLip = 0.2;

    public static IEnumerable<WorkTask> Tasks(PortSite site, VesselDesign design)
    {
        var (port, id) = (site.Port, Slug.Of(site.Port.Name));
        if (port.Thread is { } thread)
        {
            yield return new(
                WorkTask.Plugging(port.Path), WorkKind.Plug, $"screw a brass or old plug into '{port.Name}' ({thread.Name}), threads coated",
                    WorkRank.Ports, [id]);
            yield return new(
                WorkTask.Chasing(port.Path), WorkKind.Chase,
                $"take the plug out of '{port.Name}' when cold, chase {thread.Thread}; {Facing(thread, design.Shop.Welding.FaceAllowance)}",
                WorkRank.Ports, [id]);
        }

        if (port.Fitting is { } fitting)
        {
            yield return new(
                WorkTask.Joining(port.Path), WorkKind.Fit,
                $"join {fitting.Name} to the free end of '{port.Name}' as its maker says, its thread capped; that joint is not among the "
                    + "welds", WorkRank.Ports - 1,
                [PortPieces.Ids(port)[^1]]);
        }

        var lip = PortLip.Of(site, design);
        if (lip > LeastLip)
        {
            yield return new(
                WorkTask.Dressing(port.Path), WorkKind.Dress,
                FormattableString.Invariant($"grind the lip in the bore of '{port.Name}' ({lip:0.0} mm) flush while the shell is open"),
                WorkRank.Dress, [id]);
        }
    }

    /// <summary>What must come before and after its tasks; those that it has not are passed over.</summary>
    public static IEnumerable<WorkLink> Links(PortDesign port, Welds welds)
    {
        var seam = WorkTask.Welding(welds.One(WeldRole.PortSeam, port.Path));
        yield return new(WorkTask.Joining(port.Path), seam, "on the bench it turns freely");
        foreach (var mitre in welds.Of(WeldRole.MitreSeam, port.Path))
            yield return new(WorkTask.Welding(mitre), seam, "on the bench it turns freely, and its root is seen from both ends");
        yield return new(WorkTask.Plugging(port.Path), seam, "heat and spatter spoil a bare thread");
        yield return new(seam, WorkTask.Chasing(port.Path), "a thread draws in as the bead cools");
        yield return new(seam, WorkTask.Dressing(port.Path), "the lip is dressed with the bead");
    }

    public static SetUp SetUp(PortSite site, VesselDesign design)
    {
        var (port, place) = (site.Port, site.Port.Place);
        var depth = port.Joint == PortJoint.SetIn ? port.InsideLength : 0;
        var inner = port.IsFlush ? "; inner end flush with the inside" : "";
        if (port.Host == PortHost.Shell)
        {
            var way = place.Offset == 0 ? ""
                : FormattableString.Invariant($"parallel to the line at {Turns.ToDegrees(place.Angle):0.##} deg; ");
            return SetUpTable.OnShell(
                port.Name, design.Shell, (place.Height, design.Shell.ClockAt(place.Height, place.Angle, place.Offset)), place.Offset, depth,
                FormattableString.Invariant($"axis at the shell's outside; {way}tilt {Turns.ToDegrees(place.Tilt):0.##} deg; {PortWords.FreeEnd(site, "0.##")}{inner}"));
        }

        return new(
            port.Name, $"outer face of the {Names.Of(port.Host)}", 0, Turns.ToDegrees(place.Angle), null, place.Radius, depth,
            FormattableString.Invariant($"from the middle of the {Names.Of(port.Host)}; {PortWords.FreeEnd(site, "0.##")}{inner}"));
    }

    private static string Facing(ThreadSize thread, double allowance) => thread.Seal switch
    {
        ThreadSeal.Taper => "it seals in its taper and has no face: no deeper than the fitting needs",
        ThreadSeal.ORing => FormattableString.Invariant(
            $"machine its sealing face ({allowance:0.##} mm were left for it) and cut the chamfer for the O-ring"),
        _ => FormattableString.Invariant($"machine its sealing face for a bonded washer: {allowance:0.##} mm were left for it"),
    };
}
