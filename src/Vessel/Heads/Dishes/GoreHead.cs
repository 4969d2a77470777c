using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Function;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Heads.Dishes;

/// <summary>A dished head that is put together from gores and a polar cap.</summary>
internal sealed class GoreHead(VesselEnd end, GoreShape shape, VesselDesign vessel, ImmutableArray<PortSite> sites)
    : Dish(end, shape.Design, vessel)
{
    private readonly string _cap = Slug.Of(GoreDesign.CapOf(Names.Of(end)));

    private readonly ImmutableArray<PortSite> _inCap =
        [.. sites.Where(site => site.Port.End == end && GorePorts.IsInCap(site.Port, vessel))];

    public override IEnumerable<Joint> Seams => GoreSeams.Of(End, shape, Design);

    public override IEnumerable<Part> Parts(Welds welds)
    {
        foreach (var piece in shape.Gores.Pieces(End, Design))
        {
            ImmutableArray<PortSite> own = [.. sites.Where(site => piece.Ports.Contains(site.Port))];
            var part = GorePart.Build(shape, piece, own, HeadSite.Of(End, Design), welds);
            yield return part with { Centre = PartCentre.LessHoles(part, Gores(part), own) };
        }

        var (cap, zone) = (PolarCapPart.Build(End, shape, _inCap, welds), shape.Cap);
        yield return cap with
        {
            Centre = PartCentre.LessHoles(cap, (zone.Volume, shape.Head.Frame.ToOuter(new(0, 0, zone.Centre))), _inCap),
        };
    }

    /// <summary>Centre of the sectors of a zone: its mean radius times sin(h) / h for half angle h, towards the middle of each.</summary>
    private (double Volume, Geometry.Vector3 Centre) Gores(Part part)
    {
        var (zone, solid) = (shape.Strips, shape.Strips.Volume / shape.Gores.Count);
        var ring = zone.MeanRadius * Math.Sin(shape.HalfAngle) / shape.HalfAngle;
        var pieces = part.Placements.Select(frame => new Weight(solid, frame.ToOuter(new(ring, 0, zone.Centre))));
        return (solid * part.Quantity, Weight.Sum(pieces).Centre);
    }

    protected override ImmutableArray<string> Pieces => [.. Names.RimParts(End, Design), _cap];

    /// <summary>What stands in the cap is welded while that is loose, what stands in a gore when the head is whole.</summary>
    public override IEnumerable<WorkLink> Links(Welds welds)
    {
        string At(WeldRole role, string owner) => WorkTask.Welding(welds.One(role, owner));
        var crown = At(WeldRole.CrownSeam, Path);
        foreach (var port in Design.Ports.Where(port => port.End == End))
        {
            yield return GorePorts.IsInCap(port, Design)
                ? new(At(WeldRole.PortSeam, port.Path), crown, "both sides of a loose cap are in reach")
                : new(crown, At(WeldRole.PortSeam, port.Path), "the head is whole before it is drilled");
        }

        foreach (var own in welds.Of(WeldRole.GoreSeam, Path))
            yield return new(WorkTask.Welding(own), crown, "the cap closes the hole between the gores");
        yield return new(crown, At(WeldRole.HeadSeam, Path), "the head is whole before it is fitted");
    }

    public override IEnumerable<Assumption> Assumptions
    {
        get
        {
            var isRound = new[] { Design.Top, Design.Bottom }.OfType<DishedHead>().All(head => head.Gores is null || head.IsSphere);
            return shape.Design.Assumptions.Append(new(
                Assumption.Last,
                $"Gores of equal width on the {(isRound ? "mean sphere" : "middle of the wall")} with straight ends, drawn dished; seams "
                    + "fitted tight; blank of the polar cap by equal area."));
        }
    }

    public override IEnumerable<Measure> FormingMeasures =>
    [
        .. DishRules.Temper(End, shape.Design, "dishing", [Names.RimPart(End, Design), _cap], Design),
        .. GoreRules.Of(End, shape, Design, sites),
    ];
}
