namespace Vessel.Design;

/// <summary>Flat heads that leave no room in the shell, or do not close it.</summary>
internal static class LidCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        var height = design.Shell.Height;
        var (top, bottom) = (design.Top.Depth, design.Bottom.Depth);
        foreach (var end in new[] { PortHost.Top, PortHost.Bottom })
        {
            if (design.Head(end) is not FlatHead head)
                continue;
            if (head.Depth >= height)
            {
                yield return TooDeep(
                    shown, head.Path, $"The {head.Path} head takes up the whole shell.", head.Depth, height);
            }

            if (Fit(shown, design.Shell.AtEnd(end), head) is { } fault)
                yield return fault;
        }

        if (top < height && bottom < height && top + bottom >= height)
        {
            yield return TooDeep(
                shown, design.Bottom.Path, "The two heads together take up the whole shell.", top + bottom, height);
        }
    }

    private static Fault TooDeep(Shown shown, string path, string what, double depth, double height) => new(
        FaultCodes.LidTooDeep, path, $"{what} Recess and thickness together must be less than its height.",
        shown.Length(depth), $"less than {shown.LengthDown(height)}",
        "Make recess or thickness smaller, or the shell higher.");

    private static Fault? Fit(Shown shown, ShellSection shell, FlatHead head)
    {
        if (head.Seat == Seat.Inset && head.Clearance >= shell.InnerRadius && shell.InnerRadius > 0)
        {
            return new Fault(FaultCodes.LidDoesNotFit, $"{head.Path}.clearance",
                $"The clearance of the {head.Path} head leaves no plate.", shown.Length(head.Clearance),
                $"less than {shown.LengthDown(shell.InnerRadius)}", "Make the clearance smaller.");
        }

        return head.Seat == Seat.Overlay && head.OutsideDiameter <= 2 * shell.InnerRadius
            ? new Fault(FaultCodes.LidDoesNotFit, $"{head.Path}.outside_diameter",
                $"The {head.Path} plate does not cover the shell's bore.", shown.Length(head.OutsideDiameter),
                $"more than {shown.LengthUp(2 * shell.InnerRadius)}", "Make the plate larger, or use 'seat: inset'.")
            : null;
    }
}
