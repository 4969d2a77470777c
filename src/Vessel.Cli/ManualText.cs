using System.CommandLine;

namespace Vessel.Cli;

/// <summary>The manual page in the man macros of roff.</summary>
internal static class ManualText
{
    public static void Write(RootCommand root, TextWriter output)
    {
        output.WriteLine($".TH VESSEL 1 \"\" \"vessel {Escaped(ToolVersion.Text)}\"");
        output.WriteLine(".SH NAME");
        output.WriteLine($"vessel \\- {Escaped(root.Description!)}");
        output.WriteLine(".SH SYNOPSIS");
        output.WriteLine(".B vessel");
        output.WriteLine(".I command");
        output.WriteLine("[arguments] [options]");
        output.WriteLine(".SH COMMANDS");
        foreach (var command in root.Subcommands.Where(c => !c.Hidden))
            Write(command, output);
        output.WriteLine(".SH EXIT STATUS");
        foreach (var (code, meaning) in ExitCodes.All)
            WriteEntry($"{code}", meaning, output);
        output.WriteLine(".SH ENVIRONMENT");
        WriteEntry("NO_COLOR", "When set, no emphasis is written to a terminal.", output);
    }

    private static void Write(Command command, TextWriter output)
    {
        var arguments = command.Arguments.Select(a => a.Arity.MinimumNumberOfValues == 0 ? $"[{a.Name}]" : a.Name);
        output.WriteLine($".SS \"{Escaped(string.Join(' ', arguments.Prepend(command.Name)))}\"");
        output.WriteLine(Line(command.Description!));
        foreach (var argument in command.Arguments)
            WriteEntry(argument.Name, argument.Description!, output);
        foreach (var option in command.Options.Where(o => !o.Hidden))
        {
            var value = option.ValueType == typeof(bool) ? "" : $" {option.HelpName ?? "value"}";
            WriteEntry(string.Join(", ", option.Aliases.Append(option.Name)) + value, option.Description!, output);
        }
    }

    private static void WriteEntry(string term, string text, TextWriter output)
    {
        output.WriteLine(".TP");
        output.WriteLine($".B {Escaped(term)}");
        output.WriteLine(Line(text));
    }

    /// <summary>A line of text must not begin as a request does.</summary>
    private static string Line(string text) =>
        text is ['.' or '\'', ..] ? "\\&" + Escaped(text) : Escaped(text);

    private static string Escaped(string text) => text
        .Replace("\\", "\\e", StringComparison.Ordinal)
        .Replace("-", "\\-", StringComparison.Ordinal)
        .Replace("\"", "\\(dq", StringComparison.Ordinal);
}
