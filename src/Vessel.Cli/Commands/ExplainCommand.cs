using System.CommandLine;
using System.Globalization;
using Vessel.Design;
using Vessel.Findings;

namespace Vessel.Cli.Commands;

/// <summary>
/// <c>explain</c>: what the code of a fault or finding means and what to do, or the list of all of them; of a design, what a
/// figure is worked out from.
/// </summary>
internal static class ExplainCommand
{
    private const string LimitsWord = "limits";

    public static Command Create(CommandConsole console)
    {
        var code = new Argument<string?>("code")
        {
            Description = "The code of a fault or finding, 'limits', or with --of the name of a figure; all are listed unless given.",
            Arity = ArgumentArity.ZeroOrOne,
            HelpName = "CODE",
        };
        code.CompletionSources.Add(_ => Known().Select(word => new System.CommandLine.Completions.CompletionItem(word)));
        var of = new Option<string?>("--of")
        {
            Description = "Design file of the figure: prints its formula, inputs, source and range; without a name, lists all figures.",
            HelpName = "FILE",
        };
        var page = new Option<bool>("--page") { Description = "All codes with cause and remedy as a page of Markdown." };
        var command = new Command("explain", "Explain a fault, a finding, or a figure of a design.") { code, of, page };
        command.SetAction(parsed => parsed.GetValue(page) ? WritePage(console)
            : parsed.GetValue(of) is { } file ? FigureCommand.Explain(file, parsed.GetValue(code), console)
            : Explain(parsed.GetValue(code), console));
        return command;
    }

    private static int Explain(string? code, CommandConsole console)
    {
        if (code is null)
            return List(console);
        if (code == LimitsWord)
            return WriteLimits(console);
        if (FaultCodes.All.FirstOrDefault(f => f.Code == code) is { } fault)
            return One(code, "a fault: nothing is written while it is there", fault.Cause, fault.Remedy, console);
        if (FindingCodes.All.FirstOrDefault(f => f.Code == code) is { } finding)
            return One(
                code, "a finding: the files are written, and it is reported with its figures", finding.Cause, finding.Remedy, console);
        console.Complain($"there is no code '{code}'. {Suggestion.Hint(code, Known())}".TrimEnd());
        console.Error.WriteLine("'explain' alone lists them all; a figure's name needs '--of FILE'.");
        return ExitCodes.Usage;
    }

    private static IEnumerable<string> Known() =>
        FaultCodes.All.Select(f => f.Code).Concat(FindingCodes.All.Select(f => f.Code)).Append(LimitsWord);

    private static int One(string code, string kind, string cause, string remedy, CommandConsole console)
    {
        console.Output.WriteLine($"{console.Style.Bold(code)}: {kind}");
        console.Output.WriteLine($"  cause   {cause}");
        console.Output.WriteLine($"  remedy  {remedy}");
        return ExitCodes.Good;
    }

    private static int List(CommandConsole console)
    {
        var output = console.Output;
        var width = Known().Max(word => word.Length);
        output.WriteLine("Faults: no such vessel can be built; nothing is written.");
        foreach (var fault in FaultCodes.All)
            output.WriteLine($"  {fault.Code.PadRight(width)}  {fault.Cause}");
        output.WriteLine();
        output.WriteLine("Findings: it can be built, but something about it is ill-advised.");
        foreach (var finding in FindingCodes.All)
            output.WriteLine($"  {finding.Code.PadRight(width)}  {finding.Cause}");
        output.WriteLine();
        output.WriteLine("'explain <code>' gives the remedy; 'explain limits' how large a file may be.");
        return ExitCodes.Good;
    }

    private static int WritePage(CommandConsole console)
    {
        void Rows(IEnumerable<(string Code, string Cause, string Remedy)> codes)
        {
            console.Output.WriteLine("| code | cause | remedy |");
            console.Output.WriteLine("|---|---|---|");
            foreach (var (code, cause, remedy) in codes)
                console.Output.WriteLine($"| `{code}` | {cause} | {remedy} |");
        }

        console.Output.WriteLine("Faults: no such vessel can be built; nothing is written.");
        console.Output.WriteLine();
        Rows(FaultCodes.All.Select(f => (f.Code, f.Cause, f.Remedy)));
        console.Output.WriteLine();
        console.Output.WriteLine("Findings: it can be built, but something about it is ill-advised.");
        console.Output.WriteLine();
        Rows(FindingCodes.All.Select(f => (f.Code, f.Cause, f.Remedy)));
        return ExitCodes.Good;
    }

    private static int WriteLimits(CommandConsole console)
    {
        var width = Limits.All.Max(limit => limit.What.Length);
        console.Output.WriteLine("A design file may have at most");
        foreach (var limit in Limits.All)
        {
            console.Output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"  {limit.What.PadRight(width)}  {limit.Most,7} {limit.Unit,-10}  past it: {limit.Code}"));
        }

        return ExitCodes.Good;
    }
}
