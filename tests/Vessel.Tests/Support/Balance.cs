using Vessel.Geometry;

namespace Vessel.Tests.Support;

/// <summary>Where a body acts by its facets alone.</summary>
internal static class Balance
{
    /// <summary>Centre of what the mesh encloses, by tetrahedra from the origin.</summary>
    public static Vector3 Of(Mesh mesh)
    {
        var (volume, moment) = (0.0, Vector3.Zero);
        foreach (var t in mesh.Triangles)
        {
            var (a, b, c) = (mesh.Vertices[t.A], mesh.Vertices[t.B], mesh.Vertices[t.C]);
            var six = a.Dot(b.Cross(c));
            (volume, moment) = (volume + six, moment + (six / 4 * (a + b + c)));
        }

        return (1 / volume) * moment;
    }
}
