using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Heads.Dishes;

/// <summary>A spherical crown and a knuckle.</summary>
/// <param name="Crown">Inside radius, mm.</param>
/// <param name="Knuckle">Inside radius, mm.</param>
/// <param name="Standard">Standard by which they were chosen; null when given.</param>
public sealed record TorisphereHead(
    string Path, Material Material, double Wall, double Crown, double Knuckle, string? Standard)
    : DishedHead(Path, Material, Wall)
{
    public override string Form => Standard is null ? "torisphere" : $"torisphere, {Standard}";

    public override double Sharpest => Knuckle;

    protected override Profile? Dish(double radius) =>
        Knuckle > 0 && Knuckle < radius && Crown > radius && double.IsFinite(Crown) ? Domes.Torisphere(radius, Crown, Knuckle) : null;

    public override string Radii => $" (crown {NoteText.Length(Crown)} mm, knuckle {NoteText.Length(Knuckle)} mm)";

    internal override Fault? Misfit(UnitFormat shown, ShellSection rim)
    {
        var radius = rim.OuterRadius - Wall;
        if (!(radius > 0))
            return null;
        // The standards' radii are named by one key, and fit all but very thick walls.
        var (crown, knuckle) = Standard is null ? ("crown_radius", "knuckle_radius") : ("standard", "standard");
        if (DishCheck.Knuckle(shown, rim, this, Knuckle, knuckle) is { } wide)
            return wide;
        return Crown <= radius
            ? new Fault(FaultCodes.RadiiDoNotFit, $"{Path}.{crown}",
                $"The crown of the {Path} head is no wider than its bore.", shown.Length(Crown),
                $"more than {shown.LengthUp(radius)}", "Make the crown radius larger, or use 'shape: hemisphere'.")
            : null;
    }

    internal override double Stress(double pressure, double hole, ShellSection rim) =>
        hole * ThinWalls.Torisphere(pressure, Crown, Knuckle, Wall);

    internal override IEnumerable<Assumption> Assumptions => Standard is null ? []
        : [new(10, "Crown and knuckle of a standard's head: inside radii as multiples of the outside diameter.")];

    internal override string StressFormula => "s = K p L (3 + sqrt(L / r)) / 8t, L and r inside radii of crown and knuckle";
}
