using System.Collections.Immutable;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Heads.Dishes;

public sealed class GoreTests
{
    private const double MeanRadius = GoreVessels.Radius - (GoreVessels.Wall / 2);

    /// <summary>A dozen roundings of coordinates of about 100 mm.</summary>
    private const double Rounding = 1e-12;

    [Theory]
    [InlineData(6, 30, 0)]
    [InlineData(13, 90, 22)]
    public void Gores_and_polar_cap_hold_the_metal_of_the_spun_half_sphere(int count, double cap, double drain)
    {
        var spun = Parts(GoreVessels.Of(null, drain: drain)).Single(part => part.Id == "bottom").Volume;
        var parts = Parts(GoreVessels.Of(GoreVessels.Gores(count, cap), drain: drain));

        var (gore, crown) = (parts.Single(part => part.Id == "bottom-gore"), parts.Single(part => part.Id == "bottom-cap"));

        // Differences of cubes of 100 mm lose three of sixteen digits.
        Assert.Equal(count, gore.Quantity);
        Assert.Equal(spun, (count * gore.Volume) + crown.Volume, 1e-12 * spun);
    }

    [Theory]
    [InlineData("bottom")]
    [InlineData("top")]
    public void Sides_of_neighbours_lie_on_each_other_in_space(string end)
    {
        var gore = Gore(end);
        var wall = gore.Solid.Faces.OfType<SideFace>().Single();

        for (var i = 0; i < gore.Quantity; i++)
        {
            var next = gore.Placements[(i + (end == "top" ? gore.Quantity - 1 : 1)) % gore.Quantity];
            foreach (var (edge, share) in new[] { wall.A, wall.B }.SelectMany(edge => Shares().Select(share => (edge, share))))
            {
                var here = gore.Placements[i].ToOuter(edge.At(1 + share));
                var there = next.ToOuter(edge.At(4 - share));
                Assert.True((here - there).Length < Rounding * 100, $"gore {i}: {here} and {there}");
            }
        }
    }

    [Theory]
    [InlineData("bottom")]
    [InlineData("top")]
    public void The_upper_end_of_a_gore_lies_on_the_rim_of_the_polar_cap(string end)
    {
        var (gore, crown) = (Gore(end), Parts(GoreVessels.Of(GoreVessels.Gores())).Single(part => part.Id == $"{end}-cap"));
        var (ours, rim) = (gore.Solid.Faces.OfType<SideFace>().Single(), crown.Solid.Faces.OfType<SideFace>().Single());

        foreach (var (a, b) in new[] { (ours.A, rim.A), (ours.B, rim.B) })
        {
            foreach (var share in Shares())
            {
                var at = gore.Placements[3].ToOuter(a.At(2 + share));
                var local = crown.Placements[0].ToLocal(at);
                var on = crown.Placements[0].ToOuter(b.At(Math.Atan2(local.Y, local.X)));
                Assert.True((at - on).Length < Rounding * 100, $"{at} and {on}");
            }
        }
    }

    [Theory]
    [InlineData("bottom", -1)]
    [InlineData("top", 1)]
    public void All_flats_side_by_side_go_round_the_mean_sphere_at_every_latitude(string end, int up)
    {
        var gore = Gore(end);
        var sides = gore.Flat!.Cut.Outer.Edges.OfType<GraphCurve2>().ToList();

        foreach (var share in Shares())
        {
            var (a, b) = (sides[0].At(sides[0].Range.At(share)), sides[1].At(sides[1].Range.At(1 - share)));
            var latitude = up * a.V / MeanRadius;
            Assert.Equal(a.V, b.V, Rounding * 100);
            Assert.Equal(2 * Math.PI * MeanRadius * Math.Cos(latitude), gore.Quantity * Math.Abs(a.U - b.U), Rounding * 1000);
        }
    }

    [Theory]
    [InlineData("bottom")]
    [InlineData("top")]
    public void The_flats_sides_raise_to_the_meridians_and_lie_flat_again(string end)
    {
        var flat = Gore(end).Flat!;

        foreach (var side in flat.Cut.Outer.Edges.OfType<GraphCurve2>())
        {
            foreach (var point in Shares().Select(share => side.At(side.Range.At(share))))
            {
                var place = flat.From.Raise(point);
                Assert.Equal(Math.PI / 10, Math.Abs(place.U), 1e-13);
                Assert.True((flat.From.Flatten(place) - point).Length < Rounding * 100, $"{point}");
            }
        }
    }

    /// <summary>
    /// A point of the flat, raised and set on the mean sphere in the gore's own frame, must move to the right of one who
    /// looks from outside with the vessel upright when it moves to +x on the flat, and up when it moves to +y.
    /// </summary>
    [Theory]
    [InlineData("bottom")]
    [InlineData("top")]
    public void The_flat_shows_the_outside_with_up_on_top(string end)
    {
        var gore = Gore(end);
        var (development, frame) = (gore.Flat!.From, gore.Placements[0]);
        Vector3 InVessel(Point2 flat)
        {
            var (angle, m) = (development.Raise(flat).U, development.Raise(flat).V);
            var (ring, depth) = (MeanRadius * Math.Cos(m / MeanRadius), MeanRadius * Math.Sin(m / MeanRadius));
            return frame.ToOuter(new(ring * Math.Cos(angle), ring * Math.Sin(angle), -depth));
        }

        var middle = new Point2(0, (end == "top" ? 1 : -1) * 40);
        var here = InVessel(middle);
        var (right, above) = (InVessel(middle + new Point2(5, 0)) - here, InVessel(middle + new Point2(0, 5)) - here);

        Assert.True(Vector3.UnitZ.Cross(here).Dot(right) > 0, "mirrored");
        Assert.True(above.Z > 0, "upside down");
    }

    /// <summary>The flat keeps the mean sphere's area; a wall t on it holds t (1 + t^2 / 12 R^2) of that.</summary>
    [Fact]
    public void Area_of_the_flat_times_wall_is_the_volume()
    {
        var gore = Gore("bottom");
        const double walls = GoreVessels.Wall / MeanRadius;

        var volume = CurveMeasures.Area(gore.Flat!.Cut) * GoreVessels.Wall * (1 + (walls * walls / 12));

        // The area comes from quadrature, good to 1e-10.
        Assert.Equal(gore.Volume, volume, 1e-10 * volume);
    }

    [Theory]
    [InlineData(6)]
    [InlineData(20)]
    public void Both_sides_are_longer_than_the_centre_line_by_the_stated_stretch(int count)
    {
        var flat = Parts(GoreVessels.Of(GoreVessels.Gores(count, 50))).Single(part => part.Id == "bottom-gore").Flat!;
        var gore = Assert.IsType<GoreDevelopment>(flat.From);
        var centreLine = MeanRadius * ((Math.PI / 2) - Math.Asin(25 / MeanRadius));
        const int chords = 20_000;

        foreach (var side in flat.Cut.Outer.Edges.OfType<GraphCurve2>())
        {
            var points = Enumerable.Range(0, chords + 1).Select(i => side.At(side.Range.At((double)i / chords))).ToList();
            var length = points.Zip(points.Skip(1), (a, b) => (b - a).Length).Sum();

            // Chords fall short by (h k)^2 / 24 of the arc, h = 150 mm / 20,000 and curvature k below 1 / R: 2e-10.
            Assert.Equal(centreLine * (1 + gore.Stretch), length, 1e-9 * length);
        }
    }

    [Theory]
    [InlineData(6, 30)]
    [InlineData(12, 80)]
    [InlineData(24, 150)]
    public void Gore_and_polar_cap_are_balls_to_the_mesher(int count, double cap)
    {
        var accuracy = new Accuracy(0.05, 10 * Math.PI / 180);
        foreach (var part in Parts(GoreVessels.Of(GoreVessels.Gores(count, cap)))
            .Where(part => part.Kind is PartKind.Gore or PartKind.Crown))
        {
            var mesh = Mesher.Flatten(part.Solid, accuracy);

            MeshLaws.Hold(mesh, genus: 0);
            Assert.Equal(part.Volume, mesh.Volume, mesh.Area * accuracy.Chord);
        }
    }

    [Fact]
    public void A_drain_goes_through_the_polar_cap()
    {
        var parts = Parts(GoreVessels.Of(GoreVessels.Gores(), drain: 22));

        var crown = parts.Single(part => part.Id == "bottom-cap");

        Assert.Equal("way for drain", Assert.Single(crown.Holes).Purpose);
        MeshLaws.Hold(Mesher.Flatten(crown.Solid, new(0.05, 10 * Math.PI / 180)), genus: 1);
    }

    [Fact]
    public void Marks_stay_on_the_metal()
    {
        foreach (var part in Parts(GoreVessels.Of(GoreVessels.Gores(24, 30))).Where(part => part.Kind == PartKind.Gore))
        {
            var flat = Assert.IsType<GoreDevelopment>(part.Flat!.From);
            Assert.NotEmpty(part.Flat.Marks.OfType<TextMark>());
            foreach (var point in part.Flat.Marks.SelectMany(Corners))
            {
                var m = Math.Abs(point.V);
                Assert.InRange(m, 0, flat.Length);
                Assert.InRange(Math.Abs(point.U), 0, flat.HalfWidth(m));
            }
        }

        // Letters are 0.8 of their height wide with their space.
        static IEnumerable<Point2> Corners(Mark mark) => mark switch
        {
            LineMark line => [line.A, line.B],
            TextMark text =>
                from across in new[] { -0.4, 0.4 }
                from up in new[] { -0.5, 0.5 }
                select text.Center + (text.Height * new Point2(across * text.Text.Length, up)),
            _ => throw new ArgumentException($"no such mark: {mark}"),
        };
    }

    private static IEnumerable<double> Shares() => Enumerable.Range(0, 17).Select(i => i / 16.0);

    private static Part Gore(string end) => Parts(GoreVessels.Of(GoreVessels.Gores())).Single(part => part.Id == $"{end}-gore");

    private static ImmutableArray<Part> Parts(Vessel.Design.VesselDesign vessel) => Compiler.Assemble(vessel).Parts;
}
