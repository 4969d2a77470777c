using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Members.Straps;

/// <summary>Straps: two half bands that are clamped round the shell.</summary>
internal sealed class StrapKind : MemberKind
{
    public override Key Key { get; } = new("strap", KeyKind.OneOrList,
        "Two half bands that are clamped round the shell, of which one is bolted up")
    {
        DefaultRule = "none",
        Map = StrapKeys.Strap,
        Items = new(0, 24),
    };

    public override IEnumerable<MemberSpec> Read(ImmutableArray<Section> sections, Section file, VesselDesign draft) =>
        sections.Select(section => StrapBuilder.Build(section, draft.Shop));

    public override ImmutableArray<(string Name, string What)> PartsOf(string name) =>
        [(StrapDesign.BackOf(name), "the back half"), (StrapDesign.FrontOf(name), "the front half")];

    public override IEnumerable<Fault> Faults(VesselDesign design, PortSites sites) => StrapCheck.Find(design, sites);

    public override IEnumerable<Member> Build(VesselDesign design, ImmutableArray<PortSite> sites) =>
        design.All<StrapDesign>().Select(strap => new Strap(strap, design));
}
