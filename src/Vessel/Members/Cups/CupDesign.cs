using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Stock;

namespace Vessel.Members.Cups;

/// <summary>Which way a cap's cup is open.</summary>
public enum CupOpening
{
    /// <summary>Plate below, skirt against the head: gas comes in through the windows.</summary>
    Up,

    /// <summary>Plate above, carried by the outlet's tube that passes through it; the skirt hangs.</summary>
    Down,
}

/// <summary>
/// A shallow cup that stops the straight path to the outlet: a plate of the full outside diameter with a skirt standing
/// on its rim.
/// </summary>
/// <param name="Wall">Wall of plate and skirt alike, mm.</param>
/// <param name="Skirt">Height of the skirt alone, from the plate's inner face to the rim, mm.</param>
/// <param name="HangsFrom">The flat head that carries it.</param>
/// <param name="Drop">Opens down: from the head's inner face to the plate's upper face, mm; zero when it opens up.</param>
/// <param name="Outlet">Opens down: name of the port whose tube passes through the plate; null when it opens up.</param>
/// <param name="Clearance">Opens down: between that tube and the plate, radial, mm.</param>
/// <param name="DrainHole">Diameter of a hole in the plate's middle, mm; zero for none.</param>
/// <param name="MadeFrom">Stock of the skirt: rolled from sheet, or cut from tube.</param>
/// <param name="SeamAngle">Angle of the seam of a rolled skirt, radians in [0, 2 pi).</param>
/// <param name="Windows">Windows in the skirt, row by row; empty for none.</param>
/// <param name="Pattern">Drilled in the plate; null for none.</param>
public sealed record CupDesign(
    string Path,
    string Name,
    Material Material,
    double OutsideDiameter,
    double Wall,
    double Skirt,
    CupOpening Opens,
    VesselEnd HangsFrom,
    Fixing Fixed,
    double Drop,
    string? Outlet,
    double Clearance,
    double DrainHole,
    StockForm MadeFrom,
    double SeamAngle,
    ImmutableArray<WindowsDesign> Windows,
    HolePatternDesign? Pattern) : HangingSpec(Path, Name, Material, Fixed, OutsideDiameter, Wall, HangsFrom)
{
    public override string? Carrier => Outlet;

    /// <summary>Radius of the opening in the middle of its plate: for the outlet's tube, or to drain it; mm.</summary>
    public double OpeningRadius(VesselDesign design) => Opens == CupOpening.Up
        ? DrainHole / 2
        : (InsideNames.Outlet(Outlet, HangsFrom, design.Ports)?.OuterRadius ?? double.NaN) + Clearance;

    internal override InsideBody Body(VesselDesign design)
    {
        var ceiling = InsideRoom.Ceiling(design);
        var outer = OutsideDiameter / 2;
        var under = ceiling - (Opens == CupOpening.Up ? Skirt : Drop);
        var plate = new Ring(OpeningRadius(design), outer, under - Wall, under);
        var skirt = Opens == CupOpening.Up
            ? new Ring(InnerRadius, outer, under, ceiling)
            : new Ring(InnerRadius, outer, plate.Low - Skirt, plate.Low);
        return new(Path, Name, [plate, skirt]);
    }

    /// <summary>A cup that is wide enough to stand round a tube is not too wide: its plate is too high.</summary>
    internal override Fault Clash(UnitFormat shown, InsideBody own, InsideSpec? other, InsideBody body) =>
        other is HangingSpec { BoreLength: not null } tube && !(InnerRadius >= tube.OutsideDiameter / 2)
            ? new(FaultCodes.TooWideInside, $"{Path}.outside_diameter", $"'{Name}' does not enter '{tube.Name}'.",
                shown.Length(OutsideDiameter),
                $"at most {shown.LengthDown(2 * tube.InnerRadius)}", "Make the cap narrower, or the sleeve wider.")
            : base.Clash(shown, own, other, body);

    public override IEnumerable<string> Ways =>
    [
        .. Opens == CupOpening.Down ? new[] { $"rim of {Name}" } : [],
        .. Windows.Select((_, row) => WindowRows.NameOf(Name, row)),
        .. DrainHole > 0 || Pattern is not null ? new[] { $"plate of {Name}" } : [],
    ];

    internal override IEnumerable<DrilledField> Patterns(VesselDesign design) =>
        Pattern is { } pattern ? [new(pattern, Name, InnerRadius, OpeningRadius(design))] : [];

    /// <summary>What the skirt of a cap of that name is called.</summary>
    public static string SkirtOf(string cap) => $"{cap} skirt";

    /// <summary>What the plate of a cap of that name is called.</summary>
    public static string PlateOf(string cap) => $"{cap} plate";
}
