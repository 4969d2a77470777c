using Vessel.Geometry;
using Vessel.Stock;
using Xunit;

namespace Vessel.Tests.Published;

/// <summary>
/// Open area and number of holes of the usual patterns: a supplier's pattern sheet (perfom.rs, patterns T, U and M of
/// DIN 24041 / ISO 7806), and inch patterns of the trade (percentages from memory, recomputed). Met in the limit of large
/// discs: the area counted wrongly lies within a cell's reach of the rim.
/// </summary>
public sealed class PerforatedSheet
{
    [Theory]
    [InlineData(GridKind.Staggered60, 1.154700)]
    [InlineData(GridKind.Staggered45, 1.000000)]
    [InlineData(GridKind.Square, 1.000000)]
    public void Holes_per_area_approach_the_published_number_over_the_pitch_squared(GridKind kind, double published)
    {
        const double pitch = 1;
        foreach (var most in new[] { 30.0, 100, 300 })
        {
            // A centre stands for a cell of area 1 / density that reaches a pitch at most from it (its diagonal is shorter
            // than two): all cells of centres within R cover the disc of R - 1 and lie in that of R + 1.
            var count = GridLattice2.Fullest(kind, new(most + 0.35, 0, 0.05), 0.3, pitch).Count;
            var (least, greatest) = (published * Math.PI * Square(most - pitch), published * Math.PI * Square(most + pitch));

            // The published figures have seven digits.
            Assert.InRange(count, least * (1 - 1e-6), greatest * (1 + 1e-6));
        }
    }

    /// <summary>The suppliers' percentages, to the three places printed.</summary>
    [Theory]
    [InlineData("R1 T2", 22.672)]
    [InlineData("R2 T3.5", 29.613)]
    [InlineData("R3 T5", 32.648)]
    [InlineData("R5 T8", 35.426)]
    [InlineData("R10 T15", 40.307)]
    [InlineData("1/16 on 7/64 in", 29.613)]
    [InlineData("5/64 on 7/64 in", 46.270)]
    [InlineData("3/16 on 1/4 in", 51.013)]
    [InlineData("1/4 on 5/16 in", 58.042)]
    [InlineData("1/2 on 11/16 in", 47.968)]
    public void Stock_lists_a_pattern_with_its_published_share(string name, double percent) =>
        Assert.Equal(percent, 100 * SheetPatterns.All.Single(p => p.Name == name).OpenShare, 0.0005);

    [Theory]
    [InlineData(GridKind.Staggered60, 1, 2, 22.672)]
    [InlineData(GridKind.Staggered60, 2, 3.5, 29.613)]
    [InlineData(GridKind.Staggered60, 3, 5, 32.648)]
    [InlineData(GridKind.Staggered60, 5, 8, 35.426)]
    [InlineData(GridKind.Staggered60, 6, 9, 40.307)]
    [InlineData(GridKind.Staggered60, 10, 15, 40.307)]
    [InlineData(GridKind.Staggered60, 25.4 / 16, 25.4 / 8, 22.672)]
    [InlineData(GridKind.Staggered60, 25.4 * 5 / 64, 25.4 * 7 / 64, 46.270)]
    [InlineData(GridKind.Staggered60, 25.4 * 3 / 16, 25.4 / 4, 51.013)]
    [InlineData(GridKind.Staggered60, 25.4 / 4, 25.4 * 5 / 16, 58.042)]
    [InlineData(GridKind.Square, 3, 5, 28.274)]
    [InlineData(GridKind.Staggered45, 3, 5, 28.274)]
    public void Open_area_approaches_the_published_share(GridKind kind, double diameter, double pitch, double percent)
    {
        // 200 pitches of centres: by the same cells the share is right to within 2 / 200 and a little.
        var most = 200 * pitch;
        var field = GridLattice2.Fullest(kind, new(most + (diameter / 2) + 0.01, 0, 0.01), diameter / 2, pitch);

        var share = 100 * field.Area / (Math.PI * most * most);

        Assert.InRange(share, percent * Square(1 - (pitch / most)), percent * Square(1 + (pitch / most)));
    }

    [Fact]
    public void A_staggered_field_holds_fifteen_percent_more_than_a_square_one()
    {
        var within = new Annulus2(300, 0, 1);
        var staggered = GridLattice2.Fullest(GridKind.Staggered60, within, 1, 3).Count;
        var square = GridLattice2.Fullest(GridKind.Square, within, 1, 3).Count;

        // 2 / sqrt 3; each count is right to within the cells of the rim: 2 x 3 / 298 of it.
        Assert.InRange((double)staggered / square, 1.1547 * (1 - 0.041), 1.1547 * (1 + 0.041));
    }

    [Fact]
    public void Weak_direction_keeps_the_published_share_of_metal()
    {
        // (C - D) / C: the least metal on a line through a row's centres. 1/8 on 3/16: 0.3333.
        var field = GridLattice2.Fullest(GridKind.Staggered60, new(40, 0, 2), 25.4 / 16, 25.4 * 3 / 16);
        var row = field.Centers().GroupBy(center => center.V).MaxBy(group => group.Count())!.Select(center => center.U).Order().ToList();

        var steps = row.Zip(row.Skip(1), (a, b) => b - a);

        Assert.All(steps, step => Assert.Equal(0.3333, (step - (2 * field.HoleRadius)) / step, 1e-4));
    }

    private static double Square(double x) => x * x;
}
