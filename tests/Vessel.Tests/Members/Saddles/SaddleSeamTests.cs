using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Members.Saddles;
using Vessel.Parts;
using Vessel.Tests.Members.Brackets;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Members.Saddles;

/// <summary>Lengths below 400 mm: a hundred roundings are below 1e-11.</summary>
public sealed class SaddleSeamTests
{
    private const double Rounding = 1e-11;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 20)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Roots_lie_on_the_shell_and_in_the_outer_face_of_the_ear(int seed)
    {
        var design = BracketDesigns.Random(seed);
        var site = SaddleSite.Of(design.Saddle(), design);
        foreach (var (weld, t) in Samples(design))
        {
            var root = weld.Along(t).Root;
            var local = site.Frame.ToLocal(root);

            Assert.Equal(design.Shell.OuterRadius, new Point2(root.X, root.Y).Length, Rounding);
            var aside = (new Point2(local.X, local.Y) - site.Middle).Dot(site.Sheet.Across);
            // The flat's middle is the bent bracket's too.
            Assert.Equal(site.Overall / 2, Math.Abs(aside), Rounding);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Legs_run_along_both_surfaces_square_to_the_path_and_open_by_the_dihedral(int seed)
    {
        var design = BracketDesigns.Random(seed);
        foreach (var (weld, t) in Samples(design))
        {
            var at = weld.Along(t);
            var radial = new Vector3(at.Root.X, at.Root.Y, 0).Unit();

            Assert.Equal(0, at.AlongHost.Dot(radial), Rounding);
            Assert.Equal(0, at.AlongHost.Dot(at.Tangent), Rounding);
            Assert.Equal(0, at.AlongPart.Dot(at.Tangent), Rounding);
            Assert.Equal(1, at.AlongHost.Length, Rounding);
            Assert.Equal(1, at.AlongPart.Length, Rounding);
            // Beyond a cosine of -0.97 its inverse loses no more than a few roundings.
            Assert.Equal(at.Dihedral, Math.Acos(at.AlongHost.Dot(at.AlongPart)), 10 * Rounding);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_gap_is_what_the_solid_leaves_open_at_the_outer_corner(int seed)
    {
        var design = BracketDesigns.Random(2 * seed);
        var part = BracketDesigns.Part(design);
        var (sheet, flat) = (((FoldedDevelopment)part.Flat!.From).Sheet, part.Flat.Cut.Outer);

        var corner = part.Placements[0].ToOuter(sheet.At(flat.Edges[0].Start, 0));

        var gap = new Point2(corner.X, corner.Y).Length - design.Shell.OuterRadius;
        Assert.All(Welds(design), weld => Assert.Equal(gap, weld.Along(weld.Domain.At(0.3)).GapNormal, Rounding));
    }

    [Fact]
    public void Welds_of_level_ears_are_arcs_of_the_shell()
    {
        var design = BracketDesigns.On(BracketDesigns.Level);

        Assert.All(Welds(design), weld => Assert.Equal(110 * Math.Asin(30.0 / 55), weld.Length, 1e-9));
    }

    [Fact]
    public void Welds_of_upright_ears_are_as_long_as_the_plate_is_high()
    {
        var design = BracketDesigns.On(BracketDesigns.Narrow);

        Assert.All(Welds(design), weld => Assert.Equal(90, weld.Length, 1e-9));
    }

    [Fact]
    public void The_left_ear_comes_first_and_lies_to_the_left_seen_from_outside()
    {
        var design = BracketDesigns.On(BracketDesigns.Narrow);
        var (left, right) = (Welds(design)[0], Welds(design)[1]);

        Assert.Equal(["left ear of bracket to shell", "right ear of bracket to shell"], new[] { left.Name, right.Name });
        // Angles grow counter-clockwise seen from above: to the right of one who looks at the vessel.
        Assert.True(AngleOf(left) < design.Saddle().Angle && AngleOf(right) > design.Saddle().Angle);

        static double AngleOf(Joint weld) => new Point2(weld.Along(0).Root.X, weld.Along(0).Root.Y).Angle;
    }

    [Fact]
    public void Its_welds_are_numbered_after_those_of_the_ports()
    {
        var joints = Compiler.Assemble(BracketDesigns.On(BracketDesigns.Level)).Joints.All;

        Assert.Equal(["bracket.ears.upper", "bracket.ears.lower"], joints.TakeLast(2).Select(joint => joint.Path));
        Assert.Equal($"W{joints.Length}", joints[^1].Number);
    }

    private static ImmutableArray<Joint> Welds(VesselDesign design) => SaddleSeam.Of(SaddleSite.Of(design.Saddle(), design), design);

    private static IEnumerable<(Joint Weld, double Parameter)> Samples(VesselDesign design) =>
        from weld in Welds(design)
        from i in Enumerable.Range(0, 11)
        select (weld, weld.Domain.At(i / 10.0));
}
