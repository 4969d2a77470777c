using System.Collections.Immutable;
using Vessel.Export.Solids;

namespace Vessel.Export.Report.Model;

/// <summary>Tints that tell neighbours apart; a name, never a tint, says which part it is.</summary>
internal static class Tints
{
    private static readonly ImmutableArray<Colour> _all =
    [
        new(0xA8, 0xBC, 0xCC), new(0xCD, 0xC7, 0xB8), new(0xA9, 0xC2, 0xAE), new(0xD8, 0xB0, 0x84), new(0xBD, 0xB0, 0xCF),
        new(0xC9, 0x9A, 0x8A), new(0x97, 0xC0, 0xBE), new(0xD4, 0xC0, 0x7C), new(0xB4, 0xBA, 0x94), new(0xC3, 0xA3, 0xB5),
    ];

    public static Colour Of(int part) => _all[part % _all.Length];
}
