using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

public sealed class LatticeTests
{
    /// <summary>What rounding may let a hole stand beyond its margin, mm; ten times the slack of a lattice.</summary>
    private const double Slack = 1e-8;

    public static TheoryData<string, double, double> Plates => new()
    {
        { "Staggered60", 36, 0 },
        { "Staggered60", 36.4, 9 },
        { "Staggered45", 41, 0 },
        { "Staggered45", 41.3, 3 },
        { "Square", 33, 0 },
        { "Square", 47.9, 12 },
        { "Rings", 36, 0 },
        { "Rings", 36.6, 7 },
        { "Rings", 9, 0 },
        { "Staggered60", 5.6, 0 },
    };

    [Theory]
    [MemberData(nameof(Plates))]
    public void Centres_keep_the_pitch(string kind, double outer, double bore)
    {
        var field = Fields.Of(kind, new(outer, bore, 2), 1.5, 5);

        var centers = field.Centers().ToList();

        // Neighbours at just a pitch differ from it by rounding of coordinates below 64 mm, 2^-47 each.
        Assert.All(Pairs(centers), pair => Assert.True((pair.A - pair.B).Length >= 5 - 1e-9));
    }

    [Theory]
    [MemberData(nameof(Plates))]
    public void Holes_keep_the_margin(string kind, double outer, double bore)
    {
        var field = Fields.Of(kind, new(outer, bore, 2), 1.5, 5);

        Assert.All(field.Centers(), center =>
        {
            Assert.True(center.Length + 1.5 + 2 <= outer + Slack);
            Assert.True(bore == 0 || center.Length - 1.5 - 2 >= bore - Slack);
        });
    }

    [Theory]
    [MemberData(nameof(Plates))]
    public void A_lattice_counts_what_it_lists(string kind, double outer, double bore)
    {
        var field = Fields.Of(kind, new(outer, bore, 2), 1.5, 5);

        Assert.Equal(field.Centers().Count(), field.Count);
        Assert.Equal(field.Count * Math.PI * 1.5 * 1.5, field.Area, 1e-9);
    }

    [Theory]
    [InlineData(GridKind.Staggered60)]
    [InlineData(GridKind.Staggered45)]
    [InlineData(GridKind.Square)]
    public void A_grid_holds_every_point_of_its_rule_that_fits(GridKind kind)
    {
        // The rule by two lattice vectors, with no thought of rows.
        var (a, b) = kind switch
        {
            GridKind.Staggered60 => (new Point2(5, 0), 5 * Point2.Polar(1, Math.PI / 3)),
            GridKind.Staggered45 => (5 * Point2.Polar(1, Math.PI / 4), 5 * Point2.Polar(1, -Math.PI / 4)),
            _ => (new Point2(5, 0), new Point2(0, 5)),
        };
        for (var trial = 0; trial < 40; trial++)
        {
            // Sizes and phases that no centre meets exactly.
            var (outer, bore) = (9.17 + (0.731 * trial), trial % 3 == 0 ? 0 : 0.413 * trial);
            var grid = new GridLattice2(kind, new(outer, bore, 2), 1.5, 5, new(0.137 + (0.017 * trial), 0.071 + (0.011 * trial)));
            var origin = new Point2(grid.Phase.U * grid.HalfStep, grid.Phase.V * grid.RowStep);

            var expected = (
                from i in Enumerable.Range(-30, 61)
                from k in Enumerable.Range(-30, 61)
                let center = origin + (i * a) + (k * b)
                where center.Length <= outer - 3.5 && (bore == 0 || center.Length >= bore + 3.5)
                select center).ToList();

            Assert.Equal(expected.Count, grid.Count);
            Assert.All(grid.Centers(), center => Assert.Contains(expected, p => (p - center).Length < 1e-9));
        }
    }

    [Theory]
    [InlineData(GridKind.Staggered60)]
    [InlineData(GridKind.Staggered45)]
    [InlineData(GridKind.Square)]
    public void A_random_phase_holds_at_most_one_hole_more_than_the_fullest_that_was_found(GridKind kind)
    {
        // The search is not exhaustive; what it may miss is measured against 2000 phases of its own for each plate.
        var random = new Random(7);
        foreach (var outer in new[] { 20.0, 36.4, 61.7 })
        {
            var within = new Annulus2(outer, 0, 2);
            var fullest = GridLattice2.Fullest(kind, within, 1.5, 5).Count;
            var best = Enumerable.Range(0, 2000).Max(_ =>
                new GridLattice2(kind, within, 1.5, 5, new(2 * random.NextDouble(), random.NextDouble())).Count);

            Assert.True(best <= fullest + 1, $"{outer}: {best} holes fit, {fullest} were found");
        }
    }

    [Theory]
    [InlineData(GridKind.Staggered60)]
    [InlineData(GridKind.Staggered45)]
    [InlineData(GridKind.Square)]
    public void The_fullest_phase_is_never_worse_than_a_hole_at_the_centre(GridKind kind)
    {
        for (var outer = 5.1; outer < 60; outer += 0.37)
        {
            var within = new Annulus2(outer, 0, 2);

            Assert.True(GridLattice2.Fullest(kind, within, 1.5, 5).Count >= new GridLattice2(kind, within, 1.5, 5, default).Count);
        }
    }

    [Theory]
    [InlineData(GridKind.Staggered60, 1, 0)]
    [InlineData(GridKind.Staggered60, 0, 0.5)]
    [InlineData(GridKind.Staggered45, 0, 0)]
    [InlineData(GridKind.Square, 1, 0.5)]
    public void A_symmetric_phase_gives_a_pattern_with_mirrors(GridKind kind, double u, double v)
    {
        var grid = new GridLattice2(kind, new(47.3, 8, 2), 1.5, 5, new(u, v));
        var centers = grid.Centers().ToList();

        Assert.All(centers, center => Assert.Contains(new Point2(-center.U, center.V), centers));
    }

    [Fact]
    public void Six_holes_stand_round_the_first_where_seven_just_fit()
    {
        // Radius of the centres' circle: a pitch exactly.
        var within = new Annulus2(5 + 1.5 + 2, 0, 2);

        Assert.Equal(7, GridLattice2.Fullest(GridKind.Staggered60, within, 1.5, 5).Count);
        Assert.Equal(7, new RingLattice2(within, 1.5, 5).Count);
    }

    [Fact]
    public void A_plate_smaller_than_a_hole_and_its_margin_has_none()
    {
        var within = new Annulus2(3.4, 0, 2);

        Assert.Equal(0, GridLattice2.Fullest(GridKind.Square, within, 1.5, 5).Count);
        Assert.Equal(0, new RingLattice2(within, 1.5, 5).Count);
    }

    [Theory]
    [InlineData(3, 3, 2)]
    [InlineData(3, 5, 0)]
    [InlineData(0, 5, 2)]
    public void Holes_that_would_touch_are_refused(double diameter, double pitch, double margin) =>
        Assert.Throws<ArgumentException>(() => new RingLattice2(new(36, 0, margin), diameter / 2, pitch));

    [Fact]
    public void A_ring_holds_one_hole_less_than_would_break_the_pitch()
    {
        var rings = new RingLattice2(new(50, 0, 2), 1.5, 5).Centers().GroupBy(center => Math.Round(center.Length, 6))
            .Where(ring => ring.Key > 0);

        Assert.All(rings, ring => Assert.True(2 * ring.Key * Math.Sin(Math.PI / (ring.Count() + 1)) < 5));
    }

    private static IEnumerable<(Point2 A, Point2 B)> Pairs(List<Point2> points) =>
        points.SelectMany((a, i) => points.Skip(i + 1).Select(b => (a, b)));
}
