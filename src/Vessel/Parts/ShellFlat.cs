using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;

namespace Vessel.Parts;

/// <summary>The blank that a rolled shell is cut from, or the wrap that a tube is marked from.</summary>
internal static class ShellFlat
{
    private const double LetterHeight = 5;

    /// <summary>Starts are tried every 5 degrees, so that the line is easy to find on the tube.</summary>
    private const int StartSteps = 72;

    /// <summary>Paper beyond the last hole of a lap, radians.</summary>
    private const double LapMargin = 0.05;

    public static Flat Of(
        VesselDesign vessel, ImmutableArray<ShellOpening> openings, ImmutableArray<ShellSlot> slots, WeldNumbers welds) =>
        vessel.Shell.MadeFrom == StockForm.Sheet
            ? Drawn(vessel, openings, slots, welds, Rolled(vessel.Shell))
            : Drawn(vessel, openings, slots, welds, Wrapped(vessel.Shell, openings));

    /// <summary>What is wrapped round a shell that is rolled already, from its long seam on.</summary>
    public static Flat Around(
        VesselDesign vessel, ImmutableArray<ShellOpening> openings, ImmutableArray<ShellSlot> slots, WeldNumbers welds)
    {
        var shell = vessel.Shell;
        var wrapped = new WrappedDevelopment(shell.OuterRadius, shell.SeamAngle, 0);
        return Drawn(vessel, openings, slots, welds, (wrapped, shell.OuterRadius, Turns.Full * shell.OuterRadius));
    }

    private static Flat Drawn(
        VesselDesign vessel,
        ImmutableArray<ShellOpening> openings,
        ImmutableArray<ShellSlot> slots,
        WeldNumbers welds,
        (Development Development, double Radius, double Width) laid)
    {
        var shell = vessel.Shell;
        var (development, radius, width) = laid;
        var rolled = development is RolledDevelopment;
        var cut = new Region2(
            Loop2.Polygon(new(0, 0), new(width, 0), new(width, shell.Height), new(0, shell.Height)),
            [
                .. openings.Select(opening => opening.OnFlat(development, radius)),
                .. slots.Select(slot => slot.OnFlat(development, radius)),
            ]);
        var marks = new FlatMarks(width, shell.Height, cut.Holes);
        for (var quarter = 0; quarter < 4; quarter++)
        {
            var x = development.Flatten(new(quarter * Math.PI / 2, 0)).U;
            marks.AddVertical(x, $"{90 * quarter}", LetterHeight);
        }

        for (var i = 0; i < openings.Length; i++)
        {
            var port = openings[i].Site.Port;
            marks.AddCross(development.Flatten(openings[i].AxisPlace));
            marks.AddName($"{port.Name} {welds[port.Path]}", cut.Holes[i], LetterHeight);
        }

        marks.AddTitle(Title(vessel, welds), LetterHeight);
        AddArrows(marks, shell, rolled);
        return new(
            rolled ? FlatKind.Sheet : FlatKind.Wrap,
            cut,
            marks.ToImmutable(),
            [],
            Notes(vessel, development),
            development,
            rolled ? "mean diameter" : "outside diameter");
    }

    private static (Development Development, double Radius, double Width) Rolled(ShellDesign shell)
    {
        var rolled = new RolledDevelopment(shell.OuterRadius, shell.Wall, RolledDevelopment.MeanLine, shell.SeamAngle, shell.RootGap);
        return (rolled, rolled.NeutralRadius, rolled.Width);
    }

    /// <summary>
    /// The paper starts on a line that is free of holes, as near to 180 degrees as may be. Where there is none it starts
    /// on a hole's left side and laps over itself by as much as the holes there need.
    /// </summary>
    private static (Development Development, double Radius, double Width) Wrapped(
        ShellDesign shell, ImmutableArray<ShellOpening> openings)
    {
        var angles = openings.Select(opening => opening.Angles).ToList();
        double Lap(double start) => angles
            .Select(hole => Turns.From(hole.Start, start) + hole.Length - start - Turns.Full)
            .Append(0)
            .Max();
        var starts = Enumerable.Range(0, StartSteps).Select(step => Turns.Full * step / StartSteps).ToList();
        var start = starts.OrderBy(Lap).ThenBy(angle => Math.Abs(angle - Math.PI)).ThenBy(angle => angle).First();
        var lap = Lap(start);
        var width = shell.OuterRadius * (Turns.Full + (lap > 0 ? lap + LapMargin : 0));
        return (new WrappedDevelopment(shell.OuterRadius, start, 0), shell.OuterRadius, width);
    }

    /// <summary>Which way is up and, for a blank, which way it goes through the rolls; by the left edge, below the title.</summary>
    private static void AddArrows(FlatMarks marks, ShellDesign shell, bool rolled)
    {
        var length = Math.Min(4 * LetterHeight, shell.Height / 4);
        var foot = new Point2(LetterHeight, shell.Height - (3 * LetterHeight) - length);
        marks.AddArrow(foot, foot + new Point2(0, length), "up", LetterHeight);
        if (rolled)
            marks.AddArrow(foot, foot + new Point2(length, 0), "roll", LetterHeight);
    }

    private static string Title(VesselDesign vessel, WeldNumbers welds)
    {
        var ends = $"top {welds[vessel.Top.Path]}  bottom {welds[vessel.Bottom.Path]}";
        return vessel.Shell.MadeFrom == StockForm.Sheet
            ? $"shell  seam {welds[WeldNumbers.LongSeam]}  {ends}"
            : $"shell  {ends}";
    }

    private static ImmutableArray<string> Notes(VesselDesign vessel, Development development)
    {
        var shell = vessel.Shell;
        var size = $"outside {NoteText.Length(shell.OutsideDiameter)} mm, wall {NoteText.Length(shell.Wall)} mm, height {NoteText.Length(shell.Height)} mm";
        return development switch
        {
            WrappedDevelopment wrapped when shell.MadeFrom == StockForm.Sheet =>
            [
                $"ROLLED SHELL, {shell.Material.Name}, {size}",
                "WRAP FOR THE OUTSIDE OF THE ROLLED SHELL, OUTSIDE FACE UP. x runs with increasing angle, y up. Millimetres.",
                $"Left edge on the middle of the long seam, at {NoteText.Degrees(wrapped.Start)} deg. Not for a shell whose holes were cut in the flat.",
            ],
            WrappedDevelopment wrapped =>
            [
                $"SHELL FROM TUBE, {shell.Material.Name}, {size}",
                "WRAP FOR THE OUTSIDE OF THE TUBE, OUTSIDE FACE UP. x runs with increasing angle, y up. Millimetres. Do not cut from sheet.",
                $"Left edge on {NoteText.Degrees(wrapped.Start)} deg. Holes are drilled along each port's axis.",
            ],
            _ =>
            [
                $"SHELL, {shell.Material.Name}, {size}",
                "OUTSIDE FACE UP. x runs with increasing angle (counter-clockwise seen from above), y up. Millimetres.",
                $"Roll about the vertical, marks outside. Long seam at {NoteText.Degrees(shell.SeamAngle)} deg, root gap {NoteText.Length(shell.RootGap)} mm.",
                "Blank on the mean diameter; rolls leave flat ends: pre-bend or trim.",
            ],
        };
    }
}
