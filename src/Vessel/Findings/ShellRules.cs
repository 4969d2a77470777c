using Vessel.Design;
using Vessel.Parts;

namespace Vessel.Findings;

/// <summary>Rolling the shell.</summary>
internal static class ShellRules
{
    /// <summary>Holes over this share of the diameter roll unevenly. Common practice, no source.</summary>
    private const double LargeShare = 0.25;

    /// <summary>Inside radius over wall from which the neutral line lies in the middle (DIN 6935, from memory).</summary>
    internal const double MeanLineRatio = 5;

    /// <summary>Inside radius over wall at a cone's tip; null for any other head.</summary>
    internal static double? TipRatio(PortHost end, VesselDesign design) => design.Head(end) is ConeHead cone
        ? ConeShape.Of(end, cone, design).Inner.A.U / Math.Cos(cone.HalfAngle) / cone.Wall
        : null;

    /// <summary>A cone's radius of bending is told square to its line, and least at its tip.</summary>
    private static Finding? TightTip(PortHost end, VesselDesign design)
    {
        if (TipRatio(end, design) is not { } ratio)
            return null;
        var cone = design.Head(end);
        return ratio >= MeanLineRatio
            ? null
            : new(
                FindingCodes.TightRoll,
                Severity.Warning,
                [.. Names.RimParts(end, design)],
                $"at its tip the {Names.Of(end)} cone is bent to {NoteText.Length(ratio)} walls inside, below {NoteText.Length(MeanLineRatio)}: "
                + "form the tip over a bar and try it on its port before welding the seam, or use a larger port there.",
                [new("inside radius over wall", ratio, MeanLineRatio, string.Empty)],
                design.PlaceOf($"{cone.Path}.wall"));
    }

    public static IEnumerable<Finding> Of(Assembly assembly)
    {
        var shell = assembly.Design.Shell;
        foreach (var end in new[] { PortHost.Top, PortHost.Bottom })
        {
            if (TightTip(end, assembly.Design) is { } tight)
                yield return tight;
        }

        if (shell.MadeFrom != StockForm.Sheet)
            yield break;
        foreach (var site in assembly.Sites.Where(site => site.Port.Host == PortHost.Shell))
        {
            var (width, limit) = (2 * site.OpeningRadius, LargeShare * shell.OutsideDiameter);
            if (width > limit)
            {
                yield return new(
                    FindingCodes.LargeHoleBeforeRolling,
                    Severity.Note,
                    [Names.Shell],
                    $"the hole for {site.Port.Name} is {NoteText.Length(width)} mm wide, over a quarter of the shell's diameter "
                    + $"({NoteText.Length(limit)} mm): leave it on tabs, or cut it after rolling.",
                    [new("width", width, limit, "mm")],
                    assembly.Design.PlaceOf(site.Port.Path));
            }
        }

        var ratio = shell.InnerRadius / shell.Wall;
        if (ratio < MeanLineRatio)
        {
            yield return new(
                FindingCodes.TightRoll,
                Severity.Warning,
                [Names.Shell],
                $"the shell's inside radius is only {NoteText.Length(ratio)} walls, below {NoteText.Length(MeanLineRatio)}: "
                + "the blank on the mean diameter will come out short; cut it from tube, or measure a rolled trial.",
                [new("inside radius over wall", ratio, MeanLineRatio, string.Empty)],
                assembly.Design.PlaceOf($"{shell.Path}.wall"));
        }
    }
}
