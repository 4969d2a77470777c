using Vessel.Design;
using Vessel.Function;
using Vessel.Stock;

namespace Vessel.Cli.Commands;

/// <summary><c>explain --of</c>: what a figure of a design is worked out from, or the list of them.</summary>
internal static class FigureCommand
{
    public static int Explain(string file, string? name, CommandConsole console)
    {
        if (DesignFile.Open(file, console) is not { } design)
            return ExitCodes.CouldNotWrite;
        if (design.Check(console) is not { } vessel)
            return ExitCodes.Faults;
        var groups = FunctionFigures.Of(Compiler.Assemble(vessel));
        var figures = groups.SelectMany(group => group.Figures).ToList();
        if (name is null)
            return List(groups, console);
        if (figures.Find(figure => figure.Name == name) is { } found)
            return One(found, console);
        console.Complain(
            $"{design.Shown} has no figure '{name}'. {Suggestion.Hint(name, figures.Select(figure => figure.Name))}".TrimEnd());
        console.Error.WriteLine($"'explain --of {design.Shown}' lists them all.");
        return ExitCodes.Usage;
    }

    private static int List(IReadOnlyCollection<FigureGroup> groups, CommandConsole console)
    {
        var output = console.Output;
        if (groups.Count == 0)
            output.WriteLine("There is nothing to work out: no gas gets from one open port to another.");
        var width = groups.SelectMany(group => group.Figures).Select(figure => figure.Name.Length).DefaultIfEmpty(0).Max();
        foreach (var group in groups)
        {
            output.WriteLine(console.Style.Bold(group.Title));
            foreach (var figure in group.Figures)
                output.WriteLine($"  {figure.Name.PadRight(width)}  {FigureText.Of(figure.Value, figure.Unit)}: {figure.Title}");
            foreach (var word in group.Words)
                output.WriteLine($"  - {word}");
        }

        return ExitCodes.Good;
    }

    private static int One(Figure figure, CommandConsole console)
    {
        var output = console.Output;
        output.WriteLine($"{console.Style.Bold(figure.Name)}: {figure.Title}");
        output.WriteLine($"  value    {FigureText.Of(figure.Value, figure.Unit)}");
        output.WriteLine($"  formula  {figure.Formula}");
        var lead = "  with     ";
        foreach (var input in figure.Inputs)
        {
            output.WriteLine($"{lead}{input.Symbol}: {input.Title}, {FigureText.Of(input.Value, input.Unit)} ({input.From})");
            lead = "           ";
        }

        output.WriteLine($"  source   {figure.Source}");
        foreach (var mark in Sources.Legend([figure.Source, .. figure.Inputs.Select(input => input.From)]))
            output.WriteLine($"           {mark}");
        output.WriteLine($"  holds    {figure.Validity.Range}");
        output.WriteLine(figure.Validity.Holds
            ? "           the inputs lie inside that"
            : "           the inputs lie outside that: a guide to size, no more");
        return ExitCodes.Good;
    }
}
