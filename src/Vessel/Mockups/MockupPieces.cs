using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>A part of a mock-up that is larger than the printer, with flat cut faces.</summary>
/// <param name="Mesh">Standing on the bed, in the octant where all coordinates are positive.</param>
/// <param name="IsRough">Whether no place was found where all facets of a cut come out wide: a needle may be left, which slicers
/// mend.</param>
public sealed record MockupPiece(string Name, Mesh Mesh, int Pegs, bool IsRough);

/// <summary>Cuts a mock-up into pieces that the printer takes.</summary>
/// <remarks>
/// Slices of equal height first; then, what is too wide however it is turned, across. Pegs stand on the face that looks up
/// or towards increasing x or y, sockets in the other: where the face is wide enough, that is in walls of 3.2 mm and more. A cut may
/// leave what hangs together nowhere: each such body is cut further by itself, and is a piece of its own in the end.
/// </remarks>
public static class MockupPieces
{
    private const double LeastPeg = 0.8;

    private const double GreatestPeg = 5;

    /// <summary>Between peg and socket all round, mm: common practice, no source.</summary>
    private const double Play = 0.15;

    /// <summary>Number of attempts with pegs; those after them go without.</summary>
    private const int Pegged = 8;

    private const int Attempts = 12;

    /// <summary>A cut that runs along something flat is tried again so much further, mm.</summary>
    private const double Aside = 0.35;

    /// <summary>Points of a cut are made one over so much more each time: up to half of the usual chord.</summary>
    private const double Coarser = 2.3;

    /// <summary>More is no print.</summary>
    public const int Most = 125;

    /// <summary>How many boxes of a bed's size it takes at most; one where it may be split no further.</summary>
    public static double Boxes(Vector3 size, BedDesign bed) =>
        Count(size.X, bed.Width) * Count(size.Y, bed.Depth) * Count(size.Z, bed.Height);

    /// <summary>None where it fits whole, is not to be split or would give too many.</summary>
    public static ImmutableArray<MockupPiece> Of(Mockup mockup)
    {
        var (options, bed) = (mockup.Plan.Options, mockup.Plan.Options.Bed);
        if (!options.Splits || Boxes(mockup.Size, bed) > Most || BedFit.Of(mockup.Mesh, bed) is not null)
            return [];
        List<Cutting> bodies = [new(mockup.Mesh, [], false)];
        foreach (var (way, room) in ((Vector3, double)[])[(Vector3.UnitZ, bed.Height), (Vector3.UnitX, bed.Width),
            (Vector3.UnitY, bed.Depth)])
            bodies = [.. bodies.SelectMany(body => BedFit.Of(body.Mesh, bed) is null ? Cut(body, way, room).SelectMany(Bodies) : [body])];
        return
        [
            .. bodies.Select((piece, i) =>
                new MockupPiece($"piece {i + 1}", BedFit.OnBed(piece.Mesh, bed), piece.Pegs.Length, piece.IsRough)),
        ];
    }

    /// <summary>
    /// Into as many equal lengths as it takes; what cannot be cut stays longer than the bed, which the pieces' sizes show.
    /// </summary>
    private static IEnumerable<Cutting> Cut(Cutting rest, Vector3 way, double room)
    {
        var (low, high) = (rest.Mesh.Vertices.Min(v => v.Dot(way)), rest.Mesh.Vertices.Max(v => v.Dot(way)));
        var count = (int)Count(high - low, room);
        for (var i = 1; i < count; i++)
        {
            // What lies beyond a gap is not reached by every level.
            if (At(rest.Mesh, way, low + ((high - low) * i / count)) is not { IsEmpty: false } cut)
                continue;
            var isRough = rest.IsRough || cut.IsRough;
            yield return new(cut.Below, rest.Pegs.AddRange(cut.Pegs), isRough);
            rest = new(cut.Above, cut.Pegs, isRough);
        }

        yield return rest;
    }

    /// <summary>Count of equal pieces; pegs stand out of each by two and a half of their greatest radii at most.</summary>
    private static double Count(double length, double room) =>
        length <= room ? 1 : Math.Ceiling(length / Math.Max(room / 2, room - (2.5 * GreatestPeg) - 2));

    /// <summary>Null where no cut comes out sound.</summary>
    private static Halves? At(Mesh mesh, Vector3 way, double level)
    {
        for (var attempt = 0; attempt < Attempts; attempt++)
        {
            var (up, close) = (Across(way, level + (attempt * Aside)), PlaneCut.Usual * Math.Pow(Coarser, attempt % 4));
            if (Sound(() => attempt < Pegged ? WithPegs(mesh, up, close)
                : new(PlaneCut.Finely(mesh, Downward(up), close).Mesh, PlaneCut.Finely(mesh, up, close).Mesh, [], false)) is { } halves)
            {
                return halves;
            }
        }

        // Rather with a needle than not at all.
        var last = Across(way, level);
        return Sound(() => new(PlaneCut.Of(mesh, Downward(last)).Mesh, PlaneCut.Of(mesh, last).Mesh, [], true));
    }

    /// <summary>Null where outlines touch, or facets become needles.</summary>
    private static Halves? Sound(Func<Halves> cut)
    {
        try
        {
            return cut();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    /// <summary>Seen from below the plane's Y points the other way.</summary>
    private static Frame3 Downward(Frame3 up) => up with { Y = -up.Y, Z = -up.Z };

    private static Halves WithPegs(Mesh mesh, Frame3 up, double close)
    {
        const double reach = (2.5 * LeastPeg) + 2;
        var (centres, radius) = PegPlaces.Of(mesh, up, PlaneCut.Of(mesh, up).Outlines, reach, LeastPeg, GreatestPeg);
        var depth = Math.Min(2.5 * radius, reach - 1);
        return new(
            PlaneCut.Finely(mesh, Downward(up), close, [.. centres.Select(c => new Peg(c with { V = -c.V }, radius, 0.8 * radius, depth))])
                .Mesh,
            PlaneCut.Finely(mesh, up, close, [.. centres.Select(c => new Peg(c, radius + Play, (0.8 * radius) + Play, -depth - 0.4))]).Mesh,
            [.. centres.Select(c => up.ToOuter(new(c.U, c.V, depth)))],
            false);
    }

    /// <summary>What hangs together, with the pegs that stand on it.</summary>
    private static IEnumerable<Cutting> Bodies(Cutting cutting)
    {
        var bodies = MeshBodies.Of(cutting.Mesh);
        if (bodies.Length == 1)
            return [cutting];
        var owners = cutting.Pegs.ToLookup(peg => bodies.MinBy(body => body.Vertices.Min(v => (v - peg).Length))!);
        return bodies.Select(body => cutting with { Mesh = body, Pegs = [.. owners[body]] });
    }

    /// <param name="Pegs">A place in the end of each.</param>
    /// <param name="IsRough">Whether one of its cuts may have left a needle.</param>
    private sealed record Cutting(Mesh Mesh, ImmutableArray<Vector3> Pegs, bool IsRough);

    /// <param name="Pegs">A place in the end of each.</param>
    /// <param name="IsRough">Whether the cut may have left a needle.</param>
    private sealed record Halves(Mesh Below, Mesh Above, ImmutableArray<Vector3> Pegs, bool IsRough)
    {
        public bool IsEmpty => Below.Triangles.IsEmpty || Above.Triangles.IsEmpty;
    }

    private static Frame3 Across(Vector3 way, double level)
    {
        var x = way == Vector3.UnitX ? Vector3.UnitY : Vector3.UnitX;
        return new(level * way, x, way.Cross(x), way);
    }
}
