using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Members.Brackets;

/// <summary>Brackets of all types: what is welded to the shell and bolted up.</summary>
/// <param name="types">Types, of which a file that names none means the first.</param>
/// <param name="what">The types in words.</param>
internal sealed class BracketKind(ImmutableArray<BracketType> types, string what) : MemberKind
{
    public override Key Key { get; } = new("bracket", KeyKind.OneOrList, "Welded bracket that the vessel is bolted up by")
    {
        DefaultRule = "none",
        Switch = new("kind", false, Maps(types, what)),
        Items = new(0, 24),
    };

    public override IEnumerable<MemberSpec> Read(ImmutableArray<Section> sections, Section file, VesselDesign draft) =>
        sections.Where(section => section.Has("kind")).Select(section => One(section, draft.Shop));

    public override IEnumerable<(Section Part, Section? Host, string HostName)> Welded(Section file) =>
        Sections(file).Select(section => (section, file.Child("shell"), "the shell"));

    public override IEnumerable<Fault> Faults(VesselDesign design, PortSites sites) =>
        [.. types.SelectMany(type => type.Faults(design, sites)), .. BoltCheck.Find(design), .. TabCheck.Find(design, sites)];

    public override IEnumerable<Member> Build(VesselDesign design, ImmutableArray<PortSite> sites) =>
        design.All<BracketDesign>().Select(bracket => bracket.Build(design));

    private static ImmutableDictionary<string, KeyMap> Maps(ImmutableArray<BracketType> types, string what)
    {
        var kind = new Key("kind", KeyKind.Choice, what) { Choices = [.. types.Select(type => type.Word)], Default = types[0].Word };
        return types.ToImmutableDictionary(
            type => type.Word,
            type => new KeyMap(type.What, [kind, BracketKeys.Name, .. type.Keys, BracketKeys.Tabs, CommonKeys.Material]));
    }

    private BracketDesign One(Section section, Shop shop)
    {
        var at = section.Child("at") ?? Section.Absent($"{section.Path}.at");
        var bracket = types.Single(type => type.Word == section.Text("kind")).Read(section, at, shop);
        return section.Child("tabs") is { } tabs
            ? bracket with
            {
                Tabs = new(tabs.Path, tabs.Has("count") ? (int)tabs.Number("count") : 0, tabs.Number("width"),
                tabs.Number("clearance"))
            }
            : bracket;
    }
}
