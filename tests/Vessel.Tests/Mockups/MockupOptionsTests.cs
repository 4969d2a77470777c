using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Cones;
using Vessel.Mockups;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Mockups;

public sealed class MockupOptionsTests
{
    private static readonly Assembly _sound = Compiler.Assemble(Designs.Sound);

    [Fact]
    public void A_scale_of_a_half_prints_an_eighth_with_walls_twice_as_thick_at_least()
    {
        var half = Printed(MockupDesign.Usual with { Scale = 0.5, Wall = 1 });
        var whole = Printed(MockupDesign.Usual with { Wall = 2 });

        Near.Relative(whole.Size.Z / 2, half.Size.Z, 1e-9);
        Near.Relative(whole.Mesh.Volume / 8, half.Mesh.Volume, 1e-9);
    }

    [Fact]
    public void A_least_wall_thickens_the_shell_from_inside()
    {
        // Walls of 2 and a lid of 3 mm become 6; ports' bores get narrower, so the room's volume is compared by the shell's share alone.
        var (thin, thick) = (Printed(MockupDesign.Usual with { Wall = 2 }), Printed(MockupDesign.Usual with { Wall = 6 }));

        Assert.Equal(thin.Size, thick.Size);
        Assert.Equal(49, thick.Plan.Inside!.Pieces.OfType<LinePiece>().Max(line => line.A.U));
        // Of the walls more is left than the shell's share: pi (53^2 - 49^2) over 170 mm of height.
        Assert.InRange(thick.Mesh.Volume - thin.Mesh.Volume, Math.PI * ((53 * 53) - (49 * 49)) * 170, double.PositiveInfinity);
    }

    [Fact]
    public void A_solid_one_is_filled_but_for_blind_bores()
    {
        var solid = Printed(MockupDesign.Usual with { IsSolid = true });

        MeshLaws.Hold(solid.Mesh, 0);
        Assert.Null(solid.Plan.Inside);
        // Shell and half sphere are full: 55 mm of radius over 180 mm, and two thirds of a ball's cylinder.
        Assert.InRange(solid.Mesh.Volume, 0.99 * Math.PI * 55 * 55 * (180 + (55.0 * 2 / 3)),
            1.1 * Math.PI * 55 * 55 * (180 + (55.0 * 2 / 3)));
    }

    /// <summary>On a steep cone the rim of a wide hole lies far above the port that it goes round.</summary>
    [Theory]
    [InlineData(6)]
    [InlineData(36)]
    [InlineData(60)]
    public void A_drain_hole_round_the_port_of_a_cone_is_refused(double diameter)
    {
        var vessel = Designs.Vessel(Designs.Shell(), Designs.OnHead("sump", VesselEnd.Bottom, 12, 1.5, 0) with { Length = 12 }) with
        {
            Bottom = new ConeHead("bottom", Designs.Stainless, 2, 15 * Math.PI / 180, 0, 0),
            Mockup = MockupDesign.Usual with { DrainHoles = [new("mockup.drain_holes[0]", diameter, 0, 0)] },
        };

        Assert.Contains(Compiler.Assess(Compiler.Assemble(vessel)), finding => finding.Code == FindingCodes.NoMockup);
    }

    /// <summary>The port at a cone's pole closes its tip, which is not there: a blind bore ends above the cone,
    /// and nothing stands out.</summary>
    [Theory]
    [InlineData(15)]
    [InlineData(30)]
    [InlineData(60)]
    public void A_solid_cone_ends_with_the_port_at_its_pole(double halfAngle)
    {
        var shell = Designs.Shell();
        var vessel = Designs.Vessel(shell, Designs.OnHead("sump", VesselEnd.Bottom, 26, 4, 0) with { Length = 12 }) with
        {
            Bottom = new ConeHead("bottom", Designs.Stainless, 2, halfAngle * Math.PI / 180, 0, 0),
            Mockup = MockupDesign.Usual with { IsSolid = true, Bed = new(400, 400, 800) },
        };
        var assembly = Compiler.Assemble(vessel);

        var mockup = Mockup.Of(assembly.Mockup);

        MeshLaws.Hold(mockup.Mesh, 0);
        Near.Absolute(assembly.Mockup.Outside.End.V - assembly.Sites[0].FreeEnd.Origin.Z, mockup.Size.Z, 1e-6);
    }

    /// <summary>A blind bore's floor is level in its piece of the tube: where a mitre would cut it, it lies further out.</summary>
    [Fact]
    public void A_blind_bore_ends_clear_of_mitres()
    {
        // However long the straight end is, the floor of 24 mm keeps off the mitre's plane, which rises by tan 22.5 deg of its radius.
        for (var straight = 10; straight < 200; straight += 5)
        {
            var bent = Designs.Branch("bent", 28, 2, new(90, 0, 0, 0, 0)) with
            {
                Length = 60,
                Elbow = new("ports[0].elbow", Math.PI / 4, 0, 2, 0, straight, MitreCut.Sawn),
            };
            var plan = Compiler.Assemble(
                Designs.Vessel(Designs.Shell(), bent) with { Mockup = MockupDesign.Usual with { IsSolid = true } }).Mockup;

            var floor = plan.Ports.Single().Rings[^1];
            Assert.True(Math.Abs(floor.V - plan.Ports.Single().Site.Legs[0].Length) >= floor.U * Math.Tan(Math.PI / 8));
        }
    }

    [Fact]
    public void Without_a_port_it_is_filled_unless_a_drain_hole_opens_it()
    {
        var closed = Designs.Vessel(Designs.Shell());
        var drained = closed with
        {
            Mockup = MockupDesign.Usual with
            {
                DrainHoles = [new("mockup.drain_holes[0]", 5, 0, 0), new("mockup.drain_holes[1]", 4, 30, 1)],
            }
        };

        Assert.Null(Compiler.Assemble(closed).Mockup.Inside);
        var mockup = Mockup.Of(Compiler.Assemble(drained).Mockup);
        // Two ways into one room.
        MeshLaws.Hold(mockup.Mesh, 1);
    }

    [Theory]
    [InlineData(4, 12, 1)]
    [InlineData(4, 0, 1)]
    [InlineData(4, 2, 1)]
    [InlineData(10, 0, 0.5)]
    [InlineData(20, 0, 0.5)]
    public void A_drain_hole_under_a_port_is_refused(double diameter, double radius, double scale)
    {
        var design = Designs.Sound with
        {
            Mockup = MockupDesign.Usual with { Scale = scale, DrainHoles = [new("mockup.drain_holes[0]", diameter, radius, 0)] },
        };

        // The drain's bung reaches 11 mm out: across it, in the middle of it, within it beside its bore, or all round it.
        Assert.Contains(Compiler.Assess(Compiler.Assemble(design)), finding => finding.Code == FindingCodes.NoMockup);
    }

    [Fact]
    public void Clearance_is_left_round_threads_and_taken_off_tubes()
    {
        var (tight, loose) =
            (Printed(MockupDesign.Usual with { Wall = 0.5 }), Printed(MockupDesign.Usual with { Wall = 0.5, Clearance = 0.3 }));

        double Outer(Mockup mockup, string port) => mockup.Plan.Ports.Single(p => p.Id == port).Rings[0].U;
        double Bore(Mockup mockup, string port) => mockup.Plan.Ports.Single(p => p.Id == port).Rings[^1].U;
        Near.Absolute(0.3, Outer(tight, "outlet") - Outer(loose, "outlet"), 1e-12);
        Near.Absolute((Designs.Thread.MajorDiameter / 2) + 0.3, Bore(loose, "drain"), 1e-12);
        Assert.Equal(Designs.Thread.TapDrill / 2, Bore(tight, "drain"));
    }

    [Fact]
    public void The_file_sets_them()
    {
        var text = File.ReadAllText(Repository.Designs.First())
            + "\nmockup: { inside: solid, scale: 0.5, wall: 2, bed: { height: 300 } }\n";

        var design = Compiler.Read(text).Value!;

        Assert.Empty(design.Mockup.DrainHoles);
        Assert.Equal(
            MockupDesign.Usual with
            {
                IsSolid = true,
                Scale = 0.5,
                Wall = 2,
                Bed = new(220, 220, 300),
                DrainHoles = design.Mockup.DrainHoles,
            }, design.Mockup);
    }

    [Theory]
    [InlineData(210, 220, 0)]
    [InlineData(220, 210, 90)]
    [InlineData(200, 200, null)]
    [InlineData(170, 240, 30)]
    public void A_bed_takes_it_turned_too(double width, double depth, int? turned)
    {
        // A box of 210 x 220 less a hair, and a bar of 250 x 10 that lies over a corner.
        var mesh = turned == 30 ? Box(250, 10, 200) : Box(209.9, 219.9, 200);

        Assert.Equal(turned is 30 ? Turned(250, 10, width, depth) : turned, BedFit.Of(mesh, new(width, depth, 250)));
        Assert.Null(BedFit.Of(mesh, new(width, depth, 199)));
    }

    /// <summary>The first of the turns in steps of five degrees at which a rectangle fits a bed.</summary>
    private static int? Turned(double x, double y, double width, double depth)
    {
        for (var turn = 0; turn < 180; turn += 5)
        {
            var (sin, cos) = (Math.Abs(Math.Sin(turn * Math.PI / 180)), Math.Abs(Math.Cos(turn * Math.PI / 180)));
            if ((x * cos) + (y * sin) <= width && (x * sin) + (y * cos) <= depth)
                return turn;
        }

        return null;
    }

    private static Mesh Box(double x, double y, double z) =>
        Mesher.Flatten(ThickSolid.Plate(new(Loop2.Polygon(new(0, 0), new(x, 0), new(x, y), new(0, y)), []), z), Accuracy.Solids);

    [Fact]
    public void What_stands_inside_is_printed_beside_it_on_request_with_its_holes_where_they_are()
    {
        var text = File.ReadAllText(Repository.Designs.Single(path => Path.GetFileName(path) == "harbour-launch-breather.yaml"));
        Assembly Built(string mockup) => Compiler.Assemble(Compiler.Read($"{text}\nmockup: {{ {mockup} }}\n").Value!);
        ImmutableArray<MockupInternal> With(string mockup) =>
            Built(mockup) is var built ? MockupInternals.Of(built.Design.Mockup, built.Members, built.Joints) : [];

        var kept = With("internals: beside, scale: 0.5, clearance: 0.3, wall: 0.6");

        Assert.Empty(With("scale: 0.5"));
        Assert.Equal(["sleeve", "cap skirt", "cap plate", "lower screen", "upper screen"], kept.Select(one => one.Name));
        Assert.All(kept, one => MeshLaws.IsClosed(one.Mesh));
        Assert.All(kept, one => Assert.Single(MeshBodies.Of(one.Mesh)));
        // A disc in a sleeve of 80 mm with 0.2 mm of its own and 0.6 mm more, which is 0.3 of the print, on each side.
        var (disc, metal) = (kept[^1].Mesh, Built("scale: 1").Parts.Single(part => part.Name == "upper screen"));
        Near.Absolute((80 - 0.4 - 1.2) / 2, BedFit.Extent(disc, Vector3.UnitX), 0.01);
        // Its ring lost, and no hole gained or lost: facets stand off by a chord at the rim and at each of the holes.
        var ring = Math.PI / 4 * ((79.6 * 79.6) - (78.4 * 78.4)) * 1.5;
        var holes = metal.Fields.Single().Lattice.Count;
        Near.Absolute((metal.Volume - ring) / 8, disc.Volume, 1.5 / 8 * Math.PI * ((78.4 * 0.1) + (holes * 3 * 0.1)));
        Assert.Equal(2 - (2 * holes), Euler(disc));
    }

    private static int Euler(Mesh mesh) => mesh.Vertices.Length - (mesh.Triangles.Length / 2);

    [Fact]
    public void Mass_lies_between_sparse_and_full()
    {
        var mass = Plastic.Mass(Printed(MockupDesign.Usual with { IsSolid = true }).Mesh);

        Assert.True(mass.Low < mass.Likely && mass.Likely < mass.High);
    }

    private static Mockup Printed(MockupDesign options) =>
        Mockup.Of(MockupPlan.Of(_sound.Design with { Mockup = options }, _sound.Chamber, _sound.Sites, _sound.Members));
}
