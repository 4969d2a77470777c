using Vessel.Design;
using Vessel.Geometry;
using Vessel.Members.Brackets;
using Vessel.Sites;

namespace Vessel.Members.Straps;

/// <summary>Whether a strap lies round one cylinder of the shell, clear of its ports, and can be bent and bolted.</summary>
internal static class StrapCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design, PortSites sites)
    {
        var shown = new UnitFormat(design.Units);
        return design.All<StrapDesign>().SelectMany(strap => new[]
        {
            HeightCheck.Of(shown, design.Shell, (strap.Path, "strap", strap.Height), strap.Width / 2, "width"),
            Gap(shown, design.Shell.At(strap.Height), strap),
            Legs(shown, design.Shell.At(strap.Height), strap),
            Flat(shown, strap, strap.Bolts, $"{strap.Path}.ear", "ear", strap.Ear),
            Across(shown, strap, strap.Bolts),
            Flat(shown, strap, strap.Feet.Bolts, $"{strap.Feet.Path}.length", "foot", strap.Feet.Length),
            Across(shown, strap, strap.Feet.Bolts),
        }.Concat(sites.Openings.Select(hole => OverPort(shown, strap, hole)))).OfType<Fault>();
    }

    /// <summary>The most that a strap's gap may be, mm: each half still reaches round more than a third of the shell.</summary>
    private static Fault? Gap(UnitFormat shown, ShellSection shell, StrapDesign strap)
    {
        // The bend's circle, outside of the band, touches the ear's outer face: this is the height of its centre over the middle plane.
        var most = 2 * ((Math.Sin(Math.PI / 6) * (shell.OuterRadius + strap.Liner + strap.Thickness + strap.InsideRadius)) - strap.Thickness
            - strap.InsideRadius);
        return strap.Gap > most
            ? new(FaultCodes.StrapGapTooWide, $"{strap.Path}.gap",
                "The halves of the strap stand so far apart that each reaches round less than a third of the shell.",
                shown.Length(strap.Gap), $"at most {shown.LengthDown(Math.Max(0, most))}",
                most > 0 ? "Make the gap smaller, or the inside radius of the bends."
                    : "Make the inside radius of the bends smaller, or the sheet thinner.")
            : null;
    }

    /// <summary>
    /// Legs rise from the ears' outer faces by two bends at least and stand beside the band; their feet lie no nearer than its outside.
    /// </summary>
    private static Fault? Legs(UnitFormat shown, ShellSection shell, StrapDesign strap)
    {
        if (strap.Feet.StandOff is not { } standOff)
            return null;
        var band = shell.OuterRadius + strap.Liner + strap.Thickness;
        var (bend, level) = (band + strap.InsideRadius, (strap.Gap / 2) + strap.Thickness + strap.InsideRadius);
        var beside = band - Math.Sqrt((bend - level) * (bend + level)) - strap.InsideRadius;
        if (strap.Ear < beside)
        {
            return new(FaultCodes.EarTooShort, $"{strap.Path}.ear", "The legs of the strap's feet rise into its band.",
                shown.Length(strap.Ear), $"at least {shown.LengthUp(beside)}", "Make the ears longer or the gap smaller.");
        }

        var need = Math.Max(strap.Liner + strap.Thickness, level + strap.InsideRadius + strap.Thickness - shell.OuterRadius);
        return standOff < need
            ? new(FaultCodes.EarTooShort, $"{strap.Feet.Path}.stand_off",
                "The strap's feet lie nearer to the shell than its bends, or the outside of its band.",
                shown.Length(standOff), $"at least {shown.LengthUp(need)}",
                "Make the stand-off larger, or leave it out for feet that carry the ears straight on.")
            : null;
    }

    /// <summary>Along the strip the washer lies on the flat, wherever in its slot the bolt stands.</summary>
    private static Fault? Flat(UnitFormat shown, StrapDesign strap, BoltsDesign bolts, string path, string what, double length)
    {
        var need = bolts.WasherDiameter + bolts.Slot;
        return length < need - Ring.Hair
            ? new(FaultCodes.BoltOffPlate, path,
                $"The washers of '{strap.Name}', {shown.Length(bolts.WasherDiameter)} wide, do not lie wholly on the flat of its {what}.",
                shown.Length(length), $"at least {shown.LengthUp(need)}", "Make it longer, or the slot shorter.")
            : null;
    }

    private static Fault? Across(UnitFormat shown, StrapDesign strap, BoltsDesign bolts)
    {
        var most = strap.Width - bolts.WasherDiameter;
        if (bolts.Up > most + Ring.Hair)
        {
            return new(FaultCodes.BoltOffPlate, bolts.Up > 0 ? $"{bolts.Path}.up" : $"{strap.Path}.width",
                $"The bolts' washers, {shown.Length(bolts.WasherDiameter)} wide, do not lie wholly on the strap.",
                shown.Length(bolts.Up), $"at most {shown.LengthDown(Math.Max(0, most))} on {shown.Length(strap.Width)}",
                "Make the strap wider, or the bolts thinner or nearer to each other.");
        }

        return bolts.Up > 0 && bolts.Up <= bolts.HoleDiameter
            ? new(FaultCodes.BoltHolesOverlap, $"{bolts.Path}.up", "Two bolt holes run into each other.",
                shown.Length(bolts.Up), $"more than {shown.LengthUp(bolts.HoleDiameter)}", "Set the bolts further apart, or use 0 for one.")
            : null;
    }

    private static Fault? OverPort(UnitFormat shown, StrapDesign strap, ShellOpening hole)
    {
        var (low, high) = (hole.Heights.Start, hole.Heights.End);
        return low < strap.High && high > strap.Low
            ? new(FaultCodes.BracketOverPort, $"{strap.Path}.at.height", $"The strap lies over '{hole.Port.Name}'.",
                $"{shown.Length(strap.Low)} to {shown.Length(strap.High)}", $"clear of {shown.LengthDown(low)} to {shown.LengthUp(high)}",
                "Move one of the two along the shell, or make the strap narrower.")
            : null;
    }
}
