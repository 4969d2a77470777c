using Vessel.Design;

namespace Vessel.Members.Brackets;

/// <summary>Whether a bracket or strap stays between the ends of the shell.</summary>
internal static class HeightCheck
{
    public static Fault? Of(UnitFormat shown, ShellDesign shell, BracketDesign bracket, double half, string key) =>
        Of(shown, shell, (bracket.Path, "bracket", bracket.Height), half, key);

    /// <param name="bracket">Path of the bracket, what it is, and the height of its middle, mm.</param>
    /// <param name="half">Half of the height that it takes up, mm.</param>
    /// <param name="key">What makes it so high.</param>
    public static Fault? Of(UnitFormat shown, ShellDesign shell, (string Path, string What, double Height) bracket, double half, string key)
    {
        // A shell whose height is at fault has no ends to reach beyond.
        if (double.IsNaN(shell.Height))
            return null;
        if (OnCone(shown, shell, bracket, half) is { } cone)
            return cone;
        if (!(bracket.Height - half < -Ring.Hair || bracket.Height + half > shell.Height + Ring.Hair))
            return null;
        var fits = 2 * half <= shell.Height;
        return new Fault(FaultCodes.BracketOffShell, fits ? $"{bracket.Path}.at.height" : $"{bracket.Path}.{key}",
            $"The {bracket.What} reaches beyond an end of the shell.",
            $"{shown.Length(bracket.Height - half)} to {shown.Length(bracket.Height + half)}",
            $"0 to {shown.Length(shell.Height)}",
            fits ? $"Use a height from {shown.LengthUp(half)} to {shown.LengthDown(shell.Height - half)}."
                : $"Make the {bracket.What} at most {shown.LengthDown(shell.Height)} high.");
    }

    /// <summary>Saddles and plates are made for a cylinder, and stand on one.</summary>
    private static Fault? OnCone(UnitFormat shown, ShellDesign shell, (string Path, string What, double Height) bracket, double half)
    {
        if (shell.IsPlain || !shell.Courses.Any(course => (course.IsCone || course != shell.CourseAt(bracket.Height))
            && course.Start < bracket.Height + half - Ring.Hair && course.End > bracket.Height - half + Ring.Hair))
        {
            return null;
        }

        var fits = shell.Courses.Where(course => !course.IsCone && course.Height >= 2 * half)
            .Select(course => $"{shown.LengthUp(course.Start + half)} to {shown.LengthDown(course.End - half)}").ToList();
        return new(FaultCodes.BracketOnCone, $"{bracket.Path}.at.height",
            $"The {bracket.What} does not stand on one cylinder of the shell.",
            $"{shown.Length(bracket.Height - half)} to {shown.Length(bracket.Height + half)}", "within one cylinder",
            fits.Count > 0 ? $"Use a height from {string.Join(", or from ", fits)}."
                : shell.TopDiameter is not null ? $"A conical shell takes no {bracket.What} yet: use a reducer with a cylinder high enough "
                    + "for it, or hang the vessel by a head."
                : $"Make the {bracket.What} lower, or a cylinder of the shell longer.");
    }
}
