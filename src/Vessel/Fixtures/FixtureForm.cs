using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Fixtures;

/// <summary>The shape of a fixture in its port's frame: cells round the axis, outward from it, and along it.</summary>
/// <remarks>
/// Round: from one joint of the halves to the other, by windows over the tacks and feet between them. Outward: the stop's lip, the
/// sleeve, the foot, the leg, the hook. Along, from the host: the hook's reach below its outside, the foot, the sleeve, the
/// lip. Corners lie on the exact footprint, so that a foot follows its host within the sagitta of a few degrees.
/// </remarks>
internal sealed class FixtureForm
{
    private const double SleeveWall = 4;
    private const double FootReach = 14;
    private const double LeastFoot = 4;

    /// <summary>Width of a window over a tack, mm: with its height over the host it lets in a cup of half an inch.</summary>
    private const double WindowWidth = 16;
    private const double LeastWindow = 10;
    private const double MostWindow = 18;

    private const double LeastGrip = 6;
    private const double MostGrip = 60;
    private const double LipHeight = 3;
    private const double HookWidth = 4;

    /// <summary>Half of what parts the halves, mm.</summary>
    private const double HalfSlit = 0.5;

    private const double Step = Math.PI / 60;
    private const int FootCells = 4;

    /// <summary>Most pieces into which a cell of sleeve or foot is cut across.</summary>
    private const int MostFine = 16;

    private const int LegCells = 12;

    private readonly FixtureBase _on;
    private readonly ImmutableArray<Foot> _feet;
    private readonly ImmutableArray<double> _radii;
    private readonly int _fine;
    private readonly double _window;
    private readonly double _end;
    private readonly bool _isHooked;
    private readonly bool _hasLip;

    private FixtureForm(FixtureBase on, ImmutableArray<Foot> feet, (ImmutableArray<double> Radii, int Fine) across, double window,
        double end,
        bool hasStop, bool hasLip, bool isHooked)
    {
        (_on, _feet, _radii, _fine, _window, _end, _isHooked, _hasLip) =
            (on, feet, across.Radii, across.Fine, window, end, isHooked, hasLip);
        HasStop = hasStop;
    }

    /// <summary>A foot between two windows.</summary>
    /// <param name="Way">Sign of X along which its leg goes; 0 for none.</param>
    private readonly record struct Foot(Interval Around, int Way);

    public bool HasStop { get; }

    public string? Hook => _isHooked && _feet.Any(foot => foot.Way != 0) ? _on.Edge : null;

    /// <summary>Null, with the reason, where none can stand there.</summary>
    public static FixtureForm? Of(PortSite site, VesselDesign vessel, FixtureTurn turn, FixtureHook hook, out string? refused)
    {
        var (port, on, tacks) = (site.Port, FixtureBase.Of(site, vessel, hook != FixtureHook.Upper), turn.Tacks);
        var inner = port.OuterRadius + PortFixture.Clearance;
        var sleeve = inner + SleeveWall;
        if (!on.IsShell && !site.Outside.Takes(sleeve + LeastFoot))
        {
            refused = "its host falls away too steeply beside it, or ends too near";
            return null;
        }

        var highest = Enumerable.Range(0, 72)
            .SelectMany(i => new[] { inner, sleeve }.Select(r => on.Level(Point2.Polar(r, Turns.Full * i / 72)))).Max();
        var room = port.WholeLength - highest;
        refused = room < LeastWindow + LeastGrip
            ? FormattableString.Invariant($"it stands out by {room:0.#} mm only, a window and a grip take {LeastWindow + LeastGrip:0}")
            : null;
        if (refused is not null)
            return null;
        var window = Math.Clamp(0.35 * room, LeastWindow, MostWindow);
        var space = new FixtureRoom(on, turn.Neighbours, window);
        var isTall = room - window > MostGrip;
        var end = isTall ? highest + window + MostGrip : port.WholeLength;
        if (space.InSleeve(sleeve, end + LipHeight) is { } struck)
        {
            refused = $"{struck}, which is there by then, is in the way of its sleeve";
            return null;
        }

        var spacing = Turns.Full / tacks;
        var half = Math.Min(WindowWidth / 2 / inner, 0.36 * spacing);
        var feet = Enumerable.Range(0, tacks).Select(i => new Interval((i * spacing) + half, ((i + 1) * spacing) - half))
            .Where(around => Stands(around, sleeve + LeastFoot, on))
            .ToList();
        var free = feet.Where(around => space.UnderFoot(around, sleeve + LeastFoot) is null).ToList();
        // Both halves need one.
        if (!StandsOnBoth(free))
        {
            refused = StandsOnBoth(feet)
                ? $"{space.UnderFoot(feet.First(foot => !free.Contains(foot)), sleeve + LeastFoot)}, which is there by then, is in the way "
                    + "of its feet"
                : "its host falls away too steeply beside it, or ends too near";
            return null;
        }

        feet = free;

        var reach = Enumerable.Range(0, 11).Select(i => sleeve + FootReach - (i * (FootReach - LeastFoot) / 10))
            .First(r => feet.TrueForAll(foot => Stands(foot, r, on) && space.UnderFoot(foot, r) is null));
        var hasLip = !isTall && port is { Fitting: null, Elbow: null };
        var lip = hasLip ? Math.Max(port.BoreRadius + 0.3, inner - 3) : inner - 1;
        ImmutableArray<double> Radii(int fine) =>
        [
            lip, inner, .. Enumerable.Range(1, fine - 1).Select(i => inner + (SleeveWall * i / fine)), sleeve,
            .. Enumerable.Range(1, fine * FootCells).Select(i => sleeve + ((reach - sleeve) * i / (fine * FootCells))),
        ];
        var fine = 1;
        while (fine < MostFine && feet.Exists(foot => Sinks(foot, Radii(fine)[1..], on)))
            fine *= 2;
        ImmutableArray<Foot> all = [.. feet.Select(foot => new Foot(foot, hook != FixtureHook.None ? WayOf(foot, feet, on) : 0))];
        // A leg may not stand on another port.
        all = [.. all.Select(foot => foot.Way != 0 && space.UnderLeg(foot.Way, Point2.Polar(reach, foot.Around.Start).V,
            Point2.Polar(reach, foot.Around.End).V) is not null ? foot with { Way = 0 } : foot)];
        return new(on, all, (Radii(fine), fine), window, end, !isTall, hasLip, hook != FixtureHook.None);
    }

    /// <summary>Closed solids in the port's frame: the half towards increasing angle, then the other.</summary>
    public IEnumerable<Mesh> Halves() => [Half(new(0, Math.PI)), Half(new(Math.PI, Turns.Full))];

    private Mesh Half(Interval around)
    {
        var slit = HalfSlit / _radii[1];
        var feet = _feet.Where(foot => around.Contains((foot.Around.Start + foot.Around.End) / 2)).ToList();
        var nodes = Nodes(
            [around.Start + slit, .. feet.SelectMany(foot => new[] { foot.Around.Start, foot.Around.End }), around.End - slit]);
        var columns = nodes.Length - 1;
        var footOf = Enumerable.Range(0, columns).Select(i => feet.FindIndex(foot => foot.Around.Contains((nodes[i] + nodes[i + 1]) / 2)))
            .ToArray();
        var rings = _radii.Length - 1;
        var (leg, hook) = (rings + LegCells, rings + LegCells + 1);
        var places = nodes.Select(phi => Enumerable.Range(0, hook + 1).Select(j => Place(phi, j, feet)).ToArray()).ToArray();
        var solid = new CellSolid(
            (hook, columns, 4),
            (ring, i, level) => (level, ring) switch
            {
                (0, _) => ring == leg && HasLeg(i),
                (1, 0) => false,
                (1, _) when ring < rings => footOf[i] >= 0,
                (1, _) => HasLeg(i),
                (2, > 0) => ring <= _fine,
                (3, _) => _hasLip && ring <= _fine,
                _ => false,
            },
            (ring, i, level) => Corner(places[i][ring], level));
        return solid.Mesh();

        bool HasLeg(int i) => footOf[i] >= 0 && feet[footOf[i]].Way != 0;
    }

    /// <summary>Levels along the axis over a place in the section.</summary>
    private Vector3 Corner(Point2 at, int level)
    {
        var foot = _on.Level(at) + _on.Lift(at);
        return new(at.U, at.V, level switch
        {
            0 => _on.Level(at) - _on.HookDepth,
            1 => foot,
            2 => foot + _window,
            3 => _end,
            _ => _end + LipHeight,
        });
    }

    /// <summary>Round the axis as far as feet go, then beside the vessel's line to the edge and over it.</summary>
    private Point2 Place(double phi, int ring, List<Foot> feet)
    {
        var rings = _radii.Length - 1;
        if (ring <= rings)
            return Point2.Polar(_radii[ring], phi);
        var from = Point2.Polar(_radii[rings], phi);
        var foot = feet.FirstOrDefault(f => f.Way != 0 && f.Around.Start - 1e-9 <= phi && phi <= f.Around.End + 1e-9);
        if (foot.Way == 0)
            return from;
        var edge = Edge(from, foot.Way);
        var over = _on.HookPlay + (ring > rings + LegCells ? HookWidth : 0);
        return ring < rings + LegCells
            ? new(from.U + ((edge - from.U) * (ring - rings) / LegCells), from.V)
            : new(edge + (foot.Way * over), from.V);
    }

    /// <summary>
    /// X of the host's edge on the line through a place along X; bisected, for the edge lies aslant where the port is tilted.
    /// </summary>
    private double Edge(Point2 from, int way)
    {
        var (low, high) = (0.0, 1.0);
        while (_on.Beyond(new(from.U + (way * high), from.V), way) < 0 && high < 1e5)
            high *= 2;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (_on.Beyond(new(from.U + (way * middle), from.V), way) < 0)
                low = middle;
            else
                high = middle;
        }

        return from.U + (way * high);
    }

    /// <summary>Ascending, no further apart than the step.</summary>
    private static ImmutableArray<double> Nodes(IEnumerable<double> breaks)
    {
        var all = breaks.Order().ToList();
        return
        [
            .. all.Zip(all.Skip(1)).Where(pair => pair.Second - pair.First > 1e-6).SelectMany(pair =>
            {
                var n = Math.Max(1, (int)Math.Ceiling((pair.Second - pair.First) / Step));
                return Enumerable.Range(0, n).Select(i => pair.First + ((pair.Second - pair.First) * i / n));
            }),
            all[^1],
        ];
    }

    /// <summary>
    /// Whether a foot's cells, which are flat between corners that stand off by their clearance, come into the host at a middle: where
    /// that turns sharply.
    /// </summary>
    private static bool Sinks(Interval around, ImmutableArray<double> radii, FixtureBase on)
    {
        var nodes = Nodes([around.Start, around.End]);
        double Foot(Point2 at) => on.Level(at) + on.Lift(at);
        return nodes.Zip(nodes.Skip(1)).Any(turn => radii.Zip(radii.Skip(1)).Any(ring =>
        {
            Point2[] corners =
            [
                Point2.Polar(ring.First, turn.First), Point2.Polar(ring.Second, turn.First), Point2.Polar(ring.Second, turn.Second),
                Point2.Polar(ring.First, turn.Second),
            ];
            // Either way that the cell may be parted in two.
            return Enumerable.Range(0, 4).Any(i => Under(corners[i], corners[(i + 1) % 4], corners[(i + 2) % 4]));
        }));

        bool Under(Point2 a, Point2 b, Point2 c) => (Foot(a) + Foot(b) + Foot(c)) / 3 < on.Level(1 / 3.0 * (a + b + c));
    }

    private static bool Stands(Interval around, double radius, FixtureBase on) =>
        Enumerable.Range(0, 9).All(i => on.Carries(Point2.Polar(radius, around.At(i / 8.0))));

    /// <summary>
    /// Way to the edge, 1 or -1, along which a foot has a leg: of the feet of a half the one nearest to 45 degrees off it; else 0.
    /// </summary>
    private static int WayOf(Interval foot, List<Interval> feet, FixtureBase on)
    {
        double Off(Interval one, int way) => Math.Abs(Math.Abs(Turns.Signed(Middle(one) - (way > 0 ? 0 : Math.PI))) - (Math.PI / 4));
        foreach (var way in on.Ways)
        {
            var nearest = feet.Where(one => Middle(one) < Math.PI == Middle(foot) < Math.PI).MinBy(one => Off(one, way));
            if (nearest == foot && Off(foot, way) < Math.PI / 4)
                return way;
        }

        return 0;
    }

    private static double Middle(Interval around) => (around.Start + around.End) / 2;

    private static bool StandsOnBoth(List<Interval> feet) =>
        feet.Exists(foot => foot.End < Math.PI + 1e-9) && feet.Exists(foot => foot.Start > Math.PI - 1e-9);
}
