using Vessel.Design;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Heads.Dishes;

/// <summary>Half an ellipsoid of revolution, inside twice as wide as it would be high if whole: 2:1.</summary>
public sealed record EllipsoidHead(string Path, Material Material, double Wall) : DishedHead(Path, Material, Wall)
{
    public override string Form => "2:1 ellipsoid";

    protected override Profile Dish(double radius) => Domes.Ellipsoid(radius, radius / 2);

    public override Profile? Thickened(HeadShape shape, double wall)
    {
        var more = wall - Wall;
        if (more <= 0)
            return base.Thickened(shape, wall);
        // Less both half axes by one length, a 2:1 ellipse stands off by 2 sqrt(2) / 3 of it at least.
        var (a, b) = (shape.Inner.End.U - more, (shape.Inner.End.U / 2) - (more * 3 / (2 * Math.Sqrt(2))));
        if (b <= 0)
            return null;
        var inner = Domes.Ellipsoid(a, b);
        return Flange == 0 ? inner : inner.Moved(-Flange).Then(new(new LinePiece(new(a, -Flange), new(a, 0))));
    }

    internal override double Stress(double pressure, double hole, ShellSection rim) =>
        hole * ThinWalls.Hoop(pressure, rim.OutsideDiameter - Wall, Wall);

    internal override string StressFormula => "s = K p D / 2t";
}
