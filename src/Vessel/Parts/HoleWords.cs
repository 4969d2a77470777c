using Vessel.Stock;

namespace Vessel.Parts;

/// <summary>How a hole is made at the bench, in words.</summary>
public static class HoleWords
{
    /// <summary>
    /// A gap wider than this is not worth a tool of its own: the hole is filed out instead, mm. Common practice, no source.
    /// </summary>
    private const double MostGap = 1;

    /// <summary>
    /// With the tools that a shop has: <c>hole saw 35: gap 0.5 mm, not 0.2; or step drill 34 and file out 0.2 mm all round</c>.
    /// </summary>
    public static string MadeBy(Hole hole) => hole switch
    {
        { Made: HoleMethod.DrillAndTap } => "drill and tap",
        { Shape: { IsSlot: true } slot } => $"drill {NoteText.Length(slot.Drill)} at both ends, cut between them and file",
        { Shape: { } window } => $"drill {NoteText.Length(window.Drill)} in the four corners, cut between them and "
            + $"file{(window.Corner > 0 ? "" : " the corners out")}",
        _ => Round(hole.Diameter, hole.Clearance),
    };

    /// <summary>The tool that comes first in making a hole, in two or three words, for a column.</summary>
    public static string Tool(Hole hole) => hole.Shape is not null ? "drill, file"
        : MadeBy(hole) is var made && made.StartsWith("mark", StringComparison.Ordinal) ? "cut, file"
        : made.Contains(':', StringComparison.Ordinal) ? made[..made.IndexOf(':', StringComparison.Ordinal)]
        : made.Replace(" and file out", ", file", StringComparison.Ordinal).Split(", file")[0] is var tool && tool != made ? $"{tool}, file"
        : made;

    /// <summary>Words for how a round hole is made.</summary>
    /// <param name="diameter">mm.</param>
    /// <param name="clearance">Clearance that it leaves all round what goes through it, mm; null where it may be no wider than it
    /// is.</param>
    public static string Round(double diameter, double? clearance)
    {
        if (diameter <= HoleMethods.DrillReach)
            return "drill";
        var (below, above) = (HoleTools.NotAbove(diameter), HoleTools.NotBelow(diameter));
        if (below is { } same && Math.Abs(same.Size - diameter) <= HoleTools.SameSize)
            return $"{same.Tool} {NoteText.Length(same.Size)}";
        var filed = below is { } smaller && diameter <= HoleMethods.HoleSawReach
            ? $"{smaller.Tool} {NoteText.Length(smaller.Size)} and file out {Tenths((diameter - smaller.Size) / 2)} mm all round"
            : "mark out, cut and file to the line";
        if (clearance is not { } gap || above is not { } larger || gap + ((larger.Size - diameter) / 2) is var wide && wide > MostGap)
            return filed;
        return $"{larger.Tool} {NoteText.Length(larger.Size)}: gap {Tenths(gap + ((larger.Size - diameter) / 2))} mm all round, "
            + $"not {NoteText.Length(gap)}; or {filed}";
    }

    /// <summary>What a file can keep.</summary>
    private static string Tenths(double mm) => NoteText.Length(Math.Round(mm + 1e-9, 1, MidpointRounding.AwayFromZero));
}
