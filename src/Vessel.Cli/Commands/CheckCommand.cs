using System.CommandLine;
using Vessel.Function;

namespace Vessel.Cli.Commands;

/// <summary><c>check</c>: reads, builds in memory and reports; writes nothing.</summary>
internal static class CheckCommand
{
    public static Command Create(CommandConsole console)
    {
        var input = new DesignInput();
        var json = Arguments.Json();
        var command = new Command("check", "Read a design and report its faults and findings; write nothing.") { json };
        input.AddTo(command);
        command.SetAction(parsed =>
        {
            if (input.Open(parsed, console) is not { } design)
                return ExitCodes.CouldNotWrite;
            if (parsed.GetValue(json))
                return ReportJson.Check(design, console);
            if (design.Check(console) is not { } vessel)
                return ExitCodes.Faults;
            var assembly = Compiler.Assemble(vessel);
            var findings = Compiler.Assess(assembly);
            if (Compiler.Misaccepted(vessel, findings) is { IsEmpty: false } faults)
            {
                FaultText.Write(design, faults, console);
                return ExitCodes.Faults;
            }

            FindingText.Write(design, findings, console.Output, console.Style);
            FunctionText.Write(FunctionFigures.Of(assembly), assembly.Capacity, console.Output);
            console.Output.WriteLine($"{design.Shown}: {FindingText.Verdict(findings)}.");
            return FindingText.ExitCode(findings);
        });
        return command;
    }
}
