using System.Buffers.Binary;
using System.Text;
using Vessel.Geometry;

namespace Vessel.Export.Stl;

/// <summary>Binary STL, millimetres: 84 bytes and 50 for each triangle, little-endian.</summary>
public static class StlWriter
{
    private const int HeaderLength = 80;
    private const int RecordLength = 50;

    /// <param name="title">Stands in the header, as far as it fits; letters beyond ASCII become question marks.</param>
    public static void Write(Mesh mesh, string title, Stream to) => Write([(mesh, Frame3.Identity)], title, to);

    /// <summary>Several meshes, each put where its frame says.</summary>
    public static void Write(IReadOnlyCollection<(Mesh Mesh, Frame3 Placement)> pieces, string title, Stream to)
    {
        Span<byte> head = stackalloc byte[HeaderLength + 4];
        head[..HeaderLength].Fill((byte)' ');

        // A header that starts with "solid" would pass for the text form.
        var text = Encoding.ASCII.GetBytes($"Binary STL, mm: {title}");
        text.AsSpan(0, Math.Min(text.Length, HeaderLength)).CopyTo(head);
        BinaryPrimitives.WriteInt32LittleEndian(head[HeaderLength..], pieces.Sum(piece => piece.Mesh.Triangles.Length));
        to.Write(head);
        foreach (var (mesh, placement) in pieces)
            WriteTriangles(mesh, placement, to);
    }

    private static void WriteTriangles(Mesh mesh, Frame3 placement, Stream to)
    {
        // Rounded once by index: neighbours share bits, so the mesh stays closed.
        var vertices = mesh.Vertices.Select(vertex => Rounded(placement.ToOuter(vertex))).ToArray();
        Span<byte> record = stackalloc byte[RecordLength];
        record.Clear();
        foreach (var (a, b, c) in mesh.Triangles)
        {
            Put(record, 0, Normal(vertices[a], vertices[b], vertices[c]));
            Put(record, 12, vertices[a]);
            Put(record, 24, vertices[b]);
            Put(record, 36, vertices[c]);
            to.Write(record);
        }
    }

    // Adding zero turns -0 into 0.
    private static Vector3 Rounded(Vector3 v) => new((float)v.X + 0.0, (float)v.Y + 0.0, (float)v.Z + 0.0);

    // Zero for a triangle that rounding has flattened; readers then work it out themselves.
    private static Vector3 Normal(Vector3 a, Vector3 b, Vector3 c)
    {
        var normal = (b - a).Cross(c - a);
        return normal.Length == 0 ? Vector3.Zero : Rounded(normal.Unit());
    }

    private static void Put(Span<byte> record, int at, Vector3 v)
    {
        BinaryPrimitives.WriteSingleLittleEndian(record[at..], (float)v.X);
        BinaryPrimitives.WriteSingleLittleEndian(record[(at + 4)..], (float)v.Y);
        BinaryPrimitives.WriteSingleLittleEndian(record[(at + 8)..], (float)v.Z);
    }
}
