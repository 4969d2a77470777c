using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>Ends at which a chain of arcs has no corner with what is beside it.</summary>
/// <param name="Closed">Whether it is beside itself: then it may turn from the curve, as long as both ends do so alike.</param>
internal readonly record struct SmoothEnds(bool Start, bool End, bool Closed);

/// <summary>The search for the fewest arcs from the first to the last of the places on a curve.</summary>
/// <remarks>
/// An arc between two points may have any half sweep of a small range before it leaves the tolerance, and turns one
/// direction at its start into one at its end. From layer to layer, an arc each, every station carries along which
/// directions the
/// chain can have there; the first layer that reaches the end with a direction that is allowed gives the number. A node is a station and
/// a place across it. Derived here.
/// </remarks>
/// <param name="stretch">Stretch that the arcs stand for.</param>
/// <param name="places">Parameters, ascending; every <see cref="Between"/>th is a station where arcs may meet, the
/// first and
/// the last too. The others are looked at only.</param>
/// <param name="smooth">Where the chain must keep to the curve's own direction.</param>
/// <param name="mostTurn">Greatest half sweep, radians.</param>
/// <param name="abreast">Stations behind the foremost that a chain may lag.</param>
/// <param name="wide">Whether arcs may meet beside the curve, too, and a closed chain turn from it at its ends: dearer, and fewer arcs
/// where there are few.</param>
internal sealed class ArcSearch(
    SmoothStretch stretch, List<double> places, SmoothEnds smooth, double mostTurn, int abreast, bool wide)
{
    /// <summary>Places from one station to the next.</summary>
    public const int Between = 4;

    // Arcs may turn so far where they meet, radians: less than 0.1 degree, also where two half ones add up.
    private const double Kink = 1.7e-3;

    // Rounding of sums of angles, radians.
    private const double Hair = 1e-9;

    // Where arcs meet beside the curve, in tolerances.
    private const double Aside = 0.6;

    // Of the greatest turn from the curve's own direction with which long arcs can set out.
    private static readonly ImmutableArray<double> _shifts = [-0.75, -0.5, -0.25, 0.25, 0.5, 0.75];

    /// <summary>Places across the curve where arcs may meet: on it, or to its right, on it and to its left.</summary>
    private readonly ImmutableArray<double> _aside = wide ? [-Aside, 0, Aside] : [0];

    private readonly List<Point2> _points = places.ConvertAll(stretch.Curve.At);
    private readonly List<double> _headings = [];

    private int Last => (places.Count - 1) / Between;

    /// <summary>A chain of at most so many arcs, or null.</summary>
    public List<(Interval Domain, ArcSpan Span)>? Fewest(double tolerance, int most) => Found(tolerance, most).LastOrDefault();

    /// <summary>Some chain of at most so many arcs, or null.</summary>
    public List<(Interval Domain, ArcSpan Span)>? Any(double tolerance, int most) => Found(tolerance, most).FirstOrDefault();

    /// <summary>Chains, each of fewer arcs than the one before.</summary>
    private IEnumerable<List<(Interval Domain, ArcSpan Span)>> Found(double tolerance, int most)
    {
        if (_headings.Count == 0)
            AddHeadings();
        var arcs = new List<Arc>?[Last * Sides];
        foreach (var (start, end) in Ends(arcs, tolerance))
        {
            if (Chain(start, end, arcs, tolerance, Math.Min(Last, most)) is not { } chain)
                continue;
            yield return chain;
            most = chain.Count - 1;
        }
    }

    private List<(Interval Domain, ArcSpan Span)>? Chain(
        (double Low, double High) start, (double Low, double High) end, List<Arc>?[] arcs, double tolerance, int most)
    {
        var first = Empty();
        first[Node(0, OnCurve)] = Directions.All.Within(start);
        var layers = new List<Directions[]> { first };
        while (layers.Count - 1 < most)
        {
            layers.Add(Next(layers[^1], arcs, tolerance));
            if (layers[^1][Node(Last, OnCurve)].Within(end).Longest is { } directions)
                return Back(layers, arcs, (directions.Low + directions.High) / 2, tolerance);
        }

        return null;
    }

    /// <summary>
    /// What is allowed at the chain's start and end: the curve's own directions or, where it closes on itself, any one that both have;
    /// a few are tried of those that long arcs can have there.
    /// </summary>
    private IEnumerable<((double Low, double High) Start, (double Low, double High) End)> Ends(List<Arc>?[] arcs, double tolerance)
    {
        (double Low, double High) free = (double.NegativeInfinity, double.PositiveInfinity);
        var (start, end) = (smooth.Start ? Allowed(stretch.StartDirection, 0) : free,
            smooth.End ? Allowed(stretch.EndDirection, Last - 1) : free);
        yield return (start, end);
        if (!(wide && smooth.Closed))
            yield break;
        var firsts = arcs[Node(0, OnCurve)] ??= ArcsFrom(Node(0, OnCurve), tolerance);
        var middle = (start.Low + start.High) / 2;
        var reach = firsts.Where(arc => 2 * StationOf(arc.To) >= StationOf(firsts[^1].To))
            .Max(arc => Math.Max(middle - (arc.Chord - arc.High), arc.Chord - arc.Low - middle));
        foreach (var shift in _shifts.Select(share => share * reach))
            yield return ((start.Low + shift, start.High + shift), (end.Low + shift, end.High + shift));
    }

    /// <summary>Adds the headings of the curve from each station on, without jumps of a turn.</summary>
    private void AddHeadings()
    {
        for (var i = 0; i < Last; i++)
        {
            var angle = (Station(i + 1) - Station(i)).Angle;
            _headings.Add(i == 0 ? angle : _headings[^1] + Turns.Signed(angle - _headings[^1]));
        }
    }

    private Point2 Station(int i) => _points[i * Between];

    private int Sides => _aside.Length;

    private int OnCurve => Sides / 2;

    private int Node(int station, int side) => (station * Sides) + side;

    private int StationOf(int node) => node / Sides;

    /// <summary>Where arcs meet at a node.</summary>
    private Point2 At(int node, double tolerance)
    {
        var station = StationOf(node);
        var aside = _aside[node % Sides] * tolerance;
        return aside == 0 ? Station(station) : Station(station) + (aside * stretch.DirectionAt(places[station * Between]).Turned);
    }

    private Directions[] Empty() => [.. Enumerable.Repeat(Directions.None, (Last + 1) * Sides)];

    private (double Low, double High) Allowed(Point2 direction, int at)
    {
        var angle = _headings[at] + Turns.Signed(direction.Angle - _headings[at]);
        return (angle - (Kink / 2), angle + (Kink / 2));
    }

    /// <summary>Every arc from a station that follows the curve to another one.</summary>
    private List<Arc> ArcsFrom(int node, double tolerance)
    {
        var (arcs, from, a) = (new List<Arc>(), StationOf(node), At(node, tolerance));
        var any = true;
        for (var to = from + 1; to <= Last && any; to++)
        {
            any = false;
            for (var side = to == Last ? OnCurve : 0; side <= (to == Last ? OnCurve : Sides - 1); side++)
            {
                var b = At(Node(to, side), tolerance);
                var (low, high) = (-mostTurn, mostTurn);
                for (var i = (from * Between) + 1; i < to * Between && low <= high; i++)
                {
                    var near = ArcSpan.HalfSweepsNear(a, b, _points[i], tolerance);
                    (low, high) = (Math.Max(low, near.Low), Math.Min(high, near.High));
                }

                if (!(low <= high))
                    continue;
                any = true;
                arcs.Add(new(node, Node(to, side), _headings[from] + Turns.Signed((b - a).Angle - _headings[from]), low, high));
            }
        }

        return arcs;
    }

    private Directions[] Next(Directions[] reached, List<Arc>?[] arcs, double tolerance)
    {
        var next = Empty();
        var foremost = Array.FindLastIndex(reached, directions => !directions.IsNone);
        for (var from = Math.Max(0, foremost - (abreast * Sides)); from < Math.Min(Last * Sides, foremost + 1); from++)
        {
            if (reached[from].IsNone)
                continue;
            var starts = StationOf(from) == 0 ? reached[from] : reached[from].Widened(Kink);
            foreach (var arc in arcs[from] ??= ArcsFrom(from, tolerance))
            {
                var used = starts.Within((arc.Chord - arc.High, arc.Chord - arc.Low));
                next[arc.To] = next[arc.To].With(used.Mirrored(arc.Chord));
            }
        }

        return next;
    }

    /// <summary>Arcs from the end back that keep well inside their range.</summary>
    private List<(Interval Domain, ArcSpan Span)> Back(List<Directions[]> layers, List<Arc>?[] arcs, double direction, double tolerance)
    {
        var chain = new List<(Interval Domain, ArcSpan Span)>();
        var to = Node(Last, OnCurve);
        for (var layer = layers.Count - 2; layer >= 0; layer--)
        {
            var reached = layers[layer];
            var arc = arcs.OfType<List<Arc>>()
                .SelectMany(from => from)
                .Where(arc => arc.To == to && arc.Takes(direction)
                    && reached[arc.From].Nearest(arc.StartFor(direction)) is { } near
                    && Math.Abs(near - arc.StartFor(direction)) <= (StationOf(arc.From) == 0 ? 0 : Kink) + Hair)
                .MinBy(arc => arc.Strain(direction));
            chain.Add((
                new(places[StationOf(arc.From) * Between], places[StationOf(to) * Between]),
                new(At(arc.From, tolerance), At(to, tolerance), direction - arc.Chord)));
            (to, direction) = (arc.From, reached[arc.From].Nearest(arc.StartFor(direction))!.Value);
        }

        chain.Reverse();
        return chain;
    }

    /// <param name="From">A station.</param>
    /// <param name="To">Another one.</param>
    /// <param name="Chord">Heading of its chord.</param>
    /// <param name="Low">Least half sweep.</param>
    /// <param name="High">Greatest half sweep.</param>
    private readonly record struct Arc(int From, int To, double Chord, double Low, double High)
    {
        public bool Takes(double direction) => direction - Chord >= Low - Hair && direction - Chord <= High + Hair;

        /// <summary>How far the half sweep that ends in a direction lies off the middle of its range, as a share
        /// of it.</summary>
        public double Strain(double direction) => Math.Abs(direction - Chord - ((Low + High) / 2)) / (High - Low + Hair);

        public double StartFor(double direction) => (2 * Chord) - direction;
    }
}
