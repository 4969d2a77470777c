using Vessel.Design;

namespace Vessel.Members.Packings;

/// <summary>The keys of a packing.</summary>
internal static class PackingKeys
{
    public static KeyMap Packing { get; } = new("a packing",
    [
        InsideKeys.Name("packing"),
        new("material", KeyKind.Text, "As it is bought: 'stainless wool'") { IsRequired = true },
        new("between", KeyKind.Texts, "Names of the disc below and the disc above")
        {
            IsRequired = true, Items = new(1, 2),
        },
        new("density", KeyKind.Density, "Of the packing as stuffed") { IsRequired = true, Range = new(1, 5000) },
        new("fibre_diameter", KeyKind.Length, "Of one fibre") { DefaultRule = "not known", Range = new(0.001, 5) },
    ]);
}
