using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Mockups;

/// <summary>The mock-up as a mesh, as it stands on the printer's bed.</summary>
/// <param name="Mesh">Mesh in print size, in the octant where all coordinates are positive.</param>
/// <param name="Chord">Greatest distance of facets from the true shape, mm of the print.</param>
public sealed record Mockup(MockupPlan Plan, Mesh Mesh, double Chord)
{
    /// <summary>Printers do no better, mm.</summary>
    public const double UsualChord = 0.1;

    /// <summary>Along the printer's width, depth and height, mm.</summary>
    public Vector3 Size { get; } = new(
        BedFit.Extent(Mesh, Vector3.UnitX), BedFit.Extent(Mesh, Vector3.UnitY), BedFit.Extent(Mesh, Vector3.UnitZ));

    /// <summary>
    /// Degrees, counter-clockwise from above, by which it stands turned so that it fits the bed; null where it does not fit.
    /// </summary>
    public int? Turned { get; private init; }

    /// <summary>Where the whole is larger than the bed; else none.</summary>
    public ImmutableArray<MockupPiece> Pieces { get; private init; } = [];

    /// <summary>Null where none is asked for or there is no room for one.</summary>
    public Stand? Stand { get; private init; }

    /// <summary>Mock-up with all that is printed beside or instead of it.</summary>
    public static Mockup Printed(MockupPlan plan)
    {
        var whole = Of(plan);
        return whole with { Pieces = MockupPieces.Of(whole), Stand = Mockups.Stand.Of(plan) };
    }

    /// <summary>The whole, of a plan without obstacles.</summary>
    public static Mockup Of(MockupPlan plan)
    {
        // Footprints keep a fixed distance in the vessel's size, so facets may not grow where the print shrinks.
        var (scale, chord) = (plan.Options.Scale, UsualChord / Math.Max(1, plan.Options.Scale));
        var mesh = Mesher.Flatten(MockupSolid.Of(plan), Accuracy.Solids with { Chord = chord });
        var print = mesh with { Vertices = [.. mesh.Vertices.Select(v => scale * v)] };
        return new(plan, BedFit.OnBed(print, plan.Options.Bed), chord * scale) { Turned = BedFit.Of(print, plan.Options.Bed) };
    }
}
