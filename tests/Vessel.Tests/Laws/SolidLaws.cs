using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Cones;
using Vessel.Parts;
using Vessel.Reading;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Laws;

/// <summary>What every part's solid obeys.</summary>
public sealed class SolidLaws
{
    public static TheoryData<int> Seeds => RandomDesigns.Seeds;

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Random_designs_are_what_the_reader_would_pass(int seed) =>
        RandomDesigns.Hold(seed, vessel => Assert.Empty(DesignCheck.Find(vessel.Design)));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Every_part_closes_with_the_genus_of_its_holes_and_the_volume_of_its_formula(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var part in vessel.Parts)
        {
            var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);

            Assert.Equal(Handles(vessel, part), part.Solid.Genus);
            MeshLaws.Hold(mesh, part.Solid.Genus);
            // Facets lie within the chord of the surface.
            Near.Absolute(part.Volume, mesh.Volume, mesh.Area * Accuracy.Solids.Chord);
        }
    });

    [Theory]
    [InlineData(16)]
    [InlineData(-16)]
    [InlineData(16.0001)]
    public void A_slanted_tube_whose_side_passes_the_shells_axis_still_gets_a_closed_hole(double offset)
    {
        // Every radius of the wall then has its hole's edge on one line up the shell, each at its own height.
        var shell = Designs.Shell(wall: 3);
        var part = Compiler.Assemble(Designs.Vessel(shell, Designs.Branch("slant", 32, 2, new(90, 1, offset, 0.5, 0)) with
        {
            Joint = PortJoint.SetIn,
            Clearance = 0.2,
            Length = 60,
        })).Parts[0];

        var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);

        MeshLaws.Hold(mesh, 2);
        Near.Absolute(part.Volume, mesh.Volume, mesh.Area * Accuracy.Solids.Chord);
    }

    /// <summary>A ring has one; each further hole adds one. Round a pole the segments of a cone are cut at their edges.</summary>
    private static int Handles(Assembly vessel, Part part) => part.Kind switch
    {
        PartKind.Branch => 1 + vessel.Design.Ports.Single(port => port.Path == part.Path).Windows.Sum(row => row.Count),
        PartKind.Bung or PartKind.Elbow => 1,
        // A port over a head's seam takes a notch out of either edge. One of several sheets is no ring.
        PartKind.Shell => (vessel.Design.Shell.Sheets == 1 ? 1 : 0)
            + vessel.Sites.Count(site => site.Over is null && Names.PortPart(site.Port, vessel.Design) == part.Id),
        _ => vessel.Design.Ports.Count(port => Names.PortPart(port, vessel.Design) == part.Id
            && !(port.Place.Radius == 0 && IsSegment(vessel, part))),
    };

    private static bool IsSegment(Assembly vessel, Part part) =>
        part.Kind == PartKind.Cone && vessel.Design.Head(part.Path == "top" ? VesselEnd.Top : VesselEnd.Bottom) is ConeHead { Segments: > 1 };

    [Theory]
    [InlineData("outlet")]
    [InlineData("drain")]
    [InlineData("top")]
    public void Half_the_facets_length_is_a_quarter_of_the_error(string name)
    {
        var part = Compiler.Assemble(Designs.Sound).Parts.Single(part => part.Name == name);
        double Error(double chord) => Math.Abs(Mesher.Flatten(part.Solid, new(chord, Math.PI)).Volume - part.Volume);

        // Whole numbers of pieces on small circles leave some play.
        Assert.InRange(Error(0.04) / Error(0.01), 2.5, 6.5);
        Assert.InRange(Error(0.01) / Error(0.0025), 2.5, 6.5);
    }
}
