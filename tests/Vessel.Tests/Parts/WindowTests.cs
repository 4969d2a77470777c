using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Cups;
using Vessel.Parts;
using Vessel.Stock;
using Vessel.Tests.Members.Inside;
using Vessel.Tests.Support;
using Vessel.Tests.Reading;
using Xunit;

namespace Vessel.Tests.Parts;

/// <summary>Round windows, slots and rectangles, several rows in one tube.</summary>
public sealed class WindowTests
{
    private static readonly ImmutableArray<WindowsDesign> _rows =
    [
        new("inside.sleeve.windows[0]", 6, 9, 9, 4.5, 6, 0.3) { IsRound = true },
        new("inside.sleeve.windows[1]", 6, 6, 20, 3, 18, 0.3),
        new("inside.sleeve.windows[2]", 3, 30, 8, 2, 44, 0.3),
    ];

    /// <summary>Slots and round windows by elementary geometry.</summary>
    private static readonly double _open =
        (6 * Math.PI * 81 / 4) + (6 * ((6 * 14) + (Math.PI * 9))) + (3 * ((30 * 8) - ((4 - Math.PI) * 4)));

    [Fact]
    public void A_sleeve_with_three_rows_is_one_solid_with_as_many_holes_and_the_volume_of_its_formula()
    {
        var part = Compiler.Assemble(InsideTests.Vessel().With(new InsideDesign([], [InsideTests.Sleeve with { Windows = _rows }], [], [])))
            .Parts.Single(part => part.Word == "sleeve");
        var mesh = Mesher.Flatten(part.Solid, Accuracy.Solids);

        MeshLaws.Hold(mesh, 1 + 15);
        Near.Absolute(part.Volume, mesh.Volume, mesh.Area * Accuracy.Solids.Chord);
        // Walls of holes are radial: the open area is that of the mean cylinder.
        Near.Relative((Math.PI * 88 * 2 * 80) - (_open * 2 * 44 / 45), part.Volume, 1e-12);
        Near.Relative((Math.PI * 90 * 80) - _open, CurveMeasures.Area(part.Flat!.Cut), 1e-12);
        Assert.Equal(
            [HoleMethod.Drill, HoleMethod.CutOrFile], part.Holes.Select(hole => hole.Made).Distinct());
    }

    /// <summary>Round the girth and up: the nearest two are neighbours in a row, or one above the other by the half pitch aside.</summary>
    [Theory]
    [InlineData("", 1, 1, false)]
    [InlineData(", rows: 4, row_pitch: 9", 4, 9, false)]
    [InlineData(", rows: 5, row_pitch: 8, staggered: true", 5, 8, true)]
    public void Rows_of_windows_make_a_pattern_round_a_sleeve(string keys, int rows, double pitch, bool staggered)
    {
        var text = DesignTexts.WithInside.Replace(
            "length: 120 }", $"length: 120, windows: {{ count: 16, diameter: 5, up: 10{keys} }} }}", StringComparison.Ordinal);
        var design = DesignTexts.Good(text);
        var sleeve = Compiler.Assemble(design).Parts.Single(part => part.Word == "sleeve");

        Assert.Equal(16 * rows, sleeve.Holes.Length);
        MeshLaws.Hold(Mesher.Flatten(sleeve.Solid, Accuracy.Solids), 1 + (16 * rows));
        var places = sleeve.Holes.Select(hole => hole.OnOutside!.Value).ToList();
        var girth = Math.PI * 76;
        var nearest = places.SelectMany((a, i) =>
            places.Skip(i + 1).Select(b => new Point2(Math.IEEERemainder(a.U - b.U, girth), a.V - b.V).Length)).Min();
        var above = rows == 1 ? double.PositiveInfinity : new Point2(staggered ? girth / 32 : 0, pitch).Length;
        Near.Relative(Math.Min(girth / 16, above), nearest, 1e-9);
    }

    [Fact]
    public void A_rows_windows_open_as_much_as_they_are_wide()
    {
        var cavity = Compiler.Assemble(
            InsideTests.Vessel().With(new InsideDesign([], [InsideTests.Sleeve with { Windows = _rows }], [], []))).Cavity;
        var rows = cavity.Openings.Where(opening => opening.Name.StartsWith("windows", StringComparison.Ordinal)).ToList();

        Assert.Equal(["windows of sleeve", "windows 2 of sleeve", "windows 3 of sleeve"], rows.Select(row => row.Name));
        Near.Relative(_open, rows.Sum(row => row.Area), 1e-12);
        Near.Relative(6 * Math.PI * 9, rows[0].Perimeter, 1e-12);
        Near.Relative(6 * ((Math.PI * 6) + 28), rows[1].Perimeter, 1e-12);
        Near.Relative(20, rows[1].Axial.End - rows[1].Axial.Start, 1e-12);
    }

    [Fact]
    public void A_round_window_of_a_rolled_skirt_is_a_circle_on_its_flat_and_as_much_wider_once_rolled()
    {
        var cap = InsideTests.Cap(CupOpening.Up, StockForm.Sheet) with
        {
            Windows = [_rows[0] with { Path = "inside.cap.windows" }],
            SeamAngle = 0.8,
        };
        var skirt = Compiler.Assemble(InsideTests.Vessel(cap)).Parts.Single(part => part.Word == "skirt");

        Assert.All(skirt.Flat!.Cut.Holes, hole => Near.Relative(4.5, hole.AsCircle!.Radius, 1e-12));
        // What a circle is on the mean diameter, an ellipse is on the outside.
        Assert.All(skirt.Wrap!.Cut.Holes, hole => Near.Relative(-Math.PI * 81 / 4 * 60 / 58, CurveMeasures.Area(hole), 1e-9));
        MeshLaws.Hold(Mesher.Flatten(skirt.Solid, Accuracy.Solids), 1 + 6);
    }

    [Fact]
    public void The_wrap_begins_where_no_row_has_a_window()
    {
        var rows = _rows.Select((row, i) => row with { Angle = 0.3 + (0.1 * i) }).ToImmutableArray();
        var part = Compiler.Assemble(InsideTests.Vessel().With(new InsideDesign([], [InsideTests.Sleeve with { Windows = rows }], [], [])))
            .Parts.Single(part => part.Word == "sleeve");

        Assert.All(part.Flat!.Cut.Holes.Select(CurveMeasures.Bounds), box => Assert.True(box.Min.U > 1 && box.Max.U < (Math.PI * 90) - 1));
    }
}
