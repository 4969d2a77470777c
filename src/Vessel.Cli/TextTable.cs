namespace Vessel.Cli;

/// <summary>Rows in columns as wide as their cells, narrowed to a terminal by breaking cells between words.</summary>
internal static class TextTable
{
    private const int Apart = 2;

    /// <param name="width">Most characters of a line.</param>
    /// <param name="indent">Blanks before each line.</param>
    public static void Write(TextWriter output, IReadOnlyList<string[]> rows, int width, int indent = 0)
    {
        var widths = Fitted(rows, width - indent);
        foreach (var row in rows)
        {
            var cells = row.Select((cell, i) => Broken(cell, widths[i])).ToArray();
            for (var line = 0; line < cells.Max(cell => cell.Count); line++)
            {
                var parts = cells.Select((cell, i) => (line < cell.Count ? cell[line] : "").PadRight(widths[i]));
                output.WriteLine((new string(' ', indent) + string.Join(new string(' ', Apart), parts)).TrimEnd());
            }
        }
    }

    /// <summary>The widest gives way first; no column becomes narrower than its longest word.</summary>
    private static int[] Fitted(IReadOnlyList<string[]> rows, int width)
    {
        var columns = Enumerable.Range(0, rows[0].Length).ToArray();
        var widths = columns.Select(i => rows.Max(row => row[i].Length)).ToArray();
        var least = columns.Select(i => rows.Max(row => row[i].Split(' ').Max(word => word.Length))).ToArray();
        for (var over = widths.Sum() + (Apart * (widths.Length - 1)) - width; over > 0; over--)
        {
            var wide = columns.Where(i => widths[i] > least[i]).ToList();
            if (wide.Count == 0)
                break;
            widths[wide.MaxBy(i => widths[i])]--;
        }

        return widths;
    }

    private static List<string> Broken(string cell, int width)
    {
        var lines = new List<string> { "" };
        foreach (var word in cell.Split(' '))
        {
            if (lines[^1].Length > 0 && lines[^1].Length + 1 + word.Length > width)
                lines.Add(word);
            else
                lines[^1] = lines[^1].Length == 0 ? word : $"{lines[^1]} {word}";
        }

        return lines;
    }
}
