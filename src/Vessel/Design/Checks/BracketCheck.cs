using Vessel.Geometry;

namespace Vessel.Design;

/// <summary>Whether the bracket meets the shell, and nothing else.</summary>
internal static class BracketCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design, IEnumerable<ShellHole> holes)
    {
        if (design.Bracket is not { } bracket)
            return [];
        var shown = new Shown(design.Units);
        return new[] { Width(shown, design.Shell, bracket), Ears(shown, design.Shell, bracket), Ends(shown, design.Shell, bracket) }
            .OfType<Fault>()
            .Concat(holes.Select(h => OverPort(shown, design.Shell, bracket, h)).OfType<Fault>());
    }

    private static Fault? Width(Shown shown, ShellDesign shell, BracketDesign bracket) =>
        bracket.Width >= shell.OutsideDiameter
            ? new Fault(FaultCodes.BracketTooWide, $"{bracket.Path}.width", "The bracket's ears reach beside the shell.",
                shown.Length(bracket.Width), $"less than {shown.Length(shell.OutsideDiameter)}", "Make it narrower.")
            : null;

    /// <summary>Between bend and shell some straight ear must be left, on the ear's shortest line.</summary>
    private static Fault? Ears(Shown shown, ShellDesign shell, BracketDesign bracket)
    {
        var aside = bracket.Ears == BracketEars.Sides ? Math.Max(0, (bracket.Width / 2) - bracket.Thickness) : 0;
        var sagitta = shell.OuterRadius - BranchAxis.HalfChord(shell.OuterRadius, aside);
        var need = bracket.InsideRadius - sagitta;
        return bracket.StandOff <= need
            ? new Fault(FaultCodes.EarTooShort, $"{bracket.Path}.stand_off",
                "The bracket stands so near the shell that its bends leave no straight ear.",
                shown.Length(bracket.StandOff), $"more than {shown.Length(need)}",
                "Make the stand-off larger, or the inside radius of the bends smaller.")
            : null;
    }

    private static Fault? Ends(Shown shown, ShellDesign shell, BracketDesign bracket)
    {
        var half = bracket.PlateHeight / 2;
        // A shell whose height is at fault has no ends to reach beyond.
        if (double.IsNaN(shell.Height))
            return null;
        if (!(bracket.Height - half < -Ring.Hair || bracket.Height + half > shell.Height + Ring.Hair))
            return null;
        var fits = bracket.PlateHeight <= shell.Height;
        return new Fault(FaultCodes.BracketOffShell, fits ? $"{bracket.Path}.at.height" : $"{bracket.Path}.height",
            "The bracket reaches beyond an end of the shell.",
            $"{shown.Length(bracket.Height - half)} to {shown.Length(bracket.Height + half)}",
            $"0 to {shown.Length(shell.Height)}",
            fits ? $"Use a height from {shown.Length(half)} to {shown.Length(shell.Height - half)}."
                : $"Make the bracket at most {shown.Length(shell.Height)} high.");
    }

    private static Fault? OverPort(Shown shown, ShellDesign shell, BracketDesign bracket, ShellHole hole)
    {
        var half = bracket.PlateHeight / 2;
        var (low, high) = (Math.Min(hole.FootLow, hole.HoleLow), Math.Max(hole.FootHigh, hole.HoleHigh));
        var room = Math.Asin(bracket.Width / shell.OutsideDiameter) + ((hole.Angles.End - hole.Angles.Start) / 2);
        var apart = Math.Abs(Turns.Signed(bracket.Angle - ((hole.Angles.Start + hole.Angles.End) / 2)));
        return apart < room && low < bracket.Height + half && high > bracket.Height - half
            ? new Fault(FaultCodes.BracketOverPort, $"{bracket.Path}.at",
                $"The bracket stands over '{hole.Port.Name}'.", $"{shown.Angle(apart)} between their middles",
                $"at least {shown.Angle(room)} at that height", "Move one of the two round the shell or along it.")
            : null;
    }
}
