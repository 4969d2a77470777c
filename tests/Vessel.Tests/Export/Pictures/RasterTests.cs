using Vessel.Export;
using Vessel.Export.Pictures;
using Vessel.Export.Report;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export.Pictures;

/// <summary>What the samples show, against the closed forms of the shapes.</summary>
public sealed class RasterTests
{
    /// <summary>Seen along +X: right is +Y, up is +Z.</summary>
    private static Raster Seen(Mesh mesh, Frame3 place, double round = 0, double above = 0)
    {
        var raster = new Raster(Outlook.Of(mesh.Vertices.Select(place.ToOuter), round, above, 400, 10));
        raster.Draw(mesh, place, 1);
        return raster;
    }

    private static Mesh Disc(double radius, double thickness) =>
        Mesher.Flatten(ThickSolid.Plate(new Region2(Loop2.Circle(default, radius), []), thickness), new(0.01, 0.1));

    [Theory]
    [InlineData(0)]
    [InlineData(0.5)]
    [InlineData(1.2)]
    public void A_disc_covers_the_area_of_its_ellipse_and_rim(double above)
    {
        var raster = Seen(Disc(50, 4), Frame3.Identity, 0.3, above);
        var (sin, cos) = Math.SinCos(above);
        var area = (Math.PI * 50 * 50 * sin) + (100 * 4 * cos);

        var covered = raster.Body.Count(body => body == 1) / (raster.Outlook.Scale * raster.Outlook.Scale);

        // Half a sample along the outline, which is shorter than that of the disc and its rim.
        Near.Absolute(area, covered, ((2 * Math.PI * 50) + 8) * 0.5 / raster.Outlook.Scale);
    }

    [Fact]
    public void The_nearer_of_two_bodies_hides_the_other_whatever_comes_first()
    {
        var (mesh, front) = (Disc(20, 2), Frame3.At(new(0, 0, 30)));
        var outlook = Outlook.Of(mesh.Vertices.Concat(mesh.Vertices.Select(front.ToOuter)), 0, Math.PI / 2, 200, 4);
        var (one, other) = (new Raster(outlook), new Raster(outlook));
        one.Draw(mesh, Frame3.Identity, 1);
        one.Draw(mesh, front, 2);
        other.Draw(mesh, front, 2);
        other.Draw(mesh, Frame3.Identity, 1);

        Assert.DoesNotContain((ushort)1, one.Body);
        Assert.Equal(one.Body, other.Body);
    }

    [Fact]
    public void Depth_is_that_of_the_face_that_is_seen()
    {
        var raster = Seen(Disc(30, 5), Frame3.At(new(0, 0, 7)), 0, Math.PI / 2);
        var middle = (raster.Outlook.Height / 2 * raster.Outlook.Width) + (raster.Outlook.Width / 2);
        var top = Disc(30, 5).Vertices.Max(v => v.Z) + 7;

        // Single precision holds seven digits.
        Near.Relative(top * raster.Outlook.Scale, raster.DepthAt(middle), 1e-6);
    }

    [Fact]
    public void Pictures_are_small_and_the_same_each_time()
    {
        var options = new BuildOptions(new(Tolerance: 0.2), false, new(0.5, Math.PI / 6), "test", "00");
        var build = Build.Of(Compiler.Assemble(Designs.Sound), [], options);
        var (one, other) = (new StillPictures(build, 400), new StillPictures(build, 400));

        Assert.Equal(one.Whole, other.Whole);
        Assert.Equal(one.Section, other.Section);
        Assert.NotEqual(one.Whole, one.Section);
        Assert.InRange(one.Whole.Length, 1000, 150_000);
    }
}
