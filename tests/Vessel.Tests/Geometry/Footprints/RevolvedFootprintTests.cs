using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

/// <summary>Lines that meet bodies of revolution, against the surfaces' own equations.</summary>
public sealed class RevolvedFootprintTests
{
    private static IEnumerable<double> Round() => Enumerable.Range(0, 180).Select(i => Turns.Full * (i + 0.25) / 180);

    /// <summary>Axis through a place of the vessel's outside, leaning so far from its normal.</summary>
    private static Frame3 Axis(Profile on, double share, double turn, double lean)
    {
        var along = share * on.Length;
        var (at, normal) = (on.At(along), on.Normal(along));
        var (sin, cos) = Math.SinCos(turn);
        Vector3 Placed(Point2 p) => new(p.U * cos, p.U * sin, p.V);
        var (z, sideways) = (Placed(normal), new Vector3(-sin, cos, 0));
        var x = sideways.Cross(z);
        var (ls, lc) = Math.SinCos(lean);
        return new(Placed(at), (lc * x) - (ls * z), sideways, (lc * z) + (ls * x));
    }

    /// <summary>On dish, knuckle, shell and over their joints; square and leaning; r 9.</summary>
    private static IEnumerable<RevolvedFootprint> All()
    {
        foreach (var name in ProfileTests.Names)
        {
            var on = ProfileTests.Of(name.Data);
            foreach (var share in new[] { 0, 0.2, 0.35, 0.5, 0.62, 0.7 })
            {
                foreach (var lean in new[] { 0, 0.4, -0.3 })
                    yield return new(on, Axis(on, share, 0.7, lean));
            }
        }
    }

    /// <summary>The surface of a piece by its own equation, zero on it; mm.</summary>
    private static double Equation(ProfilePiece piece, Vector3 at)
    {
        var r = Math.Sqrt((at.X * at.X) + (at.Y * at.Y));
        return piece switch
        {
            LinePiece line => ((r - line.A.U) * (line.B.V - line.A.V) / line.Length)
                - ((at.Z - line.A.V) * (line.B.U - line.A.U) / line.Length),
            ArcPiece arc => Math.Sqrt(Math.Pow(r - arc.Center.U, 2) + Math.Pow(at.Z - arc.Center.V, 2)) - arc.Radius,
            EllipsePiece ellipse => Ellipse(ellipse, r, at.Z - ellipse.Height),
            _ => double.NaN,
        };
    }

    /// <summary>Of the ellipse itself; of a parallel by the greatest support: max over normals of (n . p - h(n)), h its own.</summary>
    private static double Ellipse(EllipsePiece e, double r, double z)
    {
        if (e.Beyond == 0)
            return (Math.Sqrt((r * r / (e.A * e.A)) + (z * z / (e.B * e.B))) - 1) * e.B;
        var (low, high) = (-Math.PI / 2, Math.PI / 2);
        double Over(double t) => (r * Math.Cos(t)) + (z * Math.Sin(t))
            - Math.Sqrt(Math.Pow(e.A * Math.Cos(t), 2) + Math.Pow(e.B * Math.Sin(t), 2)) - e.Beyond;
        for (var i = 0; i < 200; i++)
        {
            var (a, b) = (low + ((high - low) / 3), high - ((high - low) / 3));
            if (Over(a) < Over(b))
                low = a;
            else
                high = b;
        }

        return Over((low + high) / 2);
    }

    [Fact]
    public void Meeting_points_satisfy_the_equation_of_the_piece_that_is_met()
    {
        foreach (var footprint in All().Where(f => f.Takes(9)))
        {
            Assert.All(Round(), phi =>
            {
                var hit = footprint.Hit(9, phi)!.Value;
                Near.Absolute(0, Equation(footprint.On.Pieces[hit.Piece], hit.At), 1e-9);
                Near.Absolute(0, (footprint.Axis.ToOuter(footprint.At(9, phi)) - hit.At).Length, 1e-9);
            });
        }
    }

    [Fact]
    public void Most_of_the_tried_places_take_a_port() => Assert.True(All().Count(f => f.Takes(9)) > 75);

    [Fact]
    public void No_place_of_the_line_before_the_first_hit_lies_in_the_body()
    {
        foreach (var footprint in All().Where(f => f.Takes(9)))
        {
            Assert.All(Round().Where((_, i) => i % 9 == 0), phi => Assert.All(
                Enumerable.Range(1, 40),
                i => Assert.True(footprint.Distance(Footprint.OnLine(9, phi, footprint.Reach(9, phi) + (0.5 * i))) > 0)));
        }
    }

    [Fact]
    public void Distance_grows_by_one_along_the_normal()
    {
        foreach (var footprint in All().Where(f => f.Takes(9)))
        {
            Assert.All(Round(), phi =>
            {
                var normal = footprint.Normal(9, phi);
                Near.Absolute(1, normal.Length, 1e-12);
                Near.Absolute(2, footprint.Distance(footprint.At(9, phi) + (2 * normal)), 1e-9);
            });
        }
    }

    [Fact]
    public void Slopes_are_those_of_the_points_away_from_the_breaks()
    {
        foreach (var footprint in All().Where(f => f.Takes(9)))
        {
            var breaks = footprint.Breaks(9);
            Assert.All(Round().Where(phi => breaks.All(b => Math.Abs(b - phi) > 0.01)), phi =>
            {
                const double h = 1e-5;
                var quotient = (1 / (2 * h)) * (footprint.At(9, phi + h) - footprint.At(9, phi - h));
                Assert.True((quotient - footprint.PathSlope(9, phi)).Length < 1e-4, $"{footprint} {phi}");
            });
        }
    }

    [Fact]
    public void The_governing_radius_reaches_furthest()
    {
        foreach (var footprint in All().Where(f => f.Takes(9)))
        {
            Assert.All(Round(), phi =>
            {
                var best = footprint.Reach(footprint.GoverningRadius(7, 9, phi), phi);
                Assert.All([7, 7.5, 8, 8.5, 9], r => Assert.True(best >= footprint.Reach(r, phi) - 1e-9));
            });
        }
    }

    /// <summary>Two descriptions of one cylinder, up to a line that touches it.</summary>
    [Fact]
    public void On_a_cylinder_it_is_the_cylinders_own_footprint()
    {
        var on = new Profile(new LinePiece(new(55, -500), new(55, 500)));
        foreach (var (offset, tilt) in new[] { (0.0, 0.0), (20, 0.5), (-30, -1), (38.999, 1) })
        {
            var own = new CylinderFootprint(55, 55, offset, tilt);
            var (rise, level) = Math.SinCos(tilt);
            var axis = new Frame3(
                new(Math.Sqrt((55 * 55) - (offset * offset)), offset, 10), new(rise, 0, -level), Vector3.UnitY, new(level, 0, rise));
            var turned = new RevolvedFootprint(on, axis);

            // Towards a line that touches at 0.001 mm the reach changes by R / sqrt(2 R 0.001) of a rounding error.
            Assert.All(Round(), phi => Near.Absolute(own.Reach(16, phi), turned.Reach(16, phi), 1e-9));
        }
    }

    [Fact]
    public void A_line_beside_the_body_misses_and_one_that_touches_grazes()
    {
        foreach (var name in new[] { "sphere", "torisphere", "wall of ellipsoid" })
        {
            var on = ProfileTests.Of(name);
            RevolvedFootprint At(double x) =>
                new(on, Frame3.Identity with { Origin = new(x, 0, 0), X = Vector3.UnitY, Y = Vector3.UnitX, Z = -Vector3.UnitZ });

            Assert.Null(At(55.001).Hit(0, 0));
            Assert.True(At(55).Hit(0, 0) is { Grazes: true } or null);
            Assert.False(At(54.9).Hit(0, 0)!.Value.Grazes);
            Assert.False(At(50).Takes(6));
            Assert.True(At(45).Takes(6));
        }
    }

    [Fact]
    public void A_path_breaks_where_it_passes_from_crown_to_knuckle()
    {
        var on = Domes.Torisphere(55, 110, 11);
        var down = new RevolvedFootprint(
            on, Frame3.Identity with { Origin = new(40, 0, -15), Y = -Vector3.UnitY, Z = -Vector3.UnitZ });
        var joint = on.At(on.Joints[0]).U;

        Assert.Equal(2, down.Breaks(9).Length);
        Assert.All(down.Breaks(9), phi => Near.Absolute(joint, Math.Sqrt(1600 + 81 + (720 * Math.Cos(phi))), 1e-9));
    }
}
