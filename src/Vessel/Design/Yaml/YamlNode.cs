using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>A value in the file with its place. A closed set: scalar, mapping, list.</summary>
internal abstract record YamlNode(Span At);

/// <param name="Text">Text as the YAML standard reads it; never interpreted as a number or truth value.</param>
/// <param name="TextColumn">Column of the text's first character when the text stands in the file letter by letter on
/// one line, so that a place within it can be named; else null.</param>
internal sealed record YamlScalar(string Text, bool IsQuoted, int? TextColumn, Span At) : YamlNode(At)
{
    /// <summary>Nothing at all, or one of YAML's words for it.</summary>
    public bool IsNothing => !IsQuoted && Text is ("" or "~" or "null" or "Null" or "NULL");
}

internal sealed record YamlMapping(ImmutableArray<YamlEntry> Entries, Span At) : YamlNode(At)
{
    public YamlEntry? Find(string key) => Entries.FirstOrDefault(e => e.Key == key);
}

internal sealed record YamlList(ImmutableArray<YamlNode> Items, Span At) : YamlNode(At);

internal sealed record YamlEntry(string Key, Span KeyAt, YamlNode Value)
{
    /// <summary>Place in the text from the key to the end of its value.</summary>
    public Span At => KeyAt with { EndLine = Value.At.EndLine, EndColumn = Value.At.EndColumn };
}
