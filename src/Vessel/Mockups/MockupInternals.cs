using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Parts;

namespace Vessel.Mockups;

/// <summary>Something that stands inside the vessel, as a piece of its own to print.</summary>
/// <param name="Mesh">Standing on the bed, in the octant where all coordinates are positive, in print size.</param>
public sealed record MockupInternal(string Name, Mesh Mesh, int Quantity);

/// <summary>
/// What stands inside beside the mock-up: its room is closed, so that they can be tried in each other but not through the
/// shell. They are as thick as the metal.
/// </summary>
public static class MockupInternals
{
    /// <summary>None where they are left out.</summary>
    internal static ImmutableArray<MockupInternal> Of(MockupDesign options, ImmutableArray<Member> members, Welds welds)
    {
        if (!options.KeepsInternals)
            return [];
        var chord = Mockup.UsualChord / Math.Max(1, options.Scale);
        return
        [
            .. members.SelectMany(member => member.Printed(options.Clearance / options.Scale, welds) ?? []).AsParallel().AsOrdered()
                .Select(part => new MockupInternal(
                    part.Name, Printed(Mesher.Flatten(part.Solid, Accuracy.Solids with { Chord = chord }), options), part.Quantity)),
        ];
    }

    private static Mesh Printed(Mesh mesh, MockupDesign options) =>
        BedFit.OnBed(mesh with { Vertices = [.. mesh.Vertices.Select(v => options.Scale * v)] }, options.Bed);
}
