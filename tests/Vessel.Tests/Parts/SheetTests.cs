using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Planning;
using Vessel.Ports;
using Vessel.Sites;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Parts;

/// <summary>Shells that are put together from several sheets, against the same from one.</summary>
public sealed class SheetTests
{
    private const double Seam = 0.3;

    /// <summary>One port amid a sheet, one set in through the wall, one over the seam of the bottom, a bracket with tabs, discs.</summary>
    private static Assembly Vessel(int sheets, double? top = null, double shift = 0)
    {
        var shell = Designs.Shell(240, 2, 260) with { SeamAngle = Seam, Sheets = sheets, RootGap = 0.8, TopDiameter = top };
        var pitch = Turns.Full / sheets;
        PortDesign Port(string name, double height, double angle) =>
            Designs.Branch(name, 30, 2, new(height, Turns.From(Seam + angle, 0), 8, 0.1, 0)) with { Length = 60, Cut = EndCut.Ground };
        var ports = new List<PortDesign>
        {
            Port("one", 150, (0.5 * pitch) + shift),
            Port("other", 80, (((sheets - 1) % sheets) + 0.4) * pitch)
                with { Joint = PortJoint.SetIn, InsideLength = 6, Clearance = 0.2, Cut = EndCut.Square },
        };
        if (top is null)
            ports.Add(Port("low", 5, (0.55 * pitch) + shift));
        return Compiler.Assemble(Designs.Vessel(shell, [.. ports]) with { Top = Designs.Overlay("top", 250) });
    }

    private static ImmutableArray<Part> Sheets(Assembly vessel) =>
        [.. Names.ShellParts(vessel.Design).Select(id => vessel.Parts.Single(part => part.Id == id))];

    public static TheoryData<int, double?> Shells { get; } =
        [.. from sheets in (int[])[2, 3, 5, 7] from top in (double?[])[null, 170, 300] select (sheets, top)];

    /// <summary>Together they weigh as much, and each flat is one gap short of its share.</summary>
    [Theory]
    [MemberData(nameof(Shells))]
    public void Sheets_make_the_shell_that_one_makes(int count, double? top)
    {
        // The holes lie in the same places of both.
        var vessel = Vessel(count, top);
        var whole = Compiler.Assemble(vessel.Design with { Shell = vessel.Design.Shell with { Sheets = 1 } });
        var (sheets, one) = (Sheets(vessel), Sheets(whole).Single());

        Assert.Equal(count, sheets.Sum(sheet => sheet.Quantity));
        Near.Relative(one.Volume, sheets.Sum(sheet => sheet.Quantity * sheet.Volume), 1e-12);
        if (top is null)
        {
            double Width(Part part) => CurveMeasures.Bounds(part.Flat!.Cut.Outer).Width;
            Near.Absolute(Width(one) + vessel.Design.Shell.RootGap,
                sheets.Sum(sheet => sheet.Quantity * (Width(sheet) + vessel.Design.Shell.RootGap)), 1e-9);
        }
    }

    /// <summary>Without holes, which are told as discs of one wall.</summary>
    [Theory]
    [MemberData(nameof(Shells))]
    public void Plain_sheets_have_their_mass_on_the_axis(int count, double? top)
    {
        var vessel = Compiler.Assemble(Vessel(count, top).Design with { Ports = [] });
        var sheet = Sheets(vessel).Single();
        var one = Compiler.Assemble(vessel.Design with { Shell = vessel.Design.Shell with { Sheets = 1 } });

        Assert.Equal(count, sheet.Quantity);
        Near.Absolute(0, (PartCentre.Of(sheet) - PartCentre.Of(Sheets(one).Single())).Length, 1e-9);
    }

    /// <summary>
    /// Meshes of the sheets in their places enclose what the formulas say, are no rings,
    /// and lie round the axis where the mass is said to be.
    /// </summary>
    [Theory]
    [MemberData(nameof(Shells))]
    public void A_sheets_solid_is_where_its_formulas_say(int count, double? top)
    {
        var vessel = Vessel(count, top);
        foreach (var sheet in Sheets(vessel))
        {
            var mesh = Mesher.Flatten(sheet.Solid, Accuracy.Solids);
            MeshLaws.Hold(mesh, sheet.Holes.Count(hole => !hole.IsLater));
            Near.Absolute(sheet.Volume, mesh.Volume, mesh.Area * Accuracy.Solids.Chord);
            var centre = sheet.Placements.Aggregate(Vector3.Zero,
                (sum, frame) => sum + (1.0 / sheet.Quantity * frame.ToOuter(Centre(mesh))));
            // A facet's own volume is off by chord times area, as far out as the sheet is wide; holes are told as discs of one wall.
            Near.Absolute(0, (centre - PartCentre.Of(sheet)).Length,
                240 * (mesh.Area * Accuracy.Solids.Chord / sheet.Volume) + 0.02);
        }
    }

    private static Vector3 Centre(Mesh mesh)
    {
        var sum = mesh.Triangles.Aggregate(Vector3.Zero, (sum, t) =>
        {
            var (a, b, c) = (mesh.Vertices[t.A], mesh.Vertices[t.B], mesh.Vertices[t.C]);
            return sum + (a.Cross(b).Dot(c) / 24 * (a + b + c));
        });
        return 1 / mesh.Volume * sum;
    }

    /// <summary>One seam a sheet, each as long as the shell's own line and between neighbours; numbered before all other welds.</summary>
    [Theory]
    [MemberData(nameof(Shells))]
    public void Every_two_neighbours_share_a_seam(int count, double? top)
    {
        var vessel = Vessel(count, top);
        var seams = vessel.Welds.Take(count).ToList();
        var ids = SheetPiece.Ids(SheetPiece.Of(vessel.Design.Shell.Courses[0], vessel.Design));
        for (var i = 0; i < count; i++)
        {
            var (joint, angle) = (seams[i].Joint, Seam + (i * Turns.Full / count));
            Assert.Equal($"W{i + 1}", joint.Number);
            Assert.Equal([ids[(i + count - 1) % count], ids[i]], joint.Between);
            Near.Absolute(double.Hypot(((top ?? 240) - 240) / 2, 260), seams[i].Length, 1e-9);
            Near.Absolute(0, Turns.Signed(Math.Atan2(joint.Along(10).Root.Y, joint.Along(10).Root.X) - angle), 1e-12);
        }

        Assert.DoesNotContain(vessel.Welds.Skip(count), weld => weld.Joint.Name.StartsWith("long seam", StringComparison.Ordinal));
        Assert.Equal([.. ids.Distinct().Order()],
            vessel.Welds.Single(weld => weld.Joint.Path == "bottom").Joint.Between.Where(id => id != "bottom").Order());
    }

    /// <summary>All are made and welded before it is rounded, once, and nothing is fitted to it sooner.</summary>
    [Fact]
    public void The_shell_is_whole_and_round_before_anything_is_fitted()
    {
        var vessel = Vessel(3);
        var tasks = Plan.Of(vessel).Order.Tasks;
        var round = tasks.Index().Single(task => task.Item.Kind == WorkKind.Round).Index;
        var welds = tasks.Index().Where(task => task.Item.Kind == WorkKind.Weld).ToList();

        Assert.All(welds, weld => Assert.Equal(weld.Item.Weld!.Role == WeldRole.LongSeam, weld.Index < round));
        Assert.Equal(3, welds.Count(weld => weld.Item.Weld!.Role == WeldRole.LongSeam));
    }

    [Theory]
    // Through the second seam of three.
    [InlineData(3, Math.PI / 3, true)]
    [InlineData(3, 0, false)]
    public void No_port_stands_over_any_seam(int count, double shift, bool found)
    {
        var vessel = Vessel(count, 170, shift);
        var faults = SeamCheck.Find(PortSites.Of(vessel.Design)).ToList();

        Assert.Equal(found, faults.Count > 0);
        // The remedy is one.
        foreach (var angle in faults.Select(fault => fault.Remedy.Split("'seam_angle: ")[1].Split(' ')[0].TrimEnd('\'')))
        {
            var turned = vessel.Design.Shell with
            {
                SeamAngle = Turns.From(double.Parse(angle, System.Globalization.CultureInfo.InvariantCulture) * Math.PI / 180, 0),
            };
            Assert.Empty(SeamCheck.Find(PortSites.Of(vessel.Design with { Shell = turned })));
        }
    }

    /// <summary>
    /// On the mean diameter pi 238 - 0.8 = 746.9 mm; two take half of the girth less a gap each, 373.05, three 248.4;
    /// 10 mm are kept from either end.
    /// </summary>
    [Theory]
    [InlineData(800, null)]
    [InlineData(760, "shell.sheets: 2")]
    [InlineData(394, "shell.sheets: 2")]
    [InlineData(393, "shell.sheets: 3")]
    public void Sheet_too_short_for_the_girth_asks_for_more(double length, string? remedy)
    {
        var vessel = Vessel(1);
        var shop = vessel.Design.Shop with { Stock = vessel.Design.Shop.Stock with { SheetLength = length, SheetWidth = 400 } };
        var finding = Assessment.Of(Compiler.Assemble(vessel.Design with { Shop = shop }))
            .SingleOrDefault(found => found.Code == FindingCodes.NoSheetHolds && found.Parts.Contains("shell"));

        Assert.Equal(remedy is not null, finding is not null);
        if (remedy is not null)
            Assert.Contains(remedy, finding!.Message, StringComparison.Ordinal);
    }

    /// <summary>Higher than the sheet is wide: no number of sheets helps, for the bend lines stay across the grain.</summary>
    [Fact]
    public void Sheet_too_narrow_for_the_height_asks_for_wider_sheet()
    {
        var vessel = Vessel(1);
        var shop = vessel.Design.Shop with { Stock = vessel.Design.Shop.Stock with { SheetWidth = 279 } };
        var finding = Assessment.Of(Compiler.Assemble(vessel.Design with { Shop = shop }))
            .Single(found => found.Code == FindingCodes.NoSheetHolds && found.Parts.Contains("shell"));

        Assert.DoesNotContain("shell.sheets", finding.Message, StringComparison.Ordinal);
    }
}
