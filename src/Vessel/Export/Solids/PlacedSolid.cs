using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.Solids;

/// <summary>A closed solid in a file of several: named, of one material, standing in one or more places.</summary>
/// <param name="Material">What it is made of, in words.</param>
/// <param name="Colour">Colour to show that material in.</param>
public sealed record PlacedSolid(string Name, Mesh Mesh, ImmutableArray<Frame3> Placements, string Material, Colour Colour)
{
    /// <summary>Every part of a build, where it stands.</summary>
    public static ImmutableArray<PlacedSolid> Of(Build build) =>
    [
        .. build.Parts.Select(built => new PlacedSolid(
            built.Part.Name,
            built.Mesh,
            built.Part.Placements,
            built.Part.Material.Name,
            Colour.Of(built.Part.Material.Family))),
    ];
}
