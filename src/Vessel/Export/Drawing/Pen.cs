namespace Vessel.Export.Drawing;

/// <summary>A pen says what a line is for, and how paper shows it. All that are used stand in <see cref="Pens"/>.</summary>
/// <param name="Name">Lower case: the layer of a DXF in capitals, the class in the report.</param>
/// <param name="Width">Width on paper, mm.</param>
/// <param name="Gray">0 is black, 1 is white.</param>
/// <param name="Dash">Ink and gap by turns, mm; null for a whole line.</param>
public sealed record Pen(string Name, double Width = 0, double Gray = 0, Dash? Dash = null)
{
    /// <summary>How paper fills what it encloses, 0 black to 1 white; null where it draws the outline.</summary>
    public double? Fill { get; init; }
}

/// <summary>Ink and gap by turns, mm: one pair, or two where long and short dashes alternate.</summary>
public sealed record Dash(double Ink, double Gap, double ShortInk = 0)
{
    internal string Code => ShortInk == 0
        ? $"{Numbers.Text(Ink, 3)} {Numbers.Text(Gap, 3)}"
        : $"{Numbers.Text(Ink, 3)} {Numbers.Text(Gap, 3)} {Numbers.Text(ShortInk, 3)} {Numbers.Text(Gap, 3)}";
}
