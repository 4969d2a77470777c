using System.Collections.Immutable;
using System.Globalization;

namespace Vessel.Design;

/// <summary>Where every path stands in the file.</summary>
internal static class Places
{
    /// <summary>
    /// A single value's place is the value. A mapping or list under a key runs from the key to its last character; an
    /// item of a list from its own first to its last. The empty path is the whole file.
    /// </summary>
    public static ImmutableDictionary<string, Span> Of(YamlMapping top)
    {
        var places = ImmutableDictionary.CreateBuilder<string, Span>(StringComparer.Ordinal);
        places.Add("", top.At);
        Add(top, "", places);
        return places.ToImmutable();
    }

    /// <summary>The place of the path, or of the nearest key above it that is in the file.</summary>
    public static Span? Nearest(this ImmutableDictionary<string, Span> places, string path)
    {
        while (true)
        {
            if (places.TryGetValue(path, out var span))
                return span;
            if (path.Length == 0)
                return null;
            path = path[..Math.Max(0, path.LastIndexOfAny(['.', '[']))];
        }
    }

    private static void Add(YamlNode node, string path, ImmutableDictionary<string, Span>.Builder places)
    {
        if (node is YamlMapping mapping)
        {
            foreach (var entry in mapping.Entries)
            {
                var inner = path.Length == 0 ? entry.Key : $"{path}.{entry.Key}";
                places[inner] = entry.Value is YamlScalar { Text.Length: > 0 } ? entry.Value.At : entry.At;
                Add(entry.Value, inner, places);
            }
        }

        if (node is YamlList list)
        {
            for (var i = 0; i < list.Items.Length; i++)
            {
                var inner = string.Create(CultureInfo.InvariantCulture, $"{path}[{i}]");
                places[inner] = list.Items[i].At;
                Add(list.Items[i], inner, places);
            }
        }
    }
}
