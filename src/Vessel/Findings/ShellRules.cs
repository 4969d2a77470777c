using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Parts;
using Vessel.Sites;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>Rolling the shell, and what else of its walls is rolled.</summary>
internal static class ShellRules
{
    /// <summary>Inside radius over wall from which the neutral line lies in the middle (DIN 6935, from memory).</summary>
    internal const double MeanLineRatio = 5;

    /// <summary>Between two long seams that end at one girth, mm. Common practice, no source.</summary>
    internal const double SeamsApart = 10;

    public static IEnumerable<Measure> Of(Assembly assembly)
    {
        var shell = assembly.Design.Shell;
        foreach (var measure in assembly.Chamber.Heads.SelectMany(head => head.RollingMeasures))
            yield return measure;
        foreach (var wide in Rolled(assembly))
            yield return wide;
        foreach (var (below, above) in shell.Courses.Zip(shell.Courses.Skip(1)))
        {
            if (below.IsRolled && above.IsRolled)
                yield return Crossing(below, above, assembly.Design);
        }

        foreach (var course in shell.Courses.Where(course => course.IsRolled))
        {
            foreach (var finding in Of(course, assembly))
                yield return finding;
        }
    }

    /// <summary>Long seams of two courses that run into each other at the girth between them.</summary>
    private static Measure Crossing(ShellCourse below, ShellCourse above, VesselDesign design)
    {
        var apart = below.High * below.Seams.Apart(above.Seams);
        return new(
                FindingCodes.SeamsMeet,
                Severity.Warning,
                [.. Names.ShellParts(below, design), .. Names.ShellParts(above, design)],
                () => $"the long seams of {below.Name} and {above.Name} reach the round seam {NoteText.Length(apart)} mm from each other, "
                + "nearer than "
                + $"{NoteText.Length(SeamsApart)} mm: turn one of them, '{above.SeamPath[(above.SeamPath.LastIndexOf('.') + 1)..]}: "
                + $"{NoteText.Degrees(below.Seams.Between(above.Seams.Count))}' lies as far from the others as may be.",
                [new("apart", apart, AtLeast(SeamsApart), "mm")],
                design.PlaceOf(above.SeamPath),
                $"between the long seams of {below.Name} and {above.Name}");
    }

    /// <summary>Parts that the shop's rolls do not make: courses of the shell, and members.</summary>
    private static IEnumerable<Measure> Rolled(Assembly assembly)
    {
        var design = assembly.Design;
        if (design.Shop.Rolls.LeastDiameter is not { } least)
            yield break;
        var rolled = design.Shell.Courses.Where(course => course.IsRolled)
            .Select(course => new RolledPart(
                Names.ShellParts(course, design), course.Name, 2 * Math.Min(course.Low - course.Across, course.High - course.Across),
                $"{course.Shell.Path}.made_from"))
            .Concat(assembly.Members.SelectMany(member => member.Rolled));
        foreach (var (ids, name, bore, path) in rolled)
        {
            yield return new(
                FindingCodes.TighterThanRolls,
                Severity.Warning,
                ids,
                () => $"the {name} is {NoteText.Length(bore)} mm wide inside at its narrowest, and the shop's rolls make no less than "
                + $"{NoteText.Length(least)} mm: "
                + "cut it from tube, have it rolled, or bend it over a bar.",
                [new("inside diameter", bore, AtLeast(least), "mm")],
                design.PlaceOf(path),
                $"inside diameter of the {name}");
        }
    }

    private static IEnumerable<Measure> Of(ShellCourse course, Assembly assembly)
    {
        // Holes of a cone are drilled when it is rolled.
        var cut = assembly.Sites.Where(site => site is { Port.Host: PortHost.Shell, Over: null } && !course.IsCone
            && course.Shell.LargeHoles == LargeHoles.BeforeRolling && assembly.Design.Shell.CourseAt(site.Port.Place.Height) == course);
        foreach (var site in cut)
        {
            var (width, limit) = (2 * site.OpeningRadius, ShellOpening.LargeShare * 2 * course.Low);
            yield return new(
                FindingCodes.LargeHoleBeforeRolling,
                Severity.Note,
                [Names.PortPart(site.Port, assembly.Design)],
                () => $"the hole for '{site.Port.Name}' is {NoteText.Length(width)} mm wide, over a quarter of the shell's diameter "
                + $"({NoteText.Length(limit)} mm): leave it on tabs, or scribe it and cut it after rolling (shell.large_holes: on_tabs or "
                + "after_rolling).",
                [new("width", width, AtMost(limit), "mm")],
                assembly.Design.PlaceOf(site.Port.Path),
                $"width of the hole for '{site.Port.Name}'");
        }

        // Of a cone square to its line, at its narrow edge.
        var radius = course.IsCone ? Math.Min(course.Inner.A.U, course.Inner.B.U) / Math.Cos(course.HalfAngle) : course.Low - course.Wall;
        var ratio = radius / course.Wall;
        yield return new(
            FindingCodes.TightRoll,
            Severity.Warning,
            Names.ShellParts(course, assembly.Design),
            () => $"the {course.Name}'s inside radius is only {NoteText.Length(ratio)} walls, below {NoteText.Length(MeanLineRatio)}: "
            + "the blank on the mean diameter will come out short; cut it from tube, or measure a rolled trial.",
            [new("inside radius over wall", ratio, AtLeast(MeanLineRatio), string.Empty)],
            assembly.Design.PlaceOf($"{course.Shell.Path}.wall"),
            $"{course.Name}'s inside radius over its wall");
    }
}
