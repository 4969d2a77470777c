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
            WriteSource(file.Lines(at), at, console);
            console.Error.WriteLine($"    {fault.Remedy}");
        }

        if (shown < faults.Length)
            console.Error.WriteLine($"{faults.Length - shown} more; --all-faults shows them.");
        console.Error.WriteLine(faults.Length == 1 ? "1 fault; nothing was written." : $"{faults.Length} faults; nothing was written.");
    }

    private static string Numbers(Fault fault)
    {
        var limit = fault.Limit is null ? null : $"needs {fault.Limit}";
        return (fault.Given, limit) switch
        {
            (null, null) => string.Empty,
            (not null, not null) => $" ({fault.Given}; {limit})",
            _ => $" ({fault.Given ?? limit})",
        };
    }

    /// <summary>The line with a caret; of a long one the piece round it.</summary>
    private static void WriteSource(string[] lines, Span at, CommandConsole console)
    {
        const int longest = 160;
        const int indent = 4;
        if (at.Line < 1 || at.Line > lines.Length)
            return;
        var line = lines[at.Line - 1].Replace('\t', ' ');
        if (line.Length == 0 || at.Column > line.Length + 1)
            return;
        var room = Math.Min(longest, console.Width - indent);
        var from = line.Length <= room ? 0 : Math.Clamp(at.Column - 1 - (room / 2), 0, line.Length - room);
        var shown = line.Substring(from, Math.Min(room, line.Length - from));
        var end = at.EndLine == at.Line ? Math.Min(at.EndColumn, line.Length) : line.Length;
        var carets = Math.Clamp(end - at.Column + 1, 1, Math.Max(1, from + room - at.Column + 1));
        console.Error.WriteLine($"    {shown}");
        console.Error.WriteLine($"    {new string(' ', at.Column - 1 - from)}{new string('^', carets)}");
    }
}
