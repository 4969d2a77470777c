using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>How large a design file may be. Far beyond any vessel, and small enough that no file exhausts the machine.</summary>
public static class Limits
{
    public const int FileBytes = 1_000_000;

    public const int Nesting = 32;

    public const int Values = 20_000;

    public const int ListItems = 100;

    /// <summary>Each is read with the whole file, which takes some milliseconds.</summary>
    public const int Variants = 1000;

    /// <summary>
    /// Most holes of all patterns together. A laser takes half a second for each, so that these are a working day; solids and reports of so
    /// many take 550 MB of memory (measured with 50,000 in one disc).
    /// </summary>
    public const int Holes = 50_000;

    /// <summary>Most windows of one tube; more are a pattern.</summary>
    public const int Windows = 200;

    /// <summary>Longest text of any key or value, an expression or a reason among them, characters.</summary>
    public const int TextLength = 1000;

    /// <summary>Longest name, characters: it stands on drawings and in tables.</summary>
    public const int NameLength = 100;

    public const int ExpressionNesting = 64;

    public static ImmutableArray<Limit> All { get; } =
    [
        new("file", FileBytes, "bytes", FaultCodes.FileTooLarge),
        new("nesting of mappings and lists", Nesting, "levels", FaultCodes.NestingTooDeep),
        new("keys, values and items in a file", Values, "values", FaultCodes.TooManyValues),
        new("ports, or items of any other list", ListItems, "items", FaultCodes.TooManyItems),
        new("variants in a file", Variants, "variants", FaultCodes.TooManyItems),
        new("holes of all patterns together", Holes, "holes", FaultCodes.TooManyHoles),
        new("windows in one tube", Windows, "windows", FaultCodes.TooManyHoles),
        new("a key, a value or an expression", TextLength, "characters", FaultCodes.TextTooLong),
        new("a name", NameLength, "characters", FaultCodes.TextTooLong),
        new("parentheses in an expression", ExpressionNesting, "levels", FaultCodes.ExpressionTooDeep),
    ];
}

/// <param name="What">What is limited, in words.</param>
/// <param name="Most">The greatest number that is taken.</param>
/// <param name="Unit">What is counted.</param>
/// <param name="Code">The fault past it.</param>
public sealed record Limit(string What, int Most, string Unit, string Code);
