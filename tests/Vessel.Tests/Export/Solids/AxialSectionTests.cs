using Vessel.Design;
using Vessel.Export;
using Vessel.Export.Dxf;
using Vessel.Export.Solids;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export.Solids;

/// <summary>Shell 110 x 2, 180 high, with an inset lid of 3 mm and a half sphere below; no port where it is cut.</summary>
public sealed class AxialSectionTests
{
    private static readonly BuildOptions _options = new(new DrawingOptions(), false, Accuracy.Solids, "test", "");

    public static TheoryData<double> Angles => [0, 0.7, Math.PI / 2, 5];

    [Theory]
    [MemberData(nameof(Angles))]
    public void Each_cut_face_has_the_area_of_the_parts_own_section(double angle)
    {
        var shell = Designs.Shell();
        var design = Designs.Vessel(shell) with
        {
            Top = Designs.Inset(shell, "top", 3, 0, 0.2),
            Bottom = Designs.Dome(shell, "bottom"),
        };
        var section = Build.Of(Compiler.Assemble(design), [], _options with { SectionAngle = angle }).Section;
        double Area(string name) => section.Pieces.Single(piece => piece.Name == name).Cut.Area;
        var (outer, inner, chord) = (shell.OuterRadius, shell.InnerRadius, Accuracy.Solids.Chord);

        // Every outline lies within the chord of the exact one, so the areas differ by its length times the chord at most.
        Near.Absolute(2 * shell.Wall * shell.Height, Area("shell"), 4 * shell.Height * chord);
        Near.Absolute(3 * 2 * (inner - 0.2), Area("top"), 2 * 3 * chord);
        Near.Absolute(Math.PI / 2 * ((outer * outer) - (inner * inner)), Area("bottom"), Math.PI * (outer + inner) * chord);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    public void Sections_of_random_designs_are_closed_and_add_up_to_the_whole(int seed) => RandomDesigns.Hold(seed, assembly =>
    {
        Build Cut(double angle) => Build.Of(assembly, [], _options with { SectionAngle = angle });

        var (one, other) = (Cut(0), Cut(Math.PI));

        Assert.All(one.Section.Pieces, piece => MeshLaws.IsClosed(piece.Cut.Mesh));
        // A plane may be moved aside by 8 x 0.003 mm where it runs along a mesh.
        Near.Absolute(
            one.Parts.Sum(part => part.Part.Quantity * part.Mesh.Volume),
            one.Section.Pieces.Concat(other.Section.Pieces).Sum(piece => piece.Cut.Mesh.Volume),
            0.05 * one.Section.Area);
        Near.Absolute(one.Section.Area, other.Section.Area, 0.001 * one.Section.Area);
    });

    [Fact]
    public void The_drawing_has_the_angle_to_the_right()
    {
        var design = Designs.Vessel(Designs.Shell(), Designs.Branch("side", 32, 2, new(90, 0, 0, 0, 0)));
        var section = Build.Of(Compiler.Assemble(design), [], _options).Section;

        var outlines = section.Pieces.Single(piece => piece.Name == "side").Outlines.SelectMany(points => points);

        Assert.All(outlines, p => Assert.True(p.U > 0 && Math.Abs(p.V - 90) < 17));
    }
}
