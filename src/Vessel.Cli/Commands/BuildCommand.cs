using System.CommandLine;
using Vessel.Export;
using Vessel.Export.General;
using Vessel.Export.Dxf;
using Vessel.Export.Paper;

namespace Vessel.Cli.Commands;

/// <summary><c>build</c>: writes every file of a design into one folder.</summary>
internal static class BuildCommand
{
    public static Command Create(CommandConsole console)
    {
        var input = new DesignInput();
        var output = new Option<string?>("--out")
        {
            Description = "The folder to write to (out/<design file's name> unless given).",
            HelpName = "DIR",
        };
        output.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: var name }] && string.IsNullOrWhiteSpace(name))
                result.AddError("--out takes the name of a folder, not an empty text");
        });
        var dxf = new Option<string>("--dxf")
        {
            Description = "The DXF release: r2000 (AC1015, unless given) or r12 (AC1009).",
            DefaultValueFactory = _ => "r2000",
        };
        dxf.AcceptOnlyFromAmong("r2000", "r12");
        var cutOnly =
            new Option<bool>("--cut-only") { Description = "Also write each flat's cut lines alone, for services that merge layers." };
        var kerf = Arguments.Number("--kerf",
            "Width of the cut: also write each sheet's cut lines moved by half of it, and nest pieces so much further apart, mm", "MM", 0,
            (0, 5));
        var frame = Arguments.Number("--frame-below",
            "Also write each sheet part that is smaller than this both ways, mm, in a frame that holds it by tabs", "MM", 0, (0, 500));
        var tolerance = Arguments.Number("--tolerance", "Greatest deviation of flats, mm", "MM", 0.01, (0.001, 0.5));
        var chord = Arguments.Number("--chord", "Greatest deviation of solids, mm", "MM", 0.05, (0.005, 1));
        var angle = Arguments.Number("--angle", "Greatest turn between facets of solids, degrees", "DEGREES", 15, (2, 45));
        var section = Arguments.Number(
            "--section", "Direction round the vessel of the cut through its axis, degrees", "DEGREES", 0, (0, 360));
        var paper = new Option<string>("--paper")
        {
            Description = "Paper of templates and drawings: a4 (unless given) or letter.",
            DefaultValueFactory = _ => "a4"
        };
        paper.AcceptOnlyFromAmong("a4", "letter");
        var weldSymbols = new Option<string>("--weld-symbols")
        {
            Description = "Weld symbols on the drawing: iso (ISO 2553, first angle; "
            + "unless given) or aws (AWS A2.4, third angle).",
            DefaultValueFactory = _ => "iso"
        };
        weldSymbols.AcceptOnlyFromAmong("iso", "aws");
        var paperThickness = Arguments.Number(
            "--paper-thickness", "Of the paper that is wrapped round tubes, mm", "MM", PaperOptions.OfficePaper, (0, 1));
        var quiet = new Option<bool>("--quiet") { Description = "Print nothing but faults and findings." };
        var json = Arguments.Json();
        var command = new Command("build", "Build a design: flats, wraps, solids, hole and weld tables, summary.")
        {
            output, dxf, cutOnly, kerf, frame, tolerance, chord, angle, section, paper, paperThickness, weldSymbols, quiet, json,
        };
        input.AddTo(command);
        command.SetAction(parsed =>
        {
            if (input.Open(parsed, console) is not { } design)
                return ExitCodes.CouldNotWrite;
            var options = new BuildOptions(
                new(parsed.GetValue(dxf) == "r12" ? DxfRelease.R12 : DxfRelease.R2000, parsed.GetValue(tolerance)),
                parsed.GetValue(cutOnly),
                new(parsed.GetValue(chord), parsed.GetValue(angle) * Math.PI / 180),
                ToolVersion.Text,
                Compiler.HashOf(design.Text))
            {
                Settings = design.Settings,
                Kerf = parsed.GetValue(kerf),
                FrameBelow = parsed.GetValue(frame),
                ShopHash = design.Shop is { } shop ? Compiler.HashOf(shop.Text) : null,
                WeldSymbols = parsed.GetValue(weldSymbols) == "aws" ? WeldSymbols.Aws : WeldSymbols.Iso,
                Paper = new(parsed.GetValue(paper) == "letter" ? PaperSize.Letter : PaperSize.A4, parsed.GetValue(paperThickness)),
                SectionAngle = parsed.GetValue(section) * Math.PI / 180,
            };
            var folder = parsed.GetValue(output) ?? Path.Combine("out", design.FolderName);
            var style = parsed.GetValue(json) ? ReportStyle.Json : parsed.GetValue(quiet) ? ReportStyle.Quiet : ReportStyle.Full;
            return BuildRun.Run(design, options, folder, style, console);
        });
        return command;
    }
}
