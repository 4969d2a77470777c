using System.Collections.Immutable;
using Vessel.Export.Solids;
using Vessel.Geometry;

namespace Vessel.Export.Report.Model;

/// <summary>A piece of metal where it stands.</summary>
/// <param name="Part">Index among the build's parts.</param>
/// <param name="Name">Name of the part, numbered where there are several.</param>
/// <param name="Move">Which way, and how far, it goes when the vessel is pulled apart, mm.</param>
/// <param name="Low">Corner of its box in the vessel's frame.</param>
/// <param name="High">The opposite corner.</param>
internal sealed record Piece(int Part, string Name, Frame3 Place, Vector3 Move, Vector3 Low, Vector3 High)
{
    public Vector3 Middle => 0.5 * (Low + High);
}

/// <summary>All pieces, and how they come apart.</summary>
internal static class Pieces
{
    /// <summary>Left between neighbours, as a share of the vessel's height.</summary>
    private const double Gap = 0.06;

    /// <summary>A piece whose middle is so near to the axis, as a share of the widest, is taken as standing on it.</summary>
    private const double OnAxis = 0.1;

    public static ImmutableArray<Piece> Of(ImmutableArray<BuiltPart> parts, ImmutableArray<Mesh> meshes)
    {
        var pieces = new List<Piece>();
        for (var i = 0; i < parts.Length; i++)
        {
            var part = parts[i].Part;
            for (var j = 0; j < part.Quantity; j++)
            {
                var (low, high) = Extent.Of(meshes[i].Vertices.Select(part.Placements[j].ToOuter));
                var name = part.Quantity == 1 ? part.Name : $"{part.Name} {j + 1}";
                pieces.Add(new(i, name, part.Placements[j], Vector3.Zero, low, high));
            }
        }

        return Apart(pieces);
    }

    /// <summary>
    /// What stands on the axis is drawn out along it in the order of heights, so that no two overlap; the rest goes outward,
    /// and along with whatever on the axis stands at its height.
    /// </summary>
    private static ImmutableArray<Piece> Apart(List<Piece> pieces)
    {
        var widest = pieces.Max(piece => Math.Max(Math.Abs(piece.High.X), Math.Abs(piece.High.Y)));
        var gap = Gap * (pieces.Max(piece => piece.High.Z) - pieces.Min(piece => piece.Low.Z));
        bool IsOnAxis(Piece piece) => Out(piece).Length < OnAxis * widest;
        var stack = pieces.Where(IsOnAxis).OrderBy(piece => piece.Middle.Z).ThenBy(piece => piece.Low.Z).ToList();
        var lifts = new Dictionary<Piece, double>();
        var floor = 0.0;
        foreach (var piece in stack)
        {
            lifts[piece] = floor - piece.Low.Z;
            floor += piece.High.Z - piece.Low.Z + gap;
        }

        // The tallest stays where it is.
        var still = stack.Count > 0 ? lifts[stack.MaxBy(piece => piece.High.Z - piece.Low.Z)!] : 0;
        double Lift(Piece piece) => stack.Count == 0 ? 0 : lifts[Beside(piece, stack)] - still;
        return
        [
            .. pieces.Select(piece => piece with
            {
                Move = IsOnAxis(piece)
                    ? new(0, 0, lifts[piece] - still)
                    : (widest / Out(piece).Length * Out(piece)) + new Vector3(0, 0, Lift(piece)),
            }),
        ];
    }

    private static Vector3 Out(Piece piece) => new(piece.Middle.X, piece.Middle.Y, 0);

    /// <summary>The tallest that reaches over its middle; else the nearest.</summary>
    private static Piece Beside(Piece piece, List<Piece> stack)
    {
        var z = piece.Middle.Z;
        return stack.Where(other => other.Low.Z <= z && z <= other.High.Z).MaxBy(other => other.High.Z - other.Low.Z)
            ?? stack.MinBy(other => Math.Min(Math.Abs(other.Low.Z - z), Math.Abs(other.High.Z - z)))!;
    }
}
