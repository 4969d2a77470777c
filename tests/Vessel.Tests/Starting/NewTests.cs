using Vessel.Cli;
using Vessel.Findings;
using Vessel.Members.Brackets;
using Vessel.Members.Straps;
using Vessel.Tests.Support;
using Xunit;

namespace Vessel.Tests.Starting;

public sealed class NewTests
{
    public static TheoryData<string> Wishes() =>
    [
        "",
        "--engine 5.9 --speed 2600 --boost 1.2 --max-diameter 200 --max-height 500 --capacity 1",
        "--flow 30 --hose 25 --max-diameter 110 --max-height 300 --material|mild steel --capacity 0.2",
        "--flow|2 cfm --hose|1 1/4 in --max-diameter|6 in --max-height|16 in --material|aluminium 6061-T6 --mount band",
        "--flow 20 --hose 19 --max-diameter 80 --max-height 200 --capacity 0.1 --mount band",
        "--engine 2 --max-height 260 --capacity 0.2",
    ];

    [Theory]
    [MemberData(nameof(Wishes))]
    public void What_is_written_is_read_and_built_without_grave_findings(string options)
    {
        var text = Written(options);

        var outcome = Compiler.Read(text);

        Assert.Empty(outcome.Faults.Select(f => $"{f.Code} {f.Path}: {f.What}"));
        Assert.DoesNotContain(Compiler.Assess(Compiler.Assemble(outcome.Value!)), f => f.Severity == Severity.Error);
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(0.5)]
    [InlineData(1.2)]
    public void It_holds_what_is_asked_for(double litres)
    {
        var text = Written(FormattableString.Invariant($"--capacity {litres} --max-height 600"));

        Assert.InRange(Compiler.Assemble(Compiler.Read(text).Value!).Capacity.Usable, litres * 1e6, double.MaxValue);
    }

    /// <summary>15 g/h is the upper end of FISITA 2005's range for heavy-duty diesels; 870 g/L is a motor oil's usual density.</summary>
    [Fact]
    public void Hours_between_drains_ask_for_what_the_engine_carries_meanwhile()
    {
        var text = Written("--capacity|40 h --max-height 600");

        Assert.InRange(Compiler.Assemble(Compiler.Read(text).Value!).Capacity.Usable, 40 * 15 / 870.0 * 1e6, double.MaxValue);
        Assert.Contains("40 h between drains", text, StringComparison.Ordinal);
    }

    [Fact]
    public void It_keeps_to_the_room()
    {
        var design = Compiler.Read(Written("--engine 5 --max-diameter 130 --max-height 320")).Value!;

        // The stub above the lid, and the dome and the drain below the shell.
        var overAll = design.Ports[1].Length + design.Shell.Height + design.Shell.OuterRadius + design.Ports[2].Length;
        Assert.InRange(overAll, 0, 320);
        Assert.InRange(design.Shell.OutsideDiameter, 0, 130);
    }

    [Fact]
    public void Every_key_has_a_value_and_the_choices_are_explained()
    {
        var text = Written("");

        // Blow-by, body, hose, height, shape, the way of the gas.
        Assert.InRange(text.Split('#').Length - 1, 20, 100);
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_room_that_is_too_small_is_told_and_nothing_is_written()
    {
        using var folder = new TemporaryFolder();
        folder.Put("x", "");

        var run = CommandRun.In(folder.Path, "new", "a.yaml", "--max-height", "120", "--capacity", "5");

        Assert.Equal(1, run.Code);
        Assert.Contains("5 L", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder["a.yaml"]));
    }

    [Fact]
    public void A_file_that_is_there_is_left_alone()
    {
        using var folder = new TemporaryFolder();
        folder.Put("a.yaml", "mine");

        var run = CommandRun.In(folder.Path, "new", "a.yaml");

        Assert.Equal((3, "mine"), (run.Code, File.ReadAllText(folder["a.yaml"])));
    }

    [Fact]
    public void Without_a_terminal_nothing_is_asked()
    {
        using var folder = new TemporaryFolder();
        folder.Put("x", "");

        var run = CommandRun.In(folder.Path, "new", "--for", "Skiff: \"breather\" \\ 2");

        Assert.Equal((0, "skiff-breather-2.yaml is written. Try: check skiff-breather-2.yaml\n"), (run.Code, run.Output));
        Assert.Equal("Skiff: \"breather\" \\ 2", Compiler.Read(File.ReadAllText(folder["skiff-breather-2.yaml"])).Value!.Name);
    }

    [Fact]
    public void At_a_terminal_answers_are_taken_and_a_wrong_one_is_asked_again()
    {
        using var folder = new TemporaryFolder();
        folder.Put("x", "");

        // Purpose, litres (once wrong), speed, boost, hose, across, upward, metal; then nothing more is typed.
        var run = CommandRun.Asked(folder.Path, "Barge\ntwo\n2.5\n2800\n\n28\n140\n400\nmild steel\n", "new", "a.yaml");

        Assert.Equal(0, run.Code);
        Assert.Contains("'two' will not do: give a number from 0.05 to 100", run.Output, StringComparison.Ordinal);
        var design = Compiler.Read(File.ReadAllText(folder["a.yaml"])).Value!;
        Assert.Equal(("Barge", "mild steel", 28.0), (design.Name, design.Shell.Material.Name, design.Ports[0].OutsideDiameter));
        // 2.5 L, half of 2800 fillings a minute at 90 %, of which 1 %, warmed from 20 to 80 degC.
        Assert.Equal(2.5 * 1400 * 0.9 * 0.01 * 353.15 / 293.15, design.Flow.BlowBy!.Value, 0.05 + 1e-9);
    }

    [Fact]
    public void Answers_in_a_pipe_are_taken_without_questions()
    {
        using var folder = new TemporaryFolder();
        folder.Put("x", "");

        var run = CommandRun.Piped(folder.Path, "Barge\n2.5\n2800\n\n28\n140\n400\nmild steel\n", "new", "a.yaml");

        Assert.Equal((0, "a.yaml is written. Try: check a.yaml\n"), (run.Code, run.Output));
        Assert.Equal("Barge", Compiler.Read(File.ReadAllText(folder["a.yaml"])).Value!.Name);
    }

    /// <summary>Asking again would take the next question's answer for this one.</summary>
    [Fact]
    public void A_wrong_answer_in_a_pipe_ends_the_run_and_says_what_would_be_right()
    {
        using var folder = new TemporaryFolder();
        folder.Put("x", "");

        var run = CommandRun.Piped(folder.Path, "Barge\ntwo\n2.5\n", "new", "a.yaml");

        Assert.Equal(ExitCodes.Usage, run.Code);
        Assert.Contains("'two' does not answer \"Displacement of the engine, L\": give a number from 0.05 to 100", run.Error,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_band_is_a_strap_clear_of_the_inlet()
    {
        var design = Compiler.Read(Written("--mount band")).Value!;

        var strap = Assert.Single(design.All<StrapDesign>());
        Assert.Empty(design.All<BracketDesign>());
        var inlet = design.Ports[0];
        Assert.InRange(Math.Abs(strap.Height - inlet.Place.Height), ((strap.Width + inlet.OutsideDiameter) / 2) + 5, double.MaxValue);
    }

    [Theory]
    [InlineData("--material", "cheese")]
    [InlineData("--hose", "3,5")]
    [InlineData("--mount", "glue")]
    [InlineData("--engine", "-2")]
    public void A_wrong_option_is_a_usage_error(string option, string value)
    {
        using var folder = new TemporaryFolder();
        folder.Put("x", "");

        Assert.Equal(2, CommandRun.In(folder.Path, "new", "a.yaml", option, value).Code);
        Assert.False(File.Exists(folder["a.yaml"]));
    }

    private static string Written(string options)
    {
        using var folder = new TemporaryFolder();
        folder.Put("x", "");
        // An option and a value with blanks in it have a bar between them.
        var args = options.Split(" --", StringSplitOptions.RemoveEmptyEntries)
            .Select(o => o.StartsWith("--", StringComparison.Ordinal) ? o : "--" + o)
            .SelectMany(o => o.Split(o.Contains('|', StringComparison.Ordinal) ? '|' : ' '));
        var run = CommandRun.In(folder.Path, ["new", "a.yaml", .. args]);
        Assert.True(run.Code == 0, run.Error);
        return File.ReadAllText(folder["a.yaml"]);
    }
}
