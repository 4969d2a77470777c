using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.Report.Model;

/// <summary>What is shown in space, on the page and in the pictures; worked out once.</summary>
/// <param name="Meshes">One a part.</param>
internal sealed record ShownModel(
    ImmutableArray<BuiltPart> Parts, ImmutableArray<Mesh> Meshes, ImmutableArray<Piece> Pieces, ImmutableArray<SeamLines> Seams)
{
    public static ShownModel Of(Build build)
    {
        var meshes = ShownMesh.Of(build.Parts);
        return new(build.Parts, meshes, Model.Pieces.Of(build.Parts, meshes), [.. build.Welds.Select(weld => SeamLines.Of(weld.Figures))]);
    }
}
