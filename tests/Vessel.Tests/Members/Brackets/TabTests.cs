using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Members.Plates;
using Vessel.Members.Saddles;
using Vessel.Parts;
using Vessel.Stock;
using Vessel.Tests.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Members.Brackets;

/// <summary>Tabs of brackets and their slots in the shell, on plates and saddles of any shape and place.</summary>
public sealed class TabTests
{
    /// <summary>Lengths below 1e3 mm through a dozen operations.</summary>
    private const double Rounding = 1e-9;

    public static TheoryData<int> Seeds => new(Enumerable.Range(0, 24));

    /// <summary>At no depth of the wall does the slot's edge cut into tab and clearance, and at one it touches them.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_slot_is_the_least_that_lets_its_tab_through(int seed)
    {
        var shell = Tabbed(seed).Shell;
        foreach (var tab in Tabbed(seed).All<BracketDesign>().SelectMany(bracket => ShellTab.Of(bracket)))
        {
            var (loop, corners) = (new BarOutline(tab.Slot.Corners, shell.InnerRadius, shell.OuterRadius).On(1), tab.Slot.Corners);
            Assert.True(CurveMeasures.Area(loop) > 0);
            foreach (var (angle, height) in loop.Edges.SelectMany(edge =>
                Enumerable.Range(0, 50).Select(i => edge.At(edge.Domain.At(i / 50.0)))))
            {
                double Off(double radius) => Outside(corners, new(radius * Math.Sin(angle), height));
                var through = Enumerable.Range(0, 101).Select(i => shell.InnerRadius + (shell.Wall * i / 100));
                Assert.All(through, radius => Assert.True(Off(radius) > -Rounding));
                // It touches on a face, or where a corner passes between the faces.
                Assert.Equal(0, corners.Select(corner => Math.Clamp(corner.U / Math.Sin(angle), shell.InnerRadius, shell.OuterRadius))
                    .Where(double.IsFinite).Append(shell.InnerRadius).Append(shell.OuterRadius).Min(Off), Rounding);
            }
        }
    }

    /// <summary>Laid in its place the flat meets the shell's outside; only tabs go deeper, and they end along the bore.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_tab_reaches_to_the_bore_and_not_into_it(int seed)
    {
        var design = Tabbed(seed);
        var (bracket, shell) = (design.Bracket(), design.Shell);
        var (outline, lay) = Laid(design);
        var tabs = ShellTab.Of(bracket);
        var way = new Vector3(-Math.Sin(bracket.Angle), Math.Cos(bracket.Angle), 0);
        var deepest = new double[tabs.Length];
        Array.Fill(deepest, double.PositiveInfinity);
        const int Depths = 128;
        foreach (var place in outline.Edges.SelectMany(edge => Enumerable.Range(0, 41).Select(i => edge.At(edge.Domain.At(i / 40.0)))))
        {
            var through = Enumerable.Range(0, Depths + 1).Select(i => lay(place, bracket.Thickness * i / Depths)).ToList();
            var near = through.Min(at => Math.Sqrt((at.X * at.X) + (at.Y * at.Y)));
            Assert.True(near > shell.InnerRadius - Rounding);
            // What stands over the ridge between two depths is missed by the sagitta of half a step.
            var sagitta = Math.Pow(bracket.Thickness / Depths / 2, 2) / shell.InnerRadius;
            if (near > shell.OuterRadius - sagitta - Rounding)
                continue;
            var middle = through[Depths / 2];
            var on = new Point2(middle.Dot(way), middle.Z);
            var which = Enumerable.Range(0, tabs.Length).Single(i => Outside(tabs[i].Grown(0).Corners, on) < Rounding);
            deepest[which] = Math.Min(deepest[which], near - sagitta);
        }

        Assert.All(deepest, near => Assert.InRange(near,
            shell.InnerRadius - (bracket.Thickness * bracket.Thickness / shell.InnerRadius / 1e4), shell.InnerRadius + Rounding));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Bracket_and_shell_close_with_a_hole_for_every_slot(int seed)
    {
        var design = Tabbed(seed);
        var shell = ShellPart.Build(design.Shell.Courses[0], design with { Ports = [] }, [], Compiler.Assemble(design).Joints).Single();
        foreach (var (part, genus) in new[] { (BracketDesigns.Part(design), Bolts(design.Bracket().Bolts)),
            (shell, 1 + ShellTab.Of(design.Bracket()).Length) })
        {
            var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);

            MeshLaws.Hold(mesh, genus);
            // Facets lie within the chord of the surface.
            Assert.Equal(part.Volume, mesh.Volume, mesh.Area * Accuracy.Solids.Chord);
        }

        var flat = shell.Flat!;
        var gap = design.Shell.RootGap * design.Shell.Height;
        Near.Relative((CurveMeasures.Area(flat.Cut) + gap) * design.Shell.Wall, shell.Volume, Rounding);
    }

    private static int Bolts(BoltsDesign bolts) => (bolts.Across == 0 ? 1 : 2) * (bolts.Up == 0 ? 1 : 2);

    /// <summary>A plate or a saddle with tabs that its check lets pass.</summary>
    private static VesselDesign Tabbed(int seed)
    {
        var design = seed % 2 == 0 ? BracketDesigns.RandomPlate(seed) : BracketDesigns.Random(seed);
        design = design with { Shell = design.Shell with { MadeFrom = StockForm.Sheet, RootGap = 0.5 } };
        // Within the bore, which a wall of 2 leaves narrower than what brackets stand on.
        for (var count = 1 + (seed % 3); count > 0; count--)
        {
            foreach (var share in (double[])[0.6, 0.4, 0.2])
            {
                var width = share * design.Bracket().EdgeLength / count;
                var tabbed = design with
                {
                    Members = [design.Bracket() with { Tabs = new("bracket.tabs", count, width, 0.1 * (seed % 4)) }],
                };
                if (ShellTab.Of(tabbed.Bracket()).All(tab => tab.Furthest < 0.999 * design.Shell.InnerRadius))
                    return tabbed;
            }
        }

        throw new InvalidOperationException($"{seed} has no room for a tab");
    }

    /// <summary>The cut outline, and where a place of it lies at so much of the thickness.</summary>
    private static (Loop2 Outline, Func<Point2, double, Vector3> Lay) Laid(VesselDesign design)
    {
        if (design.Bracket() is PlateDesign plate)
        {
            var site = PlateSite.Of(plate, design);
            return (site.Outline, (at, depth) => site.Frame.ToOuter(new(at.U, at.V, depth)));
        }

        var saddle = SaddleSite.Of(design.Saddle(), design);
        return (saddle.Outline, (at, depth) => saddle.Frame.ToOuter(saddle.Sheet.At(at, depth)));
    }

    /// <summary>How far a point lies outside a convex polygon, counter-clockwise, by its sides; negative inside.</summary>
    private static double Outside(IReadOnlyList<Point2> corners, Point2 at) => Enumerable.Range(0, corners.Count).Max(i =>
    {
        var side = corners[(i + 1) % corners.Count] - corners[i];
        return -side.Cross(at - corners[i]) / side.Length;
    });
}
