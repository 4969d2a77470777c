using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Members.Packings;

/// <summary>Packings: loose fibres between two dividers.</summary>
internal sealed class PackingKind : MemberKind
{
    public override Key Key { get; } = new("packing", KeyKind.OneOrList, "Loose fibres between two discs")
    {
        DefaultRule = "none",
        Map = PackingKeys.Packing,
        Items = new(0, 24),
    };

    public override string Under => UnderInside;

    public override IEnumerable<MemberSpec> Read(ImmutableArray<Section> sections, Section file, VesselDesign draft) =>
        sections.Select(section => PackingBuilder.Build(section, Holder(file).Items("discs")));

    public override IEnumerable<Fault> References(Section file, VesselDesign design) =>
        Holder(file).IsAtFault("discs") ? [] : Sections(file).SelectMany(packing => Between(packing, Holder(file).Items("discs")));

    public override IEnumerable<Fault> Faults(VesselDesign design, PortSites sites) =>
        design.All<PackingDesign>().Select(packing => PackingCheck.Find(design, packing)).OfType<Fault>();

    public override IEnumerable<Member> Build(VesselDesign design, ImmutableArray<PortSite> sites) =>
        design.All<PackingDesign>().Select(packing => new Packing(packing, design, sites));

    private static IEnumerable<Fault> Between(Section packing, ImmutableArray<Section> discs) => packing.Texts("between")
        .Where(name => InsideNames.Find(discs, name) is null)
        .Select(name => Fault.NotFound($"{packing.Path}.between", name, $"'{name}' is not a disc",
            [.. discs.Select(d => d.Text("name")).OfType<string>()]));
}
