using Vessel.Design;
using Vessel.Findings;
using Vessel.Geometry;
using Vessel.Mockups;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Mockups;

public sealed class MarkLayoutTests
{
    private static readonly MockupDesign _raised = MockupDesign.Usual with { Names = PrintNames.Raised };

    public static TheoryData<string, double> Files => [.. Repository.Designs.Select(path => (Path.GetFileName(path)!, 1.0))];

    [Theory]
    [MemberData(nameof(Files))]
    [InlineData("trawler-winch-breather.yaml", 0.5)]
    [InlineData("trawler-winch-breather.yaml", 4)]
    public void Every_name_and_seam_of_the_designs_stands_on_the_print_or_is_told(string file, double scale)
    {
        var design = Compiler.Read(Repository.Design(file)).Value! with { Mockup = _raised with { Scale = scale } };
        var vessel = Compiler.Assemble(design);
        var plan = vessel.Mockup;

        var texts = design.Ports.Select(port => port.Name)
            .Concat(vessel.Joints.All.Where(joint => joint.Role == WeldRole.LongSeam).Select(joint => joint.Number));
        Assert.Equal(
            texts.Order(), plan.Marks.Where(mark => mark.Height is not null).Select(mark => mark.Text)
                .Concat(plan.MissingMarks.Select(mark => mark.Text)).Order());
        AssertApart(plan, scale);
        Assert.Equal(plan.MissingMarks.Length, Compiler.Assess(vessel).Count(finding => finding.Code == FindingCodes.NameNotPrinted));
    }

    [Fact]
    public void Random_designs_keep_marks_clear_of_all_else()
    {
        var (stand, missing) = (0, 0);
        foreach (var seed in Enumerable.Range(0, 12))
        {
            var vessel = RandomDesigns.Built(seed);
            var plan = MockupPlan.Of(
                vessel.Design with { Mockup = _raised with { Names = seed % 2 == 0 ? PrintNames.Raised : PrintNames.Sunk, Wall = 0.1 } },
                vessel.Chamber, vessel.Sites, vessel.Members);
            AssertApart(plan, 1);
            (stand, missing) = (stand + plan.Marks.Length, missing + plan.MissingMarks.Length);
        }

        // Seven ports a vessel, many of them far out at the side where their names would not be seen from in front.
        Assert.True(stand > missing, $"{stand} stand, {missing} do not");
    }

    [Fact]
    public void A_name_that_is_too_long_is_left_out_and_a_shorter_one_is_not()
    {
        int Told(string name) => Compiler.Assess(Compiler.Assemble(
                Designs.Vessel(Designs.Shell(), Designs.Branch(name, 32, 2, new(90, 0, 0, 0, 0))) with { Mockup = _raised }))
            .Count(finding => finding.Code == FindingCodes.NameNotPrinted);

        Assert.Equal(0, Told("inlet"));
        Assert.Equal(1, Told("the inlet from the left bank of cylinders by way of the oil filler cap"));
        Assert.Equal(1, Told("\u5165\u53e3"));
    }

    [Fact]
    public void Crowded_letters_shrink_but_not_below_five_millimetres_of_the_print()
    {
        double Height(string name, double scale) => Compiler.Assemble(
                Designs.Vessel(Designs.Shell(), Designs.Branch(name, 32, 2, new(90, 0, 0, 0, 0))) with
                {
                    Mockup = _raised with { Scale = scale, LetterHeight = 12 },
                })
            .Mockup.Marks.Where(mark => mark.Text == name).Select(mark => mark.Height!.Value).DefaultIfEmpty(0).Single();

        Assert.Equal(12, Height("in", 1));
        Assert.InRange(Height("inlet from engine", 1), 5, 11.9);
        // Half as large a print has half the room.
        Assert.InRange(Height("inlet", 0.5), 5, 12);
    }

    [Theory]
    [InlineData(PrintNames.Raised)]
    [InlineData(PrintNames.Sunk)]
    public void A_line_runs_along_the_seam_and_breaks_at_a_port(PrintNames names)
    {
        // Two degrees beside the port's middle: set by hand, for a design that is checked has no port there.
        var shell = Designs.Shell() with { SeamAngle = 0.03 };
        var options = _raised with { Names = names, Wall = 0.5 };
        var plan =
            Compiler.Assemble(Designs.Vessel(shell, Designs.Branch("inlet", 32, 2, new(90, 0, 0, 0, 0))) with { Mockup = options }).Mockup;

        var line = plan.Marks.Single(mark => mark.Height is null);
        Assert.Equal("W1", line.Text);
        Assert.Equal(2, line.Outlines.Length);
        Assert.All(line.Outlines.SelectMany(outline => outline),
            p => Near.Absolute(0.03, Math.Atan2(line.Chart.At(p, 0).Y, line.Chart.At(p, 0).X), 0.01));
        Assert.All(line.Outlines.SelectMany(outline => outline), p => Assert.True(Math.Abs(line.Chart.At(p, 0).Z - 90) > 16));
        Assert.Equal(names == PrintNames.Sunk, line.Rise < 0);
    }

    [Fact]
    public void Sunk_letters_leave_the_least_wall_or_are_a_fault()
    {
        // 2 mm of wall less 1.2 of the print's.
        string[] Codes(string mockup) =>
            [.. Compiler.Read($"{Repository.Design("harbour-launch-breather.yaml")}\nmockup: {{ {mockup} }}\n")
                .Faults.Select(fault => fault.Code)];

        Assert.Empty(Codes("names: sunk, letter_depth: 0.8"));
        Assert.Equal([FaultCodes.LettersTooDeep], Codes("names: sunk, letter_depth: 0.81"));
        Assert.Empty(Codes("names: raised, letter_depth: 0.81"));
        Assert.Empty(Codes("names: sunk, letter_depth: 0.81, inside: solid"));
        Assert.Equal([FaultCodes.LettersTooDeep], Codes("names: sunk, scale: 0.5"));
    }

    [Fact]
    public void A_print_that_is_cut_through_its_letters_comes_out_in_sound_pieces()
    {
        var design = Compiler.Read(Repository.Design("trawler-winch-breather.yaml")).Value! with
        {
            Mockup = _raised with { Wall = 4, Bed = new(110, 110, 90) },
        };

        var printed = Mockup.Printed(Compiler.Assemble(design).Mockup);

        Assert.NotEmpty(printed.Pieces);
        Assert.All(printed.Pieces, piece => MeshLaws.IsClosed(piece.Mesh));
    }

    /// <summary>Fields keep the least distance from footprints, from each other and from the edges of the outline, in space.</summary>
    private static void AssertApart(MockupPlan plan, double scale)
    {
        var fields = plan.Marks.SelectMany(mark =>
            mark.Outlines.Select(outline => (mark, Rim: outline.Select(p => mark.Chart.At(p, 0)).ToList()))).ToList();
        var feet = plan.Ports.Select(port => port.Outside).Concat(plan.Drains.Select(drain => drain.Outside))
            .Concat(plan.Members.SelectMany(member => member.Feet(plan.Outside)))
            .Select(print => print.Place(72)!.Points).ToList();
        foreach (var (mark, rim) in fields)
        {
            Assert.True(mark.Height is null or >= 5 - 1e-9);
            Assert.All(rim, at => Near.Absolute(0, plan.Outside.Distance(at), 1e-6));
            Assert.All(feet, foot => Assert.True(Apart(rim, foot) >= Obstacle.Least, $"{mark.Text} comes to {Apart(rim, foot)} mm"));
            foreach (var joint in plan.Outside.Joints.Select(joint => plan.Outside.At(joint)))
                Assert.All(rim, at => Assert.True((new Point2(double.Hypot(at.X, at.Y), at.Z) - joint).Length >= Obstacle.Least));
        }

        for (var i = 0; i < fields.Count; i++)
        {
            for (var k = 0; k < i; k++)
            {
                // Chords are shorter than arcs by a hair.
                if ((fields[i].Rim[0] - fields[k].Rim[0]).Length < 40 / scale)
                    Assert.True(Apart(fields[i].Rim, fields[k].Rim) >= 0.99 * LetterSize.LeastGap / scale,
                        $"fields of {fields[i].mark.Text} and {fields[k].mark.Text} come close");
            }
        }
    }

    private static double Apart(List<Vector3> a, IReadOnlyList<Vector3> b) => Enumerable.Range(0, a.Count).Min(i =>
        Enumerable.Range(0, b.Count).Min(k => Segments.Distance(a[i], a[(i + 1) % a.Count], b[k], b[(k + 1) % b.Count])));
}
