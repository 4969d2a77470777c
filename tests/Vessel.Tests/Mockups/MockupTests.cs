using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Export.Stl;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Members.Saddles;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Tests.Members.Brackets;
using Vessel.Tests.Support;
using Vessel.Tests.Reading;
using Xunit;

namespace Vessel.Tests.Mockups;

public sealed class MockupTests
{
    /// <summary>Where random mock-ups are kept for a reader, and then more of them: <c>VESSEL_MOCKUPS=folder</c>.</summary>
    private static readonly string? _kept = Environment.GetEnvironmentVariable("VESSEL_MOCKUPS");

    /// <summary>How many of them: <c>VESSEL_MOCKUP_COUNT=300</c>; each with other keys of its own besides, in pieces.</summary>
    private static readonly int _wanted = int.TryParse(Environment.GetEnvironmentVariable("VESSEL_MOCKUP_COUNT"), out var count) ? count
        : _kept is null ? 17 : 60;

    public static TheoryData<string> Files => [.. Repository.Designs.Select(path => Path.GetFileName(path)!)];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_design_prints_as_one_closed_solid_of_the_volume_of_its_formula(string file)
    {
        var vessel = Compiler.Assemble(
            Compiler.Read(File.ReadAllText(Repository.Designs.Single(path => Path.GetFileName(path) == file))).Value!);

        AssertSolid(vessel, Mockup.Of(vessel.Mockup));
    }

    [Fact]
    public void Random_designs_print_or_say_what_is_in_the_way()
    {
        var (printed, refused) = (0, 0);
        for (var seed = 0; printed < _wanted; seed++)
        {
            var vessel = RandomDesigns.Built(seed);
            var plan = MockupPlan.Of(
                vessel.Design with { Mockup = MockupDesign.Usual with { Wall = 1e-3, Names = (PrintNames)(seed % 3), LetterDepth = 0.3 } },
                vessel.Chamber, vessel.Sites, vessel.Members);
            if (!plan.Obstacles.IsEmpty)
            {
                refused++;
                continue;
            }

            printed++;
            var mockup = Mockup.Of(plan);
            AssertSolid(vessel, mockup);
            Keep(mockup.Mesh, $"random-{seed}.stl");
            // Each of a long run, else every fifth.
            if (_kept is not null && (_wanted > 100 || seed % 5 == 0))
                KeepPieces(vessel, seed);
        }

        if (_kept is not null)
            File.WriteAllText(Path.Combine(_kept, "count"), $"{printed} printed, {refused} refused\n");
        // Seven ports a vessel, a quarter of them as far out as can be: some graze.
        Assert.InRange(refused, 0, printed / 2);
    }

    [Theory]
    [InlineData(SaddleEars.Sides)]
    [InlineData(SaddleEars.Ends)]
    public void Ears_of_either_kind_grow_out_of_the_shell(SaddleEars ears)
    {
        var bracket = (ears == SaddleEars.Sides ? BracketDesigns.Narrow : BracketDesigns.Level) with { Angle = Math.PI };
        var vessel = Compiler.Assemble(Designs.Sound with { Members = [bracket] });

        AssertSolid(vessel, Mockup.Of(vessel.Mockup));
    }

    [Theory]
    [InlineData(0, 0, 8)]
    [InlineData(90, 20, 0)]
    [InlineData(-40, -15, 8)]
    public void Plates_of_any_roll_grow_out_of_the_shell(double roll, double offset, double corner)
    {
        var plate = BracketDesigns.Plate with
        {
            Angle = Math.PI,
            Roll = roll * Math.PI / 180,
            Offset = offset,
            Corner = corner,
            FreeWidth = 60,
            Depth = 50,
        };
        var vessel = Compiler.Assemble(Designs.Sound with { Members = [plate] });

        AssertSolid(vessel, Mockup.Of(vessel.Mockup));
    }

    [Theory]
    [InlineData(33.3, false)]
    [InlineData(33.1, true)]
    public void Footprints_closer_than_a_fifth_of_a_millimetre_leave_no_mock_up(double apart, bool refused)
    {
        // Tubes of 32 mm, one above the other: 1.2 - 0.9 mm between them; 0.2 would be 32.2 at a shell's flank.
        var design = Designs.Vessel(
            Designs.Shell(), Designs.Branch("lower", 33, 2, new(60, 0, 0, 0, 0)),
            Designs.Branch("upper", 33, 2, new(60 + apart, 0, 0, 0, 0)));

        var findings = Compiler.Assess(Compiler.Assemble(design)).Where(f => f.Code == FindingCodes.NoMockup).ToList();

        Assert.Equal(refused, findings.Count > 0);
        if (refused)
            Near.Absolute(0.1, findings[0].Figures.Single().Value, 0.01);
    }

    [Theory]
    [InlineData(0.5, false)]
    [InlineData(0.03, true)]
    public void A_port_that_grazes_the_shell_leaves_no_mock_up(double left, bool refused)
    {
        // Flattest at the side: the sine is sqrt(1 - ((e + r) / R)^2), 0.13 and 0.033 of 55 mm; 0.05 is asked for.
        var design = Designs.Vessel(Designs.Shell(), Designs.Branch("edge", 32, 2, new(90, 0, 55 - 16 - left, 0, 0)));

        Assert.Equal(refused, Found(design));
    }

    [Theory]
    [InlineData(130, false)]
    [InlineData(98, true)]
    public void Tubes_that_cross_in_the_air_leave_no_mock_up(double height, bool refused)
    {
        // From 60 mm the lower one climbs at 45 degrees past the level one's side.
        var design = Designs.Vessel(
            Designs.Shell(),
            Designs.Branch("lower", 20, 2, new(60, 0, 0, Math.PI / 4, 0)) with { Length = 70 },
            Designs.Branch("level", 20, 2, new(height, 0, 0, 0, 0)) with { Length = 70 });

        Assert.Equal(refused, Found(design));
    }

    [Fact]
    public void The_edge_of_the_outline_is_kept_clear_of()
    {
        // A lid stands over the shell's upper edge, 180 mm up.
        bool Refused(double height) => Found(
            Designs.Vessel(Designs.Shell(), Designs.Branch("high", 20, 2, new(height, 0, 0, 0, 0))) with
            {
                Top = Designs.Overlay("top", 130),
            });

        Assert.True(Refused(169.9));
        Assert.False(Refused(169.7));
    }

    [Fact]
    public void Half_the_chord_is_a_quarter_of_the_error_of_volume()
    {
        var vessel = Compiler.Assemble(Designs.Sound);
        var solid = MockupSolid.Of(vessel.Mockup);
        double Error(double chord) => Math.Abs(Mesher.Flatten(solid, new(chord, Math.PI)).Volume - MockupVolume.Of(vessel));

        // Chord over four: facets a half as long. Whole numbers of pieces on small circles leave some play.
        Assert.InRange(Error(0.2) / Error(0.05), 2.5, 6.5);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.02)]
    public void Its_body_has_no_more_than_twice_the_facets_that_its_chord_needs(double chord)
    {
        // Nothing opens into it, so it is filled: a lid, a cylinder and half a ball of 55 mm. The bounds are derived in SkinRefinement.
        var plan = Compiler.Assemble(Designs.Vessel(Designs.Shell())).Mockup;
        var mesh = Mesher.Flatten(MockupSolid.Of(plan), new(chord, Math.PI));

        Assert.Null(plan.Inside);
        var round = 2 * Math.PI / Math.Acos(1 - (chord / 55));
        var (ball, lid) = (2 * Math.PI * 55 * 55 / (1.5 * Math.Sqrt(3) * 55 * chord), (round / 2) - 2);
        Assert.InRange(mesh.Triangles.Length, ball + round + lid, 2 * (ball + round + lid));
    }

    /// <summary>With random keys: the whole, what it is cut into, its stand.</summary>
    private static void KeepPieces(Assembly vessel, int seed)
    {
        var plan = MockupPlan.Of(vessel.Design with { Mockup = RandomMockups.At(seed, vessel.Design) }, vessel.Chamber,
            vessel.Sites, vessel.Members);
        if (!plan.Obstacles.IsEmpty)
            return;
        var printed = Mockup.Printed(plan);
        Keep(printed.Mesh, $"random-{seed}-whole.stl");
        if (printed.Stand is { } stand)
            Keep(stand.Mesh, $"random-{seed}-stand.stl");
        foreach (var (piece, i) in printed.Pieces.Select((piece, i) => (piece, i)))
        {
            Assert.Equal(0, BedFit.Of(piece.Mesh, plan.Options.Bed));
            Keep(piece.Mesh, $"random-{seed}-piece-{i + 1}{(piece.IsRough ? "-rough" : "")}.stl");
        }
    }

    private static void Keep(Mesh mesh, string name)
    {
        if (_kept is null)
            return;
        Directory.CreateDirectory(_kept);
        using var file = File.Create(Path.Combine(_kept, name));
        StlWriter.Write(mesh, name, file);
    }

    /// <summary>Prints of two metres whose outlines have points a few hundredths apart:
    /// of three such neighbours no triangle may be made.</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(242)]
    public void A_tall_print_is_cut_without_needles(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        var pieces = Mockup.Printed(MockupPlan.Of(vessel.Design with { Mockup = RandomMockups.At(seed, vessel.Design) },
            vessel.Chamber, vessel.Sites, vessel.Members)).Pieces;

        Assert.True(pieces.Length > 1);
        Assert.All(pieces, piece => Assert.False(piece.IsRough, piece.Name));
    });

    private static bool Found(VesselDesign design) =>
        Compiler.Assess(Compiler.Assemble(design)).Any(f => f.Code == FindingCodes.NoMockup);

    private static void AssertSolid(Assembly vessel, Mockup mockup)
    {
        var ports = vessel.Sites.Length;
        var bolts = vessel.Design.All<BracketDesign>()
            .Sum(bracket => BoltHole.Places(bracket.Bolts, default).Length + (bracket is SaddleDesign ? 1 : 0));
        // Two skins joined by so many bores have one handle less; a bracket makes a loop with the shell, each bolt hole one.
        MeshLaws.Hold(mockup.Mesh, Math.Max(0, ports - 1) + bolts);
        if (ports > 0)
            Near.Absolute(MockupVolume.Of(vessel) + MockupVolume.Of(mockup.Plan.Marks), mockup.Mesh.Volume,
                mockup.Mesh.Area * mockup.Chord);
    }

    /// <summary>The end of a dish's arc lies on the shell's edge to rounding only, below it or above.</summary>
    [Fact]
    public void A_dish_whose_arc_ends_beside_the_edge_by_rounding_leaves_no_sliver_of_a_room()
    {
        var design = DesignTexts.Good("""
            vessel: Breather of a frustum
            material: stainless 304
            shell: { outside_diameter: 160, top_diameter: 100, wall: 3, height: 220, made_from: sheet, seam_angle: 200 }
            top: { shape: flat, thickness: 3, seat: overlay }
            bottom: { shape: torisphere, standard: DIN 28011 }
            ports:
              - { name: vent, in: shell, at: { height: 100, angle: 20 }, tube: { outside_diameter: 32, wall: 2 }, length: 60 }
            """);
        var plan = Compiler.Assemble(design).Mockup;

        Assert.All(plan.Inside!.Pieces, piece => Assert.True(piece.Length > 1e-6));
        MeshLaws.Hold(Mesher.Flatten(MockupSolid.Of(plan), Accuracy.Solids), MockupSolid.Of(plan).Genus);
    }
}
