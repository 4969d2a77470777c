using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Heads.Dishes;

public sealed class GoreSeamsTests
{
    private const double Radius = GoreVessels.Radius;

    private static readonly double _capAngle = Math.Asin(40 / (Radius - (GoreVessels.Wall / 2)));

    [Fact]
    public void Ten_gores_have_ten_seams_and_their_cap_one_before_the_head_is_welded_on()
    {
        var names = Welds().Select(joint => joint.Name).ToList();

        Assert.Equal("top gore to top gore, seam 1", names[1]);
        Assert.Equal("top gore to top gore, seam 10", names[10]);
        Assert.Equal(["top cap to top gore", "top to shell", "bottom gore to bottom gore, seam 1"], names[11..14]);
        Assert.Equal(["bottom cap to bottom gore", "bottom to shell"], names[23..25]);
    }

    [Fact]
    public void Numbers_are_those_of_the_order()
    {
        var welds = Welds();

        Assert.Equal(Enumerable.Range(1, welds.Count).Select(i => $"W{i}"), welds.Select(joint => joint.Number));
    }

    [Fact]
    public void Welds_join_parts_that_exist()
    {
        var assembly = Compiler.Assemble(GoreVessels.Of(GoreVessels.Gores(), drain: 22));
        var ids = assembly.Parts.Select(part => part.Id).ToHashSet();

        Assert.All(assembly.Welds, weld => Assert.All(weld.Joint.Between, id => Assert.Contains(id, ids)));
    }

    [Fact]
    public void A_seam_is_a_meridian_from_the_girth_to_the_cap()
    {
        foreach (var joint in Welds().Where(joint => joint.Name.Contains(", seam", StringComparison.Ordinal)))
            Assert.Equal(Radius * ((Math.PI / 2) - _capAngle), joint.Length, 1e-9);
    }

    [Fact]
    public void The_caps_seam_is_the_circle_on_the_outside()
    {
        foreach (var joint in Welds().Where(joint => joint.Name.Contains("cap to", StringComparison.Ordinal)))
            Assert.Equal(2 * Math.PI * Radius * Math.Sin(_capAngle), joint.Length, 1e-9);
    }

    [Theory]
    [InlineData("bottom", 0)]
    [InlineData("top", 160)]
    public void The_first_seam_starts_at_the_girth_in_its_direction(string end, double height)
    {
        var joint = Welds().Single(joint => joint.Name == $"{end} gore to {end} gore, seam 1");

        var start = joint.Along(joint.Domain.Start).Root;

        var expected = new Vector3(Radius * Math.Cos(0.3), Radius * Math.Sin(0.3), height);
        Assert.True((start - expected).Length < 1e-11, $"{start}");
    }

    /// <summary>Both sides of a seam are sides of gores: the first of one, the last of the other.</summary>
    [Theory]
    [InlineData("bottom")]
    [InlineData("top")]
    public void Every_seam_runs_along_the_side_of_a_gore(string end)
    {
        var assembly = Compiler.Assemble(GoreVessels.Of(GoreVessels.Gores()));
        var gore = assembly.Parts.Single(part => part.Id == $"{end}-gore");
        var outer = gore.Solid.Faces.OfType<SideFace>().Single().A;
        var seams = assembly.Welds.Select(weld => weld.Joint)
            .Where(joint => joint.Name.StartsWith($"{end} gore to {end} gore", StringComparison.Ordinal))
            .ToList();

        for (var i = 0; i < seams.Count; i++)
        {
            foreach (var share in new[] { 0, 0.3, 1 })
            {
                var root = seams[i].Along(seams[i].Domain.At(share)).Root;
                // Gore i lies from seam i on; on the top the frame's angles count the other way.
                var side = gore.Placements[i].ToOuter(outer.At(end == "top" ? 1 + share : 4 - share));
                Assert.True((root - side).Length < 1e-10, $"seam {i} at {share}: {root} and {side}");
            }
        }
    }

    [Fact]
    public void Stations_are_square_to_the_sphere()
    {
        foreach (var joint in Welds().Where(joint => joint.Name.Contains("gore", StringComparison.Ordinal)))
        {
            var at = joint.Along(joint.Domain.At(0.4));
            var centre = new Vector3(0, 0, at.Root.Z > 100 ? 160 : 0);
            var normal = (at.Root - centre).Unit();

            Assert.Equal(Radius, (at.Root - centre).Length, 1e-11);
            Assert.All([at.Tangent.Unit(), at.AlongHost, at.AlongPart], way => Assert.Equal(0, way.Dot(normal), 1e-12));
            Assert.Equal(0, at.Tangent.Unit().Dot(at.AlongPart), 1e-12);
            Assert.Equal(-1, at.AlongHost.Dot(at.AlongPart), 1e-12);
        }
    }

    private static List<Joint> Welds() =>
        [.. Compiler.Assemble(GoreVessels.Of(GoreVessels.Gores())).Welds.Select(weld => weld.Joint)];
}
