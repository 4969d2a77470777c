using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>The mock-up as a mesh, as it stands on the printer's bed.</summary>
/// <param name="Mesh">In print size, in the octant where all coordinates are positive.</param>
/// <param name="Chord">Greatest distance of facets from the true shape, mm of the vessel.</param>
public sealed record Mockup(Mesh Mesh, double Chord)
{
    /// <summary>Printers do no better, mm.</summary>
    public const double UsualChord = 0.1;

    /// <summary>Walls of a usual nozzle's three lines, mm: common practice, no source.</summary>
    public const double UsualWall = 1.2;

    /// <summary>Of a plan without obstacles.</summary>
    public static Mockup Of(MockupPlan plan)
    {
        var mesh = Mesher.Flatten(MockupSolid.Of(plan), Accuracy.Solids with { Chord = UsualChord });
        return new(OnBed(mesh), UsualChord);
    }

    private static Mesh OnBed(Mesh mesh)
    {
        var low = mesh.Vertices[0];
        foreach (var v in mesh.Vertices)
            low = new(Math.Min(low.X, v.X), Math.Min(low.Y, v.Y), Math.Min(low.Z, v.Z));
        return mesh with { Vertices = [.. mesh.Vertices.Select(v => v - low)] };
    }
}
