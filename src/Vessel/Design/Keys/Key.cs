using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>One key of the file.</summary>
/// <param name="Description">One line for the user and the schema.</param>
public sealed record Key(string Name, KeyKind Kind, string Description)
{
    public bool IsRequired { get; init; }

    /// <summary>Written as a user would write it, with its unit; read by the same grammar.</summary>
    public string? Default { get; init; }

    /// <summary>The default in words, where it depends on other keys.</summary>
    public string? DefaultRule { get; init; }

    /// <summary>The default by which other key is given, where that decides.</summary>
    public ImmutableArray<KeyDefault> DefaultWhen { get; init; } = [];

    /// <summary>When the key means something; else it must not be given.</summary>
    public KeyCondition? AppliesWhen { get; init; }

    /// <summary>Where the default comes from, of figures that are facts or habits rather than choices.</summary>
    public string? Source { get; init; }

    /// <summary>
    /// When the size is the wall of a tube, so that a gauge is read from the tube's table: always where the condition has no value. What
    /// decides is read before it.
    /// </summary>
    public KeyCondition? TubeWhen { get; init; }

    public KeyRange? Range { get; init; }

    /// <summary>How long a text may be, characters.</summary>
    public int Longest { get; init; } = Limits.NameLength;

    /// <summary>How many items a list may have, where there is a limit.</summary>
    public KeyRange? Items { get; init; }

    public ImmutableArray<string> Choices { get; init; } = [];

    /// <summary>Choices that users ask for and the tool does not support.</summary>
    public ImmutableArray<string> NotBuiltYet { get; init; } = [];

    /// <summary>Keys of a mapping or of each item of a list.</summary>
    public KeyMap? Map { get; init; }

    /// <summary>Keys of a mapping that depend on another key's choice.</summary>
    public KeySwitch? Switch { get; init; }
}

/// <summary>Both ends included; in mm, degrees, L/min, kg/m3, degrees Celsius or plain numbers.</summary>
public readonly record struct KeyRange(double Low, double High);

/// <summary>A default that holds when the key beside it named <paramref name="Given"/> is given.</summary>
public sealed record KeyDefault(string Given, string Value);

/// <summary>The key beside it has that value, or is merely given where <paramref name="Value"/> is null.</summary>
public sealed record KeyCondition(string Key, string? Value);

/// <summary>The keys of a mapping.</summary>
/// <param name="Name">Name in words, for messages: <c>a port in the shell</c>.</param>
public sealed record KeyMap(string Name, ImmutableArray<Key> Keys)
{
    /// <summary>Groups of keys of which exactly one must be given.</summary>
    public ImmutableArray<ImmutableArray<string>> OneOf { get; init; } = [];

    /// <summary>Groups of keys of which one may be given, or none.</summary>
    public ImmutableArray<ImmutableArray<string>> AtMostOneOf { get; init; } = [];

    /// <summary>Keys that stand for something that is not supported, and what that is; null for none.</summary>
    public (ImmutableArray<string> Keys, string What)? NotBuiltYet { get; init; }

    /// <summary>A mapping with these keys that is left out is as one without keys: every key has a default.</summary>
    public bool MayBeEmpty { get; init; }

    public Key? Find(string name) => Keys.FirstOrDefault(k => k.Name == name);
}

/// <summary>Chooses the keys of a mapping by the value of another key.</summary>
/// <param name="By">Name of that key.</param>
/// <param name="IsBeside">It stands beside the mapping rather than in it.</param>
/// <param name="Maps">Maps of keys by the value of that key.</param>
public sealed record KeySwitch(string By, bool IsBeside, ImmutableDictionary<string, KeyMap> Maps);
