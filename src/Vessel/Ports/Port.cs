using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Planning;
using Vessel.Sites;
using Vessel.Stock;

namespace Vessel.Ports;

/// <summary>A port on its host.</summary>
internal sealed class Port(PortSite site, VesselDesign vessel) : Member(site.Port.Path, site.Port.Name), IAssessed
{
    /// <summary>Places round its foot at which it is asked how low that reaches.</summary>
    private const int Samples = 24;

    public override IEnumerable<Joint> Joints => MitreSeam.Of(site).Append(PortSeam.Of(site, vessel));

    public override IEnumerable<Part> Parts(Welds welds) => PortPart.Build(site, welds);

    public override IEnumerable<SlipFit> Fits => site.Port.Joint == PortJoint.SetIn ? [PortFit.Of(site, vessel)] : [];

    /// <summary>
    /// An elbow's pieces square at the middles of their mitres: what that adds on the inside of the bend lies within the next piece.
    /// </summary>
    public override IEnumerable<Body> Bodies
    {
        get
        {
            var port = site.Port;
            var face = port.IsFlush ? site.Inside : site.Outside;
            var foot = port is { Joint: PortJoint.SetIn, IsFlush: false }
                ? site.InnerEnd
                : Enumerable.Range(0, Samples).Min(i => face.Reach(port.OuterRadius, Turns.Full * i / Samples));
            var first = Slug.Of(port.Name);
            return site.Legs.Zip(PortPieces.Ids(port), (leg, id) => new RingBody(
                id, leg.Frame, port.BoreRadius, port.OuterRadius, id == first ? foot : 0, leg.Length));
        }
    }

    public override IEnumerable<BoughtItem> Bought => site.Port.Fitting is { } fitting
        ? [new($"fitting of {Name}", 1, $"{fitting.Name}, {fitting.Thread}", null, null, Path)]
        : [];

    public override SetUp? SetUp => PortWork.SetUp(site, vessel);

    public override IEnumerable<WorkTask> Tasks => PortWork.Tasks(site, vessel);

    public override IEnumerable<WorkLink> Links(Welds welds) => PortWork.Links(site.Port, welds);

    public IEnumerable<Measure> Measures(Assembly assembly) => PortRules.Of(site, assembly);
}
