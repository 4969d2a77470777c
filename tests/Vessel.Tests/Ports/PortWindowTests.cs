using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Members.Cups;
using Vessel.Parts;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Tests.Members.Inside;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Ports;

/// <summary>Windows in the length of a port's tube that stands free inside: part, cavity and flow.</summary>
public sealed class PortWindowTests
{
    private const double Wall = 2;

    private static readonly ImmutableArray<WindowsDesign> _rows =
    [
        new("ports[0].windows[0]", 5, 8, 8, 4, 5, 0) { IsRound = true },
        new("ports[0].windows[1]", 5, 9, 7, 0, 16, 0),
    ];

    /// <summary>Elementary: circles and sharp rectangles, on the outside.</summary>
    private static readonly double _open = (5 * Math.PI * 16) + (5 * 63);

    private static PortDesign OnShell(params WindowsDesign[] rows) => Designs.Branch("ports[0]", 32, Wall, new(100, 0.4, 12, 0.3, 0)) with
    {
        Name = "inlet",
        Joint = PortJoint.SetIn,
        Clearance = 0.2,
        InsideLength = 40,
        Windows = [.. rows],
    };

    private static PortDesign Hanging(params WindowsDesign[] rows) =>
        Designs.OnHead("vent", VesselEnd.Top, 32, Wall, 15) with
        {
            Joint = PortJoint.SetIn,
            InsideLength = 30,
            Length = 40,
            Windows = [.. rows],
        };

    private static Assembly Built(params PortDesign[] ports) =>
        Compiler.Assemble(Designs.Vessel(Designs.Shell(150, 2, 200), [.. ports.Select((port, i) => port with { Path = $"ports[{i}]" })]));

    private static Part Tube(Assembly vessel) => vessel.Parts.First(part => part.Kind == PartKind.Branch);

    public static TheoryData<bool, bool> Places => new((false, false), (false, true), (true, false), (true, true));

    [Theory]
    [MemberData(nameof(Places))]
    public void The_tube_is_one_solid_with_as_many_holes_and_less_by_the_windows(bool onHead, bool elbow)
    {
        PortDesign Port(params WindowsDesign[] rows) => (onHead ? Hanging(rows) : OnShell(rows)) with
        {
            Elbow = elbow ? new("ports[0].elbow", 1, 30, 3, 0.7, 30, MitreCut.Square) : null,
        };
        var (part, whole) = (Tube(Built(Port([.. _rows]))), Tube(Built(Port())));
        var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);

        MeshLaws.Hold(mesh, 1 + 10);
        Near.Absolute(part.Volume, mesh.Volume, mesh.Area * Accuracy.Solids.Chord);
        // Radial walls: what is open on the mean cylinder, through the wall.
        Near.Relative(_open * Wall * 15 / 16, whole.Volume - part.Volume, 1e-8);
        // Both wraps have the same edges, wherever they begin: areas of smooth curves, to the rule's error.
        Near.Relative(CurveMeasures.Area(whole.Flat!.Cut) - _open, CurveMeasures.Area(part.Flat!.Cut), 1e-7);
        Assert.Equal(10, part.Holes.Length);
        Assert.All(part.Flat.Cut.Holes.Select(CurveMeasures.Bounds),
            box => Assert.True(box.Min.U >= Wall && box.Max.U <= (Math.PI * 32) - Wall));
        Assert.Equal(0, ((WrappedDevelopment)whole.Flat.From).Start);
    }

    /// <summary>The hand: the first window lies on the side that faces down the shell, the second towards increasing angle.</summary>
    [Fact]
    public void Windows_are_counted_from_the_side_that_faces_down()
    {
        var vessel = Built(OnShell(_rows[0] with { Count = 4 }));
        var (part, frame) = (Tube(vessel), vessel.Sites[0].Frame);
        var middles = part.Flat!.Cut.Holes.Select(hole => hole.AsCircle!.Center).Select(part.Flat.From.Raise)
            .Select(place => frame.ToOuter(new(16 * Math.Cos(place.U), 16 * Math.Sin(place.U), place.V))).ToList();
        var sideways = new Vector3(-Math.Sin(0.4), Math.Cos(0.4), 0);

        Assert.Equal(0, middles.IndexOf(middles.MinBy(at => at.Z)));
        Assert.Equal(1, middles.IndexOf(middles.MaxBy(at => at.Dot(sideways))));
        // Each begins as far from the inner end as it is told.
        var end = frame.ToOuter(new(0, 0, vessel.Sites[0].InnerEnd));
        Assert.All(middles, at => Near.Absolute(5 + 4, (at - end).Dot(frame.Z), 1e-9));
    }

    /// <summary>Of a mesh whose facets stand off by the chord at most.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void The_tubes_mass_acts_where_its_meshs_does(int count)
    {
        var vessel = Built(OnShell(new WindowsDesign("ports[0].windows", count, 24, 18, 6, 4, 1)));
        var part = Tube(vessel);
        var mesh = Mesher.Flatten(part.Solid, new Accuracy(0.005, 0.05));

        Near.Absolute(0, (PartCentre.Of(part) - part.Placements[0].ToOuter(Balance.Of(mesh))).Length, 0.02);
    }

    [Fact]
    public void What_windows_take_out_of_the_wall_can_hold_oil()
    {
        var rows = _rows.Select(row => row with { Angle = 0.2 }).ToArray();
        var (with, without) = (Built(Hanging(rows)).Attitude, Built(Hanging()).Attitude);

        Near.Relative(_open * Wall * 15 / 16, with.VolumeBelow(with.Depth.End) - without.VolumeBelow(without.Depth.End), 1e-6);
        // Sharp rectangles fill evenly with height: a third of them.
        var level = with.Cavity.Openings.Single(way => way.Name == "windows 2 of vent").Axial.Start + (7.0 / 3);
        Near.Absolute(((5 * Math.PI * 16) + (5 * 63.0 / 3)) * Wall * 15 / 16,
            with.VolumeBelow(level) - without.VolumeBelow(level), 1e-4 * _open);
    }

    [Fact]
    public void Gas_enters_the_tube_by_its_end_and_its_windows_together()
    {
        // In the top as well, so that its mouth is sealed last.
        var inlet = Designs.OnHead("inlet", VesselEnd.Top, 24, 2, 45, Math.PI) with { Length = 40 };
        var built = Built(inlet, Hanging([.. _rows]));
        var way = FlowPath.Of(built)!.Stages.Single(stage => stage.Kind == StageKind.Opening);
        var cavity = built.Cavity;

        Assert.Equal("inner end of vent and windows 2 of vent and windows of vent", way.Name);
        Near.Relative((Math.PI * 14 * 14) + _open, way.Area, 1e-12);
        // Sealed when the last of them is: the upper edges of the second row, 16 + 7 above the end.
        var (port, end) = (cavity.Openings.Single(o => o.Name == "vent"), cavity.Openings.Single(o => o.Name == "inner end of vent"));
        Near.Absolute(23, port.Axial.End - end.Axial.Start, 1e-9);
        Near.Absolute(0, port.Axial.Start - end.Axial.Start, 1e-9);
        Assert.Contains("windows 2 of vent",
            built.Capacity.Events.Single(e => e.What.StartsWith("oil seals", StringComparison.Ordinal)).What, StringComparison.Ordinal);
    }

    /// <summary>Named by hand, gas takes all of them unless one is named.</summary>
    [Theory]
    [InlineData("", "inner end of vent and windows of vent")]
    [InlineData("windows of vent", "windows of vent")]
    public void A_way_that_is_given_leads_through_the_windows_too(string between, string expected)
    {
        var inlet = Designs.Branch("ports[1]", 30, 2, new(100, 2, 0, 0, 0)) with { Name = "inlet" };
        var built = Built(Hanging(_rows[0]), inlet);
        ImmutableArray<string> order = between.Length == 0 ? ["inlet", "vent"] : ["inlet", between, "vent"];
        var stages = FlowPath.Of(Compiler.Assemble(built.Design with { Flow = built.Design.Flow with { Order = order } }))!.Stages;

        Assert.Equal(expected, stages.Single(stage => stage.Kind == StageKind.Opening).Name);
    }

    /// <summary>The outlet's tube carries a cap that hangs open; windows above the plate let gas past it.</summary>
    [Fact]
    public void Windows_in_another_room_than_the_end_lead_from_there()
    {
        var vessel = InsideTests.Vessel(InsideTests.Cap(CupOpening.Down));
        var outlet = vessel.Ports[0] with { InsideLength = 40, Windows = [new("ports[0].windows", 4, 6, 8, 1, 28, 0)] };
        var built = Compiler.Assemble(vessel with { Ports = vessel.Ports.SetItem(0, outlet) });
        var ways = built.Cavity.Openings.Where(way => way.To == "tube of outlet").ToDictionary(way => way.Name, way => way.From);

        Assert.Equal("cap", ways["inner end of outlet"]);
        Assert.Equal("sleeve", ways["windows of outlet"]);
    }

    /// <summary>4 mm over a cap's plate the end is no wider than the ring before it.</summary>
    [Fact]
    public void Beside_windows_an_end_over_a_plate_counts_for_its_ring()
    {
        var vessel = InsideTests.Vessel(InsideTests.Cap(CupOpening.Up));
        var outlet = vessel.Ports[0] with { InsideLength = 32, Windows = [new("ports[0].windows", 4, 6, 8, 0, 10, 0)] };
        var stages = FlowPath.Of(Compiler.Assemble(vessel with { Ports = vessel.Ports.SetItem(0, outlet) }))!.Stages;

        Near.Relative((Turns.Full * 14 * 4) + (4 * 48),
            stages.Single(stage => stage.Name == "inner end of outlet and windows of outlet").Area, 1e-9);
        Assert.DoesNotContain(stages, stage => stage.Name == "in front of outlet");
    }

    [Theory]
    [InlineData(24.9, true)]
    [InlineData(25.1, false)]
    public void The_free_length_ends_where_the_outside_first_meets_the_bore(double top, bool fits)
    {
        // Square to the axis in the middle: the sides of the tube meet the bore of radius 73 first, at the root of 73^2 - 16^2.
        var depth = 73 - Math.Sqrt((73 * 73) - (16 * 16));
        var port = OnShell() with { Place = new(100, 0, 0, 0, 0), InsideLength = 25 + Wall + depth };
        var vessel = Designs.Vessel(Designs.Shell(150, 2, 200), port with { Windows = [_rows[0] with { Up = top - 8 }] });

        Near.Absolute(25 + Wall, PortSites.Of(vessel).Of(vessel.Ports[0]).FreeLength, 1e-6);
        Assert.Equal(fits, !PortWindowCheck.Find(PortSites.Of(vessel)).Any());
    }
}
