using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace Vessel.Cli.Commands;

/// <summary>Arguments and options that commands share. Numbers are read with a point whatever the machine's language.</summary>
internal static class Arguments
{
    public static Option<bool> Json() => new("--json") { Description = "Report as JSON on standard output." };

    /// <param name="unit">Stands for the value in the help: <c>MM</c>.</param>
    /// <param name="limits">Both ends included.</param>
    public static Option<double> Number(string name, string description, string unit, double standard, (double Low, double High) limits) =>
        new(name)
        {
            Description = string.Create(
                CultureInfo.InvariantCulture, $"{description} ({limits.Low} to {limits.High}, {standard} unless given)."),
            HelpName = unit,
            DefaultValueFactory = _ => standard,
            CustomParser = result => Parse(result, name, limits),
        };

    private static double Parse(ArgumentResult result, string name, (double Low, double High) limits)
    {
        var text = result.Tokens[0].Value;
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            && value >= limits.Low && value <= limits.High)
        {
            return value;
        }

        result.AddError(string.Create(
            CultureInfo.InvariantCulture, $"{name} takes a number from {limits.Low} to {limits.High}, not '{text}'"));
        return default;
    }
}
