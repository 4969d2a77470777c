using System.Collections.Immutable;
using System.Globalization;
using Vessel.Function;

namespace Vessel.Cli;

/// <summary>What a welder asks whether it works, in a few lines; the rest is in the summary and in <c>explain --of</c>.</summary>
internal static class FunctionText
{
    private static readonly ImmutableArray<(string Label, ImmutableArray<string> Names)> _lines =
    [
        ("gas", ["gas-flow", "gas-loss"]),
        ("narrowest", ["smallest-stage"]),
        ("oil", ["carried-up", "half-caught"]),
        ("mount", ["mass-full", "mount-margin"]),
    ];

    public static void Write(ImmutableArray<FigureGroup> function, Capacity capacity, TextWriter output)
    {
        var figures = function.SelectMany(group => group.Figures).ToDictionary(figure => figure.Name);
        foreach (var (label, names) in _lines)
        {
            var said = names.Where(figures.ContainsKey).Select(name => Said(figures[name])).ToList();
            if (said.Count > 0)
                output.WriteLine($"{label,-9} {string.Join("; ", said)}");
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"capacity  brim {capacity.Brim / 1e6:0.00} L, fillable {capacity.Fillable / 1e6:0.00} L, usable {capacity.Usable / 1e6:0.00} "
                + $"L: {capacity.LimitedBy}"));
    }

    private static string Said(Figure figure) => $"{figure.Title}: {FigureText.Of(figure.Value, figure.Unit)}";
}
