using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Members.Cups;
using Vessel.Members.InnerTubes;
using Vessel.Parts;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Members.Inside;

/// <summary>Sleeve and cap: where they stand, and what their windows are.</summary>
public sealed class InsideTests
{
    private static readonly ShellDesign _shell = Designs.Shell(120, 2, 200);

    private static readonly WindowsDesign _windows = new("inside.cap.windows", 4, 14, 12, 3, 10, 0.2);

    public static CupDesign Cap(CupOpening opens, StockForm form = StockForm.Tube) => new(
        "inside.cap", "cap", _shell.Material, 60, 2, 36, opens, VesselEnd.Top, Fixing.Weld,
        opens == CupOpening.Down ? 20 : 0, opens == CupOpening.Down ? "outlet" : null, 0.2,
        opens == CupOpening.Down ? 0 : 5, form, 1, [_windows], null);

    public static InnerTubeDesign Sleeve => new(
        "inside.sleeve", "sleeve", _shell.Material, 90, 2, 80, VesselEnd.Top, Fixing.Weld, []);

    public static VesselDesign Vessel(params CupDesign[] caps) => Designs.Vessel(
        _shell,
        Designs.OnHead("outlet", VesselEnd.Top, 32, 2, 0) with { Joint = PortJoint.SetIn, InsideLength = 22, Length = 40 },
        Designs.Branch("inlet", 30, 2, new(140, 0, 0, 0, 0)) with { Length = 50 }) with
    {
        Top = Designs.Inset(_shell, "top", 3, recess: 0),
        Members = [Sleeve, .. caps],
    };

    [Theory]
    [InlineData(CupOpening.Up, StockForm.Tube)]
    [InlineData(CupOpening.Down, StockForm.Sheet)]
    public void A_windows_corner_to_corner_height_stands_where_the_file_says(CupOpening opens, StockForm form)
    {
        var built = Compiler.Assemble(Vessel(Cap(opens, form)));
        var skirt = built.Parts.Single(part => part.Word == "skirt");
        var plate = built.Parts.Single(part => part.Word == "plate");
        var box = CurveMeasures.Bounds(skirt.Flat!.Cut.Holes[0]);
        var up = opens == CupOpening.Up;
        var (low, high) = (skirt.Placements[0].Origin.Z + box.Min.V, skirt.Placements[0].Origin.Z + box.Max.V);
        // The plate's inner face is its frame's origin when it lies below, turned over; else the face below it.
        var face = plate.Placements[0].Origin.Z;

        Near.Absolute(_windows.Up, up ? low - face : face - high, 1e-9);
        Near.Absolute(_windows.Height, high - low, 1e-9);
    }

    [Theory]
    [InlineData(StockForm.Tube)]
    [InlineData(StockForm.Sheet)]
    public void Windows_are_as_wide_on_the_outside_as_the_file_says_and_evenly_round(StockForm form)
    {
        var cap = Cap(CupOpening.Up, form);
        var skirt = Compiler.Assemble(Vessel(cap)).Parts.Single(part => part.Word == "skirt");
        var angles = skirt.Flat!.Cut.Holes
            .Select(CurveMeasures.Bounds)
            .Select(box => (Left: skirt.Flat.From.Raise(box.Min).U, Right: skirt.Flat.From.Raise(box.Max).U))
            .ToList();

        Assert.All(angles, a => Near.Relative(_windows.Width, (a.Right - a.Left) * cap.OutsideDiameter / 2, 1e-12));
        Assert.All(
            angles.Select(a => Turns.Signed((4 * ((a.Left + a.Right) / 2)) - (4 * _windows.Angle))),
            off => Near.Absolute(0, off, 1e-12));
    }

    [Fact]
    public void Cap_and_sleeve_hang_from_the_lids_inner_face()
    {
        var built = Compiler.Assemble(Vessel(Cap(CupOpening.Up)));
        var face = 200 - 3;

        Assert.Equal(face, built.Parts.Single(part => part.Word == "sleeve").Placements[0].Origin.Z + 80);
        Assert.Equal(face, built.Parts.Single(part => part.Word == "skirt").Placements[0].Origin.Z + 36);
        Assert.All(
            built.Welds.Where(weld => weld.Joint.Name.EndsWith("to top", StringComparison.Ordinal)
                && weld.Joint.Path.EndsWith("fixed", StringComparison.Ordinal)),
            weld => Assert.Equal(face, weld.Joint.Along(1).Root.Z));
    }

    [Fact]
    public void A_hanging_caps_plate_lies_flush_with_its_tubes_end_when_the_drop_says_so()
    {
        var built = Compiler.Assemble(Vessel(Cap(CupOpening.Down)));
        var outlet = built.Sites.Single(site => site.Port.Name == "outlet");
        var end = outlet.Frame.ToOuter(new(0, 0, outlet.InnerEnd)).Z;

        Near.Absolute(end, built.Parts.Single(part => part.Word == "plate").Placements[0].Origin.Z, 1e-9);
    }

    [Fact]
    public void Every_weld_is_numbered_once_in_order()
    {
        var built = Compiler.Assemble(Vessel(Cap(CupOpening.Up, StockForm.Sheet)));

        Assert.Equal(
            Enumerable.Range(1, built.Welds.Length).Select(i => $"W{i}"), built.Welds.Select(weld => weld.Joint.Number));
    }

    [Fact]
    public void Ring_welds_are_as_long_as_their_circle()
    {
        var welds = Compiler.Assemble(Vessel(Cap(CupOpening.Up))).Welds;
        double Length(string name) => welds.Single(weld => weld.Joint.Name == name).Length;

        Near.Relative(Math.PI * 90, Length("sleeve to top"), 1e-12);
        Near.Relative(Math.PI * 60, Length("cap skirt to plate"), 1e-12);
        Assert.Equal(JointKind.Corner, welds.Single(weld => weld.Joint.Name == "cap skirt to plate").Joint.Kind);
    }

    [Theory]
    [InlineData(CupOpening.Up, HolePattern.Staggered60)]
    [InlineData(CupOpening.Up, HolePattern.Rings)]
    [InlineData(CupOpening.Down, HolePattern.Square)]
    public void A_pattern_is_drilled_in_the_plate_inside_the_skirt(CupOpening opens, HolePattern kind)
    {
        var pattern = new HolePatternDesign("inside.cap.pattern", 3, 6, kind, 2);
        var cap = Cap(opens) with { Pattern = pattern };
        var (drilled, plain) = (Plate(cap), Plate(Cap(opens)));
        var lattice = Assert.Single(drilled.Fields).Lattice;

        Assert.True(lattice.Count > 10);
        // Nearest the skirt's inside a hole's edge stays the margin away.
        Assert.All(lattice.Centers(), centre => Assert.True(centre.Length + 1.5 <= (cap.OutsideDiameter / 2) - cap.Wall - 2 + 1e-9));
        Near.Relative(plain.Volume - (lattice.Count * Math.PI * 2.25 * cap.Wall), drilled.Volume, 1e-12);
        Assert.Equal(plain.Solid.Genus + lattice.Count, drilled.Solid.Genus);
        var mesh = Mesher.Flatten(drilled.Solid, Accuracy.Solids);
        MeshLaws.Hold(mesh, drilled.Solid.Genus);
        Near.Absolute(drilled.Volume, mesh.Volume, mesh.Area * Accuracy.Solids.Chord);
    }

    private static Part Plate(CupDesign cap) =>
        Compiler.Assemble(Vessel(cap)).Parts.Single(part => part.Word == "plate");
}
