using Vessel.Design;
using Vessel.Function;

namespace Vessel.Members.Brackets;

/// <summary>A bracket on its shell.</summary>
internal abstract class Bracket(BracketDesign spec, VesselDesign vessel) : Member(spec.Path, spec.Name), ICarrier
{
    protected VesselDesign Vessel { get; } = vessel;

    public override OutsideBody Outside => Print.Body;

    public abstract override PrintForm Print { get; }

    public override double? Angle => spec.Angle;

    public override bool IsBolted => true;

    public MountSpring Spring(Assembly assembly)
    {
        var welds = WeldGroup.Of([.. assembly.Welds.Where(weld => weld.Joint.Owner == Path)]);
        return Spring(
            new(Path, Name, spec.Material, spec.Height, spec.Bolts), welds, WallUnder.Of(spec.Height, welds, assembly.Design.Shell));
    }

    protected abstract MountSpring Spring(Carrier carrier, WeldGroup welds, WallUnder wall);
}
