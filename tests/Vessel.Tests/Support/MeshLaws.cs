using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Support;

/// <summary>What every mesh of ours must obey, whatever it shows.</summary>
internal static class MeshLaws
{
    /// <summary>
    /// No facet may be lower than this after rounding to single precision, mm: its step below 2048 mm is 1.2e-4.
    /// </summary>
    public const double LeastAltitude = 0.001;

    /// <summary>Each edge once in either sense, and right side out.</summary>
    public static void IsClosed(Mesh mesh)
    {
        var edges = mesh.Triangles.SelectMany(t => new[] { (t.A, t.B), (t.B, t.C), (t.C, t.A) }).ToList();
        Assert.Equal(edges.Count, edges.Distinct().Count());
        Assert.Empty(edges.Select(edge => (edge.Item2, edge.Item1)).Except(edges));
        Assert.True(mesh.Volume > 0, "the mesh is inside out");
    }

    public static void Hold(Mesh mesh, int genus)
    {
        var edges = new HashSet<(int, int)>();
        foreach (var t in mesh.Triangles)
        {
            Assert.True(edges.Add((t.A, t.B)) && edges.Add((t.B, t.C)) && edges.Add((t.C, t.A)), "an edge is used twice in one sense");
        }

        Assert.True(edges.All(edge => edges.Contains((edge.Item2, edge.Item1))), "an edge has no twin: the mesh is open");
        Assert.Equal(mesh.Vertices.Length, edges.Select(edge => edge.Item1).Distinct().Count());
        Assert.True(mesh.Volume > 0, "the mesh is inside out");
        Assert.Equal(2 - (2 * genus), mesh.Vertices.Length - (edges.Count / 2) + mesh.Triangles.Length);
        var single = mesh.Vertices.Select(v => new Vector3((float)v.X, (float)v.Y, (float)v.Z)).ToList();
        Assert.Equal(single.Count, single.Distinct().Count());
        var lowest = mesh.Triangles.MinBy(t => Altitude(single[t.A], single[t.B], single[t.C]));
        var altitude = Altitude(single[lowest.A], single[lowest.B], single[lowest.C]);
        Assert.True(altitude >= LeastAltitude, $"a facet at {single[lowest.A]} is only {altitude} mm high");
    }

    private static double Altitude(Vector3 a, Vector3 b, Vector3 c)
    {
        var longest = Math.Max((b - a).Length, Math.Max((c - b).Length, (a - c).Length));
        return (b - a).Cross(c - a).Length / longest;
    }
}
