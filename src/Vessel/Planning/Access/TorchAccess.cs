using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;

namespace Vessel.Planning;

/// <summary>How freely a joint is reached when its turn comes.</summary>
/// <param name="FreeShare">Share of the torch's directions over all stations.</param>
/// <param name="ReachedShare">Share of the stations that have a free direction for the torch and one for the rod.</param>
/// <param name="InTheWay">Id of the part that stops most directions; null where none does.</param>
/// <param name="CupDiameter">Outside of the cup that was tried, mm: the shop's, or a larger one that the weld's electrode asks for.</param>
public sealed record TorchAccess(Joint Joint, double FreeShare, double ReachedShare, string? InTheWay, double CupDiameter)
{
    /// <summary>Evenly along the joint.</summary>
    private const int Stations = 24;

    private const double Grid = Math.PI / 12;

    /// <summary>Steps of the grid that a torch may lean along the seam, and a rod.</summary>
    private const int TorchLean = 3;
    private const int RodLean = 5;

    /// <summary>Where a ray begins, off the root, mm.</summary>
    private const double Start = 1;

    /// <summary>
    /// Access to every weld among the parts that hang together by then. Rays go out on a grid of 15 degrees: about the seam at least
    /// 15 degrees off both surfaces, along it up to 45 degrees for the torch and 75 for the rod. A torch is a cylinder of
    /// the cup's diameter that ends its stick-out short of the root: its middle and four lines of it must go free. How long it is
    /// does not count: it comes from outside.
    /// </summary>
    public static ImmutableArray<TorchAccess> Of(Assembly assembly, WorkOrder order, ImmutableArray<WeldProcedure> welds)
    {
        var all = Obstacles.Of(assembly).ToList();
        var (torch, electrodes) = (assembly.Design.Shop.Torch, welds.ToDictionary(weld => weld.Joint.Path, weld => weld.Tungsten));
        var middle = assembly.Design.Shell.Height / 2 * Vector3.UnitZ;
        return
        [
            .. order.Tasks.Where(task => task.Weld is not null).Select(task =>
            {
                var there = order.PartsAt(task);
                var cup = Math.Max(torch.CupDiameter, electrodes[task.Weld!.Path]?.CupOutside ?? 0);
                return Of(task.Weld, [.. all.Where(body => there.Contains(body.Part))], torch with { CupDiameter = cup }, middle);
            }),
        ];
    }

    internal static TorchAccess Of(Joint joint, ImmutableArray<Body> bodies, TorchShop torch, Vector3 middle)
    {
        // Where nothing changes round the axis one station stands for all.
        var isRing = joint.IsRound && bodies.All(body => body.IsCoaxial) && OnAxis(joint);
        var stations = isRing ? [joint.Along(joint.Domain.Start)] : Places(joint).Select(joint.Along).ToList();
        // A rod that comes in closer to the torch would touch the cup.
        var apart = Math.Atan2(torch.CupDiameter / 2, torch.StickOut);
        var (free, tried, reached) = (0, 0, 0);
        var stops = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var station in stations)
        {
            var frame = Frame(station, middle);
            var torches = new List<Vector3>();
            var rods = new List<Vector3>();
            foreach (var (way, lean) in Ways(station, frame))
            {
                var isThin = Stopped(station.Root + (Start * way), way, bodies);
                if (isThin is null)
                    rods.Add(way);
                if (Math.Abs(lean) > TorchLean)
                    continue;
                tried++;
                if ((isThin ?? ThickStopped(station, way, frame.Tangent, bodies, torch)) is { } part)
                {
                    stops[part] = stops.GetValueOrDefault(part) + 1;
                }
                else
                {
                    free++;
                    torches.Add(way);
                }
            }

            if (torches.Exists(t => rods.Exists(r => t.Dot(r) <= Math.Cos(apart))))
                reached++;
        }

        return new(
            joint,
            (double)free / tried,
            (double)reached / stations.Count,
            stops.OrderByDescending(stop => stop.Value).ThenBy(stop => stop.Key, StringComparer.Ordinal).FirstOrDefault().Key,
            torch.CupDiameter);
    }

    private static bool OnAxis(Joint joint)
    {
        var (a, b) = (joint.Along(0).Root, joint.Along(Math.PI / 2).Root);
        return Math.Abs(a.Z - b.Z) < 1e-9 && Math.Abs(Math.Sqrt((a.X * a.X) + (a.Y * a.Y)) - Math.Sqrt((b.X * b.X) + (b.Y * b.Y))) < 1e-9
            && Math.Abs((a.X * b.X) + (a.Y * b.Y)) < 1e-9 * Math.Max(1, (a.X * a.X) + (a.Y * a.Y));
    }

    private static IEnumerable<double> Places(Joint joint)
    {
        var each = (Stations + joint.Welded.Length - 1) / joint.Welded.Length;
        return joint.Welded.SelectMany(run => Enumerable.Range(0, each).Select(i => run.At((i + 0.5) / each)));
    }

    /// <summary>
    /// The plane square to the seam: the middle of the open angle, and across it. Where the surfaces are in line the open side
    /// is the one away from the vessel's middle; on an outer corner it is the greater angle.
    /// </summary>
    private static (Vector3 Middle, Vector3 Across, Vector3 Tangent) Frame(Station at, Vector3 centre)
    {
        var tangent = at.Tangent.Unit();
        var half = at.AlongHost + at.AlongPart;
        var middle = half.Length > 1e-6 ? half.Unit() : tangent.Cross(at.AlongHost).Unit();
        if (half.Length <= 1e-6 ? middle.Dot(at.Root - centre) < 0 : at.Dihedral > Math.PI)
            middle = -middle;
        return (middle, tangent.Cross(middle).Unit(), tangent);
    }

    private static IEnumerable<(Vector3 Way, int Lean)> Ways(Station at, (Vector3 Middle, Vector3 Across, Vector3 Tangent) frame)
    {
        var most = Math.Max(0, (int)Math.Floor(((at.Dihedral / 2) - Grid + 1e-9) / Grid));
        for (var work = -most; work <= most; work++)
        {
            var (sin, cos) = Math.SinCos(work * Grid);
            var level = (cos * frame.Middle) + (sin * frame.Across);
            for (var lean = -RodLean; lean <= RodLean; lean++)
            {
                var (up, along) = Math.SinCos(lean * Grid);
                yield return ((along * level) + (up * frame.Tangent), lean);
            }
        }
    }

    private static string? Stopped(Vector3 from, Vector3 way, ImmutableArray<Body> bodies)
    {
        foreach (var body in bodies)
        {
            if (body.Stops(from, way))
                return body.Part;
        }

        return null;
    }

    private static string? ThickStopped(
        Station at, Vector3 way, Vector3 tangent, ImmutableArray<Body> bodies, TorchShop torch)
    {
        var side = way.Cross(tangent).Unit();
        var other = side.Cross(way);
        var cup = at.Root + (torch.StickOut * way);
        var radius = torch.CupDiameter / 2;
        return Stopped(cup + (radius * side), way, bodies) ?? Stopped(cup - (radius * side), way, bodies)
            ?? Stopped(cup + (radius * other), way, bodies) ?? Stopped(cup - (radius * other), way, bodies);
    }
}
