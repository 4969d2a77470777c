using MathNet.Numerics.Integration;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

/// <summary>Laws of every profile, checked by integrating the curve itself.</summary>
public sealed class ProfileTests
{
    /// <summary>A vessel's outside: bottoms of all kinds, shell, and the same upside down on top.</summary>
    public static TheoryData<string> Names => ["sphere", "torisphere", "ellipsoid", "wall of ellipsoid", "cone", "vessel"];

    internal static Profile Of(string name) => name switch
    {
        "sphere" => Domes.Sphere(55),
        "torisphere" => Domes.Torisphere(55, 110, 11),
        "ellipsoid" => Domes.Ellipsoid(52, 26),
        "wall of ellipsoid" => Domes.Ellipsoid(52, 26, 3),
        "cone" => new(new LinePiece(new(0, -40), new(55, 0)), new LinePiece(new(55, 0), new(55, 12))),
        _ => Domes.Torisphere(55, 88, 17)
            .Then(new(new LinePiece(new(55, 0), new(55, 150))))
            .Then(Domes.Ellipsoid(52, 26, 3).Flipped().Moved(150)),
    };

    private static double Integral(Profile profile, Func<double, double> f)
    {
        double[] ends = [0, .. profile.Joints, profile.Length];
        return ends.Zip(ends.Skip(1)).Sum(piece => GaussKronrodRule.Integrate(f, piece.First, piece.Second, out _, out _, 1e-13, 20, 15));
    }

    private static IEnumerable<double> Places(Profile profile) =>
        Enumerable.Range(0, 200).Select(i => profile.Length * (i + 0.37) / 200);

    [Theory]
    [MemberData(nameof(Names))]
    public void Arc_length_is_the_parameter_and_the_normal_lies_right_of_it(string name)
    {
        var profile = Of(name);

        Assert.All(Places(profile), along =>
        {
            const double h = 1e-4;
            if (profile.Joints.Any(joint => Math.Abs(joint - along) < 2 * h))
                return;
            var tangent = (1 / (2 * h)) * (profile.At(along + h) - profile.At(along - h));
            // h^2 / 6 times the third derivative, at most 1 / radius^2 of the sharpest curve, and rounding 1e-14 R / h.
            Near.Absolute(1, tangent.Length, 1e-8);
            Assert.True((tangent - profile.Normal(along).Turned).Length < 1e-8, $"{along}");
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Area_and_volume_are_the_integrals_over_the_curve(string name)
    {
        var profile = Of(name);

        Near.Relative(Integral(profile, along => Turns.Full * profile.At(along).U), profile.Area, 1e-11);
        // Along the tangent, which is the normal turned, z rises by the normal's r.
        Near.Relative(
            Integral(profile, along => Math.PI * Math.Pow(profile.At(along).U, 2) * profile.Normal(along).U), profile.Volume, 1e-11);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Parts_add_up_to_the_whole(string name)
    {
        var profile = Of(name);
        var cut = 0.41 * profile.Length;
        Profile[] parts = [profile.Part(new(0, cut)), profile.Part(new(cut, profile.Length))];

        Near.Relative(profile.Area, parts.Sum(part => part.Area), 1e-12);
        Near.Relative(profile.Volume, parts.Sum(part => part.Volume), 1e-11);
        Assert.True((parts[0].End - profile.At(cut)).Length < 1e-11);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_parallel_lies_at_its_distance_all_along(string name)
    {
        var profile = Of(name);
        // Outside, a cone's corner is farther from its parallel's.
        var distance = name == "cone" ? -2.5 : 2.5;
        var moved = profile.Offset(distance);

        Near.Absolute(0, profile.Start.U - moved.Start.U, 1e-12);
        Assert.All(Places(moved), along => Near.Absolute(distance, profile.Nearest(moved.At(along)).Distance, 1e-10));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Upside_down_it_sweeps_the_same(string name)
    {
        var (profile, flipped) = (Of(name), Of(name).Flipped());

        Near.Relative(profile.Area, flipped.Area, 1e-13);
        Near.Relative(profile.Volume, flipped.Volume, 1e-13);
        Assert.True((flipped.At(0) - new Point2(profile.End.U, -profile.End.V)).Length < 1e-12);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_nearest_place_to_a_point_off_the_surface_is_below_it(string name)
    {
        var profile = Of(name);

        Assert.All(Places(profile), along =>
        {
            var foot = profile.Nearest(profile.At(along) + (1.5 * profile.Normal(along)));
            Near.Absolute(1.5, foot.Distance, 1e-10);
            Near.Absolute(along, foot.Along, 1e-9);
        });
    }

    /// <summary>A ball, and an ellipsoid's parallel as its kind tends to a ball.</summary>
    [Fact]
    public void A_hardly_flattened_ellipsoid_is_a_sphere()
    {
        var (ball, nearly) = (Domes.Sphere(55), Domes.Ellipsoid(52, 52 - 1e-6, 3));

        Near.Relative(ball.Area, nearly.Area, 1e-7);
        Near.Relative(ball.Volume, nearly.Volume, 1e-7);
        Near.Relative(ball.Length, nearly.Length, 1e-7);
    }

    [Fact]
    public void A_spun_wall_meshes_closed_and_converges_to_its_volume()
    {
        foreach (var name in new[] { "torisphere", "wall of ellipsoid" })
        {
            var outer = Of(name);
            var inner = outer.Offset(-3);
            var (over, under) = (new RevolvedSurface(outer), new RevolvedSurface(inner));
            var solid = ThickSolid.Of(over, under, false,
                [new(Interval.Turn, [], t => Point2.Polar(over.Reach, t), t => Point2.Polar(under.Reach, t))]);
            var exact = outer.Volume - inner.Volume;
            var (coarse, fine) = (Mesher.Flatten(solid, new(0.2, 0.5)), Mesher.Flatten(solid, new(0.05, 0.5)));

            MeshLaws.Hold(fine, 0);
            // Facets lie within the chord of either face.
            Near.Absolute(exact, fine.Volume, 0.05 * (outer.Area + inner.Area));
            Assert.True(Math.Abs(fine.Volume - exact) < 0.5 * Math.Abs(coarse.Volume - exact), name);
        }
    }
}
