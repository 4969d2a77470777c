using Vessel.Geometry;
using Xunit;

namespace Vessel.Tests.Geometry;

public sealed class HolePolygonTests
{
    public static TheoryData<double, double, double, int> Holes() =>
        [.. from radius in (double[])[0.3, 1, 1.5, 6, 40] from chord in (double[])[0.005, 0.05, 0.2] from web in (double[])[0.05, 2, 60]
            from times in (int[])[1, 4, 6] select (radius, chord, web, times)];

    /// <summary>No corner and no side is farther from the circle than the chord,
    /// and no corner takes more than a tenth of the web.</summary>
    [Theory]
    [MemberData(nameof(Holes))]
    public void It_keeps_to_the_circle(double radius, double chord, double web, int times)
    {
        var polygon = HolePolygon.Of(radius, chord, web, times);

        Assert.Equal(0, polygon.Corners % times);
        Assert.InRange(polygon.Radius - radius, 0, Math.Min(chord, 0.1 * web) + 1e-12);
        Assert.InRange(radius - (polygon.Radius * Math.Cos(Math.PI / polygon.Corners)), 0, chord + 1e-12);
    }

    /// <summary>Wherever its corners stand out it has the circle's own area, and no more corners than one inscribed;
    /// n/2 R^2 sin(2 pi/n).</summary>
    [Theory]
    [MemberData(nameof(Holes))]
    public void It_has_the_circles_area_where_the_web_is_wide(double radius, double chord, double web, int times)
    {
        var polygon = HolePolygon.Of(radius, chord, web, times);
        var area = polygon.Corners / 2.0 * polygon.Radius * polygon.Radius * Math.Sin(Turns.Full / polygon.Corners);
        // Inscribed: r (1 - cos(pi/n)) at most the chord, eight corners at least.
        var inscribed = Math.Max(8, chord < radius ? Math.PI / Math.Acos(1 - (chord / radius)) : 0);

        Assert.True(polygon.Corners <= times * Math.Ceiling((inscribed / times) - 1e-9));
        if (polygon.Radius > radius)
            Assert.Equal(1, area / (Math.PI * radius * radius), 1e-12);
        else
            // The least polygon of those corners would stand out by more than its share: r (x^2 / 12 + ...) with x = 2 pi / n.
            Assert.True(radius * (Math.Sqrt(Turns.Full / polygon.Corners / Math.Sin(Turns.Full / polygon.Corners)) - 1) > 0.1 * web);
    }
}
