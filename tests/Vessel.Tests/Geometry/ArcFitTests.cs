using Vessel.Design;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Geometry;

public sealed class ArcFitTests
{
    private const double Degree = Math.PI / 180;

    public static TheoryData<string, double> Cases => new MatrixTheoryData<string, double>(
        ["ellipse", "slim ellipse", "circle", "branch", "offset branch", "branch to the edge", "tangent branch", "wavy strip",
            "flat strip", "far away"],
        [0.1, 0.001]);

    public static TheoryData<string> Names => [.. Cases.Select(row => row.Data.Item1).Distinct()];

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_curve_stays_within_the_tolerance_of_the_arcs(string name, double tolerance)
    {
        var loop = Named(name);
        var arcs = BulgeChain.Points(ArcFit.Fit(loop, tolerance).Vertices, 2000);

        var distance = BulgeChain.Distance(BulgeChain.Points(loop, 2000), arcs);

        Assert.InRange(distance, 0, tolerance + Sagitta);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void The_arcs_stay_within_the_tolerance_of_the_curve(string name, double tolerance)
    {
        var loop = Named(name);
        var arcs = BulgeChain.Points(ArcFit.Fit(loop, tolerance).Vertices, 50);

        var distance = BulgeChain.Distance(arcs, BulgeChain.Points(loop, 40_000));

        Assert.InRange(distance, 0, tolerance + Sagitta);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_deviation_that_is_reported_is_the_one_that_is_there(string name)
    {
        const double tolerance = 0.01;
        var loop = Named(name);
        var fit = ArcFit.Fit(loop, tolerance);

        var distance = BulgeChain.Distance(BulgeChain.Points(loop, 4000), BulgeChain.Points(fit.Vertices, 2000));

        // Both sample the same crest: 768 places a biarc miss it by less than 1e-4 of its height.
        Assert.Equal(distance, fit.Deviation, Sagitta + (0.001 * tolerance));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Arcs_meet_without_kinks_but_at_the_corners_of_the_curve(string name)
    {
        const double tolerance = 0.01;
        var loop = Named(name);

        var kinks = BulgeChain.Kinks(ArcFit.Fit(loop, tolerance).Vertices).Count(kink => kink > 0.1 * Degree);

        Assert.Equal(name.Contains("strip", StringComparison.Ordinal) ? 4 : 0, kinks);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_area_differs_by_less_than_the_perimeter_times_the_tolerance(string name)
    {
        const double tolerance = 0.01;
        var loop = Named(name);

        var area = BulgeChain.Area(ArcFit.Fit(loop, tolerance).Vertices);

        Assert.Equal(CurveMeasures.Area(loop), area, CurveMeasures.Length(loop) * tolerance);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Going_round_the_other_way_takes_as_many_biarcs(string name)
    {
        const double tolerance = 0.01;
        var loop = Named(name);

        var there = ArcFit.Fit(loop, tolerance).Vertices;
        var back = ArcFit.Fit(Curves.Reversed(loop), tolerance).Vertices;

        // The biarcs are as many; one that straddles a crest of the curvature may come out as a single arc.
        Assert.InRange(back.Length, there.Length - 1, there.Length + 1);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Going_round_the_other_way_encloses_the_opposite_area(string name)
    {
        const double tolerance = 0.01;
        var loop = Named(name);

        var there = BulgeChain.Area(ArcFit.Fit(loop, tolerance).Vertices);
        var back = BulgeChain.Area(ArcFit.Fit(Curves.Reversed(loop), tolerance).Vertices);

        Assert.Equal(there, -back, 2 * CurveMeasures.Length(loop) * tolerance);
    }

    [Theory]
    [InlineData("ellipse")]
    [InlineData("offset branch")]
    [InlineData("wavy strip")]
    public void A_thousandth_of_the_tolerance_takes_about_ten_times_the_arcs(string name)
    {
        // A biarc of length h misses by a multiple of h^3, so the number goes with the cube root; once round there
        // are at least four biarcs whatever the tolerance, hence the wide range.
        var coarse = ArcFit.Fit(Named(name), 0.01).Vertices.Length;
        var fine = ArcFit.Fit(Named(name), 0.00001).Vertices.Length;

        Assert.InRange((double)fine / coarse, 5, 11);
    }

    [Theory]
    [InlineData("ellipse")]
    [InlineData("offset branch")]
    [InlineData("wavy strip")]
    public void More_tolerance_never_takes_more_arcs(string name)
    {
        double[] tolerances = [0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1];

        var counts = tolerances.Select(tolerance => ArcFit.Fit(Named(name), tolerance).Vertices.Length).ToList();

        Assert.Equal(counts.OrderDescending(), counts);
    }

    [Fact]
    public void A_circle_given_by_a_function_is_found_to_be_a_few_arcs_without_deviation()
    {
        var fit = ArcFit.Fit(Named("circle"), 0.01);

        // Each is a little less than half a turn.
        Assert.Equal(3, fit.Vertices.Length);
        Assert.All(fit.Vertices, vertex => Assert.InRange(vertex.Value, 0, 1));
        Assert.InRange(fit.Deviation, 0, 0.01);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.01)]
    [InlineData(0.001)]
    public void Few_more_arcs_are_used_than_the_longest_one_after_the_other_are(double tolerance)
    {
        // The greedy ones may turn corners where they meet; ours may not, and where the curve is symmetric that costs one;
        // of a handful two.
        var pairs = Names.Select(name => Named(name.Data))
            .Select(loop => (Ours: ArcFit.Fit(loop, tolerance).Vertices.Length, Greedy: LongestArcs.Count(loop, tolerance)))
            .ToList();

        Assert.True(pairs.Sum(pair => pair.Ours) <= 1.2 * pairs.Sum(pair => pair.Greedy), string.Join(", ", pairs));
        Assert.All(pairs, pair => Assert.InRange(pair.Ours, 0, Math.Floor(1.2 * pair.Greedy) + (pair.Greedy < 5 ? 2 : 1)));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(20, 0)]
    [InlineData(0, 0.5)]
    public void A_ground_end_that_reaches_the_shells_side_keeps_its_corner(double offset, double tilt)
    {
        var design = Designs.Vessel(
            Designs.Shell(height: 400), Designs.Branch("wide", 110 - (2 * offset), 2, new(200, 0, offset, tilt, 0)) with
            {
                Cut = EndCut.Ground,
                Length = 160,
            });
        var cope = Compiler.Assemble(design).Parts.Single(part => part.Name == "wide").Flat!.Cut.Outer;

        var fit = ArcFit.Fit(cope, 0.01);

        Assert.InRange(fit.Deviation, 0, 0.01);
        var tip = cope.Edges[0].At(Math.PI / 2);
        Assert.Contains(fit.Vertices, vertex => (vertex.At - tip).Length < 1e-9);
    }

    [Fact]
    public void A_straight_graph_becomes_one_line()
    {
        var edge = new GraphCurve2(t => new(t, 0), _ => new(1, 0), new(0, 90), []);
        var loop = new Loop2([edge, new Line2(new(90, 0), new(90, 40)), new Line2(new(90, 40), new(0, 0))]);

        Assert.Equal([new Bulge(new(0, 0), 0), new Bulge(new(90, 0), 0), new Bulge(new(90, 40), 0)], ArcFit.Fit(loop, 0.01).Vertices);
    }

    [Fact]
    public void A_slot_of_lines_and_half_circles_is_kept_as_it_is()
    {
        var slot = new Loop2([
            new Line2(new(0, 0), new(20, 0)),
            new Arc2(new(20, 5), 5, -Math.PI / 2, Math.PI),
            new Line2(new(20, 10), new(0, 10)),
            new Arc2(new(0, 5), 5, Math.PI / 2, Math.PI),
        ]);

        var fit = ArcFit.Fit(slot, 0.01);

        Assert.Equal(0, fit.Deviation);
        Assert.Equal(4, fit.Vertices.Length);
        Assert.Equal(CurveMeasures.Area(slot), BulgeChain.Area(fit.Vertices), 1e-9);
    }

    [Fact]
    public void A_whole_circle_becomes_two_half_circles()
    {
        var fit = ArcFit.Fit(Loop2.Circle(new(3, 4), 7, clockwise: true), 0.01);

        Assert.Equal(2, fit.Vertices.Length);
        Assert.Equal(-Math.PI * 49, BulgeChain.Area(fit.Vertices), 1e-9);
    }

    [Fact]
    public void A_named_corner_becomes_a_vertex()
    {
        // |sin| has a corner half-way.
        var roof = new GraphCurve2(
            t => new(t, 10 * Math.Abs(Math.Sin(t / 10))),
            t => new(1, Math.Cos(t / 10) * Math.Sign(Math.Sin(t / 10))),
            new(0, 20 * Math.PI), [10 * Math.PI]);
        var loop = new Loop2([roof, new Line2(roof.End, roof.Start)]);

        var fit = ArcFit.Fit(loop, 0.01);

        Assert.Contains(fit.Vertices, vertex => (vertex.At - new Point2(10 * Math.PI, 0)).Length < 1e-9);
        Assert.InRange(fit.Deviation, 0, 0.01);
    }

    [Fact]
    public void A_curve_without_values_is_refused()
    {
        var nothing = Curves.Smooth(_ => new(double.NaN, 0), _ => new(1, 0));

        Assert.Throws<ArgumentException>(() => ArcFit.Fit(nothing, 0.01));
    }

    // The polygons that distances are taken to have sides under 0.2 mm on radii over 5 mm: side^2 / (8 radius).
    private const double Sagitta = 1e-5;

    private static Loop2 Named(string name) => name switch
    {
        "ellipse" => Curves.Ellipse(50, 30),
        "slim ellipse" => Curves.Ellipse(60, 20, 0.4),
        "circle" => Curves.Ellipse(25, 25),
        "branch" => Curves.Saddle(62, 0, 21),
        "offset branch" => Curves.Saddle(62, 30, 18),
        "branch to the edge" => Curves.Saddle(62, 43.9, 18),
        "tangent branch" => Curves.Saddle(62, 43.9999, 18),
        "wavy strip" => Curves.WavyStrip(130, 40, 9),
        "flat strip" => Curves.WavyStrip(130, 40, 0.004),
        "far away" => Curves.Smooth(
            t => new(2000 + (40 * Math.Cos(t)), -900 + (15 * Math.Sin(t))), t => new(-40 * Math.Sin(t), 15 * Math.Cos(t))),
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };
}
