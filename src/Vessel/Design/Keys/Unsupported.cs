using System.Collections.Immutable;

namespace Vessel.Design;

/// <summary>What users ask for that no key stands for: it is said plainly, instead of guessing at a spelling.</summary>
internal static class Unsupported
{
    private static readonly ImmutableArray<(ImmutableArray<string> Words, string Says)> _all =
    [
        (["square", "rectangular", "rectangle", "oval", "elliptical", "hexagonal"],
            "Square, rectangular and oval vessels are not supported: shells, tubes and heads are round here."),
        (["bolted", "clamped", "hinged", "hinge", "removable", "gasket", "hatch", "manhole"],
            "An end that comes off (bolted, clamped or hinged) is not supported: both ends are welded here."),
        (["horizontal", "lying", "orientation"], "A vessel that lies on its side is not supported: its axis stands upright here."),
        (["pressure_rating", "rated", "rating", "mawp", "design_pressure", "working_pressure"],
            "A vessel for pressure is not supported: vessels are vented here, and nothing rates them for pressure."),
        (["baffle", "baffles", "partition", "partitions", "divider"],
            "Flat baffles are not supported; 'inside' takes sleeves, caps, discs and packings."),
        (["legs", "leg"], "Legs are not supported; 'bracket' and 'strap' hold a vessel."),
        (["coil", "jacket", "heater"], "Coils, jackets and heaters are not supported."),
    ];

    /// <summary>Null for a word that stands for none of it.</summary>
    /// <param name="key">Key of the file.</param>
    /// <param name="value">Behind it, where it is a single one.</param>
    public static string? Says(string key, string? value)
    {
        var words = $"{key} {value}".ToLowerInvariant().Split([' ', '-', ',', ':'], StringSplitOptions.RemoveEmptyEntries);
        return _all.FirstOrDefault(one => words.Any(word => one.Words.Contains(word))).Says;
    }
}
