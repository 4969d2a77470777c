using System.CommandLine;

namespace Vessel.Cli.Commands;

/// <summary><c>check</c>: reads, builds in memory and reports; writes nothing.</summary>
internal static class CheckCommand
{
    public static Command Create(CommandConsole console)
    {
        var file = Arguments.Design();
        var json = Arguments.Json();
        var command = new Command("check", "Read a design and report its faults and findings; write nothing.") { file, json };
        command.SetAction(parsed =>
        {
            if (DesignFile.Open(parsed.GetValue(file)!, parsed.GetResult(file)!.Tokens[0].Value, console) is not { } design)
                return ExitCodes.CouldNotWrite;
            if (parsed.GetValue(json))
                return ReportJson.Check(design, console);
            if (design.Check(console) is not { } vessel)
                return ExitCodes.Faults;
            var findings = Compiler.Assess(Compiler.Assemble(vessel));
            FindingText.Write(design.Shown, findings, console.Output, console.Style);
            console.Output.WriteLine(
                findings.IsEmpty ? $"{design.Shown}: sound, no findings." : $"{design.Shown}: sound, {FindingText.Count(findings)}.");
            return FindingText.ExitCode(findings);
        });
        return command;
    }
}
