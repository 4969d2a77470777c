using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>The mock-up as a mesh, as it stands on the printer's bed.</summary>
/// <param name="Mesh">In print size, in the octant where all coordinates are positive.</param>
/// <param name="Chord">Greatest distance of facets from the true shape, mm of the print.</param>
public sealed record Mockup(MockupPlan Plan, Mesh Mesh, double Chord)
{
    /// <summary>Printers do no better, mm.</summary>
    public const double UsualChord = 0.1;

    /// <summary>Along the printer's width, depth and height, mm.</summary>
    public Vector3 Size { get; } = Most(Mesh);

    /// <summary>Of a plan without obstacles.</summary>
    public static Mockup Of(MockupPlan plan)
    {
        // Footprints keep a fixed distance in the vessel's size, so facets may not grow where the print shrinks.
        var (scale, chord) = (plan.Options.Scale, UsualChord / Math.Max(1, plan.Options.Scale));
        var mesh = Mesher.Flatten(MockupSolid.Of(plan), Accuracy.Solids with { Chord = chord });
        return new(plan, OnBed(mesh, scale), chord * scale);
    }

    private static Mesh OnBed(Mesh mesh, double scale)
    {
        var low = mesh.Vertices[0];
        foreach (var v in mesh.Vertices)
            low = new(Math.Min(low.X, v.X), Math.Min(low.Y, v.Y), Math.Min(low.Z, v.Z));
        return mesh with { Vertices = [.. mesh.Vertices.Select(v => scale * (v - low))] };
    }

    private static Vector3 Most(Mesh mesh)
    {
        var most = Vector3.Zero;
        foreach (var v in mesh.Vertices)
            most = new(Math.Max(most.X, v.X), Math.Max(most.Y, v.Y), Math.Max(most.Z, v.Z));
        return most;
    }
}
