namespace Vessel.Design;

/// <summary>Whether a bracket stays between the ends of the shell.</summary>
internal static class BracketHeightCheck
{
    /// <param name="half">Half of the height that it takes up, mm.</param>
    /// <param name="key">What makes it so high.</param>
    public static Fault? Of(Shown shown, ShellDesign shell, BracketDesign bracket, double half, string key)
    {
        // A shell whose height is at fault has no ends to reach beyond.
        if (double.IsNaN(shell.Height))
            return null;
        if (!(bracket.Height - half < -Ring.Hair || bracket.Height + half > shell.Height + Ring.Hair))
            return null;
        var fits = 2 * half <= shell.Height;
        return new Fault(FaultCodes.BracketOffShell, fits ? $"{bracket.Path}.at.height" : $"{bracket.Path}.{key}",
            "The bracket reaches beyond an end of the shell.",
            $"{shown.Length(bracket.Height - half)} to {shown.Length(bracket.Height + half)}",
            $"0 to {shown.Length(shell.Height)}",
            fits ? $"Use a height from {shown.Length(half)} to {shown.Length(shell.Height - half)}."
                : $"Make the bracket at most {shown.Length(shell.Height)} high.");
    }
}
