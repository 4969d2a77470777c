using System.Collections.Immutable;

namespace Vessel.Geometry;

/// <summary>
/// A solid of the filled cells of a bent grid: every face between a filled cell and an empty one is part of its surface. Closed by
/// construction; a 2-manifold as long as no two filled cells share an edge, or a corner, alone.
/// </summary>
/// <param name="Cells">How many along the first, second and third direction; the three run as a right hand's.</param>
/// <param name="IsFilled">Asked inside the grid alone.</param>
/// <param name="At">Place of a corner of the cells.</param>
public sealed record CellSolid(
    (int I, int J, int K) Cells, Func<int, int, int, bool> IsFilled, Func<int, int, int, Vector3> At)
{
    /// <summary>Corners of a face round it, seen from outside the lower neighbour, by the direction across it.</summary>
    private static readonly ImmutableArray<ImmutableArray<(int I, int J, int K)>> _faces =
    [
        [(0, 0, 0), (0, 1, 0), (0, 1, 1), (0, 0, 1)],
        [(0, 0, 0), (0, 0, 1), (1, 0, 1), (1, 0, 0)],
        [(0, 0, 0), (1, 0, 0), (1, 1, 0), (0, 1, 0)],
    ];

    public Mesh Mesh()
    {
        var numbers = new Dictionary<(int, int, int), int>();
        var vertices = ImmutableArray.CreateBuilder<Vector3>();
        var triangles = ImmutableArray.CreateBuilder<Triangle>();
        int Vertex(int i, int j, int k)
        {
            if (!numbers.TryGetValue((i, j, k), out var number))
            {
                numbers[(i, j, k)] = number = vertices.Count;
                vertices.Add(At(i, j, k));
            }

            return number;
        }

        for (var i = 0; i <= Cells.I; i++)
        {
            for (var j = 0; j <= Cells.J; j++)
            {
                for (var k = 0; k <= Cells.K; k++)
                {
                    for (var across = 0; across < 3; across++)
                    {
                        var (low, high) = (Holds(i - (across == 0 ? 1 : 0), j - (across == 1 ? 1 : 0), k - (across == 2 ? 1 : 0)),
                            Holds(i, j, k));
                        if (low == high)
                            continue;
                        var corners = _faces[across].Select(c => Vertex(i + c.I, j + c.J, k + c.K)).ToArray();
                        if (high)
                            Array.Reverse(corners);
                        triangles.Add(new(corners[0], corners[1], corners[2]));
                        triangles.Add(new(corners[0], corners[2], corners[3]));
                    }
                }
            }
        }

        return new(vertices.ToImmutable(), triangles.ToImmutable());
    }

    private bool Holds(int i, int j, int k) =>
        i >= 0 && j >= 0 && k >= 0 && i < Cells.I && j < Cells.J && k < Cells.K && IsFilled(i, j, k);
}
