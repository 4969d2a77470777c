namespace Vessel.Geometry;

/// <summary>The search for the fewest arcs from the first to the last of the places on a curve.</summary>
/// <remarks>
/// An arc between two points may have any half sweep of a small range before it leaves the tolerance, and turns one
/// direction at its start into one at its end. From layer to layer, an arc each, every station carries along which
/// directions the
/// chain can have there; the first layer that reaches the end with a direction that is allowed gives the number.
/// Derived here.
/// </remarks>
/// <param name="stretch">That the arcs stand for.</param>
/// <param name="places">Parameters, ascending; every <see cref="Between"/>th is a station where arcs may meet, the
/// first and
/// the last too. The others are looked at only.</param>
/// <param name="smoothStart">Whether the chain must set out in the curve's own direction.</param>
/// <param name="smoothEnd">The same at its end.</param>
/// <param name="mostTurn">Greatest half sweep, radians.</param>
/// <param name="abreast">Stations behind the foremost that a chain may lag.</param>
internal sealed class ArcSearch(
    SmoothStretch stretch, List<double> places, bool smoothStart, bool smoothEnd, double mostTurn, int abreast)
{
    /// <summary>Places from one station to the next.</summary>
    public const int Between = 4;

    // Arcs may turn so far where they meet, radians: less than 0.1 degree also where two half ones add up.
    private const double Kink = 1.2e-3;

    // Rounding of sums of angles, radians.
    private const double Hair = 1e-9;

    private readonly List<Point2> _points = places.ConvertAll(stretch.Curve.At);
    private readonly List<double> _headings = [];

    private int Last => (places.Count - 1) / Between;

    /// <summary>A chain of at most so many arcs, or null.</summary>
    public List<(Interval Domain, ArcSpan Span)>? Fewest(double tolerance, int most)
    {
        if (_headings.Count == 0)
            AddHeadings();
        var arcs = new List<Arc>?[Last];
        var layers = new List<Directions[]> { First() };
        while (layers.Count - 1 < Math.Min(most, Last))
        {
            layers.Add(Next(layers[^1], arcs, tolerance));
            var arrived = layers[^1][Last].Within(Allowed(smoothEnd ? stretch.EndDirection : null, Last - 1));
            if (arrived.Longest is { } directions)
                return Back(layers, arcs, (directions.Low + directions.High) / 2);
        }

        return null;
    }

    /// <summary>Of the curve from each station on, without jumps of a turn.</summary>
    private void AddHeadings()
    {
        for (var i = 0; i < Last; i++)
        {
            var angle = (Station(i + 1) - Station(i)).Angle;
            _headings.Add(i == 0 ? angle : _headings[^1] + Turns.Signed(angle - _headings[^1]));
        }
    }

    private Point2 Station(int i) => _points[i * Between];

    private Directions[] First()
    {
        var first = Empty();
        first[0] = Directions.All.Within(Allowed(smoothStart ? stretch.StartDirection : null, 0));
        return first;
    }

    private Directions[] Empty() => [.. Enumerable.Repeat(Directions.None, Last + 1)];

    private (double Low, double High) Allowed(Point2? direction, int at)
    {
        if (direction is not { } given)
            return (double.NegativeInfinity, double.PositiveInfinity);
        var angle = _headings[at] + Turns.Signed(given.Angle - _headings[at]);
        return (angle - (Kink / 2), angle + (Kink / 2));
    }

    /// <summary>Every arc from a station that follows the curve to another one.</summary>
    private List<Arc> ArcsFrom(int from, double tolerance)
    {
        var arcs = new List<Arc>();
        for (var to = from + 1; to <= Last; to++)
        {
            var (a, b) = (Station(from), Station(to));
            var (low, high) = (-mostTurn, mostTurn);
            for (var i = (from * Between) + 1; i < to * Between && low <= high; i++)
            {
                var near = ArcSpan.HalfSweepsNear(a, b, _points[i], tolerance);
                (low, high) = (Math.Max(low, near.Low), Math.Min(high, near.High));
            }

            if (!(low <= high))
                break;
            arcs.Add(new(from, to, _headings[from] + Turns.Signed((b - a).Angle - _headings[from]), low, high));
        }

        return arcs;
    }

    private Directions[] Next(Directions[] reached, List<Arc>?[] arcs, double tolerance)
    {
        var next = Empty();
        var foremost = Array.FindLastIndex(reached, directions => !directions.IsNone);
        for (var from = Math.Max(0, foremost - abreast); from < Math.Min(Last, foremost + 1); from++)
        {
            if (reached[from].IsNone)
                continue;
            var starts = from == 0 ? reached[from] : reached[from].Widened(Kink);
            foreach (var arc in arcs[from] ??= ArcsFrom(from, tolerance))
            {
                var used = starts.Within((arc.Chord - arc.High, arc.Chord - arc.Low));
                next[arc.To] = next[arc.To].With(used.Mirrored(arc.Chord));
            }
        }

        return next;
    }

    /// <summary>From the end back by arcs that keep well inside their range.</summary>
    private List<(Interval Domain, ArcSpan Span)> Back(List<Directions[]> layers, List<Arc>?[] arcs, double direction)
    {
        var chain = new List<(Interval Domain, ArcSpan Span)>();
        var to = Last;
        for (var layer = layers.Count - 2; layer >= 0; layer--)
        {
            var reached = layers[layer];
            var arc = arcs.OfType<List<Arc>>()
                .SelectMany(from => from)
                .Where(arc => arc.To == to && arc.Takes(direction)
                    && reached[arc.From].Nearest(arc.StartFor(direction)) is { } near
                    && Math.Abs(near - arc.StartFor(direction)) <= (arc.From == 0 ? 0 : Kink) + Hair)
                .MinBy(arc => arc.Strain(direction));
            chain.Add((
                new(places[arc.From * Between], places[to * Between]),
                new(Station(arc.From), Station(to), direction - arc.Chord)));
            (to, direction) = (arc.From, reached[arc.From].Nearest(arc.StartFor(direction))!.Value);
        }

        chain.Reverse();
        return chain;
    }

    /// <param name="From">A station.</param>
    /// <param name="To">Another one.</param>
    /// <param name="Chord">Its heading.</param>
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
