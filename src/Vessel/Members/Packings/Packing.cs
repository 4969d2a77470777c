using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Findings;
using Vessel.Function;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Members.Packings;

/// <summary>A packing between its dividers.</summary>
internal sealed class Packing(PackingDesign spec, VesselDesign vessel, ImmutableArray<PortSite> sites) : Member(spec.Path, spec.Name), IAssessed
{
    public override IEnumerable<BoughtItem> Bought
    {
        get
        {
            var volume = PackingRoom.Of(spec, vessel, sites);
            var fibre = spec.FibreDiameter is { } diameter ? $", fibre {NoteText.Length(diameter)} mm" : string.Empty;
            yield return new(
                Name,
                1,
                $"{spec.Material}, stuffed to {NoteText.Length(spec.Density)} kg/m3{fibre}",
                volume * spec.Density / 1e6,
                volume,
                Path);
        }
    }

    public override IEnumerable<WorkTask> Tasks => [new(WorkTask.Fitting(Path), WorkKind.Fit, Stuffing, WorkRank.Inside, [])];

    private string Stuffing
    {
        get
        {
            var last = PackingRoom.Shutting(spec, vessel, sites)?.Name;
            var way = last == spec.Lower ? "back" : "down";
            var round = PackingRoom.Through(spec, vessel, sites) is { } tube ? $" round '{tube.Name}'" : "";
            return $"stuff '{Name}' in{round}, clean and dry; "
                + $"{(last is null ? "" : $"press it {way} from '{last}' while you weld that disc, and ")}keep the arc off it";
        }
    }

    public IEnumerable<Measure> Measures(Assembly assembly) => PackingRules.Of(spec, vessel);
}
