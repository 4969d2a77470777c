using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Joints;
using Vessel.Parts;
using Vessel.Planning;

namespace Vessel.Members.Inside;

/// <summary>A level plate in its bore, whatever is cut in it.</summary>
internal abstract class Divider(DividerSpec spec, VesselDesign vessel) : Member(spec.Path, spec.Name), IAssessed
{
    /// <summary>Part of the divider, its only one, with so much more play all round than it is drawn with, mm.</summary>
    protected abstract Part Part(double play, Welds welds);

    public override IEnumerable<Joint> Joints => spec.IsWelded ? [DividerSeam.Of(spec, vessel)] : [];

    public override IEnumerable<Part> Parts(Welds welds) => [Part(0, welds)];

    public override IEnumerable<Part> Printed(double play, Welds welds) => [Part(play, welds)];

    public override Partition Partition(ImmutableArray<Part> parts)
    {
        var part = parts.Single(part => part.Path == Path);
        return new(spec, part.Volume / spec.Thickness, HoleEdges(part), Holes(part));
    }

    /// <summary>Length of the edges of what is open in it, but for its middle bore, mm.</summary>
    protected abstract double HoleEdges(Part part);

    /// <summary>Where those edges lie; null where nothing is open in it but that bore.</summary>
    protected abstract OpeningShape? Holes(Part part);

    public override IEnumerable<BoughtItem> Bought => spec.Fixed == Fixing.Screws ? [DividerScrews.Of(spec)] : [];

    public override IEnumerable<SlipFit> Fits => [SlipFits.Divider(spec, vessel)];

    public override IEnumerable<Body> Bodies =>
        [new RingBody(Slug.Of(Name), Frame3.Identity, spec.Bore / 2, spec.OutsideDiameter / 2, spec.Height, spec.Height + spec.Thickness)];

    public override SetUp SetUp => SetUpTable.Inside(Name, spec.Height, vessel, $"lower face; fits the {InternalHost.Name(spec.Fits)}");

    public override IEnumerable<WorkTask> Tasks => spec.IsWelded ? [] :
    [
        new(
            WorkTask.Fitting(Path), WorkKind.Fit, $"{InsideWords.Verb(spec.Fixed)} '{Name}' into the {InternalHost.Name(spec.Fits)}",
            WorkRank.Inside, [.. InternalHost.Ids(spec, vessel), Slug.Of(Name)]),
    ];

    public IEnumerable<Measure> Measures(Assembly assembly) => DividerRules.Of(spec, vessel);
}
