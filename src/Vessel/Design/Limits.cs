using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>How large a design file may be. Far beyond any vessel, and small enough that no file exhausts the machine.</summary>
public static class Limits
{
    public const int FileBytes = 1_000_000;

    public const int Nesting = 32;

    public const int Values = 20_000;

    public const int ListItems = 100;

    public const int Variants = 50;

    /// <summary>More would only fill files.</summary>
    public const int Holes = 200_000;

    /// <summary>Of one tube; more are a pattern.</summary>
    public const int Windows = 200;

    public const int ExpressionLength = 1000;

    public const int ExpressionNesting = 64;

    public static ImmutableArray<Limit> All { get; } =
    [
        new("file", FileBytes, "bytes", FaultCodes.FileTooLarge),
        new("nesting of mappings and lists", Nesting, "levels", FaultCodes.NestingTooDeep),
        new("keys, values and items in a file", Values, "values", FaultCodes.TooManyValues),
        new("ports, or items of any other list", ListItems, "items", FaultCodes.TooManyItems),
        new("variants in a file", Variants, "variants", FaultCodes.TooManyItems),
        new("holes of a pattern", Holes, "holes", FaultCodes.TooManyHoles),
        new("windows in one tube", Windows, "windows", FaultCodes.TooManyHoles),
        new("one expression", ExpressionLength, "characters", FaultCodes.ExpressionTooDeep),
        new("parentheses in an expression", ExpressionNesting, "levels", FaultCodes.ExpressionTooDeep),
    ];
}

/// <param name="What">What is limited, in words.</param>
/// <param name="Most">The greatest number that is taken.</param>
/// <param name="Unit">What is counted.</param>
/// <param name="Code">The fault past it.</param>
public sealed record Limit(string What, int Most, string Unit, string Code);
