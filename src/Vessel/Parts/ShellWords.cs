using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>What the flat of a course of the shell says in words.</summary>
/// <param name="Piece">Piece that the flat is of.</param>
/// <param name="Turned">The course with its seams counted from the piece's first one on.</param>
internal sealed record ShellWords(ShellCourse Course, ShellCourse Turned, SheetPiece Piece, VesselDesign Vessel, Welds Welds)
{
    private string Name => Piece.Name.ToUpperInvariant();

    public string Title => $"{Piece.Name}  {Seams}{Ends(Course, Vessel, Welds)}";

    /// <summary>Numbers of the welds along its sides; of several sheets that are alike all such welds.</summary>
    private string Seams
    {
        get
        {
            var seams = Welds.Up(Course);
            return seams.Length switch
            {
                0 => "",
                1 => $"seam {seams[0]}  ",
                _ when Piece.Numbers.Length > 1 => $"seams {seams[0]} to {seams[^1]}  ",
                _ => $"seams {seams[Piece.Numbers[0]]} and {seams[(Piece.Numbers[0] + 1) % seams.Length]}  ",
            };
        }
    }

    /// <summary>Where it goes round the vessel.</summary>
    private IEnumerable<string> Places()
    {
        if (Course.Seams.Count == 1)
            yield break;
        var places = Piece.Numbers.Select(Course.Seams.Sheet)
            .Select(sheet => $"{NoteText.Degrees(Turns.From(sheet.Start, 0))} to {NoteText.Degrees(Turns.From(sheet.End, 0))}");
        yield return $"{Piece.Numbers.Length} PIECE{(Piece.Numbers.Length > 1 ? "S" : "")}, {Course.Seams.Count} GO ROUND: "
            + $"{string.Join(", ", places)} deg.";
    }

    /// <summary>What is welded to its two edges, and by which weld.</summary>
    public static string Ends(ShellCourse course, VesselDesign vessel, Welds welds)
    {
        var courses = vessel.Shell.Courses;
        var i = courses.IndexOf(course);
        var girths = vessel.Shell.Reducer is { } reducer ? welds.Of(WeldRole.GirthSeam, reducer.Path) : [];
        var above = i == courses.Length - 1 ? Ends("top", vessel.Top) : $"{courses[i + 1].Name} {girths[i]}";
        var below = i == 0 ? Ends("bottom", vessel.Bottom) : $"{courses[i - 1].Name} {girths[i - 1]}";
        return $"{above}  {below}";

        // What closes an end may be no weld.
        string Ends(string name, HeadDesign head) => string.Join(' ', welds.Of(WeldRole.HeadSeam, head.Path).Prepend(name));
    }

    /// <param name="left">Whether openings are left to be cut later.</param>
    public ImmutableArray<string> Notes(Development development, bool left)
    {
        var size = $"outside {NoteText.Length(2 * Course.Low)} mm, wall {NoteText.Length(Course.Wall)} mm, height "
            + $"{NoteText.Length(Course.Height)} mm";
        return development switch
        {
            WrappedDevelopment wrapped when Course.IsRolled =>
            [
                $"ROLLED {Name}, {Course.Shell.Material.Name}, {size}",
                .. Places(),
                "WRAP FOR THE OUTSIDE OF THE ROLLED SHELL, OUTSIDE FACE UP. x runs with increasing angle, y up. Millimetres.",
                $"Left edge on the middle of {(Course.Seams.Count == 1 ? "the long" : "its first")} seam, at "
                    + $"{NoteText.Degrees(Turns.From(wrapped.Start, 0))} deg. Not for a shell whose holes were cut in the flat.",
            ],
            WrappedDevelopment wrapped =>
            [
                $"{Name} FROM TUBE, {Course.Shell.Material.Name}, {size}",
                "WRAP FOR THE OUTSIDE OF THE TUBE, OUTSIDE FACE UP. x runs with increasing angle, y up. Millimetres. Do not cut from "
                    + "sheet.",
                $"Left edge on {NoteText.Degrees(wrapped.Start)} deg. Holes are drilled along each port's axis.",
            ],
            _ =>
            [
                $"{Name}, {Course.Shell.Material.Name}, {size}",
                .. Places(),
                "OUTSIDE FACE UP. x runs with increasing angle (counter-clockwise seen from above), y up. Millimetres.",
                $"Roll about the vertical, marks outside. {(Course.Seams.Count == 1 ? "Long seam" : "First seam")} at "
                    + $"{NoteText.Degrees(Turns.From(Turned.Seams.First, 0))} deg, root gap {NoteText.Length(Course.RootGap)} mm.",
                "Blank on the mean diameter.",
                .. Rolling(Course.Shell.Rolls, Course.Shell.Rolls.Trim),
                .. left ? new[] { LeftOpenings } : [],
            ],
        };
    }

    private string LeftOpenings => Course.Shell.LargeHoles == LargeHoles.OnTabs
        ? $"Openings over a quarter of the diameter hang on tabs {NoteText.Length(TabbedHole.TabWidth(Course.Wall))} mm wide: roll it, "
            + "then saw the tabs through and dress them."
        : "Openings over a quarter of the diameter are scribed only: cut them when it is rolled.";

    /// <summary>What the rolls leave flat, and what the seam draws in.</summary>
    /// <param name="trim">Added at each end, mm.</param>
    public static IEnumerable<string> Rolling(RollsShop rolls, double trim)
    {
        yield return trim > 0 ? $"{NoteText.Length(trim)} mm are added at each end, which the rolls leave flat: cut them off at the lines "
            + "when it is rolled."
            : rolls.FlatEnd is { } flat ? $"The rolls leave {NoteText.Length(flat)} mm flat at each end: pre-bend them."
            : "Rolls leave flat ends: pre-bend or trim.";
        if (rolls.SeamShrinkage > 0)
            yield return $"Longer by {NoteText.Length(rolls.SeamShrinkage)} mm than the circumference less the gap: the seam shrinks by "
                + "that much.";
    }
}
