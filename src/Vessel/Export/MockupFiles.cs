using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Export.Solids;
using Vessel.Export.Stl;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Mockups;

namespace Vessel.Export;

/// <summary>What is written to be printed, where a mock-up is possible; and the rooms of hoses and spanners, to be looked at.</summary>
internal static class MockupFiles
{
    private const string Plastic = "print plastic";

    /// <summary>Between pieces on the bed, mm.</summary>
    private const double Apart = 10;

    public static IEnumerable<OutputFile> Of(Build build)
    {
        var (plan, name) = (build.Assembly.Mockup, build.Assembly.Design.Name);
        if (plan.Obstacles.IsEmpty)
        {
            yield return new("mockup/print.stl", to => StlWriter.Write(build.Mockup!.Mesh, name, to));
            yield return new("mockup/print.3mf", to => ThreeMfWriter.Write(
                [new("mock-up", build.Mockup!.Mesh, [Frame3.Identity], Plastic, Colour.Plastic)], name, to));
            if (!build.Mockup!.Pieces.IsEmpty)
                yield return new("mockup/pieces.3mf",
                    to => ThreeMfWriter.Write(SideBySide(build.Mockup.Pieces.Select(piece => (piece.Name, piece.Mesh))), name, to));
            foreach (var piece in build.Mockup.Pieces)
                yield return new($"mockup/{Slug.Of(piece.Name)}.stl", to => StlWriter.Write(piece.Mesh, piece.Name, to));
            if (build.Mockup.Stand is { } stand)
                yield return new("mockup/stand.stl", to => StlWriter.Write(stand.Mesh, "stand", to));
        }

        var internals = build.MockupInternals;
        if (!internals.IsEmpty)
        {
            yield return new("mockup/internals.3mf", to => ThreeMfWriter.Write(
                SideBySide(internals.SelectMany(one => Enumerable.Range(1, one.Quantity)
                    .Select(number => (one.Quantity == 1 ? one.Name : $"{one.Name} {number}", one.Mesh)))), name, to));
        }

        foreach (var one in internals)
            yield return new($"mockup/inside-{Slug.Of(one.Name)}.stl", to => StlWriter.Write(one.Mesh, one.Name, to));
        if (!build.Assembly.Sites.IsEmpty)
        {
            yield return new("mockup/room.3mf", to => ThreeMfWriter.Write(
                [.. RoomSolids.Of(plan).Select(room => new PlacedSolid(room.Name, room.Mesh, [Frame3.Identity], "room to keep free",
                    Colour.Room))], name, to));
        }
    }

    private static List<PlacedSolid> SideBySide(IEnumerable<(string Name, Mesh Mesh)> pieces)
    {
        var (bodies, from) = (new List<PlacedSolid>(), 0.0);
        foreach (var (name, mesh) in pieces)
        {
            bodies.Add(new(name, mesh, [Frame3.At(new(from, 0, 0))], Plastic, Colour.Plastic));
            from += BedFit.Extent(mesh, Vector3.UnitX) + Apart;
        }

        return bodies;
    }
}
