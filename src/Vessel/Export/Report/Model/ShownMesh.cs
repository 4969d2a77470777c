using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Export.Report.Model;

/// <summary>The facets that are shown of a part: its own, or fewer where they are more than a phone should draw.</summary>
internal static class ShownMesh
{
    /// <summary>Most facets of one part.</summary>
    private const int Most = 60_000;

    /// <summary>Most facets of one part of a vessel that has more than <see cref="MostTogether"/>.</summary>
    private const int MostOfMany = 10_000;

    private const int MostTogether = 200_000;

    /// <summary>More holes of patterns than these are not drawn: they would be smaller than a dot.</summary>
    private const int MostHoles = 1500;

    private static readonly Accuracy _coarse = new(0.2, Math.PI / 9);

    public static ImmutableArray<Mesh> Of(ImmutableArray<BuiltPart> parts)
    {
        var most = parts.Sum(part => (long)part.Mesh.Triangles.Length) > MostTogether ? MostOfMany : Most;
        return [.. parts.AsParallel().AsOrdered().Select(part => part.Mesh.Triangles.Length > most ? Fewer(part) : part.Mesh)];
    }

    /// <summary>Whether the part is shown without the holes of its patterns.</summary>
    public static bool LeavesHoles(BuiltPart built, Mesh shown) => shown != built.Mesh && HasVeryManyHoles(built);

    private static bool HasVeryManyHoles(BuiltPart built) => built.Part.Fields.Sum(field => field.Lattice.Count) > MostHoles;

    private static Mesh Fewer(BuiltPart built)
    {
        var solid = HasVeryManyHoles(built) ? Undrilled(built.Part.Solid) : built.Part.Solid;
        var accuracy = new Accuracy(Math.Max(built.Chord, _coarse.Chord), _coarse.Angle);
        var fewer = Mesher.Flatten(solid, accuracy);
        return fewer.Triangles.Length < built.Mesh.Triangles.Length ? fewer : built.Mesh;
    }

    /// <summary>The plate without the holes of its pattern.</summary>
    private static Solid Undrilled(Solid solid) => new(
    [
        .. solid.Faces.SelectMany(face => face is PerforatedFaces plate
            ? [
                new Skin(plate.Upper, [.. plate.Bounds.Select(bound => new Bound(bound.Upper, bound.Image))], true),
                new Skin(plate.Lower, [.. plate.Bounds.Select(bound => new Bound(bound.Lower, bound.Image))], false),
            ]
            : (IEnumerable<Face>)[face]),
    ]);
}
