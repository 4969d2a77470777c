using System.Text.Json;
using Vessel.Export;
using Vessel.Export.Dxf;
using Vessel.Geometry;
using Vessel.Tests.Export;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Members.Brackets;

public sealed class BracketFilesTests
{
    private static readonly Build _build = Compiler.Compile(
        BracketDesigns.On(BracketDesigns.Level), new(new DrawingOptions(DxfRelease.R2000, 0.01), false, Accuracy.Solids, "test", "none"));

    [Fact]
    public void The_flat_carries_outline_holes_bend_lines_and_what_the_brake_needs()
    {
        var flat = _build.Parts.Single(part => part.Part.Id == "bracket").Fitted!;
        using var file = new MemoryStream();

        FlatDxf.Write(flat, _build.Options.Drawing, file);

        var drawing = DxfProbe.Check(file.ToArray());
        Assert.Equal(3, drawing.Polylines.Count(polyline => polyline.Layer == "CUT"));
        Assert.Equal(2, drawing.On("BEND", "LINE").Count());
        var notes = drawing.On("NOTE", "TEXT").Select(text => text[1]!).ToList();
        Assert.Equal(2, notes.Count(note => note.Contains("90%%d down, inside R 5; ", StringComparison.Ordinal)
            && note.EndsWith("K 0.42", StringComparison.Ordinal)));
        Assert.Contains(notes, note => note.StartsWith("OUTSIDE FACE UP", StringComparison.Ordinal));
    }

    /// <summary>A nest shows each piece as its own flat does: bend lines, names and marks, turned and moved with it.</summary>
    [Fact]
    public void A_nest_keeps_bend_lines_names_and_marks()
    {
        var flats = _build.Parts.Where(part => part.Fitted is not null).ToDictionary(part => part.Part.Id, part => part.Fitted!);
        foreach (var nest in _build.Plan.Sheets.Select(sheet => sheet.Nest))
        {
            DxfProbe Written(bool cutOnly)
            {
                using var file = new MemoryStream();
                NestDxf.Write(nest, flats, _build.Options.Drawing with { CutOnly = cutOnly }, file);
                return DxfProbe.Check(file.ToArray());
            }

            var (all, cut) = (Written(false), Written(true));
            var pieces = nest.Places.Select(place => (Place: place, Flat: flats[nest.Pieces[place.Piece].Part!.Id].Flat)).ToList();
            // All sheets of this nest but the first lie beside it, so that one sheet is looked at.
            Assert.All(pieces, piece => Assert.Equal(0, piece.Place.Sheet));
            var expected = pieces.SelectMany(piece =>
                piece.Flat.Bends.Select(bend => (A: piece.Place.Of(bend.A), B: piece.Place.Of(bend.B)))).ToList();
            var found = all.On("BEND", "LINE").Select(line => (A: line.Point(10), B: line.Point(11))).ToList();
            Assert.Equal(expected.Count, found.Count);
            Assert.All(expected.Zip(found),
                pair => Assert.True((pair.First.A - pair.Second.A).Length + (pair.First.B - pair.Second.B).Length < 1e-5));
            Assert.Equal(
                pieces.Sum(piece => piece.Flat.Marks.OfType<TextMark>()
                    .Sum(text => Strokes.Of(text.Text, text.Center, text.Height, text.Angle).Length))
                + nest.Places.Sum(place =>
                    flats[nest.Pieces[place.Piece].Part!.Id].Flat.Marks.OfType<Vessel.Model.CurveMark>().Count()),
                all.Polylines.Count(line => line.Layer == "MARK"));
            Assert.Equal(cut.Polylines.Count(line => line.Layer == "CUT"), all.Polylines.Count(line => line.Layer == "CUT"));
            Assert.DoesNotContain(cut.Entities, entity => entity[8] != "CUT");
        }

        Assert.Contains(_build.Plan.Sheets, sheet => sheet.Nest.Pieces.Any(piece => piece.Part!.Flat!.Bends.Length > 0));
    }

    [Fact]
    public void The_summary_states_bends_welds_and_holes()
    {
        using var file = new MemoryStream();

        Compiler.Files(_build).Single(output => output.Path == "summary.json").Write(file);

        using var summary = JsonDocument.Parse(file.ToArray());
        var part = summary.RootElement.GetProperty("parts").EnumerateArray().Single(p => p.GetProperty("kind").GetString() == "bracket");
        var development = part.GetProperty("flat").GetProperty("development");
        Assert.Equal("folded", development.GetProperty("kind").GetString());
        Assert.Equal("y", development.GetProperty("across").GetString());
        Assert.All(development.GetProperty("bends").EnumerateArray(), bend => Assert.Equal(-90, bend.GetProperty("angle_deg").GetDouble()));
        Assert.Equal(2, part.GetProperty("flat").GetProperty("holes").GetInt32());
        Assert.Equal(
            ["upper ear of bracket to shell", "lower ear of bracket to shell"],
            summary.RootElement.GetProperty("welds").EnumerateArray().Select(weld => weld.GetProperty("name").GetString()).TakeLast(2));
    }
}
