using System.Collections.Immutable;
using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>Fills the records of a tube's rows of windows from its section; by the same rule as the whole design.</summary>
internal static class WindowsBuilder
{
    /// <param name="section">Section of the tube that they are cut in.</param>
    public static ImmutableArray<WindowsDesign> Build(Section section) => [.. section.Items("windows").SelectMany(Rows)];

    /// <summary>One above the other; a single one where their number is at fault.</summary>
    private static IEnumerable<WindowsDesign> Rows(Section section)
    {
        var first = Row(section);
        var count = section.Has("rows") ? (int)section.Number("rows") : 1;
        var pitch = section.NumberOr("row_pitch", 1.5 * first.Height);
        var turn = section.Text("staggered") == "true" ? Math.PI / first.Count : 0;
        return Enumerable.Range(0, count).Select(i => i == 0 ? first : first with
        {
            Up = first.Up + (i * pitch),
            Angle = Turns.From(first.Angle + (i % 2 * turn), 0),
        });
    }

    private static WindowsDesign Row(Section section)
    {
        var isRound = section.Given.Contains("diameter");
        var width = section.Number(isRound ? "diameter" : "width");
        var height = isRound ? width : section.Number("height");
        var half = Math.Min(width, height) / 2;
        return new WindowsDesign(
            section.Path,
            section.Has("count") ? (int)section.Number("count") : 1,
            // One size at fault says nothing about how the windows lie.
            section.Has("count") ? width : double.NaN,
            height,
            isRound || section.Text("ends") == "round" ? half : section.NumberOr("corner", Math.Min(3, half / 2)),
            section.Number("up"),
            Turns.From(section.Number("angle"), 0))
        {
            IsRound = isRound,
        };
    }
}
