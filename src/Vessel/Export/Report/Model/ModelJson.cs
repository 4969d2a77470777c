using System.Text;
using System.Text.Json;
using Vessel.Export.Solids;
using Vessel.Geometry;

namespace Vessel.Export.Report.Model;

/// <summary>The model for the page's script: JSON in which nothing can end the element that it stands in.</summary>
internal static class ModelJson
{
    public static string Of(ShownModel model)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            var (meshes, uses) = Distinct(model);
            json.List("meshes", meshes, mesh => WriteMesh(json, MeshCode.Of(mesh)));
            json.List("pieces", model.Pieces, piece => WritePiece(json, model, piece, uses[piece.Part]));
            json.List("seams", model.Seams, seam => WriteSeam(json, model, seam));
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>Equal parts of different names share their facets.</summary>
    private static (List<Mesh> Meshes, int[] Uses) Distinct(ShownModel model)
    {
        var (meshes, uses) = (new List<Mesh>(), new int[model.Meshes.Length]);
        for (var i = 0; i < uses.Length; i++)
        {
            var mesh = model.Meshes[i];
            uses[i] = meshes.FindIndex(other => other.Triangles.Length == mesh.Triangles.Length
                && other.Triangles.AsSpan().SequenceEqual(mesh.Triangles.AsSpan())
                && other.Vertices.AsSpan().SequenceEqual(mesh.Vertices.AsSpan()));
            if (uses[i] >= 0)
                continue;
            uses[i] = meshes.Count;
            meshes.Add(mesh);
        }

        return (meshes, uses);
    }

    private static void WriteMesh(Utf8JsonWriter json, MeshCode code)
    {
        Numbers(json, "origin", [code.Origin], 4);
        json.WriteNumber("step", code.Step);
        json.WriteNumber("vertices", code.Vertices);
        json.WriteNumber("triangles", code.Triangles);
        json.WritePropertyName("data");
        // Base64 needs no escape, and the writer would give plus signs one.
        json.WriteRawValue($"\"{code.Data}\"");
    }

    private static void WritePiece(Utf8JsonWriter json, ShownModel model, Piece piece, int mesh)
    {
        json.WriteString("part", model.Parts[piece.Part].Part.Id);
        json.WriteString("name", piece.Name);
        json.WriteNumber("mesh", mesh);
        json.WriteString("tint", Tints.Of(piece.Part).Hex);
        Numbers(json, "place", [piece.Place.X, piece.Place.Y, piece.Place.Z, piece.Place.Origin], 6);
        Numbers(json, "move", [piece.Move], 1);
        Numbers(json, "box", [piece.Low, piece.High], 2);
    }

    private static void WriteSeam(Utf8JsonWriter json, ShownModel model, SeamLines seam)
    {
        json.WriteString("number", seam.Joint.Number);
        json.WriteString("name", seam.Joint.Name);
        // It goes along with the attached part when the vessel is pulled apart.
        json.WriteString("part", model.Parts.Any(built => built.Part.Id == seam.Joint.Between[1]) ? seam.Joint.Between[1] : null);
        json.WriteStartArray("lines");
        foreach (var line in seam.Lines)
            Numbers(json, null, line, 2);
        json.WriteEndArray();
    }

    private static void Numbers(Utf8JsonWriter json, string? name, IEnumerable<Vector3> vectors, int digits)
    {
        if (name is null)
            json.WriteStartArray();
        else
            json.WriteStartArray(name);
        foreach (var v in vectors)
        {
            json.WriteRawValue(Export.Numbers.Text(v.X, digits));
            json.WriteRawValue(Export.Numbers.Text(v.Y, digits));
            json.WriteRawValue(Export.Numbers.Text(v.Z, digits));
        }

        json.WriteEndArray();
    }
}
