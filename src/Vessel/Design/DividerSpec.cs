using Vessel.Stock;

namespace Vessel.Design;

/// <summary>A level plate inside that fits a bore and parts it in two.</summary>
/// <param name="Fits">Name of what hangs inside and holds it; null for the shell.</param>
/// <param name="Height">Height of its lower face, mm in the vessel's frame.</param>
/// <param name="Thickness">mm.</param>
/// <param name="Clearance">Radial, to what it fits, mm; negative for a press fit.</param>
/// <param name="Bore">Diameter of a central opening for a tube that passes through, mm; zero for none.</param>
/// <param name="OutsideDiameter">The bore that it fits less twice the clearance.</param>
public abstract record DividerSpec(
    string Path,
    string Name,
    Material Material,
    string? Fits,
    double Height,
    double Thickness,
    double Clearance,
    Fixing Fixed,
    double Bore,
    double OutsideDiameter) : InsideSpec(Path, Name, Material, Fixed)
{
    /// <summary>True where it is welded; its tabs are tacks.</summary>
    public override bool IsWelded => Fixed is Fixing.Weld or Fixing.Tabs;

    internal override InsideBody Body(VesselDesign design) =>
        new(Path, Name, [new Ring(Bore / 2, OutsideDiameter / 2, Height, Height + Thickness)]);

    internal override bool StandsIn(InsideSpec other) =>
        other is HangingSpec { BoreLength: not null } && InsideNames.AreOne(Fits, other.Name);

    internal override Fault Clash(UnitFormat shown, InsideBody own, InsideSpec? other, InsideBody body)
    {
        if (other is DividerSpec)
            return base.Clash(shown, own, other, body);
        var need = 2 * body.OuterBeside(own);
        var canPass = need < OutsideDiameter;
        return new(FaultCodes.PartsCollide, canPass ? $"{Path}.bore" : $"{Path}.at.height",
            $"'{body.Name}' runs into '{Name}'.", shown.Length(Bore), $"at least {shown.LengthUp(need)}",
            canPass
                ? $"Give the disc a bore of at least {shown.LengthUp(need)}, or move it."
                : "Move the disc; it is too small to have an opening for that.");
    }

    public override IEnumerable<string> Ways => [Name];
}
