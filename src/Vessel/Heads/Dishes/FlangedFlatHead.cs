using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Heads.Dishes;

/// <summary>A flat plate whose rim is turned up to a flange.</summary>
/// <param name="Knuckle">Inside radius of the turn, mm.</param>
public sealed record FlangedFlatHead(string Path, Material Material, double Wall, double Knuckle) : DishedHead(Path, Material, Wall)
{
    public override string Form => "flanged flat";

    public override double Sharpest => Knuckle;

    protected override Profile? Dish(double radius) => Knuckle > 0 && Knuckle < radius ? Domes.Pan(radius, Knuckle) : null;

    public override string Radii => $" (knuckle {NoteText.Length(Knuckle)} mm)";

    internal override Fault? Misfit(UnitFormat shown, ShellSection rim) => DishCheck.Knuckle(shown, rim, this, Knuckle);

    internal override double Stress(double pressure, double hole, ShellSection rim) =>
        FlatPlate.Stress(pressure, hole, rim.InnerRadius, Wall, Material);

    internal override string StressFormula => FlatPlate.StressFormula;

    internal override (double Clamped, double Supported)? Bulge(double pressure, ShellSection rim) =>
        FlatPlate.Bulge(pressure, rim.InnerRadius, Wall, Material);
}
