using Vessel.Design;
using Vessel.Members.Inside;
using Vessel.Stock;

namespace Vessel.Members.Cups;

/// <summary>Whether a cup fits the vessel, has room for its opening and windows, and is carried.</summary>
internal static class CupCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design, CupDesign cup)
    {
        var shown = new UnitFormat(design.Units);
        return
        [
            .. HangingCheck.Find(design, cup, cup.Path, $"{cup.Path}.skirt"),
            .. Opening(shown, design, cup),
            .. WindowCheck.Find(
                shown, cup.Windows, new(cup.Name, cup.OutsideDiameter, cup.Wall, cup.Skirt),
                cup.MadeFrom == StockForm.Sheet ? cup.SeamAngle : null,
                $"{cup.Path}.seam_angle"),
            .. Carried(shown, design, cup) is { } fault ? new[] { fault } : [],
        ];
    }

    private static IEnumerable<Fault> Opening(UnitFormat shown, VesselDesign design, CupDesign cap)
    {
        var opening = 2 * cap.OpeningRadius(design);
        var room = cap.OutsideDiameter - (2 * cap.Wall);
        if (room > 0 && opening >= room)
        {
            yield return new Fault(FaultCodes.BoreTooWide,
                $"{cap.Path}.{(cap.Opens == CupOpening.Up ? "drain_hole" : "outside_diameter")}",
                $"The opening in the middle of '{cap.Name}' is as wide as its plate inside the skirt.",
                shown.Length(opening), $"less than {shown.LengthDown(room)}", "Make the cap wider, or the opening smaller.");
        }
    }

    private static Fault? Carried(UnitFormat shown, VesselDesign design, CupDesign cap)
    {
        if (cap.Opens == CupOpening.Up
            || InsideNames.Outlet(cap.Outlet, cap.HangsFrom, design.Ports) is not { } outlet)
        {
            return null;
        }

        // Where no drop is given the plate lies flush with the tube's end: it may then have no room above.
        return outlet.InsideLength <= cap.Drop || cap.Drop < 0
            ? new Fault(FaultCodes.CapNotCarried, $"{cap.Path}.drop",
                $"The tube of '{outlet.Name}' reaches too little way in to carry '{cap.Name}'.",
                shown.Length(outlet.InsideLength),
                cap.Drop < 0 ? $"at least {shown.LengthUp(cap.Wall)}" : $"more than {shown.LengthUp(cap.Drop)}",
                $"Make the inside length of '{outlet.Name}' at least {shown.LengthUp(Math.Max(0, cap.Drop) + cap.Wall)}, "
                + "or the drop smaller.")
            : null;
    }
}
