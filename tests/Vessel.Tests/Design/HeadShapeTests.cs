using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Heads.Cones;
using Vessel.Heads.FlatHeads;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Design;

/// <summary>Heads that are walls of revolution, on random designs, and ports on them.</summary>
public sealed class HeadShapeTests
{
    public static TheoryData<int> Seeds => [.. RandomDesigns.First(30)];

    private static readonly VesselEnd[] _ends = [VesselEnd.Top, VesselEnd.Bottom];

    private static readonly double[] _shares = [0.1, 0.4, 0.85];

    private static IEnumerable<(VesselEnd End, HeadShape Shape)> Shapes(VesselDesign design) => _ends
        .Select(end => (end, HeadShape.Of(end, design)))
        .Where(head => head.Item2 is not null)
        .Select(head => (head.end, head.Item2!));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Both_faces_lie_a_wall_apart_and_end_at_the_shell(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        var design = vessel.Design;
        foreach (var (end, shape) in Shapes(design))
        {
            foreach (var along in Enumerable.Range(0, 50).Select(i => shape.Outer.Length * (i + 0.5) / 50))
            {
                var at = shape.Outer.At(along);
                // A tip is cut off level.
                if (at.U > shape.Tip)
                    Near.Absolute(shape.Wall, HeadShape.Pointed(shape.Inner).Nearest(at).Distance, 1e-9);
            }

            var rim = shape.InVessel(shape.Inner);
            var (level, height) = end == VesselEnd.Top ? (rim.Start, design.Shell.Height) : (rim.End, 0.0);
            Near.Absolute(height, level.V, 1e-9);
            Near.Absolute(design.Head(end) is ConeHead ? design.Shell.InnerRadius : design.Shell.OuterRadius - shape.Wall, level.U, 1e-9);
        }
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_room_of_a_head_is_what_its_inner_face_encloses(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        var heads = Shapes(vessel.Design).Sum(head => head.Shape.Inner.Volume);
        var flats = _ends.Where(end => vessel.Design.Head(end) is FlatHead).Sum(end => vessel.Design.Head(end).Depth);
        var shell = vessel.Design.Shell;

        var rooms = vessel.Cavity.Rooms.Sum(room => room.Pieces.Sum(piece => piece.VolumeBelow(room.Heights.End)));

        Near.Relative(heads + (Math.PI * shell.InnerRadius * shell.InnerRadius * (shell.Height - flats)), rooms, 1e-11);
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Radius_and_volume_at_a_height_are_those_of_the_profile(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var piece in Shapes(vessel.Design).SelectMany(head => head.Shape.Outer.Pieces.Concat(head.Shape.Inner.Pieces)))
        {
            foreach (var along in _shares.Select(share => share * piece.Length))
            {
                var at = piece.At(along);
                if (piece.At(0).V == at.V)
                    continue;
                // Near the pole a radius follows its height by a root.
                Near.Absolute(at.U, piece.RadiusAt(at.V), 1e-7);
                Near.Relative(piece.Part(new(0, along)).Volume, piece.VolumeBelow(at.V), 1e-8);
            }
        }
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_cones_sheet_has_area_times_thickness_and_rolls_back_onto_its_middle(int seed) => RandomDesigns.Hold(seed, vessel =>
    {
        foreach (var (part, end) in vessel.Parts.Where(part => part.Kind == PartKind.Cone)
            .Select(part => (part, part.Path == "top" ? VesselEnd.Top : VesselEnd.Bottom)))
        {
            var head = (ConeHead)vessel.Design.Head(end);
            var cone = head.SheetAt(end, vessel.Design);
            var ports = head.Pieces(end, vessel.Design).Single(piece => piece.Id == part.Id).Ports;
            var flat = (ConeDevelopment)part.Flat!.From;
            // The gap takes a strip of the seam's length, and at the edges what a circle falls away by over half a gap.
            var sector = flat.Share * Math.PI / head.Segments
                * ((flat.Lengths.End * flat.Lengths.End) - (flat.Lengths.Start * flat.Lengths.Start));
            double Fallen(double length) => (length * length * Math.Asin(head.RootGap / 2 / length))
                + (head.RootGap / 2 * Math.Sqrt((length * length) - (head.RootGap * head.RootGap / 4)));
            Near.Relative(sector - Fallen(flat.Lengths.End) + Fallen(flat.Lengths.Start), CurveMeasures.Area(part.Flat.Cut), 1e-9);
            var drilled = vessel.Sites.Where(site => ports.Contains(site.Port)).Sum(DrilledDome.DrilledOut);
            Near.Relative((sector * head.Wall) - drilled, part.Volume, 1e-9);

            foreach (var edge in part.Flat.Cut.Outer.Edges)
            {
                foreach (var t in Enumerable.Range(0, 20).Select(i => edge.Domain.At(i / 20.0)))
                {
                    var place = flat.Raise(edge.At(t));
                    Assert.True((flat.Flatten(place) - edge.At(t)).Length < 1e-9 * flat.Lengths.End);
                    var at = cone.OnMiddle(place);
                    Near.Absolute(0, cone.Middle.Project(new(double.Hypot(at.X, at.Y), at.Z)).Distance, 1e-9);
                }
            }

            var (one, other) = (part.Flat.Cut.Outer.Edges[1], part.Flat.Cut.Outer.Edges[3]);
            Near.Absolute(CurveMeasures.Length(one), CurveMeasures.Length(other), 1e-9);
        }
    });

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_port_square_to_the_surface_stands_along_its_normal_and_an_upright_one_along_the_axis(int seed) => RandomDesigns.Hold(
        seed, vessel =>
    {
        foreach (var site in vessel.Sites.Where(site => site.Port.Host != PortHost.Shell
            && vessel.Design.Head(site.Port) is not FlatHead))
        {
            var shape = HeadShape.Of(site.Port.End!.Value, vessel.Design)!;
            var local = shape.Frame.ToLocal(site.Frame);
            var foot = HeadShape.Pointed(shape.Outer).Nearest(new(double.Hypot(local.Origin.X, local.Origin.Y), local.Origin.Z));
            if (site.AxisRadius == 0)
                Near.Absolute(0, foot.Distance, 1e-9);
            Near.Absolute(site.Port.Place.Radius, double.Hypot(local.Origin.X, local.Origin.Y), 1e-9);
            var square = site.Port.Place is { SquareToSurface: true, Radius: > 0 };
            Near.Absolute(square ? foot.Normal.V : -1, local.Z.Z, 1e-9);
            Near.Absolute(square ? foot.Normal.U : 0, double.Hypot(local.Z.X, local.Z.Y), 1e-9);
            // In the vessel it stands at its angle.
            if (site.Port.Place.Radius > 0)
                Near.Absolute(0, Turns.Signed(Math.Atan2(site.Frame.Origin.Y, site.Frame.Origin.X) - site.Port.Place.Angle), 1e-9);
        }
    });

    /// <summary>The closed form of a sphere and the way through profiles must agree.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(25)]
    public void On_a_half_sphere_an_upright_port_is_met_as_by_the_profile(double radius)
    {
        var design = Designs.Vessel(Designs.Shell(), Designs.OnHead("port", VesselEnd.Bottom, 20, 2, radius, 0.7));
        var shape = HeadShape.Of(VesselEnd.Bottom, design)!;
        var footing = HeadFooting.Of(shape, design.Ports[0])!;
        Assert.IsType<SphereFootprint>(footing.Outside);

        var general = new RevolvedFootprint(shape.Inner, footing.Axis);

        Assert.All(Enumerable.Range(0, 60).Select(i => i * 0.1), phi =>
        {
            Near.Absolute(general.Reach(10, phi), footing.Inside.Reach(10, phi), 1e-9);
            Near.Absolute(general.ReachSlope(10, phi), footing.Inside.ReachSlope(10, phi), 1e-8);
        });
    }

    [Fact]
    public void A_cone_stands_on_the_shell_at_its_angle_with_a_v_between_square_edges()
    {
        var (wall, half) = (2.0, Math.PI / 4);
        var design = Designs.Vessel(Designs.Shell(), Designs.OnHead("drain", VesselEnd.Bottom, 20, 2, 0)) with
        {
            Bottom = new ConeHead("bottom", Designs.Stainless, wall, half, 1, 0.5),
        };
        var vessel = Compiler.Assemble(design);

        var weld = vessel.Welds.Single(weld => weld.Joint.Path == "bottom");

        Assert.Equal(JointKind.Corner, weld.Joint.Kind);
        // Two square edges that touch inside part by the angle: the kite between them.
        Near.Relative(wall * wall * Math.Tan(half / 2), weld.Joint.Vee, 1e-12);
        // The bore of 16 is taken on the outside; square to the sheet the tip's inner edge is 2 cos 45 narrower.
        Near.Absolute(wall * Math.Cos(half), PortLip.Of(vessel.Sites[0], design), 1e-12);
    }

    [Theory]
    [InlineData("ellipsoid")]
    [InlineData("torisphere")]
    [InlineData("flange")]
    public void A_chart_leads_back_to_its_points_and_its_normal_is_square_to_it(string kind)
    {
        var profile = kind switch
        {
            "ellipsoid" => Domes.Ellipsoid(52, 26, 3),
            "torisphere" => Domes.Torisphere(55, 110, 11),
            _ => Domes.Sphere(55).Moved(-20).Then(new(new LinePiece(new(55, -20), new(55, 0)))),
        };
        var surface = new RevolvedSurface(profile);
        foreach (var chart in Enumerable.Range(1, 40).Select(i => Point2.Polar(surface.Reach * i / 40.3, i)))
        {
            const double h = 1e-5;
            var at = surface.At(chart);
            Assert.True((surface.ChartOf(at) - chart).Length < 1e-7, $"{chart}");
            var (u, v) = (surface.At(chart + new Point2(h, 0)) - at, surface.At(chart + new Point2(0, h)) - at);
            Assert.True(u.Cross(v).Dot(surface.Normal(chart)) > 0.999 * u.Cross(v).Length, $"{chart}");
        }
    }
}
