using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Saddles;
using Vessel.Parts;
using Vessel.Tests.Members.Brackets;
using Vessel.Tests.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Members.Saddles;

/// <summary>
/// The bracket's flat and solid against the shape that a drawing of it would show. Lengths stay below 400 mm, so a
/// hundred roundings are below 1e-11.
/// </summary>
public sealed class SaddleTests
{
    private const double Rounding = 1e-11;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 60)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_flat_folds_up_to_the_drawn_section(int seed)
    {
        var design = BracketDesigns.Random(seed);
        var (site, sheet) = (SaddleSite.Of(design.Saddle(), design), SaddleSite.Of(design.Saddle(), design).Sheet);
        var (t, r, over) = (sheet.Thickness, design.Saddle().InsideRadius, site.Overall);
        var plate = new Interval(-(over / 2) + r + t, (over / 2) - r - t);

        foreach (var share in Enumerable.Range(0, 401).Select(i => i / 400.0))
        {
            foreach (var depth in (double[])[0, t / 3, t])
            {
                var at = sheet.At((share * site.Developed) * sheet.Across, depth);
                var (aside, back) = (new Point2(at.X, at.Y).Dot(sheet.Across) - (site.Developed / 2), at.Z);

                // Plate, bend or ear: whichever it is, so far below the outside face.
                var expected = plate.Contains(aside) ? back
                    : back < -r - t ? Math.Abs(aside) - (over / 2)
                    : new Point2(Math.Abs(aside) - plate.End, back + r + t).Length - (r + t);
                Assert.Equal(-depth, expected, Rounding);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_flat_is_the_outside_lengths_less_the_deductions(int seed)
    {
        var design = BracketDesigns.Random(seed);
        var (bracket, site) = (design.Saddle(), SaddleSite.Of(design.Saddle(), design));
        var (r, half, t) = (design.Shell.OuterRadius, bracket.Width / 2, bracket.Thickness);
        // To the ear's end where it reaches furthest in: its inner edge at the sides, its corners at the ends.
        var reach = site.AtSides ? half - t : half;
        var ear = r + bracket.StandOff + t - Math.Sqrt((r * r) - (reach * reach));
        var deduction = (2 * (bracket.InsideRadius + t)) - (Math.PI / 2 * (bracket.InsideRadius + (bracket.K * t)));

        var box = CurveMeasures.Bounds(BracketDesigns.Part(design).Flat!.Cut.Outer);

        Assert.Equal(site.Overall + (2 * ear) - (2 * deduction), site.AtSides ? box.Width : box.Height, Rounding);
        Assert.Equal(site.BendLength, site.AtSides ? box.Height : box.Width, Rounding);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_bracket_touches_the_shell_and_goes_nowhere_into_it(int seed)
    {
        var design = BracketDesigns.Random(seed);
        var part = BracketDesigns.Part(design);
        var sheet = ((FoldedDevelopment)part.Flat!.From).Sheet;
        var clear = BulgeChain.Points(part.Flat.Cut.Outer, 400)
            .SelectMany(p =>
                new[] { 0, sheet.Thickness / 2, sheet.Thickness }.Select(depth => part.Placements[0].ToOuter(sheet.At(p, depth))))
            .Select(p => new Point2(p.X, p.Y).Length - design.Shell.OuterRadius)
            .ToList();

        Assert.Equal(0, clear.Min(), Rounding);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Level_ears_touch_the_shell_all_along_and_all_through(int seed)
    {
        var random = BracketDesigns.Random(seed);
        var design = random with { Members = [random.Saddle() with { Ears = SaddleEars.Ends }] };
        var part = BracketDesigns.Part(design);
        var sheet = ((FoldedDevelopment)part.Flat!.From).Sheet;

        foreach (var arc in part.Flat.Cut.Outer.Edges.OfType<Arc2>())
        {
            foreach (var (share, depth) in from i in Enumerable.Range(0, 101)
                                           from d in new[] { 0, 0.5, 1 }
                                           select (i / 100.0, d * sheet.Thickness))
            {
                var at = part.Placements[0].ToOuter(sheet.At(arc.At(share), depth));
                Assert.Equal(design.Shell.OuterRadius, new Point2(at.X, at.Y).Length, Rounding);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Both_ears_are_mirror_images(int seed)
    {
        var design = BracketDesigns.Random(seed);
        var site = SaddleSite.Of(design.Saddle(), design);
        var sheet = site.Sheet;

        foreach (var p in BulgeChain.Points(site.Outline, 50))
        {
            var mirrored = p + ((2 * (site.Middle - p).Dot(sheet.Across)) * sheet.Across);
            var (here, there) = (sheet.At(p, 0.4), sheet.At(mirrored, 0.4));

            Assert.Equal(here.Z, there.Z, Rounding);
            var sum = new Point2(here.X + there.X, here.Y + there.Y);
            Assert.Equal(2 * site.Middle.Dot(sheet.Across), sum.Dot(sheet.Across), Rounding);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_mesh_is_closed_and_holds_the_metal_that_the_part_states(int seed)
    {
        var part = BracketDesigns.Part(BracketDesigns.Random(seed));

        var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);

        MeshLaws.Hold(mesh, part.Holes.Length);
        Assert.Equal(part.Holes.Length, part.Solid.Genus);
        var bound = mesh.Area * Accuracy.Solids.Chord;
        Assert.InRange(mesh.Volume - part.Volume, -bound, bound);
    }

    [Theory]
    [InlineData(SaddleEars.Sides, 0)]
    [InlineData(SaddleEars.Sides, 5)]
    [InlineData(SaddleEars.Ends, 0)]
    [InlineData(SaddleEars.Ends, 5)]
    public void A_finer_mesh_comes_to_the_stated_volume_even_with_holes_over_the_bends(SaddleEars ears, double slot)
    {
        var bracket = BracketDesigns.Narrow with
        {
            Ears = ears,
            K = 0.33,
            PlateHeight = 70,
            Bolts = BracketDesigns.Narrow.Bolts with { Across = 60, Up = 50, Slot = slot },
        };
        var part = BracketDesigns.Part(BracketDesigns.On(bracket));
        var accuracy = new Accuracy(0.0005, Math.PI / 12);

        var mesh = Mesher.Flatten(part.Solid, accuracy);

        // The bends' share of a hole, about 20 mm2 x 3 mm x 9 %, is 5 mm3: well above the bound.
        var bound = accuracy.Chord * (mesh.Area - (2 * CurveMeasures.Area(part.Flat!.Cut)))
            + (accuracy.Chord * 4 * part.Flat.Bends.Length * 10 * 70);
        Assert.InRange(mesh.Volume - part.Volume, -bound, bound);
        Assert.InRange(bound, 0, 4);
    }

    [Fact]
    public void A_bent_bracket_holds_more_than_area_times_thickness_by_what_K_is_short_of_a_half()
    {
        var design = BracketDesigns.On(BracketDesigns.Narrow);
        var part = BracketDesigns.Part(design);
        var (t, k) = (part.Thickness, design.Saddle().K);

        var more = part.Volume - (CurveMeasures.Area(part.Flat!.Cut) * t);

        // Pappus: two quarter turns of a section t, on the mean radius instead of the neutral one.
        Assert.Equal(2 * (Math.PI / 2) * (0.5 - k) * t * t * design.Saddle().PlateHeight, more, Rounding * part.Volume);
        Assert.True(more > 0);
    }

    [Fact]
    public void The_plate_stands_off_at_its_height_and_angle()
    {
        var design = BracketDesigns.On(BracketDesigns.Narrow);
        var (bracket, part) = (design.Saddle(), BracketDesigns.Part(design));
        var site = SaddleSite.Of(bracket, design);

        var back = part.Placements[0].ToOuter(new(site.Middle.U, site.Middle.V, -bracket.Thickness));

        Assert.Equal(55 + 25, new Point2(back.X, back.Y).Length, Rounding);
        Assert.Equal(bracket.Angle, new Point2(back.X, back.Y).Angle, Rounding);
        Assert.Equal(bracket.Height, back.Z, Rounding);
    }

    [Fact]
    public void The_flat_seen_from_outside_runs_with_increasing_angle()
    {
        var design = BracketDesigns.On(BracketDesigns.Narrow);
        var part = BracketDesigns.Part(design);
        var site = SaddleSite.Of(design.Saddle(), design);

        var right = part.Placements[0].ToOuter(new(site.Middle.U + 10, site.Middle.V + 5, 0));

        Assert.True(new Point2(right.X, right.Y).Angle > design.Saddle().Angle);
        Assert.Equal(design.Saddle().Height + 5, right.Z, Rounding);
        Assert.All(part.Flat!.Bends, bend => Assert.Equal(-Math.PI / 2, bend.Angle));
    }

    [Fact]
    public void Bolts_stand_round_the_middle_of_the_plate()
    {
        var design = BracketDesigns.On(BracketDesigns.Narrow);
        var part = BracketDesigns.Part(design);
        var middle = SaddleSite.Of(design.Saddle(), design).Middle;

        Assert.Equal(
            [new(-12, -30), new(12, -30), new(-12, 30), new(12, 30)],
            part.Holes.Select(hole => new Point2(Math.Round(hole.Center.U - middle.U, 9), Math.Round(hole.Center.V - middle.V, 9))));
        // A slot: a circle and a rectangle between its halves; clockwise, so negative.
        Assert.All(part.Holes, hole => Assert.Equal(-((Math.PI * 4.5 * 4.5) + (9 * 4)), CurveMeasures.Area(hole.Outline!), Rounding));
    }

    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(20, 0, 2)]
    [InlineData(0, 20, 2)]
    public void A_distance_of_zero_leaves_one_row(double across, double up, int count)
    {
        var bolts = BracketDesigns.Narrow.Bolts with { Across = across, Up = up };

        Assert.Equal(count, BracketDesigns.Part(BracketDesigns.On(BracketDesigns.Narrow with { Bolts = bolts })).Holes.Length);
    }
}
