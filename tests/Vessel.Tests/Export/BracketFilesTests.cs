using System.Text.Json;
using Vessel.Export;
using Vessel.Export.Dxf;
using Vessel.Geometry;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Export;

public sealed class BracketFilesTests
{
    private static readonly Build _build = Compiler.Compile(
        Brackets.On(Brackets.Level), new(new DrawingOptions(DxfRelease.R2000, 0.01), false, Accuracy.Solids, "test", "none"));

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
        Assert.Equal(2, notes.Count(note => note.Contains("90%%d down, inside R 5; ", StringComparison.Ordinal) && note.EndsWith("K 0.42", StringComparison.Ordinal)));
        Assert.Contains(notes, note => note.StartsWith("OUTSIDE FACE UP", StringComparison.Ordinal));
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
