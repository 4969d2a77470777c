namespace Vessel.Design;

/// <summary>Whether a saddle's bolts find room on the flat of its plate, and no two holes of a bracket run together.</summary>
internal static class BoltCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        return design.Brackets
            .SelectMany(bracket => Rows(bracket).SelectMany(row => new[]
            {
                OffPlate(shown, bracket.Bolts, row), Overlap(shown, bracket.Bolts, row),
            }))
            .OfType<Fault>();
    }

    /// <summary>Of a plate on the shell <see cref="PlateCheck"/> knows the room.</summary>
    private static Row[] Rows(BracketDesign bracket)
    {
        var bolts = bracket.Bolts;
        var (width, height) = (double.PositiveInfinity, double.PositiveInfinity);
        if (bracket is SaddleBracket saddle)
        {
            var bends = 2 * (saddle.InsideRadius + saddle.Thickness);
            width = saddle.Width - (saddle.Ears == BracketEars.Sides ? bends : 0);
            height = saddle.PlateHeight - (saddle.Ears == BracketEars.Ends ? bends : 0);
        }

        return [new("across", bolts.Across, 0, width), new("up", bolts.Up, bolts.Slot, height)];
    }

    private static Fault? OffPlate(Shown shown, BoltsDesign bolts, Row row)
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

    private static Fault? Overlap(Shown shown, BoltsDesign bolts, Row row)
    {
        var least = bolts.HoleDiameter + row.Slot;
        return row.Apart > 0 && row.Apart <= least
            ? new Fault(FaultCodes.BoltHolesOverlap, $"{bolts.Path}.{row.Key}", "Two bolt holes run into each other.",
                shown.Length(row.Apart), $"more than {shown.LengthUp(least)}",
                "Set the bolts further apart, make the slots shorter, or use 0 for one row.")
            : null;
    }

    /// <summary>One direction on the plate.</summary>
    /// <param name="Apart">Of the bolts' middles.</param>
    /// <param name="Slot">By which holes are drawn out that way.</param>
    /// <param name="Flat">Width of the plate between its bends, or over all where it has none that way.</param>
    private sealed record Row(string Key, double Apart, double Slot, double Flat);
}
