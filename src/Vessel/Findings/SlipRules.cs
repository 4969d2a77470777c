using Vessel.Design;
using Vessel.Function;
using Vessel.Joints;
using Vessel.Parts;
using static Vessel.Model.Allowed;

namespace Vessel.Findings;

/// <summary>Whether parts that are to slip do, and parts that are to be pressed hold, with what their processes leave.</summary>
internal static class SlipRules
{
    public static IEnumerable<Measure> Of(Assembly assembly) => assembly.Fits
        .Select(fit => Of(fit, assembly.Design));

    private static Measure Of(SlipFit fit, VesselDesign design)
    {
        var pressed = fit.Clearance < 0;
        // A press fit is lost where the sizes are off the other way.
        var left = pressed ? -fit.Clearance - fit.LikelySpread : fit.Likely;
        var shares = string.Join(
            ", ", fit.Shares.Where(share => !share.IsTakenUp).Select(share => $"{share.What} +-{NoteText.Length(share.Off)} mm"));
        return new(
            FindingCodes.FitUncertain,
            Severity.Note,
            fit.Parts,
            () => $"{fit.Name}: {NoteText.Length(Math.Abs(fit.Clearance))} mm {(pressed ? "press" : "slip")} on the diameter, but {shares} "
            + "may add up to "
            + $"{NoteText.Length(fit.LikelySpread)} mm (at worst {NoteText.Length(fit.WorstSpread)} "
            + $"mm{(fit.Shares.Any(share => share.IsTakenUp) ? ", out of round" : "")}): measure both before cutting"
            + $"{(pressed ? ", or weld it" : $", or give a clearance of {NoteText.Length(fit.LikelySpread / 2)} mm")}.",
            [new(pressed ? "interference left" : "clearance left", left, AtLeast(0), "mm")],
            design.PlaceOf(fit.Path),
            pressed ? null : $"clearance left, {fit.Name}");
    }
}
