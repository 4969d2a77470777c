using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Heads.Dishes;

/// <summary>A spun cone: its tip is a round nose, its rim a knuckle.</summary>
/// <param name="HalfAngle">Between axis and line, radians.</param>
/// <param name="Nose">Inside radius, mm.</param>
/// <param name="Knuckle">Inside radius, mm.</param>
public sealed record ToriconeHead(string Path, Material Material, double Wall, double HalfAngle, double Nose, double Knuckle)
    : DishedHead(Path, Material, Wall)
{
    public override string Form => "cone with a knuckle";

    public override double Sharpest => Math.Min(Nose, Knuckle);

    protected override Profile? Dish(double radius) =>
        HalfAngle is > 0 and < Math.PI / 2 && Nose > 0 && Knuckle > 0 && Knuckle < radius
            && Domes.ConeLine(radius, HalfAngle, Nose, Knuckle) > HeadShape.Least
            ? Domes.Toricone(radius, HalfAngle, Nose, Knuckle) : null;

    public override string Radii =>
        $" ({NoteText.Degrees(2 * HalfAngle)} deg between its sides, nose {NoteText.Length(Nose)} mm, knuckle {NoteText.Length(Knuckle)} "
            + "mm)";

    internal override Fault? Misfit(UnitFormat shown, ShellSection rim) =>
        DishCheck.Knuckle(shown, rim, this, Knuckle) ?? NoCone(shown, rim);

    /// <summary>Nose and knuckle leave some straight cone between them.</summary>
    private Fault? NoCone(UnitFormat shown, ShellSection rim)
    {
        var (radius, sin, cos) = (rim.OuterRadius - Wall, Math.Sin(HalfAngle), Math.Cos(HalfAngle));
        // Of the cone this much is to be left, lest its edges run together.
        var most = ((radius - Knuckle - (HeadShape.Least * sin)) / cos) + Knuckle;
        return radius > 0 && Nose >= most
            ? new Fault(FaultCodes.RadiiDoNotFit, $"{Path}.nose_radius",
                $"Nose and knuckle of the {Path} head leave no cone between them.", shown.Length(Nose),
                $"less than {shown.LengthDown(most)}", "Make the nose radius smaller, or use 'shape: torisphere'.")
            : null;
    }

    /// <summary>The knuckle as one of a torisphere whose crown touches the cone there (ASME VIII-1, 1-4(e), from memory).</summary>
    internal override double Stress(double pressure, double hole, ShellSection rim) => hole * Math.Max(
        ThinWalls.Cone(pressure, rim.OutsideDiameter - Wall, Wall, HalfAngle),
        ThinWalls.Torisphere(pressure, rim.InnerRadius / Math.Cos(HalfAngle), Knuckle, Wall));

    internal override string StressFormula =>
        "s = K times the greater of p D / 2t cos(a), a half the angle of the cone, and p L (3 + sqrt(L / r)) / 8t, L = D / 2 cos(a), r the "
            + "knuckle's inside radius";

    internal override bool IsStressedAsCylinder => true;
}
