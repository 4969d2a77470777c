using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Joints;

namespace Vessel.Function;

/// <summary>The welds of one bracket as lines that are all alike stiff, on parts that do not give; mm.</summary>
/// <remarks>
/// The usual way of weld groups: q = F / L + (J^-1 M) x r, with r from the lines' centre and J the sum of (r^2 - r r^T) ds. Both parts
/// being stiff is what puts the ends of a line above its middle.
/// </remarks>
internal sealed class WeldGroup
{
    /// <summary>Each weld is cut into so many lengths.</summary>
    public const int Pieces = 8;

    private readonly SmallMatrix _inverse;

    private WeldGroup(ImmutableArray<WeldPiece> welds, double throat, double leg)
    {
        (All, Throat, Leg) = (welds, throat, leg);
        Length = welds.Sum(piece => piece.Length);
        Centre = 1 / Length * welds.Aggregate(Vector3.Zero, (sum, piece) => sum + (piece.Length * piece.At));
        var inertia = new SmallMatrix(3, 3);
        foreach (var piece in welds)
        {
            var r = piece.At - Centre;
            double[] components = [r.X, r.Y, r.Z];
            for (var i = 0; i < 3; i++)
            {
                for (var j = 0; j < 3; j++)
                    inertia[i, j] += piece.Length * ((i == j ? r.Dot(r) : 0) - (components[i] * components[j]));
            }
        }

        _inverse = inertia.Inverse();
    }

    public ImmutableArray<WeldPiece> All { get; }

    public double Throat { get; }

    /// <summary>Likely, on the shell.</summary>
    public double Leg { get; }

    /// <summary>All together.</summary>
    public double Length { get; }

    public Vector3 Centre { get; }

    public static WeldGroup Of(ImmutableArray<WeldFigures> welds)
    {
        var leg = welds.Average(weld => (weld.Leg.Start + weld.Leg.End) / 2);
        return new([.. welds.SelectMany(weld => Cut(weld.Joint, leg))], welds.Min(weld => weld.Joint.Throat), leg);
    }

    /// <summary>N/mm on a piece, for one of the six unit loads at the centre: forces along x, y and z, then moments about them.</summary>
    public Vector3 Traction(int unit, WeldPiece piece)
    {
        Vector3[] axes = [Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ];
        return unit < 3
            ? 1 / Length * axes[unit]
            : new Vector3(_inverse[0, unit - 3], _inverse[1, unit - 3], _inverse[2, unit - 3]).Cross(piece.At - Centre);
    }

    /// <summary>MPa on the throat, where it is worst, for the worst direction.</summary>
    /// <param name="bent">N mm on each mm, which turn a fillet on one side about its root: 6 m / a^2, added whole.</param>
    public double Stress(Wrench load, Vector3 bent) => (6 * bent.Length / (Throat * Throat)) + All.Max(piece =>
    {
        var (x, y, z) = (Vector3.Zero, Vector3.Zero, Vector3.Zero);
        for (var unit = 0; unit < 6; unit++)
        {
            var q = Traction(unit, piece);
            (x, y, z) = (x + (q.X * load[unit]), y + (q.Y * load[unit]), z + (q.Z * load[unit]));
        }

        return SpectralNorm.Of(x, y, z) / Throat;
    });

    private static IEnumerable<WeldPiece> Cut(Joint joint, double leg) =>
        from run in joint.Welded
        from i in Enumerable.Range(0, Pieces)
        let at = joint.Along(run.At((i + 0.5) / Pieces))
        select new WeldPiece(at.Root + (leg / 2 * at.AlongHost), at.Tangent.Unit(), at.AlongHost, at.Tangent.Length * run.Length / Pieces);
}

/// <param name="At">Place on the shell, in the middle of its leg.</param>
/// <param name="Along">Unit.</param>
/// <param name="Across">Unit: along the shell, away from what is welded to it.</param>
internal readonly record struct WeldPiece(Vector3 At, Vector3 Along, Vector3 Across, double Length);
