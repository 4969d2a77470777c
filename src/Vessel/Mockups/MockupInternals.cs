using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Mockups;

/// <summary>Something that stands inside the vessel, as a piece of its own to print.</summary>
/// <param name="Mesh">Standing on the bed, in the octant where all coordinates are positive, in print size.</param>
public sealed record MockupInternal(string Name, Mesh Mesh, int Quantity);

/// <summary>
/// Sleeves, caps and discs beside the mock-up: its room is closed, so that they can be tried in each other but not through the
/// shell. They are as thick as the metal.
/// </summary>
public static class MockupInternals
{
    /// <summary>None where they are left out.</summary>
    public static ImmutableArray<MockupInternal> Of(VesselDesign design)
    {
        var options = design.Mockup;
        if (!options.KeepsInternals)
            return [];
        var clearance = options.Clearance / options.Scale;
        var loose = design with { Inside = design.Inside with { Discs = [.. design.Inside.Discs.Select(disc => Looser(disc, clearance))] } };
        var chord = Mockup.UsualChord / Math.Max(1, options.Scale);
        return
        [
            .. VesselParts.Inside(loose, WeldNumbers.Of(loose)).AsParallel().AsOrdered().Select(part => new MockupInternal(
                part.Name, Printed(Mesher.Flatten(part.Solid, Accuracy.Solids with { Chord = chord }), options), part.Quantity)),
        ];
    }

    /// <summary>Slips into its bore with so much more room all round; its holes stay where they are.</summary>
    private static DiscDesign Looser(DiscDesign disc, double by)
    {
        // Holes keep half of their distance from the rim at least.
        var taken = Math.Min(by, disc.Holes.Margin / 2);
        return disc with
        {
            Clearance = disc.Clearance + taken,
            OutsideDiameter = disc.OutsideDiameter - (2 * taken),
            Holes = disc.Holes with { Margin = disc.Holes.Margin - taken },
        };
    }

    private static Mesh Printed(Mesh mesh, MockupDesign options) =>
        BedFit.OnBed(mesh with { Vertices = [.. mesh.Vertices.Select(v => options.Scale * v)] }, options.Bed);
}
