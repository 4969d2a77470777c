using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Geometry;
using Vessel.Heads.Cones;
using Vessel.Parts;
using Vessel.Tests.Support;
using Vessel.Tests.Reading;
using Xunit;

namespace Vessel.Tests.Parts;

/// <summary>What a shop's rolls do to the flats of a shell, and what they cannot make.</summary>
public sealed class RollingTests
{
    private const double Trim = 30;
    private const double Shrinkage = 0.4;

    private static readonly RollsShop _trimming = new(null, Trim, true, Shrinkage);

    private static ShellDesign Shell => Designs.Shell(200, 2, 240) with { RootGap = 1.5, SeamAngle = 0.4 };

    private static VesselDesign Vessel(ShellDesign shell, double bore = 40) => Designs.Vessel(
        shell, Designs.Branch("inlet", bore + 4, 2, new(150, 2, 0, 0, 0)) with { Length = 60 }) with
    {
        Bottom = Designs.Inset(shell.AtEnd(VesselEnd.Bottom), "bottom"),
    };

    private static Part Blank(ShellDesign shell, double bore = 40) =>
        Compiler.Assemble(Vessel(shell, bore)).Parts.Single(part => part.Id == "shell");

    private static (double From, double To) Across(Part part) =>
        CurveMeasures.Bounds(part.Flat!.Cut.Outer) is var (low, high) ? (low.U, high.U) : default;

    /// <summary>Girth of the mean diameter less the gap, more by what the seam draws in and by both flat ends;
    /// nothing else moves.</summary>
    [Fact]
    public void A_blank_grows_by_flat_ends_and_shrinkage()
    {
        var (plain, grown) = (Blank(Shell), Blank(Shell with { Rolls = _trimming }));
        Near.Absolute((Math.PI * 198) - 1.5, Across(plain).To - Across(plain).From, 1e-9);
        Near.Absolute((Math.PI * 198) - 1.5 + Shrinkage + (2 * Trim), Across(grown).To - Across(grown).From, 1e-9);
        Near.Absolute(Across(plain).To + Shrinkage + (2 * Trim), Across(grown).To, 1e-9);
        // Half of what the seam draws in lies on either side of it.
        Near.Absolute(plain.Holes[0].Center.U + Trim + (Shrinkage / 2), grown.Holes[0].Center.U, 1e-9);
        Near.Absolute(0, (grown.Flat!.From.Raise(grown.Holes[0].Center) - plain.Flat!.From.Raise(plain.Holes[0].Center)).Length, 1e-12);
        // Both cuts are scribed from edge to edge.
        foreach (var at in new[] { Trim, Across(grown).To - Trim })
            Assert.Contains(grown.Flat.Marks.OfType<LineMark>(), line => Math.Abs(line.A.U - at) < 1e-9 && Math.Abs(line.B.U - at) < 1e-9
                && Math.Abs(line.B.V - line.A.V) > 200);
        Assert.Equal(plain.Volume, grown.Volume);
    }

    /// <summary>Along a cone's seam the strips are as wide all the way,
    /// and the scribed lines are the edges that it had without them.</summary>
    [Fact]
    public void The_flat_of_a_cone_grows_by_strips_along_its_seam()
    {
        var shell = Shell with { TopDiameter = 130 };
        var (plain, grown) = (Blank(shell), Blank(shell with { Rolls = _trimming with { SeamShrinkage = 0 } }));
        var edges = plain.Flat!.Cut.Outer.Edges.OfType<Line2>().ToList();
        var outer = grown.Flat!.Cut.Outer.Edges.OfType<Line2>().ToList();
        foreach (var edge in edges)
        {
            var (a, b) = (edge.At(edge.Domain.Start), edge.At(edge.Domain.End));
            Assert.Contains(
                grown.Flat.Marks.OfType<LineMark>(),
                line => Math.Min((line.A - a).Length + (line.B - b).Length, (line.A - b).Length + (line.B - a).Length) < 1e-9);
            var way = (b - a).Unit();
            Near.Absolute(Trim, outer.Min(line => Math.Abs((line.At(line.Domain.Start) - a).Cross(way))), 1e-9);
            Near.Absolute(Trim, outer.Min(line => Math.Abs((line.At(line.Domain.End) - a).Cross(way))), 1e-9);
        }

        Assert.Equal(plain.Volume, grown.Volume);
    }

    /// <summary>Of a cone head, too: its wide edge is longer by both strips and what each seam draws in;
    /// the gap in its words stays that of the design.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void The_flat_of_a_cone_head_grows_as_a_shells_does(int segments)
    {
        Part Sheet(RollsShop rolls) =>
            Compiler.Assemble(Designs.Vessel(Shell with { Rolls = rolls }, Designs.OnHead("drain", VesselEnd.Bottom, 40, 2, 0)) with
            {
                Bottom = new ConeHead("bottom", Designs.Stainless, 2, Math.PI / 6, 1, 0.2) { Segments = segments },
                Shop = Shop.Usual with { Rolls = rolls },
            }).Parts.First(part => part.Kind == PartKind.Cone);
        var (plain, grown) = (Sheet(RollsShop.Unknown), Sheet(_trimming with { SeamShrinkage = 1 }));

        var (before, after) = (Wide(plain), Wide(grown));
        // Each side stands off the sector's by half the gap less the strip: on an arc of radius R by R asin of their share of it.
        double Aside(double off) => after.Radius * Math.Asin(off / after.Radius);
        Near.Absolute((2 * Aside(Trim + 0.5 - 0.1)) + (2 * Aside(0.1)),
            (after.Radius * Math.Abs(after.Sweep)) - (before.Radius * Math.Abs(before.Sweep)), 1e-9);
        Assert.Equal(plain.Volume, grown.Volume);
        Assert.Contains(grown.Flat!.Notes, note => note.Contains("root gap 0.2 mm", StringComparison.Ordinal));
        Assert.Contains(grown.Flat.Notes, note => note.Contains("30 mm are added at each end", StringComparison.Ordinal));

        static Arc2 Wide(Part part) => part.Flat!.Cut.Outer.Edges.OfType<Arc2>().MaxBy(arc => arc.Radius)!;
    }

    /// <summary>And of a cap's skirt, whose windows move with it; no note of any flat tells of a gap below zero.</summary>
    [Fact]
    public void The_flat_of_a_skirt_grows_as_a_shells_does()
    {
        var text = DesignTexts.WithInside.Replace("opens: up,", "opens: up, made_from: sheet,", StringComparison.Ordinal);
        var design = DesignTexts.Good(text);
        var rolls = _trimming with { SeamShrinkage = 1 };
        Part Skirt(RollsShop with) =>
            Compiler.Assemble(design with { Shop = design.Shop with { Rolls = with } }).Parts.Single(part => part.Word == "skirt");
        var (plain, grown) = (Skirt(RollsShop.Unknown), Skirt(rolls));

        Near.Absolute(Math.PI * 56, Across(plain).To, 1e-9);
        Near.Absolute((Math.PI * 56) + 1 + (2 * Trim), Across(grown).To, 1e-9);
        Assert.Equal((plain.Volume, plain.Holes.Length), (grown.Volume, grown.Holes.Length));
        Near.Absolute(plain.Holes[0].Center.U + Trim + 0.5, grown.Holes[0].Center.U, 1e-9);
        var all = Compiler.Assemble(design with { Shell = design.Shell with { Rolls = rolls }, Shop = design.Shop with { Rolls = rolls } });
        Assert.DoesNotContain(all.Parts.SelectMany(part => part.Flat?.Notes ?? []),
            note => note.Contains("gap -", StringComparison.Ordinal));
    }

    /// <summary>Over a quarter of the diameter: 49 mm of 196 is none, 51 is one.</summary>
    [Theory]
    [InlineData(49.9, false)]
    [InlineData(50.1, true)]
    public void A_large_hole_is_scribed_where_it_is_cut_later(double bore, bool large)
    {
        var (cut, scribed) = (Blank(Shell, bore), Blank(Shell with { LargeHoles = LargeHoles.AfterRolling }, bore));
        Assert.Single(cut.Flat!.Cut.Holes);
        Assert.Equal(large ? 0 : 1, scribed.Flat!.Cut.Holes.Length);
        Assert.Equal(large, scribed.Holes[0].Outline is null);
        Assert.Equal(cut.Volume, scribed.Volume);
        Assert.Equal(cut.Solid.Genus, scribed.Solid.Genus);
        // What is scribed is the outline that was cut.
        var curves = scribed.Flat.Marks.OfType<CurveMark>().Select(mark => mark.Curve).ToList();
        if (large)
            Near.Absolute(CurveMeasures.Length(cut.Flat.Cut.Holes[0]), CurveMeasures.Length(new Loop2([.. curves])), 1e-9);
        else
            Assert.Empty(curves);
        ImmutableArray<string> Codes(LargeHoles when) =>
            [.. Compiler.Assess(Compiler.Assemble(Vessel(Shell with { LargeHoles = when }, bore))).Select(finding => finding.Code)];
        Assert.Equal(large, Codes(LargeHoles.BeforeRolling).Contains(FindingCodes.LargeHoleBeforeRolling));
        Assert.DoesNotContain(FindingCodes.LargeHoleBeforeRolling, Codes(LargeHoles.AfterRolling));
        Assert.DoesNotContain(FindingCodes.LargeHoleBeforeRolling, Codes(LargeHoles.OnTabs));
    }

    /// <summary>
    /// Slots lie within the hole, on its outline along their outer sides; what they leave of it are four tabs of 2 x 2 mm,
    /// or of 3 on thin sheet.
    /// </summary>
    [Theory]
    [InlineData(60, 2, PortJoint.SetOn, 4)]
    [InlineData(120, 2, PortJoint.SetIn, 4)]
    [InlineData(90, 1.2, PortJoint.SetOn, 3)]
    public void A_large_hole_hangs_on_tabs_while_it_is_rolled(double bore, double wall, PortJoint joint, double tab)
    {
        var shell = Designs.Shell(200, wall, 240) with { SeamAngle = 0.4 };
        var port = Designs.Branch("inlet", bore + 4, 2, new(120, 2, 12, 0.1, 0)) with
        {
            Length = 60,
            Joint = joint,
            InsideLength = joint == PortJoint.SetIn ? 5 : 0,
        };
        Part Of(LargeHoles when) =>
            Compiler.Assemble(Designs.Vessel(shell with { LargeHoles = when }, port)).Parts.Single(part => part.Id == "shell");
        var (cut, hanging) = (Of(LargeHoles.BeforeRolling), Of(LargeHoles.OnTabs));
        var (hole, slots) = (cut.Flat!.Cut.Holes.Single(), hanging.Flat!.Cut.Holes);

        Assert.Equal(4, slots.Length);
        Assert.Null(hanging.Holes[0].Outline);
        Assert.Equal(cut.Volume, hanging.Volume);
        var round = LoopPath.Of(hole);
        List<Point2> outline = [.. Enumerable.Range(0, 20_000).Select(i => round.At(round.Domain.At(i / 20_000.0)))];
        double Off(Point2 at) => outline.Min(p => (p - at).Length);
        var centre = 0.25 * slots.Aggregate(default(Point2), (sum, slot) => sum + slot.Edges[0].At(slot.Edges[0].Domain.At(0.5)));
        foreach (var slot in slots)
        {
            // The way round that the hole itself has.
            Assert.True(CurveMeasures.Area(slot) * CurveMeasures.Area(hole) > 0);
            foreach (var share in new[] { 0, 0.3, 0.7, 1 })
            {
                var (outer, inner) =
                    (slot.Edges[0].At(slot.Edges[0].Domain.At(share)), slot.Edges[2].At(slot.Edges[2].Domain.At(1 - share)));
                // The outline is sampled every few hundredths of a millimetre.
                Assert.InRange(Off(outer), 0, 0.02);
                Assert.True((inner - centre).Length < (outer - centre).Length);
                Assert.InRange(Off(inner), 0.9 * Math.Max(2, 0.4 * wall), 2 * Math.Max(2, 0.4 * wall));
            }
        }

        var left = CurveMeasures.Length(hole) - slots.Sum(slot => CurveMeasures.Length(slot.Edges[0]));
        // A tab's width is told by the speed at its middle.
        Near.Absolute(4 * tab, left, 0.02 * 4 * tab);
    }

    /// <summary>196 mm inside; of a frustum the narrow end counts: 130 less two level walls, 2 / cos (atan (35 / 240)).</summary>
    [Theory]
    [InlineData(195.9, null, false)]
    [InlineData(196.1, null, true)]
    [InlineData(125.9, 130.0, false)]
    [InlineData(126.0, 130.0, true)]
    public void Rolls_make_nothing_tighter_than_they_do(double least, double? top, bool found)
    {
        var rolls = new RollsShop(least, null, false, 0);
        var vessel = Vessel(Shell with { TopDiameter = top, Rolls = rolls });
        var findings = Compiler.Assess(Compiler.Assemble(vessel with
        {
            Shop = Shop.Usual with { Rolls = rolls },
            Top = Designs.Overlay("top", (top ?? 200) + 10),
        }));
        Assert.Equal(found, findings.Any(finding => finding.Code == FindingCodes.TighterThanRolls));
    }

    [Fact]
    public void A_shop_file_tells_of_its_rolls()
    {
        var rolls = ShopReader.Read("rolls: { least_diameter: 90, flat_end: 25 mm, ends: trim, seam_shrinkage: 0.3 }").Value!.Rolls;
        Assert.Equal(new RollsShop(90, 25, true, 0.3), rolls);
        Assert.Equal((25, 0), (rolls.Trim, (rolls with { TrimsEnds = false }).Trim));
        Assert.Equal(RollsShop.Unknown, Shop.Usual.Rolls);
    }
}
