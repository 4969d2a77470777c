using System.Collections.Immutable;
using System.Text.Json;

namespace Vessel.Export;

/// <summary>A move of one file within the output folder.</summary>
internal sealed record Move(string From, string To);

/// <summary>
/// What is to be done to the folder once everything is staged. Each step may be done again, so that a run that was
/// killed is finished by the next one. Paths are relative to the folder.
/// </summary>
/// <param name="SetAside">Files of the user that make room; never over another file.</param>
/// <param name="Remove">Files of an older build.</param>
/// <param name="Place">Staged files to their places, the manifest last.</param>
internal sealed record Journal(ImmutableArray<Move> SetAside, ImmutableArray<string> Remove, ImmutableArray<Move> Place)
{
    public static Journal Parse(ReadOnlyMemory<byte> text)
    {
        try
        {
            using var document = JsonDocument.Parse(text);
            var root = document.RootElement;
            return new(
                Moves(root.GetProperty("aside")),
                [.. root.GetProperty("remove").EnumerateArray().Select(Text)],
                Moves(root.GetProperty("place")));
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            throw new OutputException("the journal of an earlier run in the output folder cannot be read", e);
        }
    }

    public void Write(Stream to)
    {
        using var json = new Utf8JsonWriter(to);
        json.WriteStartObject();
        WriteMoves(json, "aside", SetAside);
        json.WriteStartArray("remove");
        foreach (var path in Remove)
            json.WriteStringValue(path);
        json.WriteEndArray();
        WriteMoves(json, "place", Place);
        json.WriteEndObject();
    }

    /// <param name="folder">The output folder.</param>
    /// <param name="before">Called with a path before each change.</param>
    public void Apply(string folder, Action<string> before)
    {
        foreach (var move in SetAside.Where(move => File.Exists(In(move.From)) && !File.Exists(In(move.To))))
        {
            before(move.From);
            File.Move(In(move.From), In(move.To));
        }

        foreach (var path in Remove.Where(path => File.Exists(In(path))))
        {
            before(path);
            File.Delete(In(path));
            RemoveIfEmpty(folder, path);
        }

        foreach (var move in Place.Where(move => File.Exists(In(move.From))))
        {
            before(move.To);
            Directory.CreateDirectory(Path.GetDirectoryName(In(move.To))!);
            File.Move(In(move.From), In(move.To), overwrite: true);
        }

        // A staged file is the writer's own; any other path must keep inside the folder, whatever the journal says.
        string In(string path) => path.StartsWith(Staging.Name, StringComparison.Ordinal)
            ? OutputPath.Resolve(Path.Combine(folder, Staging.Name), path[(Staging.Name.Length + 1)..])
            : OutputPath.Resolve(folder, path);
    }

    private static void RemoveIfEmpty(string folder, string path)
    {
        for (var at = Path.GetDirectoryName(path); !string.IsNullOrEmpty(at); at = Path.GetDirectoryName(at))
        {
            var directory = Path.Combine(folder, at);
            if (Directory.EnumerateFileSystemEntries(directory).Any())
                return;
            Directory.Delete(directory);
        }
    }

    private static ImmutableArray<Move> Moves(JsonElement list) =>
        [.. list.EnumerateArray().Select(move => new Move(Text(move[0]), Text(move[1])))];

    private static string Text(JsonElement text) => text.GetString() ?? throw new FormatException("a path is missing");

    private static void WriteMoves(Utf8JsonWriter json, string name, ImmutableArray<Move> moves)
    {
        json.WriteStartArray(name);
        foreach (var move in moves)
        {
            json.WriteStartArray();
            json.WriteStringValue(move.From);
            json.WriteStringValue(move.To);
            json.WriteEndArray();
        }

        json.WriteEndArray();
    }
}
