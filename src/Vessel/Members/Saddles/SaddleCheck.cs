using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Sites;

namespace Vessel.Members.Saddles;

/// <summary>Whether a saddle meets the shell, and nothing else.</summary>
internal static class SaddleCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design, PortSites sites)
    {
        var shown = new UnitFormat(design.Units);
        return design.All<SaddleDesign>().SelectMany(bracket => new[]
        {
            Width(shown, design.Shell.At(bracket.Height), bracket),
            Ears(shown, design.Shell.At(bracket.Height), bracket),
            HeightCheck.Of(shown, design.Shell, bracket, bracket.PlateHeight / 2, "height"),
        }.Concat(sites.Openings.Select(h => OverPort(shown, design.Shell.At(bracket.Height), bracket, h)))).OfType<Fault>();
    }

    private static Fault? Width(UnitFormat shown, ShellSection shell, SaddleDesign bracket) =>
        bracket.Width >= shell.OutsideDiameter
            ? new Fault(FaultCodes.BracketTooWide, $"{bracket.Path}.width", "The bracket's ears reach beside the shell.",
                shown.Length(bracket.Width), $"less than {shown.LengthDown(shell.OutsideDiameter)}", "Make it narrower.")
            : null;

    /// <summary>Between bend and shell some straight ear must be left, on the ear's shortest line.</summary>
    private static Fault? Ears(UnitFormat shown, ShellSection shell, SaddleDesign bracket)
    {
        var aside = bracket.Ears == SaddleEars.Sides ? Math.Max(0, (bracket.Width / 2) - bracket.Thickness) : 0;
        var sagitta = shell.OuterRadius - Circles.HalfChord(shell.OuterRadius, aside);
        var need = bracket.InsideRadius - sagitta;
        return bracket.StandOff <= need
            ? new Fault(FaultCodes.EarTooShort, $"{bracket.Path}.stand_off",
                "The bracket stands so near the shell that its bends leave no straight ear.",
                shown.Length(bracket.StandOff), $"more than {shown.LengthUp(need)}",
                "Make the stand-off larger, or the inside radius of the bends smaller.")
            : null;
    }

    private static Fault? OverPort(UnitFormat shown, ShellSection shell, SaddleDesign bracket, ShellOpening hole)
    {
        var half = bracket.PlateHeight / 2;
        var (low, high) = (hole.Heights.Start, hole.Heights.End);
        var room = Math.Asin(bracket.Width / shell.OutsideDiameter) + (hole.Angles.Length / 2);
        var apart = Math.Abs(Turns.Signed(bracket.Angle - ((hole.Angles.Start + hole.Angles.End) / 2)));
        return apart < room && low < bracket.Height + half && high > bracket.Height - half
            ? new Fault(FaultCodes.BracketOverPort, $"{bracket.Path}.at",
                $"The bracket stands over '{hole.Port.Name}'.", $"{shown.Angle(apart)} between their middles",
                $"at least {shown.AngleUp(room)} at that height", "Move one of the two round the shell or along it.")
            : null;
    }
}
