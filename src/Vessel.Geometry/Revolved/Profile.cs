using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// The outline of a body of revolution round +Z in its half plane of (distance r from the axis, height z): pieces that each end
/// where the next begins, with the outside on the right, so that it runs up the outside of a vessel and outward along its
/// bottom. Told by arc length from its start. mm.
/// </summary>
public sealed record Profile
{
    /// <summary>Between the end of a piece and the start of the next, mm.</summary>
    private const double Joint = 1e-7;

    /// <summary>Normals that differ by less do not make a corner, radians.</summary>
    private const double Smooth = 1e-7;

    private readonly ImmutableArray<double> _starts;

    /// <summary>Heights where pieces begin, and of the end.</summary>
    private readonly ImmutableArray<double> _levels;

    public Profile(params ImmutableArray<ProfilePiece> pieces)
    {
        if (pieces.IsEmpty || pieces.Zip(pieces.Skip(1)).Any(pair => (pair.First.At(pair.First.Length) - pair.Second.At(0)).Length > Joint))
            throw new ArgumentException("the pieces of a profile do not follow each other");
        Pieces = pieces;
        var starts = ImmutableArray.CreateBuilder<double>(pieces.Length + 1);
        starts.Add(0);
        foreach (var piece in pieces)
            starts.Add(starts[^1] + piece.Length);
        _starts = starts.MoveToImmutable();
        _levels = [.. pieces.Select(piece => piece.At(0).V), pieces[^1].At(pieces[^1].Length).V];
    }

    public ImmutableArray<ProfilePiece> Pieces { get; }

    public double Length => _starts[^1];

    /// <summary>Area of the surface, mm2: closed form.</summary>
    public double Area => Pieces.Sum(piece => piece.Area);

    /// <summary>pi times the integral of r^2 dz, mm3: between the surface and the levels of its two ends.</summary>
    public double Volume => Pieces.Sum(piece => piece.Volume);

    public Point2 Start => At(0);

    public Point2 End => At(Length);

    /// <summary>Arc lengths where pieces meet, without the two ends.</summary>
    public ImmutableArray<double> Joints => _starts[1..^1];

    public Point2 At(double along) => On(along, (piece, rest) => piece.At(rest));

    /// <summary>Unit, out of the body; at a corner that of the later piece.</summary>
    public Point2 Normal(double along) => On(along, (piece, rest) => piece.Normal(rest));

    /// <summary>The outline moved out by a distance, or in by a negative one: the other face of a wall.</summary>
    /// <exception cref="ArgumentException">A piece has no such parallel, or a corner is not one of two straight pieces.</exception>
    public Profile Offset(double distance)
    {
        var moved = Pieces.Select(piece => piece.Offset(distance)).ToArray();
        for (var i = 0; i + 1 < moved.Length; i++)
        {
            if (!IsCorner(i))
                continue;
            if (moved[i] is not LinePiece before || moved[i + 1] is not LinePiece after)
                throw new ArgumentException("only corners of straight pieces have a parallel");
            var meeting = before.A + (((after.A - before.A).Cross(after.B - after.A) / (before.B - before.A).Cross(after.B - after.A))
                * (before.B - before.A));
            (moved[i], moved[i + 1]) = (before with { B = meeting }, after with { A = meeting });
        }

        // A cone's parallel begins and ends on the axis where the cone does.
        if (Start.U == 0 && moved[0] is LinePiece first)
            moved[0] = first with { A = OnAxis(first) };
        if (End.U == 0 && moved[^1] is LinePiece last)
            moved[^1] = last with { B = OnAxis(last) };
        return new([.. moved]);
    }

    private static Point2 OnAxis(LinePiece line) =>
        new(0, line.A.V - (line.A.U * (line.B.V - line.A.V) / (line.B.U - line.A.U)));

    /// <summary>Whether the surface turns abruptly between a piece and the next.</summary>
    public bool IsCorner(int piece) =>
        Math.Abs(Pieces[piece].Normal(Pieces[piece].Length).Cross(Pieces[piece + 1].Normal(0))) > Smooth;

    /// <summary>Whether it turns inward at some corner, so that a line may meet one part of it and then another.</summary>
    public bool HasInnerCorner => Enumerable.Range(0, Pieces.Length - 1).Any(i =>
        IsCorner(i) && Pieces[i].Normal(Pieces[i].Length).Cross(Pieces[i + 1].Normal(0)) < 0);

    /// <summary>What lies between two arc lengths.</summary>
    public Profile Part(Interval along) => new(
    [
        .. Pieces.Select((piece, i) => (
                piece,
                From: Math.Max(along.Start - _starts[i], 0),
                To: Math.Min(along.End - _starts[i], piece.Length)))
            .Where(cut => cut.To > cut.From)
            .Select(cut => cut.From == 0 && cut.To == cut.piece.Length ? cut.piece : cut.piece.Part(new(cut.From, cut.To))),
    ]);

    public Profile Moved(double up) => new([.. Pieces.Select(piece => piece.Moved(up))]);

    /// <summary>Upside down: a bottom becomes a top.</summary>
    public Profile Flipped() => new([.. Pieces.Reverse().Select(piece => piece.Flipped())]);

    /// <summary>This one and what follows where it ends.</summary>
    public Profile Then(Profile next) => new([.. Pieces, .. next.Pieces]);

    /// <summary>
    /// The first place at which a line that comes from infinitely far enters the body; null when it misses. Closed form on
    /// planes, cylinders, cones, spheres and ellipsoids, else to the last digit by iteration.
    /// </summary>
    /// <param name="point">Any point of the line; best one near the body.</param>
    /// <param name="direction">Unit.</param>
    public LineHit? FirstHit(Vector3 point, Vector3 direction)
    {
        LineHit? first = null;
        for (var i = 0; i < Pieces.Length; i++)
        {
            if (Pieces[i].FirstEntry(point, direction) is not { } entry || entry.Along >= (first?.Along ?? double.PositiveInfinity))
                continue;
            var at = point + (entry.Along * direction);
            var normal = ProfilePiece.Turned(at, entry.Foot.Normal);
            first = new(entry.Along, at, normal, i, Math.Abs(normal.Dot(direction)) <= LineHit.Touch)
            {
                Station = _starts[i] + entry.Foot.Along,
            };
        }

        return first;
    }

    /// <summary>The nearest place, with the arc length from the profile's start, and the distance: positive outside.</summary>
    public ProfileFoot Nearest(Point2 point)
    {
        ProfileFoot? nearest = null;
        for (var i = 0; i < Pieces.Length; i++)
        {
            var foot = Pieces[i].Project(point);
            if (!Pieces[i].Holds(foot))
                foot = AtEnd(Pieces[i], foot.Along > 0 ? Pieces[i].Length : 0, point, foot.Distance);
            if (nearest is null || Math.Abs(foot.Distance) < Math.Abs(nearest.Value.Distance))
                nearest = foot with { Along = _starts[i] + foot.Along, Piece = i };
        }

        return nearest!.Value;
    }

    /// <summary>Distance of a point of space from the surface, positive outside.</summary>
    public double Distance(Vector3 point) => NearestTo(point).Distance;

    /// <summary>The place of the profile nearest to a point of space, in the half plane through it.</summary>
    public ProfileFoot NearestTo(Vector3 point) => Nearest(ProfilePiece.HalfPlane(point));

    /// <summary>The greatest radius at a height; zero where the profile does not reach.</summary>
    public double RadiusAt(double height)
    {
        var radius = 0.0;
        for (var i = 0; i < Pieces.Length; i++)
        {
            if (height >= Math.Min(_levels[i], _levels[i + 1]) && height <= Math.Max(_levels[i], _levels[i + 1]))
                radius = Math.Max(radius, Pieces[i].RadiusAt(height));
        }

        return radius;
    }

    /// <summary>Arc length at a height, on a profile that only rises; held to its ends.</summary>
    public double LengthAtHeight(double height)
    {
        if (height <= Start.V)
            return 0;
        if (height >= End.V)
            return Length;
        return MathNet.Numerics.RootFinding.Brent.FindRoot(along => At(along).V - height, 0, Length, 1e-13 * Length, 200);
    }

    private static ProfileFoot AtEnd(ProfilePiece piece, double along, Point2 point, double side)
    {
        var at = piece.At(along);
        return new(along, at, piece.Normal(along), Math.CopySign((point - at).Length, side))
        {
            Spread = along == 0 ? piece.Spread.Start : piece.Spread.End,
        };
    }

    private T On<T>(double along, Func<ProfilePiece, double, T> take)
    {
        var i = 0;
        while (i + 1 < Pieces.Length && along >= _starts[i + 1])
            i++;
        return take(Pieces[i], along - _starts[i]);
    }
}
