using System.Text.Json;

namespace Vessel.Export;

/// <summary>What the writers of small JSON of ours share.</summary>
internal static class JsonLists
{
    /// <summary>A list under a name, with an object for each item.</summary>
    public static void List<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
