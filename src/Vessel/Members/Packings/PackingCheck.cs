using Vessel.Design;

namespace Vessel.Members.Packings;

/// <summary>Whether a packing has a room between its dividers.</summary>
internal static class PackingCheck
{
    public static Fault? Find(VesselDesign design, PackingDesign packing)
    {
        var shown = new UnitFormat(design.Units);
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

        DividerSpec? Disc(string? name) =>
            name is null ? null : design.All<DividerSpec>().FirstOrDefault(d => InsideNames.AreOne(d.Name, name));

        Fault Fault(string what, string given, string? limit, string remedy) => new(FaultCodes.PackingNotBetween,
            $"{packing.Path}.between", $"The discs of '{packing.Name}' {what}.", given, limit, remedy);
    }

    private static string Where(DividerSpec disc) => disc.Fits is null ? "the shell" : $"'{disc.Fits}'";
}
