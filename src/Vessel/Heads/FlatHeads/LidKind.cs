using Vessel.Design;

namespace Vessel.Heads.FlatHeads;

/// <summary>Flat heads. One that is flanged is formed, and read by what forms it.</summary>
internal sealed class LidKind(Func<Section, HeadDesign> flanged) : HeadKind
{
    public override string Shape => "flat";

    public override KeyMap Keys => FlatKeys.All;

    public override HeadDesign Read(Section section, ShellDesign whole, VesselEnd end) =>
        section.Text("seat") == "flanged" ? flanged(section) : Flat(section, whole, end);

    private static FlatHead Flat(Section section, ShellDesign shell, VesselEnd end)
    {
        // Flush is an overlay whose edge is in line with the shell's outside.
        var seat = section.Text("seat") is "overlay" or "flush" ? Seat.Overlay : Seat.Inset;
        var clearance = section.Number("clearance");
        var (thickness, recess) = (section.Number("thickness"), seat == Seat.Inset ? section.Number("recess") : 0);
        var outside = seat == Seat.Inset ? (2 * Bore(shell, end, recess + thickness)) - (2 * clearance)
            : section.Given.Contains("outside_diameter") ? section.Number("outside_diameter")
            : shell.AtEnd(end).OutsideDiameter;
        return new FlatHead(section.Path, section.Metal, thickness, seat, recess, seat == Seat.Inset ? clearance : 0, outside);
    }

    /// <summary>The narrowest radius that a plate passes or stands in, down to its inner face, mm.</summary>
    private static double Bore(ShellDesign shell, VesselEnd end, double depth) => shell.IsPlain ? shell.InnerRadius
        : double.IsNaN(depth) ? double.NaN
        : end == VesselEnd.Top ? shell.LeastInner(shell.Height - depth, shell.Height)
        : shell.LeastInner(0, depth);
}
