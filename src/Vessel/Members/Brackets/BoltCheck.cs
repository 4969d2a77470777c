using Vessel.Design;

namespace Vessel.Members.Brackets;

/// <summary>Whether a bracket's bolts find room on its flat, and no two of their holes run together.</summary>
internal static class BoltCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new UnitFormat(design.Units);
        return design.All<BracketDesign>()
            .SelectMany(bracket => Rows(bracket).SelectMany(row => new[]
            {
                OffPlate(shown, bracket.Bolts, row), Overlap(shown, bracket.Bolts, row),
            }))
            .OfType<Fault>();
    }

    private static Row[] Rows(BracketDesign bracket)
    {
        var (bolts, flat) = (bracket.Bolts, bracket.Flat);
        return [new("across", bolts.Across, 0, flat.U), new("up", bolts.Up, bolts.Slot, flat.V)];
    }

    private static Fault? OffPlate(UnitFormat shown, BoltsDesign bolts, Row row)
    {
        var most = row.Flat - row.Slot - bolts.WasherDiameter;
        return row.Apart > most + Ring.Hair
            ? new Fault(FaultCodes.BoltOffPlate, $"{bolts.Path}.{row.Key}",
                $"The bolts' washers, {shown.Length(bolts.WasherDiameter)} wide, do not lie wholly on the flat of the bracket.",
                shown.Length(row.Apart), $"at most {shown.LengthDown(Math.Max(0, most))} on {shown.Length(row.Flat)} of flat",
                most >= 0 ? $"Use '{row.Key}' of at most {shown.LengthDown(most)}, or a larger plate."
                    : $"Make the plate larger by at least {shown.LengthUp(row.Apart - most)}.")
            : null;
    }

    private static Fault? Overlap(UnitFormat shown, BoltsDesign bolts, Row row)
    {
        var least = bolts.HoleDiameter + row.Slot;
        return row.Apart > 0 && row.Apart <= least
            ? new Fault(FaultCodes.BoltHolesOverlap, $"{bolts.Path}.{row.Key}", "Two bolt holes run into each other.",
                shown.Length(row.Apart), $"more than {shown.LengthUp(least)}",
                "Set the bolts further apart, make the slots shorter, or use 0 for one row.")
            : null;
    }

    /// <summary>One direction on the plate.</summary>
    /// <param name="Apart">Distance apart of the bolts' middles.</param>
    /// <param name="Slot">Length by which holes are drawn out that way.</param>
    /// <param name="Flat">Width of the plate between its bends, or over all where it has none that way.</param>
    private sealed record Row(string Key, double Apart, double Slot, double Flat);
}
