namespace Vessel.Design;

/// <summary>Cones of the shell that cannot be rolled, and reducers that leave no cylinder on a side.</summary>
internal static class ShellShapeCheck
{
    /// <summary>Between axis and line, degrees: a narrower cone is a cylinder within its tolerance, a flatter one a dish.</summary>
    private const double LeastAngle = 0.5;
    private const double MostAngle = 60;

    /// <summary>
    /// Length of straight shell on either side of a reducer, in walls, for its seam to be laid and dressed. Common practice, no source.
    /// </summary>
    private const double StraightWalls = 2;

    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var (shown, shell) = (new UnitFormat(design.Units), design.Shell);
        if (shell is { TopDiameter: not null, Reducer: { } both })
        {
            yield return new(FaultCodes.KeyDoesNotApply, $"{shell.Path}.top_diameter", "'top_diameter' means nothing beside 'reducer'.",
                null, null,
                $"Delete it, or '{both.Path}'.");
            yield break;
        }

        if (shell is { TopDiameter: not null, MadeFrom: StockForm.Tube })
        {
            yield return new(FaultCodes.ConeFromTube, $"{shell.Path}.made_from", "A shell that is a frustum cannot be cut from tube.",
                "tube", "sheet",
                "Use 'made_from: sheet', or delete 'top_diameter'.");
        }

        if (shell.Reducer is { } reducer && Straight(shown, shell, reducer) is { } off)
            yield return off;
        else if (shell.TopDiameter is { } top)
            foreach (var fault in Angle(shown, shell, shell.OutsideDiameter, top, shell.Height, $"{shell.Path}.top_diameter",
                "Delete 'top_diameter'"))
                yield return fault;
        else if (shell.Reducer is { } cone)
            foreach (var fault in Angle(shown, shell, shell.OutsideDiameter, cone.Diameter, cone.Length, $"{cone.Path}.diameter",
                $"Delete '{cone.Path}'"))
                yield return fault;
    }

    private static Fault? Straight(UnitFormat shown, ShellDesign shell, ReducerDesign reducer)
    {
        var least = StraightWalls * shell.Wall;
        if (reducer.From < least)
        {
            return new(FaultCodes.ReducerOffShell, $"{reducer.Path}.from",
                "Less than two walls of straight shell are left below the reducer.",
                shown.Length(reducer.From), $"at least {shown.LengthUp(least)}",
                "Begin it higher, or make the whole shell a frustum with 'top_diameter'.");
        }

        var above = shell.Height - reducer.From - reducer.Length;
        return above < least
            ? new(FaultCodes.ReducerOffShell, $"{reducer.Path}.length", "Less than two walls of straight shell are left above the reducer.",
                shown.Length(above), $"at least {shown.LengthUp(least)}", "Make it shorter, begin it lower, or make the shell higher.")
            : null;
    }

    private static IEnumerable<Fault> Angle(
        UnitFormat shown, ShellDesign shell, double below, double above, double height, string path, string plain)
    {
        var angle = Math.Atan2(Math.Abs(above - below) / 2, height) * 180 / Math.PI;
        if (angle < LeastAngle || angle > MostAngle)
        {
            yield return new(FaultCodes.ShellConeAngle, path,
                angle < LeastAngle ? "The two diameters are so nearly alike that the cone is a cylinder."
                    : "The cone is too flat to be rolled.",
                $"{shown.Angle(angle * Math.PI / 180)} between axis and side",
                $"{shown.Angle(LeastAngle * Math.PI / 180)} to {shown.Angle(MostAngle * Math.PI / 180)}",
                angle < LeastAngle ? $"{plain}, or make the diameters differ." : "Make the cone longer, or the diameters more alike.");
            yield break;
        }

        // The level cut of a leaning wall is wider than the wall.
        var (narrow, across) = (Math.Min(above, below) / 2, shell.Wall / Math.Cos(angle * Math.PI / 180));
        if (across >= narrow && shell.Wall < below / 2)
            yield return WallCheck.TooThick(shown, path, "shell", across, narrow);
    }
}
