using System.Collections.Immutable;
using Vessel.Design;
using Vessel.Parts;
using Vessel.Sites;

namespace Vessel.Members.Screens;

/// <summary>Screens: perforated discs.</summary>
internal sealed class ScreenKind : MemberKind
{
    public override Key Key { get; } = new("discs", KeyKind.List, "Plates with holes")
    {
        DefaultRule = "none",
        Map = ScreenKeys.Screen,
        Items = new(0, 24),
    };

    public override string Under => UnderInside;

    public override bool MayBeNameless => false;

    public override IEnumerable<MemberSpec> Read(ImmutableArray<Section> sections, Section file, VesselDesign draft) =>
        sections.Select(section => ScreenBuilder.Build(section, Holder(file).Items("sleeve"), draft.All<HangingSpec>(), draft.Shell));

    public override IEnumerable<(Section Part, Section? Host, string HostName)> Welded(Section file)
    {
        foreach (var disc in Sections(file).Where(d => d.Text("fixed") == "weld"))
        {
            var (isKnown, sleeve) = InsideNames.HostOf(disc, Holder(file).Items("sleeve"));
            yield return (disc, sleeve ?? (isKnown ? file.Child("shell") : null),
                sleeve is null ? "the shell" : sleeve.Text("name") ?? sleeve.Path);
        }
    }

    public override IEnumerable<Fault> References(Section file, VesselDesign design) =>
        Holder(file).IsAtFault("sleeve") ? [] : Sections(file).Select(disc => Fits(disc, Holder(file).Items("sleeve"))).OfType<Fault>();

    public override IEnumerable<Fault> Faults(VesselDesign design, PortSites sites) =>
        design.All<ScreenDesign>().SelectMany(disc => Inside.DividerCheck.Find(design, disc));

    public override IEnumerable<Member> Build(VesselDesign design, ImmutableArray<PortSite> sites) =>
        design.All<ScreenDesign>().Select(disc => new Screen(disc, design));

    private static Fault? Fits(Section disc, ImmutableArray<Section> sleeves) =>
        disc.Text("fits") is not { } name || InsideNames.HostOf(disc, sleeves).IsKnown
            ? null
            : Fault.NotFound($"{disc.Path}.fits", name, $"'{name}' is neither a sleeve nor 'shell'",
                [.. sleeves.Select(s => s.Text("name")).OfType<string>(), "shell"]);
}
