using System.Collections.Immutable;
using System.Text.RegularExpressions;

namespace Vessel.Stock;

/// <summary>The metals that a design may name.</summary>
public static partial class Materials
{
    public static ImmutableArray<Material> All { get; } =
    [
        new("aluminium 6061", MaterialFamily.Aluminium, 2.70, Fillers.Er4043,
            "density 2.70 g/cm3: Callister, Materials Science and Engineering, App. B"),
        new("aluminium 5052", MaterialFamily.Aluminium, 2.68, Fillers.Er5356, "density 2.68 g/cm3, not checked against the source"),
        new("aluminium 3003", MaterialFamily.Aluminium, 2.73, Fillers.Er4043, "density 2.73 g/cm3, not checked against the source"),
        new("aluminium 5083", MaterialFamily.Aluminium, 2.66, Fillers.Er5356, "density 2.66 g/cm3, not checked against the source"),
        new("aluminium 5754", MaterialFamily.Aluminium, 2.67, Fillers.Er5356, "density 2.67 g/cm3, not checked against the source"),
        new("aluminium 6082", MaterialFamily.Aluminium, 2.70, Fillers.Er4043, "density 2.70 g/cm3, not checked against the source"),
        new("aluminium 1050", MaterialFamily.Aluminium, 2.71, Fillers.Er4043, "density 2.71 g/cm3, not checked against the source"),
        new("stainless 304", MaterialFamily.Stainless, 7.93, Fillers.Er308L,
            "density 7.93 g/cm3: inside the 7.86 to 8.00 of Callister, App. B"),
        new("stainless 316", MaterialFamily.Stainless, 7.98, Fillers.Er316L, "density 7.98 g/cm3, not checked against the source"),
        new("mild steel", MaterialFamily.MildSteel, 7.85, Fillers.Er70S2,
            "density 7.85 g/cm3: common practice for structural steel"),
        new("steel S235", MaterialFamily.MildSteel, 7.85, Fillers.Er70S2, "density 7.85 g/cm3: EN 1993-1-1, 3.2.6, not checked against the source"),
    ];

    /// <summary>Numbers of EN 10088 and EN 10025 for metals that have another name here; S235 in any quality.</summary>
    private static readonly (string Number, string Name)[] _numbers =
    [
        ("1.4301", "stainless 304"), ("1.4307", "stainless 304L"), ("1.4306", "stainless 304L"), ("1.4401", "stainless 316"), ("1.4404", "stainless 316L"),
        ("1.0038", "steel S235"), ("s235jr", "steel S235"), ("s235j2", "steel S235"), ("s235", "steel S235"),
    ];

    /// <summary>
    /// The material of that name, or null. Case and spacing do not matter, "aluminum" is "aluminium", and a temper or
    /// an L may follow an alloy: <c>aluminium 6061-T6</c>, <c>stainless 316L</c>; it is kept in the name. A number as <c>1.4404</c> is the
    /// grade's own name.
    /// </summary>
    public static Material? Find(string name)
    {
        var plainly = Spaces().Replace(name.Trim().ToLowerInvariant(), " ");
        var match = Written().Match(_numbers.FirstOrDefault(known => known.Number == plainly).Name?.ToLowerInvariant() ?? plainly);
        if (!match.Success)
            return null;
        var family = match.Groups["family"].Value switch
        {
            "aluminum" => "aluminium",
            "stainless steel" => "stainless",
            var other => other,
        };
        var alloy = match.Groups["alloy"].Value;
        var plain = alloy.Length == 0 ? family : $"{family} {alloy}";
        var suffix = match.Groups["temper"].Value.ToUpperInvariant();
        return All.FirstOrDefault(m => m.Name.Equals(plain, StringComparison.OrdinalIgnoreCase)) is { } found && SuffixFits(found, suffix)
            ? found with { Name = found.Name + suffix }
            : null;
    }

    private static bool SuffixFits(Material material, string suffix) => suffix.Length == 0 || (material.Family switch
    {
        MaterialFamily.Aluminium => suffix[0] == '-',
        MaterialFamily.Stainless => suffix == "L",
        _ => false,
    });

    [GeneratedRegex(
        @"^(?<family>aluminium|aluminum|stainless( steel)?|mild steel|steel)( (?<alloy>s?\d+)(?<temper>-[oht]\d*|l)?)?$")]
    private static partial Regex Written();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
