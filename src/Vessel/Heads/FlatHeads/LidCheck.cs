using Vessel.Design;

namespace Vessel.Heads.FlatHeads;

/// <summary>A flat head that leaves no room in the shell, or does not close it.</summary>
internal static class LidCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design, VesselEnd end, FlatHead head)
    {
        var shown = new UnitFormat(design.Units);
        if (head.Depth >= design.Shell.Height)
        {
            yield return HeadCheck.TooDeep(
                shown, head.Path, $"The {head.Path} head takes up the whole shell.", head.Depth, design.Shell.Height);
        }

        if (Fit(shown, design.Shell.AtEnd(end), head) is { } fault)
            yield return fault;
    }

    private static Fault? Fit(UnitFormat shown, ShellSection shell, FlatHead head)
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
