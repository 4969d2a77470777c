using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>The <c>variants</c> of a file: for each name the values that differ, by their paths.</summary>
internal static class Variants
{
    public const string Key = "variants";

    /// <summary>Variants by name, in the order of the file; what is not as it should be is reported and left out.</summary>
    public static ImmutableArray<Variant> Read(YamlMapping top, List<Fault> faults)
    {
        // Another kind of value is reported where the keys are read.
        if (top.Find(Key)?.Value is not YamlMapping variants)
            return [];
        if (variants.Entries.Length > Limits.Variants)
        {
            faults.Add(new(FaultCodes.TooManyItems, Key, "The file holds more variants than are taken.",
                $"{variants.Entries.Length}", $"{Limits.Variants}", "Split the family over several files."));
            return [];
        }

        faults.AddRange(OfOneFolder(variants));
        return [.. variants.Entries.Select(entry => One(entry, faults))];
    }

    /// <summary>Each is built into a folder of its own, which is named after it.</summary>
    private static IEnumerable<Fault> OfOneFolder(YamlMapping variants)
    {
        var taken = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var entry in variants.Entries)
        {
            var (path, folder) = ($"{Key}.{entry.Key}", Slug.OfFolder(entry.Key));
            if (folder.Length == 0)
            {
                yield return new(FaultCodes.NameWithoutLetters, path,
                    $"'{entry.Key}' has no letter or digit that a folder's name can take.",
                    entry.Key, null, "Use a name with a letter or digit.", entry.KeyAt);
            }
            else if (!taken.TryAdd(folder, entry.Key))
            {
                yield return new(FaultCodes.NameTwice, path,
                    $"'{entry.Key}' gives the folder name '{folder}', which is already that of '{taken[folder]}'.", entry.Key, null,
                    "Use a name that differs in its letters or digits.", entry.KeyAt);
            }
        }
    }

    /// <summary>The chosen one; null when none is asked for, or, with a fault added, none has that name.</summary>
    public static Variant? Chosen(ImmutableArray<Variant> all, string? name, List<Fault> faults)
    {
        if (name is null)
            return null;
        if (all.FirstOrDefault(v => v.Name == name) is { } chosen)
            return chosen;
        var names = all.Select(v => v.Name).ToList();
        faults.Add(new(FaultCodes.UnknownVariant, Key, $"The file has no variant '{name}'.", name, null,
            names.Count == 0 ? "Add it under 'variants', or ask for none."
            : Suggestion.Hint(name, names) ?? $"Its variants are {string.Join(", ", names)}."));
        return null;
    }

    private static Variant One(YamlEntry entry, List<Fault> faults)
    {
        var path = $"{Key}.{entry.Key}";
        if (entry.Value is not YamlMapping values)
        {
            faults.Add(Wrong(path, entry.Value.At, "paths with values", "as 'shell.height: 220'"));
            return new(entry.Key, entry.At, []);
        }

        var settings = ImmutableArray.CreateBuilder<Setting>();
        foreach (var value in values.Entries)
        {
            if (value.Value is YamlScalar scalar)
                settings.Add(new(value.Key, scalar, value.KeyAt));
            else
                faults.Add(Wrong($"{path}.{value.Key}", value.Value.At, "a single value", "one for each path"));
        }

        return new(entry.Key, entry.At, settings.ToImmutable());
    }

    private static Fault Wrong(string path, Span at, string wanted, string example) =>
        new(FaultCodes.WrongKind, path, $"This takes {wanted}.", null, null, $"Write {wanted}, {example}.", at);
}

/// <param name="At">The whole of it in the file.</param>
internal sealed record Variant(string Name, Span At, ImmutableArray<Setting> Settings);
