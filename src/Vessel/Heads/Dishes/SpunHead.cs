using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Heads.Dishes;

/// <summary>A dished head that is spun from a disc.</summary>
internal sealed class SpunHead(VesselEnd end, DishedHead spec, VesselDesign vessel, ImmutableArray<PortSite> sites) : Dish(end, spec, vessel)
{
    public override IEnumerable<Part> Parts(Welds welds)
    {
        var part = SpunHeadPart.Build(End, Spec, Shape, sites, welds);
        yield return part with
        {
            Centre = PartCentre.LessHoles(part, PartCentre.Turned(Shape), sites.Where(site => site.Port.End == End || site.Over == End)),
        };
    }

    protected override ImmutableArray<string> Pieces => [Name];

    public override IEnumerable<Assumption> Assumptions =>
        Spec.Assumptions.Prepend(new(
            0, "Blank of a spun head by equal area on the middle of the wall, flange and all; spinning thins the wall."));

    public override IEnumerable<Measure> FormingMeasures => DishRules.Temper(End, Spec, "spinning", [Name], Design);
}
