using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Members.Brackets;
using Vessel.Members.Plates;
using Vessel.Parts;
using Vessel.Tests.Members.Brackets;
using Vessel.Tests.Parts;
using Vessel.Tests.Reassembly;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Members.Plates;

/// <summary>Plates that stand on the shell, of any roll and offset.</summary>
public sealed class PlateTests
{
    /// <summary>Lengths below 1e3 mm through a dozen operations.</summary>
    private const double Rounding = 1e-9;

    public static TheoryData<int> Seeds => new(Enumerable.Range(0, 24));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_mesh_is_closed_and_holds_the_metal_that_the_part_states(int seed)
    {
        var part = BracketDesigns.Part(BracketDesigns.RandomPlate(seed));

        var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);

        MeshLaws.Hold(mesh, part.Holes.Length);
        // Facets stand off only the edges that are not straight: chord x their wall.
        var bound = Accuracy.Solids.Chord * CurveMeasures.Length(part.Flat!.Cut) * part.Thickness;
        Assert.InRange(mesh.Volume - part.Volume, -bound, bound);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Cut_from_the_written_file_it_stands_on_the_shell(int seed)
    {
        var design = BracketDesigns.RandomPlate(seed);
        var meetings = BracketMeetings.Of(design.Bracket(), design.Shell.At(design.Bracket().Height),
            CutPiece.Of(BracketDesigns.Part(design))).ToList();

        Assert.True(meetings.Count > 50);
        Assert.All(meetings, meeting => Assert.True(
            meeting.Off <= meeting.Allowed, $"{meeting.What} is off by {meeting.Off}, allowed are {meeting.Allowed}"));
    }

    /// <summary>Roots lie on the shell and on the plate's faces; tangents, gaps and angles by differences and by search.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Both_fillets_follow_the_plate_and_the_shell(int seed)
    {
        var design = BracketDesigns.RandomPlate(seed);
        var (site, radius) = (PlateSite.Of((PlateDesign)design.Bracket(), design), design.Shell.OuterRadius);
        var joints = design.Bracket().Build(design).Joints.ToList();
        foreach (var (joint, side) in joints.Select((joint, i) => (joint, 1 - (2 * i))))
        {
            for (var i = 1; i < 40; i++)
            {
                var t = joint.Domain.At(i / 40.0);
                var at = joint.Along(t);
                Assert.Equal(radius, new Point2(at.Root.X, at.Root.Y).Length, Rounding);
                Assert.Equal(side * site.Bracket.Thickness / 2, site.Way.ToLocal(at.Root).Z, Rounding);
                const double step = 1e-4;
                if (joint.Breaks.All(corner => Math.Abs(corner - t) > step))
                {
                    var slope = (1 / (2 * step)) * (joint.Along(t + step).Root - joint.Along(t - step).Root);
                    // Central differences: the third derivative, below 1e-2 R^-2 but near the flank, times step^2.
                    Assert.Equal(0, (slope - at.Tangent).Length, 1e-5 * at.Tangent.Length * at.Tangent.Length * at.Tangent.Length);
                }

                // The corner of the cut on this face, found in the outline, lies off the shell by the gap.
                Assert.InRange(at.GapNormal, -Rounding, at.GapAxial + Rounding);
                var corner = at.Root + (at.GapAxial * site.Outward);
                Assert.Equal(radius + at.GapNormal, new Point2(corner.X, corner.Y).Length, 1e-8);
                // Both ways square to the path, one in the shell's tangent plane, the other in the plate.
                Assert.Equal(0, at.AlongHost.Dot(new(at.Root.X, at.Root.Y, 0)), 1e-7);
                Assert.Equal(0, at.AlongHost.Dot(at.Tangent), 1e-7);
                Assert.Equal(0, at.AlongPart.Dot(site.Way.Z), 1e-9);
                Assert.Equal(0, at.AlongPart.Dot(at.Tangent), 1e-7);
            }
        }

        // In the middle of a plate without offset both sides meet the shell alike; elsewhere one gains what the other loses.
        var (upper, lower) = (joints[0].Along(joints[0].Domain.At(0.5)), joints[1].Along(joints[1].Domain.At(0.5)));
        if (site.Bracket.Roll == 0)
            Assert.Equal(Math.PI, upper.Dihedral + lower.Dihedral, 1e-9);
    }

    [Fact]
    public void A_level_plate_touches_all_through_and_an_upright_one_along_its_side_nearer_to_the_axis()
    {
        var level = Seams(BracketDesigns.Plate);
        Assert.All(level, joint => Assert.Equal(0, joint.Along(20).GapNormal, Rounding));

        // Upright, 30 aside on R 55, 5 thick: the corner of its far side stands off the circle by the hand's reckoning.
        var upright = Seams(BracketDesigns.Plate with { Offset = 30, Roll = Math.PI / 2 });
        var gap = Math.Sqrt((32.5 * 32.5) + (55 * 55) - (27.5 * 27.5)) - 55;
        // Its own Z points towards decreasing angle: nearer to the axis.
        Assert.Equal(0, upright[0].Along(10).GapNormal, Rounding);
        Assert.Equal(gap, upright[1].Along(10).GapNormal, Rounding);
        Assert.Equal(60, upright[0].Length, 1e-8);
    }

    [Fact]
    public void A_level_plates_edge_is_one_arc_as_long_as_its_angle_says()
    {
        var part = BracketDesigns.Part(BracketDesigns.On(BracketDesigns.Plate with { Offset = 0 }));
        var arc = part.Flat!.Cut.Outer.Edges.OfType<Arc2>().Single(arc => arc.Radius == 55);

        Assert.Equal(2 * 55 * Math.Asin(30.0 / 55), CurveMeasures.Length(arc), Rounding);
    }

    private static ImmutableArray<Joint> Seams(PlateDesign plate)
    {
        var design = BracketDesigns.On(plate);
        return [.. plate.Build(design).Joints];
    }
}
