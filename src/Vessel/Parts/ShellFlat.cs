using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Sites;

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
        ShellWords words, ImmutableArray<ShellOpening> openings, ImmutableArray<SlotHole> slots,
        ImmutableArray<NotchedEdge> ends) => words.Course.IsRolled
        ? Drawn(words, openings, slots, ends, Rolled(words.Turned))
        : Drawn(words, openings, slots, ends, Wrapped(words.Course, openings));

    /// <summary>What is wrapped round a shell that is rolled already, from its long seam on.</summary>
    public static Flat Around(
        ShellWords words, ImmutableArray<ShellOpening> openings, ImmutableArray<SlotHole> slots, ImmutableArray<NotchedEdge> ends)
    {
        var (radius, seams) = (words.Turned.Low, words.Turned.Seams);
        var wrapped = new WrappedDevelopment(radius, seams.First, 0);
        return Drawn(words, openings, slots, ends, (wrapped, radius, seams.Pitch * radius));
    }

    private static Flat Drawn(
        ShellWords words,
        ImmutableArray<ShellOpening> openings,
        ImmutableArray<SlotHole> slots,
        ImmutableArray<NotchedEdge> ends,
        (Development Development, double Radius, double Width) laid)
    {
        var (course, shell) = (words.Course, words.Course.At(words.Course.Start));
        var (development, radius, width) = laid;
        var rolled = development is RolledDevelopment;
        ImmutableArray<Loop2> holes = [.. openings.Select(opening => opening.OnFlat(development, radius))];
        ImmutableArray<Loop2> slotted = [.. slots.Select(slot => slot.OnFlat(development, radius))];
        var left = openings.Select(opening => rolled && opening.IsLeft(shell)).ToList();
        var onTabs = course.Shell.LargeHoles == LargeHoles.OnTabs;
        var hanging = Enumerable.Range(0, openings.Length).Where(i => onTabs && left[i])
            .SelectMany(i => TabbedHole.Slots((GraphCurve2)holes[i].Edges[0],
                development.Flatten(ShellOpening.AxisPlace(openings[i].Site, openings[i].Lift)), shell.Wall));
        var cut = new Region2(
            Loop2.Polygon(new(0, 0), new(width, 0), new(width, course.Height), new(0, course.Height)),
            [.. holes.Where((_, i) => !left[i]), .. slotted, .. hanging]);
        var notches = ends.SelectMany(end => end.Ports.Select(site => (site,
            Outline: Notch(end, site, words.Course.Start, development, radius)))).ToList();
        var marks = new FlatMarks(width, course.Height, [.. holes, .. slotted, .. notches.Select(notch => Closed(notch.Outline))]);
        if (development is RolledDevelopment { Trim: > 0 and var trim })
        {
            marks.AddVertical(trim, "trim", LetterHeight);
            marks.AddVertical(width - trim, "trim", LetterHeight);
        }

        if (words.Piece.Numbers.Length > 1)
            marks.AddVertical(width / 2, "middle", LetterHeight);
        foreach (var quarter in Enumerable.Range(0, words.Piece.Numbers.Length > 1 ? 0 : 4))
        {
            var x = development.Flatten(new(quarter * Math.PI / 2, 0)).U;
            if (x <= width)
                marks.AddVertical(x, $"{90 * quarter}", LetterHeight);
        }

        for (var i = 0; i < openings.Length; i++)
        {
            var port = openings[i].Site.Port;
            marks.AddCross(development.Flatten(ShellOpening.AxisPlace(openings[i].Site, openings[i].Lift)));
            marks.AddName($"{port.Name} {words.Welds.One(WeldRole.PortSeam, port.Path)}", holes[i], LetterHeight);
            if (!left[i] || onTabs)
                continue;
            foreach (var edge in holes[i].Edges)
                marks.AddCurve(edge);
        }

        foreach (var (site, outline) in notches)
        {
            marks.AddCross(development.Flatten(ShellOpening.AxisPlace(site, words.Course.Start)));
            marks.AddName($"{site.Port.Name} {words.Welds.One(WeldRole.PortSeam, site.Port.Path)}", Closed(outline), LetterHeight);
            marks.AddCurve(outline);
        }

        marks.AddTitle(words.Title, LetterHeight);
        AddArrows(marks, course.Height, rolled);
        var flat = new Flat(
            rolled ? FlatKind.Sheet : FlatKind.Wrap,
            cut,
            marks.ToImmutable(),
            [],
            [
                .. words.Notes(development, left.Contains(true)),
                .. notches.Select(notch => $"'{notch.site.Port.Name}' is scribed: it stands over the head's seam, so its hole is made when "
                    + "that is welded."),
            ],
            development,
            rolled ? "mean diameter" : "outside diameter");
        return development is WrappedDevelopment { Lap: var lap } ? Wraps.Lapping(flat, lap * course.Height) : flat;
    }

    /// <summary>Notch from edge to edge, in one piece where it runs over the flat's own edge.</summary>
    private static GraphCurve2 Notch(NotchedEdge end, PortSite site, double lift, Development development, double radius)
    {
        var outline = end.Outline(site);
        var from = outline.Start.U;
        var start = development.Flatten(new(from, 0));
        return outline with
        {
            Position = t => outline.At(t) is var place ? start + new Point2(radius * (place.U - from), place.V - lift) : default,
            Derivative = t => outline.Slope(t) is var slope ? new(radius * slope.U, slope.V) : default,
        };
    }

    private static Loop2 Closed(Curve2 open) => new([open, new Line2(open.End, open.Start)]);

    private static (Development Development, double Radius, double Width) Rolled(ShellCourse course)
    {
        var rolled = Blank(course);
        return (rolled, rolled.NeutralRadius, rolled.Width);
    }

    /// <summary>Development of a cylinder as its sheets are to be rolled.</summary>
    public static RolledDevelopment Blank(ShellCourse course) =>
        new(course.Low, course.Wall, RolledDevelopment.MeanLine, course.Seams.First, course.Shell.Rolls.BlankGap(course.RootGap))
        {
            Sheets = course.Seams.Count,
            Trim = course.Shell.Rolls.Trim,
        };

    /// <summary>
    /// The paper starts on a line that is free of holes, as near to 180 degrees as may be. Where there is none it starts
    /// on a hole's left side and laps over itself by as much as the holes there need.
    /// </summary>
    private static (Development Development, double Radius, double Width) Wrapped(
        ShellCourse course, ImmutableArray<ShellOpening> openings)
    {
        var angles = openings.Select(opening => opening.Outer.Us).ToList();
        double Lap(double start) => angles
            .Select(hole => Turns.From(hole.Start, start) + hole.Length - start - Turns.Full)
            .Append(0)
            .Max();
        var starts = Enumerable.Range(0, StartSteps).Select(step => Turns.Full * step / StartSteps).ToList();
        var start = starts.OrderBy(Lap).ThenBy(angle => Math.Abs(angle - Math.PI)).ThenBy(angle => angle).First();
        var lap = Lap(start);
        var longer = lap > 0 ? course.Low * (lap + LapMargin) : 0;
        return (new WrappedDevelopment(course.Low, start, 0) { Lap = longer }, course.Low, (course.Low * Turns.Full) + longer);
    }

    /// <summary>Which way is up and, for a blank, which way it goes through the rolls; by the left edge, below the title.</summary>
    private static void AddArrows(FlatMarks marks, double height, bool rolled)
    {
        var length = Math.Min(4 * LetterHeight, height / 4);
        var foot = new Point2(LetterHeight, height - (3 * LetterHeight) - length);
        marks.AddArrow(foot, foot + new Point2(0, length), "up", LetterHeight);
        if (rolled)
            marks.AddArrow(foot, foot + new Point2(length, 0), "roll", LetterHeight);
    }
}
