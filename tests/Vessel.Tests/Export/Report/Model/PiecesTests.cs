using Vessel.Export;
using Vessel.Export.Report.Model;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export.Report.Model;

/// <summary>What is shown in space.</summary>
public sealed class PiecesTests
{
    private static readonly BuildOptions _options = new(new(Tolerance: 0.2), false, new(1, Math.PI / 6), "test", "00");

    public static TheoryData<string> Designs => Repository.DesignFiles();

    [Theory]
    [MemberData(nameof(Designs))]
    public void Pulled_apart_no_two_pieces_on_the_axis_overlap_in_height(string file)
    {
        var build = Compiler.Compile(Compiler.Read(Repository.Design(file)).Value!, _options);
        var model = ShownModel.Of(build);
        var widest = model.Pieces.Max(piece => Math.Max(Math.Abs(piece.High.X), Math.Abs(piece.High.Y)));

        var stack = model.Pieces
            .Where(piece => piece.Move is { X: 0, Y: 0 })
            .Select(piece => (Low: piece.Low.Z + piece.Move.Z, High: piece.High.Z + piece.Move.Z))
            .OrderBy(span => span.Low)
            .ToList();

        Assert.All(stack.Zip(stack.Skip(1)), pair => Assert.True(pair.First.High < pair.Second.Low));
        // All else goes out by the widest radius, so it leaves the middle free.
        Assert.All(
            model.Pieces.Where(piece => piece.Move.X != 0 || piece.Move.Y != 0),
            piece => Near.Absolute(widest, new Vector3(piece.Move.X, piece.Move.Y, 0).Length, 1e-9 * widest));
        Assert.Equal(build.Parts.Sum(built => built.Part.Quantity), model.Pieces.Select(piece => piece.Name).Distinct().Count());
        Assert.Equal(build.Welds.Length, model.Seams.Length);
    }

    [Fact]
    public void A_plate_with_very_many_holes_is_shown_without_them()
    {
        var sheet = Repository.Design("harbour-launch-breather.yaml")
            .Replace("hole_diameter: 3, pitch: 4.5", "hole_diameter: 0.8, pitch: 1.6", StringComparison.Ordinal);
        // As finely as it takes to have more facets than are shown.
        var build = Compiler.Compile(Compiler.Read(sheet).Value!, _options with { Solids = new(0.05, Math.PI / 12) });
        var index = build.Parts.ToList().FindIndex(built => built.Part.Id == "lower-screen");

        var shown = ShownMesh.Of(build.Parts)[index];

        Assert.True(build.Parts[index].Mesh.Triangles.Length > 60_000);
        Assert.InRange(shown.Triangles.Length, 8, 2000);
        Assert.True(ShownMesh.LeavesHoles(build.Parts[index], shown));
        MeshLaws.IsClosed(shown);
        // A whole disc of its outline.
        var part = build.Parts[index].Part;
        Near.Relative(part.Volume + (part.Fields.Single().Lattice.Area * part.Thickness), shown.Volume, 0.02);
    }
}
