namespace Vessel.Design;

/// <summary>Walls that leave no bore, and bungs without metal round their thread.</summary>
internal static class WallCheck
{
    /// <summary>Metal round a bung's thread, mm: common practice, no source.</summary>
    public const double LeastBungWall = 1.5;

    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new UnitFormat(design.Units);
        var shell = design.Shell;
        if (shell.Wall >= shell.OuterRadius)
            yield return TooThick(shown, "shell.wall", "shell", shell.Wall, shell.OuterRadius);
        foreach (var head in new[] { design.Top, design.Bottom }.Where(head => head.Plate is null))
        {
            var radius = shell.AtEnd(head == design.Top ? VesselEnd.Top : VesselEnd.Bottom).OuterRadius;
            if (head.Wall >= radius && shell.Wall < radius)
                yield return TooThick(shown, $"{head.Path}.wall", head.Path, head.Wall, radius);
        }

        foreach (var port in design.Ports)
        {
            if (port.Thread is null && port.Bore <= 0)
                yield return TooThick(shown, $"{port.Path}.tube.wall", port.Name, port.Wall, port.OuterRadius);
            if (port.Thread is not null && BungTooThin(shown, port, port.Thread.MajorDiameter) is { } fault)
                yield return fault;
        }
    }

    public static Fault TooThick(UnitFormat shown, string path, string what, double wall, double radius) => new(
        FaultCodes.WallTooThick, path, $"The wall of '{what}' leaves no bore: it is as thick as the radius.",
        shown.Length(wall), $"less than {shown.LengthDown(radius)}", "Make the wall thinner or the diameter larger.");

    private static Fault? BungTooThin(UnitFormat shown, PortDesign port, double major)
    {
        var least = major + (2 * LeastBungWall);
        return port.OutsideDiameter <= least
            ? new Fault(FaultCodes.BungTooThin, port.SizeKey,
                $"The bung '{port.Name}' has too little metal round its {port.Thread!.Name} thread.",
                shown.Length(port.OutsideDiameter), $"more than {shown.LengthUp(least)}",
                "Make its outside diameter larger, or the thread smaller.")
            : null;
    }
}
