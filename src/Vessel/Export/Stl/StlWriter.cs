using System.Buffers.Binary;
using System.Text;
using Vessel.Geometry;

namespace Vessel.Export.Stl;

/// <summary>Binary STL, millimetres: 84 bytes and 50 for each triangle, little-endian.</summary>
public static class StlWriter
{
    private const int HeaderLength = 80;
    private const int RecordLength = 50;

    /// <summary>Records that go to the stream together.</summary>
    private const int ChunkLength = 1024;

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
        // The same vertex comes out in the same bits wherever it is used, so the mesh stays closed.
        var placed = new Single3[mesh.Vertices.Length];
        for (var i = 0; i < placed.Length; i++)
            placed[i] = Single3.Of(placement.ToOuter(mesh.Vertices[i]));

        // The two bytes that end a record stay zero.
        var chunk = new byte[ChunkLength * RecordLength];
        var filled = 0;
        foreach (var triangle in mesh.Triangles)
        {
            var record = chunk.AsSpan(filled, RecordLength);
            var (a, b, c) = (placed[triangle.A], placed[triangle.B], placed[triangle.C]);
            Put(record, 0, Normal(a.Wide, b.Wide, c.Wide));
            Put(record, 12, a);
            Put(record, 24, b);
            Put(record, 36, c);
            filled += RecordLength;
            if (filled < chunk.Length)
                continue;
            to.Write(chunk);
            filled = 0;
        }

        to.Write(chunk, 0, filled);
    }

    // Zero for a triangle that rounding has flattened; readers then work it out themselves.
    private static Single3 Normal(Vector3 a, Vector3 b, Vector3 c)
    {
        var normal = (b - a).Cross(c - a);
        return normal.Length == 0 ? default : Single3.Of(normal.Unit());
    }

    private static void Put(Span<byte> record, int at, Single3 v)
    {
        BinaryPrimitives.WriteSingleLittleEndian(record[at..], v.X);
        BinaryPrimitives.WriteSingleLittleEndian(record[(at + 4)..], v.Y);
        BinaryPrimitives.WriteSingleLittleEndian(record[(at + 8)..], v.Z);
    }

    private readonly record struct Single3(float X, float Y, float Z)
    {
        public Vector3 Wide => new(X, Y, Z);

        // Adding zero turns -0 into 0.
        public static Single3 Of(Vector3 v) => new((float)v.X + 0f, (float)v.Y + 0f, (float)v.Z + 0f);
    }
}
