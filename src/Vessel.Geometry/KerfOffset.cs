using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A closed chain of lines and arcs moved sideways: the way that the middle of a cutter takes.</summary>
/// <remarks>
/// A line moves along its normal, an arc changes its radius and keeps its ends' directions. Where the chain turns away from
/// the side to which it moves, the cutter rolls round the corner; where it turns towards it, both pieces end where they cross.
/// </remarks>
public static class KerfOffset
{
    /// <summary>A turn below this is no corner, radians (0.1 degree): what is left of it is within rounding of either piece.</summary>
    private const double NoCorner = 1.75e-3;

    /// <summary>The chain moved to its right: away from the metal, where that is on the left.</summary>
    /// <param name="by">mm, positive.</param>
    /// <returns>Null where a piece would vanish: the cutter is too wide for it.</returns>
    public static ImmutableArray<Bulge>? Right(ImmutableArray<Bulge> chain, double by)
    {
        var pieces = chain.Select((vertex, i) => Piece.Of(vertex, chain[(i + 1) % chain.Length].At)).ToArray();
        var moved = pieces.Select(piece => piece.Moved(by)).ToArray();
        if (moved.Any(piece => piece.IsGone))
            return null;
        var rolls = new Bulge?[pieces.Length];
        for (var i = 0; i < pieces.Length; i++)
        {
            var next = (i + 1) % pieces.Length;
            var (before, after) = (pieces[i].EndWay, pieces[next].StartWay);
            var turn = Math.Atan2(before.Cross(after), before.Dot(after));
            if (turn > NoCorner)
            {
                rolls[i] = new(moved[i].B, Math.Tan(turn / 4));
                continue;
            }

            var corner = turn >= -NoCorner
                ? pieces[i].B - ((by / (1 + before.Dot(after))) * (before + after).Turned)
                : moved[i].Crossing(moved[next], pieces[i].B);
            if (corner is not { } at)
                return null;
            (moved[i], moved[next]) = (moved[i] with { B = at }, moved[next] with { A = at });
        }

        if (moved.Where((piece, i) => !piece.RunsAs(pieces[i])).Any())
            return null;
        return
        [
            .. moved.SelectMany((piece, i) => rolls[i] is { } roll ? new[] { piece.AsBulge, roll } : [piece.AsBulge]),
        ];
    }

    /// <summary>A line, or an arc of radius <paramref name="Radius"/> with the sense <paramref name="Sense"/>: +1 turns left.</summary>
    private readonly record struct Piece(Point2 A, Point2 B, Point2 Center, double Radius, int Sense)
    {
        public bool IsGone => Sense != 0 && !(Radius > 0);

        public Point2 StartWay => Way(A);

        public Point2 EndWay => Way(B);

        public Bulge AsBulge => new(A, Sense == 0 ? 0 : Math.Tan(Sweep / 4));

        /// <summary>Signed, by less than a turn.</summary>
        private double Sweep => Sense * Turns.From(Sense * ((B - Center).Angle - (A - Center).Angle), 0);

        public static Piece Of(Bulge from, Point2 to) => from.To(to) is Arc2 arc
            ? new(from.At, to, arc.Center, arc.Radius, Math.Sign(arc.Sweep))
            : new(from.At, to, default, 0, 0);

        public Piece Moved(double by)
        {
            if (Sense == 0)
                return this with { A = A - (by * StartWay.Turned), B = B - (by * EndWay.Turned) };
            var grown = (Radius + (Sense * by)) / Radius;
            return this with { A = Center + (grown * (A - Center)), B = Center + (grown * (B - Center)), Radius = grown * Radius };
        }

        /// <summary>Whether it still leads the way that it led, and is no longer than a turn more or less.</summary>
        public bool RunsAs(Piece before) => Sense == 0
            ? (B - A).Dot(before.B - before.A) > 0
            : Math.Abs(Sweep) > 0 && Math.Abs(Sweep) < Math.Abs(before.Sweep) + 1;

        /// <summary>Where the whole lines or circles cross, nearest to a place; null where they do not.</summary>
        public Point2? Crossing(Piece other, Point2 near)
        {
            var places = (Sense, other.Sense) switch
            {
                (0, 0) => LineAndLine(this, other),
                (0, _) => LineAndCircle(this, other),
                (_, 0) => LineAndCircle(other, this),
                _ => CircleAndCircle(this, other),
            };
            return places.Length == 0 ? null : places.MinBy(place => (place - near).Length);
        }

        private Point2 Way(Point2 at) => Sense == 0 ? (B - A).Unit() : (Sense * (at - Center)).Turned.Unit();

        private static Point2[] LineAndLine(Piece a, Piece b)
        {
            var (u, v) = (a.B - a.A, b.B - b.A);
            return u.Cross(v) == 0 ? [] : [a.A + (((b.A - a.A).Cross(v) / u.Cross(v)) * u)];
        }

        private static Point2[] LineAndCircle(Piece line, Piece arc)
        {
            var way = line.StartWay;
            var foot = line.A + ((arc.Center - line.A).Dot(way) * way);
            return Both(foot, way, (arc.Radius * arc.Radius) - (foot - arc.Center).Dot(foot - arc.Center));
        }

        private static Point2[] CircleAndCircle(Piece a, Piece b)
        {
            var apart = b.Center - a.Center;
            var square = apart.Dot(apart);
            if (square == 0)
                return [];
            var share = (square + (a.Radius * a.Radius) - (b.Radius * b.Radius)) / (2 * square);
            return Both(a.Center + (share * apart), apart.Turned.Unit(), (a.Radius * a.Radius) - (share * share * square));
        }

        private static Point2[] Both(Point2 foot, Point2 way, double squareHalf) => squareHalf < 0
            ? []
            : [foot + (Math.Sqrt(squareHalf) * way), foot - (Math.Sqrt(squareHalf) * way)];
    }
}
