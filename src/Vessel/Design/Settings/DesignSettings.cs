using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>What is asked of a design file from outside, so that one file serves a family.</summary>
/// <param name="Variant">Which of the file's <c>variants</c> is meant; null for the file as it stands.</param>
/// <param name="With">Single values, each as <c>path=value</c>; they come after the variant, in their order.</param>
public sealed record DesignSettings(string? Variant, ImmutableArray<string> With)
{
    public static DesignSettings None { get; } = new(null, []);

    /// <summary>Text of the shop file; null for the usual shop.</summary>
    public string? Shop { get; init; }
}
