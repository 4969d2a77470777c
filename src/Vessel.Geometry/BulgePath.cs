using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>A closed chain of lines and arcs told by the length along it, mm; the metal on its left.</summary>
internal sealed class BulgePath
{
    private readonly ImmutableArray<Bulge> _chain;
    private readonly ImmutableArray<Curve2> _pieces;
    private readonly ImmutableArray<double> _starts;

    public BulgePath(ImmutableArray<Bulge> chain)
    {
        _chain = chain;
        _pieces = [.. chain.Select((vertex, i) => vertex.To(chain[(i + 1) % chain.Length].At))];
        var starts = ImmutableArray.CreateBuilder<double>(chain.Length + 1);
        starts.Add(0);
        foreach (var piece in _pieces)
            starts.Add(starts[^1] + CurveMeasures.Length(piece));
        _starts = starts.MoveToImmutable();
    }

    public double Length => _starts[^1];

    public Point2 At(double along) => Read(along) is var (i, share) ? _pieces[i].At(_pieces[i].Domain.At(share)) : default;

    /// <summary>Unit, off the metal.</summary>
    public Point2 Right(double along) => Read(along) is var (i, share) ? -1 * Way(i, share).Turned : default;

    /// <summary>Where it turns by more than an angle, radians.</summary>
    public IEnumerable<double> Corners(double turn)
    {
        for (var i = 0; i < _pieces.Length; i++)
        {
            var (before, after) = (Way(i == 0 ? _pieces.Length - 1 : i - 1, 1), Way(i, 0));
            if (Math.Abs(Math.Atan2(before.Cross(after), before.Dot(after))) > turn)
                yield return _starts[i];
        }
    }

    /// <summary>The vertices from one place to another further on, which may lie beyond the start; the last leads nowhere.</summary>
    public ImmutableArray<Bulge> Between(double from, double to)
    {
        var vertices = ImmutableArray.CreateBuilder<Bulge>();
        var left = to - from;
        for (var (i, share) = Read(from); left > 0; (i, share) = ((i + 1) % _pieces.Length, 0))
        {
            var length = _starts[i + 1] - _starts[i];
            var taken = Math.Min(1 - share, left / length);
            vertices.Add(new(_pieces[i].At(_pieces[i].Domain.At(share)), Math.Tan(taken * Math.Atan(_chain[i].Value))));
            left -= (1 - share) * length;
        }

        vertices.Add(new(At(to), 0));
        return vertices.ToImmutable();
    }

    /// <summary>Parameter of the place nearest to a point that lies on the chain.</summary>
    public double Find(Point2 point)
    {
        var (best, found) = (double.PositiveInfinity, 0.0);
        for (var i = 0; i < _pieces.Length; i++)
        {
            var share = Math.Clamp(Share(_pieces[i], point), 0, 1);
            var off = (_pieces[i].At(_pieces[i].Domain.At(share)) - point).Length;
            if (off < best)
                (best, found) = (off, _starts[i] + (share * (_starts[i + 1] - _starts[i])));
        }

        return found;
    }

    /// <summary>Vertices of an open chain, as <see cref="Between"/> gives it, run the other way.</summary>
    public static IEnumerable<Bulge> Back(ImmutableArray<Bulge> open) =>
        Enumerable.Range(0, open.Length).Select(i => new Bulge(open[^(i + 1)].At, i + 1 < open.Length ? -open[^(i + 2)].Value : 0));

    private static double Share(Curve2 piece, Point2 point) => piece switch
    {
        Arc2 arc => Math.Sign(arc.Sweep) * Turns.Signed((point - arc.Center).Angle - (arc.At(arc.Domain.At(0.5)) - arc.Center).Angle) / Math.Abs(arc.Sweep) is var aside
            ? aside + 0.5
            : 0,
        _ => (point - piece.Start).Dot(piece.End - piece.Start) / (piece.End - piece.Start).Dot(piece.End - piece.Start),
    };

    private Point2 Way(int piece, double share) => _pieces[piece].Slope(_pieces[piece].Domain.At(share)).Unit();

    private (int Piece, double Share) Read(double along)
    {
        var rest = along % Length;
        if (rest < 0)
            rest += Length;
        var i = 0;
        while (i + 1 < _pieces.Length && rest >= _starts[i + 1])
            i++;
        return (i, (rest - _starts[i]) / (_starts[i + 1] - _starts[i]));
    }
}
