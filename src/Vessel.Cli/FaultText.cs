using System.Collections.Immutable;
using Vessel.Cli.Commands;
using Vessel.Design;

namespace Vessel.Cli;

/// <summary>Faults as text: <c>file:line:column: what is wrong</c>, the line itself with a caret, and the remedy.</summary>
internal static class FaultText
{
    /// <summary>More than this many faults are shown only when asked for: the first ones explain most of the rest.</summary>
    public const int Most = 20;

    public static void Write(DesignFile file, ImmutableArray<Fault> faults, CommandConsole console)
    {
        if (faults.IsEmpty)
            return;
        var shown = file.AllFaults ? faults.Length : Math.Min(Most, faults.Length);
        foreach (var fault in faults[..shown])
        {
            var at = fault.At ?? new(1, 1, 1, 1);
            console.Error.WriteLine(
                $"{file.Place(at)} {console.Style.Bad("fault")} {fault.Code}: {fault.What}{Numbers(fault)}");
            WriteSource(file.Lines(at), at, console.Error);
            console.Error.WriteLine($"    {fault.Remedy}");
        }

        if (shown < faults.Length)
            console.Error.WriteLine($"{faults.Length - shown} more; --all-faults shows them.");
        console.Error.WriteLine(faults.Length == 1 ? "1 fault; nothing was written." : $"{faults.Length} faults; nothing was written.");
    }

    private static string Numbers(Fault fault)
    {
        var given = fault.Given is null ? null : $"given {fault.Given}";
        var limit = fault.Limit is null ? null : $"limit {fault.Limit}";
        return (given, limit) switch
        {
            (null, null) => string.Empty,
            (not null, not null) => $" ({given}, {limit})",
            _ => $" ({given ?? limit})",
        };
    }

    private static void WriteSource(string[] lines, Span at, TextWriter error)
    {
        const int most = 160;
        if (at.Line < 1 || at.Line > lines.Length)
            return;
        var line = lines[at.Line - 1].Replace('\t', ' ');
        if (line.Length == 0 || line.Length > most || at.Column > line.Length + 1)
            return;
        var end = at.EndLine == at.Line ? Math.Min(at.EndColumn, line.Length) : line.Length;
        error.WriteLine($"    {line}");
        error.WriteLine($"    {new string(' ', at.Column - 1)}{new string('^', Math.Max(1, end - at.Column + 1))}");
    }
}
