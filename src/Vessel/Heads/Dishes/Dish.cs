using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Mockups;
using Vessel.Parts;

namespace Vessel.Heads.Dishes;

/// <summary>A dished head on its end, butted to the shell.</summary>
internal abstract class Dish(VesselEnd end, DishedHead spec, VesselDesign vessel) : Head(end, Names.Of(end), spec)
{
    protected HeadShape Shape { get; } = HeadShape.Of(end, vessel)!;

    protected DishedHead Spec { get; } = spec;

    protected VesselDesign Design { get; } = vessel;

    private ShellSection Rim => Design.Shell.AtEnd(End);

    public override Joint Closing => new HeadJoint(End, Design).InLine(JointKind.Butt);

    /// <summary>
    /// Of a head of several pieces each stands for the whole: all its welds are on the outside.
    /// </summary>
    public override IEnumerable<Body> Bodies => Pieces.Select(part => new DomeBody(part, Shape.Frame, Shape.Outer, Shape.Inner));

    /// <summary>Ids of its parts.</summary>
    protected abstract ImmutableArray<string> Pieces { get; }

    public override Profile Outside => BodyProfiles.Closed(Shape, Rim.OuterRadius);

    public override Profile? Inside(double bore, double leastWall)
    {
        var wall = Math.Max(Spec.Wall, leastWall);
        var dome = Rim.OuterRadius - wall;
        if (dome <= leastWall)
            return null;
        var even = Math.Abs(dome - bore) < BodyProfiles.Step;
        return Spec.Thickened(Shape, even ? Rim.OuterRadius - bore : wall) is not { } inner ? null
            : even ? inner
            : inner.Then(BodyProfiles.Lines(new(dome, 0), new(bore, 0)));
    }

    public override double Stress(double pressure, double hole) => Spec.Stress(pressure, hole, Rim);

    public override string StressFormula => Spec.StressFormula;

    public override bool IsStressedAsCylinder => Spec.IsStressedAsCylinder;

    public override (double Clamped, double Supported)? Bulge(double pressure) => Spec.Bulge(pressure, Rim);

    public override IEnumerable<Measure> Measures => [DishRules.Step(End, Spec, Design)];
}
