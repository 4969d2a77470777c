using Vessel.Export.Solids;
using Vessel.Geometry;

namespace Vessel.Export.Report.Model;

/// <summary>
/// A mesh in few letters: whole steps of a grid, each vertex told from the last one, each triangle by its first corner from the
/// last one's and its other two from that; numbers as in LEB128, signs folded in, the whole in base64.
/// </summary>
internal sealed record MeshCode(Vector3 Origin, double Step, int Vertices, int Triangles, string Data)
{
    /// <summary>Steps along the longest side of the mesh: finer than any screen.</summary>
    private const int Steps = 8192;

    public static MeshCode Of(Mesh mesh)
    {
        var (low, high) = Extent.Of(mesh.Vertices);
        var size = high - low;
        var step = Math.Max(Math.Max(size.X, size.Y), Math.Max(size.Z, 1e-6)) / Steps;
        var bytes = new List<byte>((mesh.Vertices.Length * 5) + (mesh.Triangles.Length * 4));
        var (x, y, z) = (0, 0, 0);
        foreach (var vertex in mesh.Vertices)
        {
            var v = (1 / step) * (vertex - low);
            var (nextX, nextY, nextZ) = ((int)Math.Round(v.X), (int)Math.Round(v.Y), (int)Math.Round(v.Z));
            Put(bytes, nextX - x);
            Put(bytes, nextY - y);
            Put(bytes, nextZ - z);
            (x, y, z) = (nextX, nextY, nextZ);
        }

        var last = 0;
        foreach (var triangle in mesh.Triangles)
        {
            Put(bytes, triangle.A - last);
            Put(bytes, triangle.B - triangle.A);
            Put(bytes, triangle.C - triangle.A);
            last = triangle.A;
        }

        return new(low, step, mesh.Vertices.Length, mesh.Triangles.Length, Convert.ToBase64String([.. bytes]));
    }

    private static void Put(List<byte> bytes, int value)
    {
        var rest = (uint)((value << 1) ^ (value >> 31));
        for (; rest >= 0x80; rest >>= 7)
            bytes.Add((byte)(rest | 0x80));
        bytes.Add((byte)rest);
    }
}
