using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Reading;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Parts;

/// <summary>
/// Shells that are a frustum or have a reducer, either way up, of thin and thick walls, with gaps and ports on their cones. All is held
/// against the sizes asked for, by formulas that stand here.
/// </summary>
public sealed class ShellShapeTests
{
    private const int Count = 12;

    private static readonly Assembly[] _built = [.. Enumerable.Range(0, Count).Select(seed => Compiler.Assemble(At(seed)))];

    public static TheoryData<int> Seeds { get; } = new(Enumerable.Range(0, Count));

    /// <summary>Even seeds are frusta, odd ones have a reducer; every other pair widens upward, every third is of two sheets.</summary>
    private static VesselDesign At(int seed)
    {
        // Not for secrets: the same seed must give the same design.
#pragma warning disable CA5394
        var dice = new Random(seed);
        double Between(double low, double high) => low + (dice.NextDouble() * (high - low));
#pragma warning restore CA5394
        var (wide, narrow) = (Between(120, 300), Between(0.45, 0.8));
        var (below, above) = seed % 4 < 2 ? (wide, wide * narrow) : (wide * narrow, wide);
        var wall = wide * Between(0.006, 0.05);
        var sheets = seed % 3 == 0 ? 2 : 1;
        var plain = Designs.Shell(below, wall, wide * Between(1.2, 2.5)) with
        {
            SeamAngle = Between(0, Turns.Full),
            RootGap = Between(0, 1.5),
            Sheets = sheets,
        };
        var (from, length) = (plain.Height * Between(0.3, 0.4), plain.Height * Between(0.2, 0.35));
        var shell = seed % 2 == 0 ? plain with { TopDiameter = above } : plain with
        {
            Reducer = new(
                "shell.reducer", from, length, above, Between(0, Turns.Full), Between(0, 1.5), seed % 4 == 1
                    ? StockForm.Tube : StockForm.Sheet, Between(0, Turns.Full))
            {
                Sheets = sheets,
                AboveSheets = seed % 4 == 1 ? 1 : sheets,
            },
        };
        var cone = shell.Courses.Single(course => course.IsCone);
        var radius = Math.Min(0.25 * cone.Height, 0.2 * Math.Min(below, above));
        PortDesign Port(string name, double angle, double aside, double tilt) => Designs.Branch(
            name, 2 * radius, 0.1 * radius,
            new(cone.Heights.At(0.5), Turns.From(cone.Seams.First + angle, 0), aside * radius, tilt, 0)) with
        {
            Length = 4 * radius,
            Cut = EndCut.Ground,
        };
        return Designs.Vessel(shell, Port("one", 2, 0.4, 0.2),
            Port("other", 4.2, -0.3, -0.1) with { Joint = PortJoint.SetIn, InsideLength = 20, Clearance = 0.2, Cut = EndCut.Square }) with
        {
            Top = Designs.Overlay("top", above + 10),
            Bottom = Designs.Overlay("bottom", below + 10),
        };
    }

    /// <summary>At the girth of radius R seams that are a degree apart are R pi / 180 apart; 10 mm are asked for (common practice, no
    /// source).</summary>
    [Theory]
    [InlineData(3, true)]
    [InlineData(20, false)]
    public void Long_seams_that_meet_at_a_girth_are_told(double degrees, bool told)
    {
        var design = At(3);
        var shell = design.Shell with
        {
            Reducer = design.Shell.Reducer! with { SeamAngle = design.Shell.SeamAngle + (degrees * Math.PI / 180) },
        };
        var found = Assessment.Of(Compiler.Assemble(design with { Shell = shell, Ports = [] }))
            .Where(finding => finding.Code == FindingCodes.SeamsMeet).ToList();

        Assert.Equal(told, found.Count > 0);
        Assert.All(found, finding => Assert.Equal(design.Shell.OuterRadius * degrees * Math.PI / 180, finding.Figures[0].Value, 1e-9));
    }

    private static ShellCourse Cone(Assembly vessel) => vessel.Design.Shell.Courses.Single(course => course.IsCone);

    private static IEnumerable<Part> Sheets(Assembly vessel) =>
        Names.ShellParts(Cone(vessel), vessel.Design).Select(id => vessel.Parts.Single(part => part.Id == id));

    private static double Lean(ShellCourse cone) => Math.Atan2(cone.High - cone.Low, cone.Height);

    /// <summary>Radius of the outside at a height, by similar triangles.</summary>
    private static double Radius(ShellCourse cone, double z) => cone.Low + ((z - cone.Start) * Math.Tan(Lean(cone)));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void What_is_asked_for_can_be_built(int seed) => Assert.Empty(DesignCheck.Find(At(seed)));

    /// <summary>Each place of the outline, raised, lies in the middle between the cone's faces: half a wall inside,
    /// square to its line.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_flat_rolled_up_lies_on_the_middle_of_the_cone(int seed)
    {
        var (vessel, cone) = (_built[seed], Cone(_built[seed]));
        foreach (var (part, edge) in from part in Sheets(vessel) from edge in part.Flat!.Cut.Outer.Edges select (part, edge))
        {
            var (sheet, development) = (ConeShape.Of(cone), Assert.IsType<ConeDevelopment>(part.Flat!.From));
            foreach (var t in Enumerable.Range(0, 9).Select(i => edge.Domain.At(i / 8.0)))
            {
                var at = part.Placements[0].ToOuter(sheet.OnMiddle(development.Raise(edge.At(t))));
                Near.Absolute(-cone.Wall / 2, (double.Hypot(at.X, at.Y) - Radius(cone, at.Z)) * Math.Cos(Lean(cone)), 1e-9 * cone.Low);
            }
        }
    }

    /// <summary>Pappus: the sheet's section turned is the finished cone's and the two wedges that are dressed off, t by t tan a;
    /// the gap is cut away.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Area_times_thickness_is_volume_and_what_is_dressed_off(int seed)
    {
        var (vessel, cone) = (_built[seed], Cone(_built[seed]));
        var sheets = Sheets(vessel).SelectMany(sheet => Enumerable.Repeat(sheet, sheet.Quantity)).ToList();
        var (t, a) = (cone.Wall, Math.Abs(Lean(cone)));
        var (narrow, wide) = (Math.Min(cone.Low, cone.High), Math.Max(cone.Low, cone.High));
        var wedge = t * t * Math.Tan(a) / 2;
        // Corners of the narrow one: on the outside at the level and square across from where the inside ends, and that end.
        var outer = (narrow + (narrow - (t * Math.Tan(a) * Math.Sin(a))) + (narrow - (t / Math.Cos(a)))) / 3;
        var inner = (wide + (wide - (t * Math.Cos(a))) + (wide - (t / Math.Cos(a)))) / 3;
        var dressed = Turns.Full * wedge * (outer + inner);
        var holes = vessel.Sites.Sum(site => DrilledDome.DrilledOut(site));
        var gap = sheets.Sum(sheet => cone.RootGap * ((ConeDevelopment)sheet.Flat!.From).Lengths.Length * t);
        var volume = sheets.Sum(sheet => sheet.Volume);

        // The gap's strip is as wide on every circle; its ends are arcs, so that it is off by the gap's square over the radius.
        Near.Absolute(sheets.Sum(sheet => CurveMeasures.Area(sheet.Flat!.Cut)) * t, volume + holes + dressed - gap,
            (1e-9 * volume) + (sheets.Count * cone.RootGap * cone.RootGap * t));
        Assert.True(holes > 0);
    }

    /// <summary>Both edges of a seam are equally long, and the arcs are shares of the girths of the middle of the wall less the
    /// gap.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Seam_edges_are_alike_and_arcs_are_girths(int seed)
    {
        foreach (var sheet in Sheets(_built[seed]))
            AssertEdges(Cone(_built[seed]), sheet.Flat!.Cut.Outer.Edges);
    }

    private static void AssertEdges(ShellCourse cone, ImmutableArray<Curve2> edges)
    {
        var (seams, arcs) = (edges.OfType<Line2>().Select(CurveMeasures.Length).ToList(),
            edges.OfType<Arc2>().Select(CurveMeasures.Length).Order().ToList());
        var (a, t) = (Math.Abs(Lean(cone)), cone.Wall);
        var slant = cone.Height / Math.Cos(a);
        Near.Absolute(seams[0], seams[1], 1e-9 * slant);
        // From the level of the outside's wide edge to that of the inside's narrow one.
        if (cone.RootGap == 0)
            Near.Absolute(slant + (t * Math.Tan(a)), seams[0], 1e-9 * slant);
        var (narrow, wide) = (Math.Min(cone.Low, cone.High), Math.Max(cone.Low, cone.High));
        double Girth(double outer) => (Turns.Full / cone.Seams.Count * (outer - (t / 2 * Math.Cos(a)))) - cone.RootGap;
        // A gap's arc is longer than its chord by less than its cube over the square of the distance from the tip.
        var rounding = (1e-9 * wide) + Math.Pow(cone.RootGap / (narrow - t), 2);
        Near.Absolute(Girth(narrow - (t * Math.Tan(a) * Math.Sin(a))), arcs[0], rounding);
        Near.Absolute(Girth(wide), arcs[1], rounding);
    }

    /// <summary>A port's root runs on the cone's outside and on the port's own; its scribed hole lies where the drill comes out.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Ports_on_a_cone_are_met_exactly(int seed)
    {
        var (vessel, cone) = (_built[seed], Cone(_built[seed]));
        foreach (var site in vessel.Sites)
        {
            var joint = vessel.Welds.Single(weld => weld.Joint.Path == site.Port.Path).Joint;
            foreach (var phi in Enumerable.Range(0, 24).Select(i => i * Turns.Full / 24))
            {
                var root = joint.Along(phi).Root;
                Near.Absolute(Radius(cone, root.Z), double.Hypot(root.X, root.Y), 1e-9 * cone.Low);
                Near.Absolute(site.Port.OuterRadius, (root - site.Frame.Origin).Across(site.Frame.Z).Length, 1e-9 * cone.Low);
                var drilled = site.Frame.ToOuter(site.Inside.At(site.OpeningRadius, phi));
                Near.Absolute(Radius(cone, drilled.Z) - (cone.Wall / Math.Cos(Lean(cone))),
                    double.Hypot(drilled.X, drilled.Y), 1e-9 * cone.Low);
            }
        }
    }

    /// <summary>Prisms and frusta between two flat lids, less nothing: no tube reaches in but the one, whose metal is told apart.</summary>
    [Theory]
    [MemberData(nameof(Seeds))]
    public void It_holds_what_its_frusta_hold(int seed)
    {
        var design = At(seed);
        var empty = Compiler.Assemble(design with { Ports = [Designs.OnHead("vent", VesselEnd.Top, 20, 2, 0) with { Path = "ports[0]" }] });
        double Frustum(double p, double q, double h) => Math.PI / 3 * h * ((p * p) + (p * q) + (q * q));
        var holds = design.Shell.Courses.Sum(course => course.Wall / Math.Cos(Lean(course)) is var across
            ? Frustum(course.Low - across, course.High - across, course.Height)
            : 0);
        Near.Relative(holds, empty.Capacity.Brim, 1e-9);
        // The centre of the shell's metal, by slices.
        var (sum, moment) = (0.0, 0.0);
        foreach (var course in design.Shell.Courses)
        {
            for (var i = 0; i < 2000; i++)
            {
                var z = course.Heights.At((i + 0.5) / 2000);
                var (outer, across) = (Radius(course, z), course.Wall / Math.Cos(Lean(course)));
                var ring = course.Height * across * ((2 * outer) - across);
                (sum, moment) = (sum + ring, moment + (ring * z));
            }
        }

        var parts = empty.Parts.Where(part => Names.ShellParts(empty.Design).Contains(part.Id)).ToList();
        var centre = parts.Sum(part => part.Quantity * part.Volume * Vessel.Function.PartCentre.Of(part).Z)
            / parts.Sum(part => part.Quantity * part.Volume);
        Near.Absolute(moment / sum, centre, 1e-6 * design.Shell.Height);
    }

    /// <summary>The girth seams turn by the cone's lean, out where the shell narrows upward, in above it;
    /// each lies on both parts.</summary>
    [Fact]
    public void Girth_seams_join_the_parts_beside_them()
    {
        foreach (var vessel in _built.Where(built => built.Design.Shell.Reducer is not null))
        {
            var (shell, lean) = (vessel.Design.Shell, Lean(Cone(vessel)));
            var girths = vessel.Welds.Select(weld => weld.Joint).Where(joint => shell.Reducer!.GirthPaths.Contains(joint.Path)).ToList();
            Assert.Equal(2, girths.Count);
            Near.Absolute(Math.PI - lean, girths[0].Along(0).Dihedral, 1e-12);
            Near.Absolute(Math.PI + lean, girths[1].Along(0).Dihedral, 1e-12);
            Near.Absolute(Math.PI * shell.OutsideDiameter, girths[0].Length, 1e-6);
            Near.Absolute(Math.PI * shell.Reducer!.Diameter, girths[1].Length, 1e-6);
            var parts = shell.Courses.Select(course => Names.ShellParts(course, vessel.Design)).ToList();
            foreach (var (i, girth) in girths.Index())
            {
                Assert.Equal([parts[i][0], parts[i + 1][0]], girth.Between[..2]);
                Assert.Equal(parts[i].Concat(parts[i + 1]).Order(), girth.Between.Order());
            }
        }
    }
}
