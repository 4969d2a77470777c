using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Geometry;
using Vessel.Members.Inside;
using Vessel.Parts;
using Vessel.Planning;
using Vessel.Stock;

namespace Vessel.Members.Cups;

/// <summary>A cup under its head.</summary>
internal sealed class Cup(CupDesign spec, VesselDesign vessel) : Member(spec.Path, spec.Name), IAssessed
{
    private readonly CupSite _site = CupSite.Of(spec, vessel);

    private readonly (string Skirt, string Plate) _ids = CupParts.Ids(spec);

    public override IEnumerable<Joint> Joints => CupSeams.Of(spec, vessel);

    public override IEnumerable<Part> Parts(Welds welds)
    {
        var (skirt, plate) = (CupParts.Skirt(spec, vessel, welds), CupParts.Plate(spec, vessel, welds));
        var windows = spec.Opens == CupOpening.Up
            ? _site.Skirt.Start + TubeWalls.Middle(spec.Windows)
            : _site.Skirt.End - TubeWalls.Middle(spec.Windows);
        yield return skirt with
        {
            Centre = TubeWalls.Centre(skirt, TubeWalls.Wall(spec.OutsideDiameter, spec.Wall, spec.Skirt), spec.Skirt, windows),
        };
        yield return plate with { Centre = new(0, 0, _site.Plate.At(0.5)) };
    }

    public override IEnumerable<Part> Printed(double play, Welds welds) => Parts(welds);

    public override IEnumerable<Body> Bodies =>
    [
        new RingBody(_ids.Skirt, Frame3.Identity, spec.InnerRadius, spec.OutsideDiameter / 2, _site.Skirt.Start, _site.Skirt.End),
        new RingBody(_ids.Plate, Frame3.Identity, 0, spec.OutsideDiameter / 2, _site.Plate.Start, _site.Plate.End),
    ];

    public override IEnumerable<SlipFit> Fits =>
        spec.Outlet is null ? [] : [CupFit.Of(spec, vessel.Ports.Single(port => port.Name == spec.Outlet))];

    public override Enclosure Enclosure(ImmutableArray<Part> parts) =>
        CupRoom.Of(spec, vessel, parts.Single(part => part.Id == _ids.Skirt), parts.Single(part => part.Id == _ids.Plate));

    public override SetUp SetUp => SetUpTable.Inside(Name, _site.Plate.Start, vessel, "lower face of its plate");

    public override IEnumerable<WorkLink> Links(Welds welds) =>
        from rim in welds.Of(WeldRole.Within, Path)
        from hold in welds.Of(WeldRole.Hold, Path)
        select new WorkLink(WorkTask.Welding(rim), WorkTask.Welding(hold), "the cup is whole before it hangs");

    public override IEnumerable<RolledPart> Rolled => spec.MadeFrom == StockForm.Sheet
        ? [new([_ids.Skirt], $"skirt of '{Name}'", spec.OutsideDiameter - (2 * spec.Wall), $"{Path}.made_from")]
        : [];

    public IEnumerable<Measure> Measures(Assembly assembly) => CupRules.Of(spec, assembly.Design);
}
