using System.Buffers.Binary;
using System.Text.Json;
using Vessel.Geometry;

namespace Vessel.Export.Solids;

/// <summary>
/// GLB (Khronos Group, "glTF 2.0 Specification"): metres, Y up; a node for each place of each body, its mesh, and
/// a material for each metal. No normals: viewers then shade each facet flat, as it is.
/// </summary>
/// <remarks>The vessel's up is glTF's Y, its front X stays X, so (x, y, z) mm becomes (x, z, -y) / 1000.</remarks>
public static class GlbWriter
{
    private const double Metre = 1000;

    // Named in the specification, in little-endian bytes: 'glTF', 'JSON', 'BIN'.
    private const uint Magic = 0x46546C67;
    private const uint JsonChunk = 0x4E4F534A;
    private const uint BinaryChunk = 0x004E4942;

    // OpenGL's numbers for component types and buffer targets.
    private const int Float = 5126;
    private const int UnsignedInt = 5125;
    private const int ArrayBuffer = 34962;
    private const int ElementArrayBuffer = 34963;

    private const int VertexLength = 12;
    private const int TriangleLength = 12;

    public static void Write(IReadOnlyList<PlacedSolid> bodies, string title, Stream to)
    {
        var binary = bodies.Sum(body => VerticesLength(body) + TrianglesLength(body));
        var json = Json(bodies, title, binary);
        Span<byte> head = stackalloc byte[20];
        BinaryPrimitives.WriteUInt32LittleEndian(head, Magic);
        BinaryPrimitives.WriteUInt32LittleEndian(head[4..], 2);
        BinaryPrimitives.WriteUInt32LittleEndian(head[8..], checked((uint)(28 + json.Length + binary)));
        BinaryPrimitives.WriteUInt32LittleEndian(head[12..], (uint)json.Length);
        BinaryPrimitives.WriteUInt32LittleEndian(head[16..], JsonChunk);
        to.Write(head);
        to.Write(json);
        BinaryPrimitives.WriteUInt32LittleEndian(head, (uint)binary);
        BinaryPrimitives.WriteUInt32LittleEndian(head[4..], BinaryChunk);
        to.Write(head[..8]);
        foreach (var body in bodies)
            WriteMesh(body.Mesh, to);
    }

    private static long VerticesLength(PlacedSolid body) => (long)VertexLength * body.Mesh.Vertices.Length;

    private static long TrianglesLength(PlacedSolid body) => (long)TriangleLength * body.Mesh.Triangles.Length;

    private static Vector3 Turned(Vector3 v) => new(v.X, v.Z, -v.Y);

    /// <summary>A vertex as it stands in the file.</summary>
    private static Vector3 Stored(Vector3 v)
    {
        var (x, y, z) = Turned((1 / Metre) * v);
        // Adding zero turns -0 into 0.
        return new((float)x + 0.0, (float)y + 0.0, (float)z + 0.0);
    }

    private static byte[] Json(IReadOnlyList<PlacedSolid> bodies, string title, long binary)
    {
        var materials = bodies.Select(body => (body.Material, body.Colour)).Distinct().ToList();
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteStartObject("asset");
            json.WriteString("version", "2.0");
            json.WriteEndObject();
            json.WriteNumber("scene", 0);
            WriteNodes(json, bodies, title);
            json.List("materials", materials, material => WriteMaterial(json, material.Material, material.Colour));
            json.List("meshes", bodies.Select((body, i) => (body, i)), mesh => WriteMeshEntry(
                json, mesh.body.Name, mesh.i, materials.IndexOf((mesh.body.Material, mesh.body.Colour))));
            WriteBuffers(json, bodies, binary);
            json.WriteEndObject();
        }

        // Chunks end on four bytes; JSON is filled up with spaces.
        while (stream.Length % 4 != 0)
            stream.WriteByte((byte)' ');
        return stream.ToArray();
    }

    private static void WriteNodes(Utf8JsonWriter json, IReadOnlyList<PlacedSolid> bodies, string title)
    {
        var places = bodies.SelectMany((body, mesh) => body.Placements.Select((frame, number) => (
            Mesh: mesh, Frame: frame, Name: body.Placements.Length == 1 ? body.Name : $"{body.Name} {number + 1}"))).ToList();
        json.List("scenes", [title], name =>
        {
            json.WriteString("name", name);
            Plain(json, "nodes", [.. Enumerable.Range(0, places.Count).Select(i => (double)i)]);
        });
        json.List("nodes", places, place =>
        {
            json.WriteString("name", place.Name);
            json.WriteNumber("mesh", place.Mesh);
            if (place.Frame == Frame3.Identity)
                return;
            var (f, o) = (place.Frame, Turned((1 / Metre) * place.Frame.Origin));
            // By columns. The frame's axes as the file sees them: its Y is our Z, its Z our -Y.
            var (x, y, z) = (Turned(f.X), Turned(f.Z), -Turned(f.Y));
            Plain(json, "matrix", x.X, x.Y, x.Z, 0, y.X, y.Y, y.Z, 0, z.X, z.Y, z.Z, 0, o.X, o.Y, o.Z, 1);
        });
    }

    private static void WriteMaterial(Utf8JsonWriter json, string name, Colour colour)
    {
        json.WriteString("name", name);
        json.WriteStartObject("pbrMetallicRoughness");
        Plain(json, "baseColorFactor", [.. colour.Linear, 1]);
        json.WriteNumber("metallicFactor", 0.3);
        json.WriteNumber("roughnessFactor", 0.6);
        json.WriteEndObject();
    }

    private static void WriteMeshEntry(Utf8JsonWriter json, string name, int index, int material)
    {
        json.WriteString("name", name);
        json.List("primitives", [index], i =>
        {
            json.WriteStartObject("attributes");
            json.WriteNumber("POSITION", 2 * i);
            json.WriteEndObject();
            json.WriteNumber("indices", (2 * i) + 1);
            json.WriteNumber("material", material);
        });
    }

    private static void WriteBuffers(Utf8JsonWriter json, IReadOnlyList<PlacedSolid> bodies, long binary)
    {
        var offset = 0L;
        json.List("bufferViews", bodies
            .SelectMany(body => new[] { (VerticesLength(body), ArrayBuffer), (TrianglesLength(body), ElementArrayBuffer) }), view =>
        {
            json.WriteNumber("buffer", 0);
            json.WriteNumber("byteOffset", offset);
            json.WriteNumber("byteLength", view.Item1);
            json.WriteNumber("target", view.Item2);
            offset += view.Item1;
        });
        json.List("accessors", bodies.SelectMany((body, i) => new[] { (body.Mesh, View: 2 * i), (body.Mesh, View: (2 * i) + 1) }),
            accessor =>
        {
            var vertices = accessor.View % 2 == 0;
            json.WriteNumber("bufferView", accessor.View);
            json.WriteNumber("componentType", vertices ? Float : UnsignedInt);
            json.WriteNumber("count", vertices ? accessor.Mesh.Vertices.Length : 3 * accessor.Mesh.Triangles.Length);
            json.WriteString("type", vertices ? "VEC3" : "SCALAR");
            if (vertices)
                WriteBox(json, accessor.Mesh);
        });
        json.List("buffers", [binary], length => json.WriteNumber("byteLength", length));
    }

    private static void WriteBox(Utf8JsonWriter json, Mesh mesh)
    {
        var (low, high) = Extent.Of(mesh.Vertices.Select(Stored));
        Plain(json, "min", low.X, low.Y, low.Z);
        Plain(json, "max", high.X, high.Y, high.Z);
    }

    private static void Plain(Utf8JsonWriter json, string name, params double[] numbers)
    {
        json.WriteStartArray(name);
        foreach (var number in numbers)
            json.WriteNumberValue(number + 0.0);
        json.WriteEndArray();
    }

    private static void WriteMesh(Mesh mesh, Stream to)
    {
        var chunk = new byte[VertexLength * 4096];
        var filled = 0;
        void Room()
        {
            if (filled < chunk.Length)
                return;
            to.Write(chunk);
            filled = 0;
        }

        foreach (var vertex in mesh.Vertices)
        {
            Room();
            var v = Stored(vertex);
            BinaryPrimitives.WriteSingleLittleEndian(chunk.AsSpan(filled), (float)v.X);
            BinaryPrimitives.WriteSingleLittleEndian(chunk.AsSpan(filled + 4), (float)v.Y);
            BinaryPrimitives.WriteSingleLittleEndian(chunk.AsSpan(filled + 8), (float)v.Z);
            filled += VertexLength;
        }

        foreach (var triangle in mesh.Triangles)
        {
            Room();
            BinaryPrimitives.WriteInt32LittleEndian(chunk.AsSpan(filled), triangle.A);
            BinaryPrimitives.WriteInt32LittleEndian(chunk.AsSpan(filled + 4), triangle.B);
            BinaryPrimitives.WriteInt32LittleEndian(chunk.AsSpan(filled + 8), triangle.C);
            filled += TriangleLength;
        }

        to.Write(chunk, 0, filled);
    }
}
