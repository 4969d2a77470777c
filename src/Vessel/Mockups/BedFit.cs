using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>How a print stands on its printer's bed.</summary>
public static class BedFit
{
    private const int Step = 5;

    /// <summary>What turning it loses by rounding, mm.</summary>
    private const double Hair = 1e-6;

    /// <summary>Degrees, in steps of five, by which it must be turned on the bed to fit upright; null when it does not.</summary>
    public static int? Of(Mesh mesh, BedDesign bed)
    {
        if (Extent(mesh, Vector3.UnitZ) > bed.Height + Hair)
            return null;
        for (var turn = 0; turn < 180; turn += Step)
        {
            var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
            // Along the bed's width and depth once it is turned.
            if (Extent(mesh, new(cos, -sin, 0)) <= bed.Width + Hair && Extent(mesh, new(sin, cos, 0)) <= bed.Depth + Hair)
                return turn;
        }

        return null;
    }

    /// <summary>Turned as it must be to fit the bed, where it fits at all, and moved to where all coordinates are positive.</summary>
    public static Mesh OnBed(Mesh mesh, BedDesign bed)
    {
        if (Of(mesh, bed) is { } turn and > 0)
        {
            var frame = Frame3.Identity.TurnedAboutZ(turn * Math.PI / 180);
            mesh = mesh with { Vertices = [.. mesh.Vertices.Select(frame.Turn)] };
        }

        var low = new Vector3(Least(mesh, Vector3.UnitX), Least(mesh, Vector3.UnitY), Least(mesh, Vector3.UnitZ));
        return mesh with { Vertices = [.. mesh.Vertices.Select(v => v - low)] };
    }

    public static double Extent(Mesh mesh, Vector3 way) => -Least(mesh, -way) - Least(mesh, way);

    private static double Least(Mesh mesh, Vector3 way)
    {
        var least = double.PositiveInfinity;
        foreach (var v in mesh.Vertices)
            least = Math.Min(least, v.Dot(way));
        return least;
    }
}
