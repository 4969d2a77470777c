using System.Collections.Immutable;
using System.Text.Json;

namespace Vessel.Export;

/// <summary>A file as it was written. <paramref name="Hash"/> is SHA-256 in lower-case hexadecimal.</summary>
internal sealed record ManifestEntry(string Path, long Size, string Hash);

/// <summary>The list of the files of a build, in order of their paths: what the tool may replace or remove.</summary>
internal sealed record Manifest(ImmutableArray<ManifestEntry> Files)
{
    public const string FileName = "manifest.json";

    private const int Schema = 1;

    public static Manifest Empty { get; } = new([]);

    public ManifestEntry? this[string path] => Files.FirstOrDefault(file => file.Path == path);

    /// <exception cref="OutputException">The text is not a manifest.</exception>
    public static Manifest Parse(ReadOnlyMemory<byte> text)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            if (document.RootElement.GetProperty("schema").GetInt32() != Schema)
                throw new FormatException("a schema that this version does not know");
            return new([.. document.RootElement.GetProperty("files").EnumerateArray().Select(Entry)]);
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            throw new OutputException($"{FileName} in the output folder is not one that this tool wrote: move it away", e);
        }
    }

    public void Write(Stream to)
    {
        using var json = new Utf8JsonWriter(to, new() { Indented = true, NewLine = "\n" });
        json.WriteStartObject();
        json.WriteNumber("schema", Schema);
        json.WriteStartArray("files");
        foreach (var file in Files)
        {
            json.WriteStartObject();
            json.WriteString("path", file.Path);
            json.WriteNumber("bytes", file.Size);
            json.WriteString("sha256", file.Hash);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static ManifestEntry Entry(JsonElement file) =>
        new(Text(file, "path"), file.GetProperty("bytes").GetInt64(), Text(file, "sha256"));

    private static string Text(JsonElement file, string name) =>
        file.GetProperty(name).GetString() ?? throw new FormatException($"{name} is missing");
}
