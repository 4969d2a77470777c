namespace Vessel.Design;

/// <summary>Packings that have no room between their discs, and caps that their tube does not carry.</summary>
internal static class InsidePairCheck
{
    public static IEnumerable<Fault> Find(VesselDesign design)
    {
        var shown = new Shown(design.Units);
        return design.Inside.Packings.Select(p => Packing(shown, design.Inside, p))
            .Concat(design.Inside.Caps.Select(c => Carried(shown, design, c)))
            .OfType<Fault>();
    }

    private static Fault? Packing(Shown shown, InsideDesign inside, PackingDesign packing)
    {
        if (Disc(packing.Lower) is not { } lower || Disc(packing.Upper) is not { } upper)
            return null;
        if (!InsideNames.AreOne(lower.Fits ?? "shell", upper.Fits ?? "shell"))
        {
            return Fault("do not stand in one bore", $"in {Where(lower)} and {Where(upper)}", null,
                "Use two discs of one sleeve, or two of the shell.");
        }

        var top = lower.Height + lower.Thickness;
        return upper.Height <= top + Ring.Hair
            ? Fault($"leave no room: '{upper.Name}' does not lie above '{lower.Name}'", shown.Length(upper.Height),
                $"more than {shown.LengthUp(top)}", "Name the lower disc first, or move them apart.")
            : null;

        DiscDesign? Disc(string? name) =>
            name is null ? null : inside.Discs.FirstOrDefault(d => InsideNames.AreOne(d.Name, name));

        Fault Fault(string what, string given, string? limit, string remedy) => new(FaultCodes.PackingNotBetween,
            $"{packing.Path}.between", $"The discs of '{packing.Name}' {what}.", given, limit, remedy);
    }

    private static string Where(DiscDesign disc) => disc.Fits is null ? "the shell" : $"'{disc.Fits}'";

    private static Fault? Carried(Shown shown, VesselDesign design, CapDesign cap)
    {
        if (cap.Opens == CapOpening.Up
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
