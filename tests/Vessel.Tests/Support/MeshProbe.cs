using Vessel.Geometry;

namespace Vessel.Tests.Support;

/// <summary>Distances from places to a mesh, facet by facet.</summary>
internal static class MeshProbe
{
    /// <summary>To the nearest facet, mm.</summary>
    /// <param name="enough">Facets further away are not looked at while there is one nearer than so;
    /// then the answer is not the least.</param>
    public static double Distance(Mesh mesh, Vector3 at, double enough)
    {
        var least = double.PositiveInfinity;
        foreach (var t in mesh.Triangles)
        {
            var (a, b, c) = (mesh.Vertices[t.A], mesh.Vertices[t.B], mesh.Vertices[t.C]);
            if (Outside(at.X, a.X, b.X, c.X, least) || Outside(at.Y, a.Y, b.Y, c.Y, least) || Outside(at.Z, a.Z, b.Z, c.Z, least))
                continue;
            least = Math.Min(least, at.DistanceToTriangle(a, b, c));
            if (least <= enough)
                break;
        }

        return least;
    }

    private static bool Outside(double at, double a, double b, double c, double by) =>
        at < Math.Min(a, Math.Min(b, c)) - by || at > Math.Max(a, Math.Max(b, c)) + by;
}
