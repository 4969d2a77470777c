using Vessel.Geometry;
using Vessel.Stock;

namespace Vessel.Heads.Dishes;

/// <summary>A half sphere.</summary>
public sealed record HemisphereHead(string Path, Material Material, double Wall) : DishedHead(Path, Material, Wall)
{
    public override string Form => "half sphere";

    public override bool IsSphere => true;

    protected override Profile Dish(double radius) => Domes.Sphere(radius);
}
