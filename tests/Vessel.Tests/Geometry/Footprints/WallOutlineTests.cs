using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

/// <summary>The hole that lets a tube through every radius of a wall, against places searched radius by radius.</summary>
public sealed class WallOutlineTests
{
    private const double Outer = 55;
    private const double Inner = 51;
    private const double Tube = 16;

    /// <summary>Offset, tilt.</summary>
    public static TheoryData<double, double> Cases => new()
    {
        { 0, 0 }, { 0, 0.9 }, { 12, 0.5 }, { -12, -1 }, { 20, 0 }, { 34.9, 0 }, { -34.9, 0.7 }, { 34.999, -1.04 }, { 16.01, 0.5 },
    };

    private static WallOutline Outline(double offset, double tilt) => new(new(Outer, Outer, offset, tilt), Inner, Tube);

    private static IEnumerable<double> Round() => Enumerable.Range(0, 720).Select(i => WallOutline.Domain.At((i + 0.5) / 720));

    /// <summary>From the tube's axis to the place (angle, height) of the outline at one radius of the wall.</summary>
    private static double FromAxis(double offset, double tilt, Point2 place, double radius)
    {
        var (sin, cos) = Math.SinCos(tilt);
        var foot = Math.Sqrt((Outer * Outer) - (offset * offset));
        var (x, y, z) = ((radius * Math.Cos(place.U)) - foot, (radius * Math.Sin(place.U)) - offset, place.V);
        var along = (x * cos) + (z * sin);
        return Math.Sqrt((x * x) + (y * y) + (z * z) - (along * along));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Everywhere_some_radius_of_the_wall_touches_and_none_is_cut(double offset, double tilt)
    {
        var outline = Outline(offset, tilt);
        foreach (var place in Round().Select(outline.At))
        {
            // A difference of squares near 1e4 mm2.
            Near.Absolute(Tube, Convex.Least(radius => FromAxis(offset, tilt, place, radius), Inner, Outer), 1e-9);
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Its_slope_is_that_of_its_points(double offset, double tilt)
    {
        var outline = Outline(offset, tilt);
        foreach (var t in Round())
        {
            const double h = 1e-5;
            var quotient = (1 / (2 * h)) * (outline.At(t + h) - outline.At(t - h));
            // The bend may jump within the step where a face begins to govern; it is at most a few times the size.
            Assert.True((outline.Slope(t) - quotient).Length < 50 * h * (1 + quotient.Length), $"{outline.Slope(t)} {quotient} at {t}");
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Mirrored_offset_mirrors_the_outline(double offset, double tilt)
    {
        var (outline, mirrored) = (Outline(offset, tilt), Outline(-offset, tilt));
        foreach (var t in Round())
        {
            var (a, b) = (outline.At(t), mirrored.At(t <= Math.PI / 2 ? -t : (2 * Math.PI) - t));
            Near.Absolute(-a.U, b.U, 1e-12);
            Near.Absolute(a.V, b.V, 1e-9);
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void It_is_closed_and_turns_vertical_at_both_ends(double offset, double tilt)
    {
        var outline = Outline(offset, tilt);

        Assert.True((outline.At(WallOutline.Domain.Start) - outline.At(WallOutline.Domain.End)).Length < 1e-9);
        Assert.Equal(0, outline.Slope(WallOutline.Domain.Start).U);
        Assert.True(outline.Slope(WallOutline.Domain.Start).V < 0);
        Assert.True(outline.Slope(Math.PI / 2).V > 0);
    }

    [Fact]
    public void A_tube_that_leaves_the_wall_sideways_is_refused() =>
        Assert.Throws<ArgumentException>(() => Outline(Inner - Tube + 0.001, 0));
}
