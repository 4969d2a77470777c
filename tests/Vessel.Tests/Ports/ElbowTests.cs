using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Stock;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Ports;

/// <summary>Mitred elbows against closed forms; how their pieces meet is told by the re-assembly.</summary>
public sealed class ElbowTests
{
    private static readonly ElbowDesign _elbow = new("ports[0].elbow", Math.PI / 2, 40, 3, 0.7, 30, MitreCut.Sawn);

    private static PortDesign Bent(ElbowDesign elbow, double offset = 0, double tilt = 0) =>
        Designs.Branch("vent", 32, 2, new(90, 0.4, offset, tilt, 0)) with { Elbow = elbow };

    private static Assembly Vessel(PortDesign port) => Compiler.Assemble(Designs.Vessel(Designs.Shell(), port));

    private static IEnumerable<Part> Pieces(Assembly vessel) => vessel.Parts.Where(part => part.Kind is PartKind.Branch or PartKind.Elbow);

    /// <summary>
    /// Rim of a tube of radius 1 cut by a plane: 4 E(sin2 t) / cos t; 6.39448891 at 15, 6.54458864 at 22.5, 6.77791761 at 30 and 7.64039558
    /// at 45 degrees, integrated by an independent quadrature.
    /// </summary>
    [Theory]
    [InlineData(90, 4, "6.39448891")]
    [InlineData(90, 3, "6.54458864")]
    [InlineData(60, 2, "6.77791761")]
    [InlineData(90, 2, "7.64039558")]
    public void A_mitre_is_as_long_as_its_ellipse(double angle, int pieces, string published)
    {
        var vessel = Vessel(Bent(_elbow with { Angle = angle * Math.PI / 180, Pieces = pieces }));
        var slant = angle * Math.PI / 360 / (pieces - 1);

        var seams = vessel.Welds.Where(weld => weld.Joint.Path.StartsWith(_elbow.Path, StringComparison.Ordinal)).ToList();

        Assert.Equal(pieces - 1, seams.Count);
        Assert.All(seams, seam =>
        {
            Near.Printed(published, seam.Length / 16);
            Near.Relative(4 * 16 / Math.Cos(slant) * Elliptic.E(Math.Pow(Math.Sin(slant), 2)), seam.Length, 1e-9);
        });
    }

    [Theory]
    [InlineData(2, MitreCut.Sawn)]
    [InlineData(4, MitreCut.Sawn)]
    [InlineData(4, MitreCut.Square)]
    public void Both_edges_of_a_mitre_are_equally_long_and_sawn_ones_as_long_as_the_seam(int pieces, MitreCut cut)
    {
        var vessel = Vessel(Bent(_elbow with { Pieces = pieces, Cut = cut }));
        var parts = Pieces(vessel).ToList();
        var seam = vessel.Welds.First(weld => weld.Joint.Path.StartsWith(_elbow.Path, StringComparison.Ordinal)).Length;

        var lengths = parts.SkipLast(1).Select(part => CurveMeasures.Length(part.Flat!.Cut.Outer.Edges[2]))
            .Concat(parts.Skip(1).Select(part => CurveMeasures.Length(part.Flat!.Cut.Outer.Edges[0]))).ToList();

        Assert.All(lengths, length => Near.Relative(lengths[0], length, 1e-9));
        // Cut square through the wall the heel follows the bore's flatter line.
        if (cut == MitreCut.Sawn)
            Near.Relative(seam, lengths[0], 1e-9);
        else
            Assert.True(lengths[0] < seam);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(6)]
    public void A_sawn_piece_has_the_volume_of_its_axis(int pieces)
    {
        var elbow = _elbow with { Pieces = pieces };
        var vessel = Vessel(Bent(elbow));
        var (section, half) = (Math.PI * ((16 * 16) - (14 * 14)), 40 * Math.Tan(Math.PI / 4 / (pieces - 1)));

        var piece = vessel.Parts.Single(part => part.Name == "vent elbow piece");
        var end = vessel.Parts.Single(part => part.Name == "vent elbow end");

        Assert.Equal(pieces - 2, piece.Quantity);
        Near.Relative(section * 2 * half, piece.Volume, 1e-10);
        Near.Relative(section * (half + 30), end.Volume, 1e-10);
        // Straight, the tube would be as heavy as all pieces.
        var straight = Vessel(Bent(elbow) with { Elbow = null, Length = 50 + (2 * (pieces - 1) * half) + 30 });
        Near.Relative(Pieces(straight).Single().Volume, Pieces(vessel).Sum(part => part.Volume * part.Quantity), 1e-9);
    }

    /// <summary>Each mitre cut square loses, on the half outside of the bend,
    /// what lies between the planes of outer and inner edge.</summary>
    [Fact]
    public void Cut_square_a_piece_lacks_the_wedge_of_its_gap()
    {
        double Volume(MitreCut cut) => Vessel(Bent(_elbow with { Cut = cut })).Parts.Single(part => part.Name == "vent elbow piece").Volume;
        // At r the cut lies by (r - ri) cos lower outside the bend and by (ro - r) cos lower inside it;
        // over half a turn cos integrates to 2.
        double Cubes(double r) => r * r * r / 3;
        double Squares(double r) => r * r / 2;
        var (ro, ri, slope) = (16.0, 14.0, Math.Tan(Math.PI / 8));
        var outside = Cubes(ro) - Cubes(ri) - (ri * (Squares(ro) - Squares(ri)));
        var inside = (ro * (Squares(ro) - Squares(ri))) - (Cubes(ro) - Cubes(ri));

        Near.Relative(2 * 2 * slope * (outside + inside), Volume(MitreCut.Sawn) - Volume(MitreCut.Square), 1e-7);
    }

    /// <summary>Turned about the bend's own middle the elbow ends where the arc does.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public void The_free_end_lies_beyond_the_end_of_the_arc(int pieces)
    {
        var elbow = _elbow with { Pieces = pieces, Angle = 1.2 };
        var site = Vessel(Bent(elbow, 10, 0.2)).Sites[0];
        var towards = site.Frame.Turn(new(Math.Cos(0.7), Math.Sin(0.7), 0));
        var (sin, cos) = Math.SinCos(1.2);
        var end = site.Frame.ToOuter(new(0, 0, 50 + (40 * sin) + (30 * cos))) + (((40 * (1 - cos)) + (30 * sin)) * towards);

        Near.Absolute(0, (site.FreeEnd.Origin - end).Length, 1e-9);
        Near.Absolute(0, (site.FreeEnd.Z - ((cos * site.Frame.Z) + (sin * towards))).Length, 1e-12);
    }

    [Fact]
    public void An_elbow_turned_the_other_way_is_the_mirror_image()
    {
        var (left, right) = (Vessel(Bent(_elbow)), Vessel(Bent(_elbow with { Direction = -0.7 })));

        foreach (var (a, b) in Pieces(left).Zip(Pieces(right)))
            Near.Relative(a.Volume, b.Volume, 1e-9);
        foreach (var (a, b) in left.Welds.Zip(right.Welds))
            Near.Relative(a.Length, b.Length, 1e-9);
        var frame = left.Sites[0].Frame;
        var (p, q) = (frame.ToLocal(left.Sites[0].FreeEnd.Origin), frame.ToLocal(right.Sites[0].FreeEnd.Origin));
        Near.Absolute(0, (p - new Vector3(q.X, -q.Y, q.Z)).Length, 1e-9);
    }

    /// <summary>Of a mitred ring of tube the middle lies towards the outside of the bend, by the moment of its own facets.</summary>
    [Theory]
    [InlineData(MitreCut.Sawn)]
    [InlineData(MitreCut.Square)]
    public void The_mass_acts_where_the_facets_balance(MitreCut cut)
    {
        var vessel = Vessel(Bent(_elbow with { Cut = cut, Pieces = 4 }, 10, 0.2));
        foreach (var part in Pieces(vessel))
        {
            var mesh = Mesher.Flatten(part.Solid, new Accuracy(0.005, 0.05));
            var where = part.Placements.Aggregate(Vector3.Zero, (sum, frame) => sum + frame.ToOuter(Balance.Of(mesh)));

            // Facets stand off by up to the chord on both faces of a wall of 2 mm, much alike all round.
            Near.Absolute(0, (PartCentre.Of(part) - (1.0 / part.Quantity * where)).Length, 0.02);
        }
    }

    [Theory]
    [InlineData(MitreCut.Sawn, 2, false)]
    [InlineData(MitreCut.Square, 2, true)]
    [InlineData(MitreCut.Square, 12, false)]
    public void Cut_square_an_elbow_of_few_pieces_gapes(MitreCut cut, int pieces, bool found)
    {
        var vessel = Vessel(Bent(_elbow with { Cut = cut, Pieces = pieces }));
        var finding = Assessment.Findings(FitRules.Of(vessel)).SingleOrDefault(finding => finding.Code == FindingCodes.GapTooWide
            && finding.Message.Contains("mitre", StringComparison.Ordinal));

        Assert.Equal(found, finding is not null);
        // The wall's two edges lie 2 mm apart; the plane leans by half of what the mitre turns, on either side of it.
        // Of 720 stations one lies within a quarter of a degree of the place.
        if (finding is not null)
            Near.Relative(2 * 2 * Math.Sin(Math.PI / 4), finding.Figures[0].Value, 1 - Math.Cos(Math.PI / 720));
    }

    [Theory]
    [InlineData(31.9, true)]
    [InlineData(32.1, false)]
    public void A_hose_wants_one_diameter_of_straight_tube(double straight, bool found)
    {
        // A mitre of 45 degrees on a tube of 32 mm reaches 16 mm along its inside; a right angle's corner lies on the arc's tangents.
        var vessel = Vessel(Bent(_elbow with { Pieces = 2, Radius = 40, EndLength = straight + 16 - 40 }) with { Length = 60 });

        Assert.Equal(found, Assessment.Findings(PortMeasures(vessel)).Any(finding => finding.Code == FindingCodes.HoseGripShort));
        Assert.DoesNotContain(
            Assessment.Findings(PortMeasures(Vessel(Bent(_elbow with { Pieces = 2, EndLength = 1 }) with
            {
                Fitting = Threads.Find("dash 20"),
            }))), finding => finding.Code == FindingCodes.HoseGripShort);
    }

    /// <summary>A tube that falls by 30 degrees and turns up holds oil; level or climbing, or turned down, it does not.</summary>
    [Theory]
    [InlineData(-30, 180, true)]
    [InlineData(-30, 0, false)]
    [InlineData(5, 180, false)]
    [InlineData(5, 0, false)]
    public void An_elbow_that_dips_holds_oil(double tilt, double direction, bool found)
    {
        var vessel = Vessel(
            Bent(_elbow with { Direction = direction * Math.PI / 180, EndLength = 80 }, 0, tilt * Math.PI / 180) with { Length = 80 });
        var finding = Assessment.Findings(PortMeasures(vessel)).SingleOrDefault(finding => finding.Code == FindingCodes.ElbowHoldsOil);

        Assert.Equal(found, finding is not null);
        // Where the falling tube of 80 mm and the arc's tangents end, below where the axis meets the inside,
        // 2 / cos 30 mm within the outside.
        if (finding is not null)
        {
            var half = 40 * Math.Tan(Math.PI / 8);
            var first = (80 + half + (2 / Math.Cos(Math.PI / 6))) * Math.Sin(Math.PI / 6);
            // The middle piece climbs: 45 - 30 degrees above the level.
            Near.Relative(first, finding.Figures[0].Value, 1e-9);
        }
    }

    /// <summary>Turned back by 120 degrees, the last piece comes to the shell when it is long enough.</summary>
    [Theory]
    [InlineData(20, false)]
    [InlineData(130, false)]
    [InlineData(250, true)]
    public void An_elbow_that_turns_back_may_run_into_the_shell(double end, bool found)
    {
        var port = Bent(_elbow with { Angle = 2 * Math.PI / 3, Direction = 0.1, EndLength = end });
        var vessel = Compiler.Assemble(Designs.Vessel(Designs.Shell(height: 900), port with { Place = port.Place with { Height = 500 } }));
        // Points every 0.5 mm along 720 lines of its pieces; the shell is round, and ends far off.
        var points =
            from leg in vessel.Sites[0].Legs.Skip(1)
            from i in Enumerable.Range(0, 720)
            from j in Enumerable.Range(0, (2 * (int)leg.Length) + 1)
            select leg.Frame.ToOuter(Footprint.OnLine(16, Turns.Full * i / 720, Math.Min(leg.Length, 0.5 * j)));
        var nearest = points.Min(p => double.Hypot(p.X, p.Y)) - 55;
        var told = TubeBodies.ElbowFromVessel(vessel.Mockup.Outside, vessel.Sites[0]);

        // Points and lines miss the nearest place by less than the square of their steps over the radii.
        if (nearest > 0)
            Near.Absolute(nearest, told, 0.05);
        Assert.Equal(found, nearest < 0);
        Assert.Equal(found, told < 0);
        Assert.Equal(found, OutsideRules.Of(vessel)
            .Any(finding => finding.Message.Contains("the vessel run into", StringComparison.Ordinal)));
        Assert.Equal(found, !vessel.Mockup.Obstacles.IsEmpty);
    }

    [Fact]
    public void The_hose_goes_on_where_the_elbow_ends()
    {
        var vessel = Vessel(Bent(_elbow));
        var room = PortRoom.Of(vessel.Mockup.Ports[0], MockupDesign.Usual).Single();
        var end = vessel.Sites[0].FreeEnd;

        var beyond = room.Bar.B - end.Origin;

        Near.Relative(MockupDesign.Usual.HoseStraight * 32, beyond.Dot(end.Z), 1e-9);
        Near.Absolute(0, beyond.Across(end.Z).Length, 1e-9);
    }

    /// <summary>A convex body's furthest point, against points of its two rims.</summary>
    [Fact]
    public void A_mitred_bar_reaches_as_far_as_its_rims()
    {
        var site = Vessel(Bent(_elbow)).Sites[0];
        var bars = TubeBodies.Of(site, 16, 20);
        var rim = Enumerable.Range(0, 3600).Select(i => Footprint.OnLine(16, Turns.Full * i / 3600, 0)).ToList();
        var slope = Math.Tan(Math.PI / 8);
        var (sin, cos) = Math.SinCos(0.7);
        var middle = site.Legs[1];
        var points = rim.SelectMany(p => (Vector3[])[
            middle.Frame.ToOuter(p with { Z = slope * ((cos * p.X) + (sin * p.Y)) }),
            middle.Frame.ToOuter(p with { Z = middle.Length - (slope * ((cos * p.X) + (sin * p.Y))) })]).ToList();

        foreach (var way in rim.Where((_, i) => i % 97 == 0).Select((p, i) => p with { Z = i - 18 }))
        {
            // Between two points of a rim the curve rises by less than the square of half their step over its radius.
            Near.Absolute(points.Max(p => p.Dot(way.Unit())), bars[1].Furthest(way).Dot(way.Unit()), 1e-4);
        }
    }

    /// <summary>
    /// Equivalent lengths of mitre bends in diameters (Crane, Technical Paper 410, from memory: 8, 15, 25 and 60 at 30, 45, 60 and 90
    /// degrees) times 0.02, the friction factor of clean commercial pipe of 40 to 50 mm in full turbulence.
    /// </summary>
    [Theory]
    [InlineData(30, 8)]
    [InlineData(45, 15)]
    [InlineData(60, 25)]
    [InlineData(90, 60)]
    public void One_mitre_loses_what_another_table_says(double degrees, double lengths)
    {
        var (smooth, rough) = MitreLoss.Single(degrees * Math.PI / 180);

        Assert.InRange(0.02 * lengths, smooth, rough);
    }

    /// <summary>Two mitres of 45 degrees 1.42 bores apart, smooth: 0.261 (Kirchbach and Schubart 1929, from memory),
    /// within the range.</summary>
    [Fact]
    public void Two_mitres_near_each_other_lie_within_the_range()
    {
        var loss = MitreLoss.Of(_elbow with { Angle = Math.PI / 2, Pieces = 3 });

        Assert.InRange(0.261, loss.Low, loss.Likely);
        Assert.True(loss.Likely < loss.High);
    }

    [Fact]
    public void More_mitres_of_one_turn_lose_less_and_a_longer_turn_loses_more()
    {
        // Down to 15 degrees a mitre: below, the table hardly falls.
        var losses = Enumerable.Range(2, 6).Select(pieces => MitreLoss.Of(_elbow with { Pieces = pieces }).Likely).ToList();
        Assert.Equal(losses.OrderDescending(), losses);
        var turns = Enumerable.Range(1, 30).Select(i => MitreLoss.Of(_elbow with { Angle = i * 0.1 }).Likely).ToList();
        Assert.Equal(turns.Order(), turns);
    }

    private static IEnumerable<Measure> PortMeasures(Assembly vessel) =>
        vessel.Sites.SelectMany(site => PortRules.Of(site, vessel));
}
